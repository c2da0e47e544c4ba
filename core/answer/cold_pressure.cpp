#include "core/answer/cold_pressure.hpp"

#include <algorithm>
#include <cmath>

#include "core/air/gas_law.hpp"
#include "core/air/get_home.hpp"
#include "core/air/natural_loss.hpp"
#include "core/air/warning.hpp"
#include "core/answer/advice.hpp"
#include "core/answer/teller.hpp"
#include "core/answer/tyre_age.hpp"
#include "core/patch/contact.hpp"
#include "core/patch/cross_ply.hpp"
#include "core/patch/inclined.hpp"
#include "core/patch/measured.hpp"
#include "core/patch/pressure_demand.hpp"
#include "core/patch/rating.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/load_adjustment.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/speed_load.hpp"

namespace treadwater::answer {
namespace {

using patch::NoPressure;
using patch::PressureDemand;
using standard::Allowance;
using standard::pressure_gauge_error;

constexpr Temperature room = celsius(20.0);
// The tables ask for no more pressure up to here; see patch/pressure_demand.hpp.
constexpr Speed speed_without_increase = kilometres_per_hour(160.0);

// Over the pressure a load rating belongs to, or over what is to be set, before it wants a word.
constexpr GaugePressure noticeably_more = kilopascals(30.0);
// Of that pressure; no car maker or load law asks for as much.
constexpr double absurd = 1.5;
// 44 psi and 300 kPa are the same marking.
constexpr GaugePressure same_marking = psi(0.5);
// Colder air and its return are worked out; the last digits of that are nothing.
constexpr GaugePressure rounding = kilopascals(1e-6);

constexpr Source placard_first{"placard-first", "The pressure on the vehicle's placard comes first",
                               "handbooks and tyre makers' advice", "", Standing::common_practice};

class ColdPressure : Teller {
 public:
  explicit ColdPressure(const Input& input) : Teller(cold_pressure_sheet(), input) {}

  Answer run() {
    read_form();
    if (size_ && load_) find_need();
    if (size_) find_setting();
    find_setting_here();
    if (gauge_) judge_reading();
    if (target_) judge_target();
    carry_to_stage();
    if (size_) judge_highest();
    if (size_) {
      caution(caution_of_narrow_beaded_edge(*size_, units_));
      caution_of_marked_age(*size_);
    }
    say_warnings();
    list_patches();
    if (answer_.ok()) finish();
    return std::move(answer_);
  }

 private:
  void read_form() {
    size_ = sidewall_text("size");
    load_ = quantity<Mass>("load");
    speed_ = quantity<Speed>("speed");
    placard_ = quantity<GaugePressure>("placard");
    camber_ = number("camber").value_or(0.0);
    towing_ = choice("towing") == "rear";
    gauge_ = quantity<GaugePressure>("gauge");
    cold_day_ = quantity<Temperature>("cold_day").value_or(room);
    tyre_now_ = quantity<Temperature>("tyre_now");
    stage_day_ = quantity<Temperature>("stage_day");
    height_here_ = quantity<Length>("height_here");
    height_there_ = quantity<Length>("height_there");
    target_ = quantity<GaugePressure>("hot_target");
    hot_tyre_ = quantity<Temperature>("hot_tyre");
  }

  // ---- what the load needs ----

  void find_need() {
    const auto greatest = patch::greatest_load(*size_);
    const auto symbol = patch::speed_symbol(*size_);
    const auto laws = patch::laws_of(*size_);
    if (size_->temporary_spare) judge_spare();
    if (!greatest || !symbol || !laws) {
      const Allowance tow = standard::towing_rear_tyre();
      if (greatest && *load_ > (towing_ ? tow.of(greatest->mass) : greatest->mass))
        refuse_load(greatest->mass);
      if (symbol && speed_ && *speed_ > standard::speed_row(*symbol).speed) refuse_speed(*symbol);
      caution("need_unknown", Level::care, "the sidewall text does not say enough",
              !laws ? "The load rating of this kind of tyre belongs to the pressure moulded beside "
                      "it: add that to the sidewall text, for example 475 kPa."
                    : "The load index and the speed symbol, such as 91V, are needed to work out a "
                      "pressure: add them to the sidewall text.");
      return;
    }
    const std::string index = std::to_string(greatest->index);
    caution(caution_of_load_worked_out(*greatest, units_));
    figure("load_rating", filled("Load rating (index #)", {index}), in_kilograms(greatest->mass),
           "kg", write(greatest->mass, units_),
           {greatest->worked_out ? &patch::p_metric_capacity_source()
                                 : &standard::load_index_source()});
    const patch::RatedTyre tyre{greatest->mass, *symbol, laws->law, laws->second,
                                patch::vehicle_of(*size_)};
    patch::Duty duty;
    duty.load = *load_;
    duty.speed =
        speed_.value_or(std::min(size_->temporary_spare ? spare().speed : speed_without_increase,
                                 standard::speed_row(*symbol).speed));
    if (!speed_)
      caution("speed_unknown", Level::note, "",
              filled("No speed was given: this holds up to #. Faster needs more.",
                     {speed_text(duty.speed)}));
    duty.camber_degrees = camber_;
    duty.car_top_speed = duty.speed;
    duty.towing_rear = towing_;
    const auto demand = patch::pressure_demand(tyre, duty);
    if (!demand) return refuse(demand.error(), tyre, duty);
    need_ = demand->total();
    describe_need(*demand, tyre);
    draw_capacity(tyre);
  }

  static air::GetHome spare() { return air::get_home(air::Way::temporary_spare, 0.0); }

  void judge_spare() {
    const bool too_fast = speed_ && *speed_ > spare().speed;
    caution("temporary_spare", too_fast ? Level::unfit : Level::care,
            too_fast ? "the speed you intend is too high for a temporary spare"
                     : "it is a temporary spare",
            "Temporary spare: 80 km/h (50 mph) at most, never two, at 420 kPa (60 psi) unless its "
            "sidewall says otherwise. Its grip, braking and ground clearance are not those of the "
            "other three.",
            {spare().source});
  }

  void refuse_load(Mass greatest) {
    caution("overload", Level::unfit, "it is overloaded",
            filled("Overloaded: # on a tyre rated for #. No pressure makes up for that.",
                   {write_at_least(*load_, units_), write_at_most(greatest, units_)}),
            {&standard::load_index_source()});
  }

  void refuse_speed(standard::SpeedSymbol symbol) {
    caution("speed_above_symbol", Level::unfit, "the speed you intend is above its speed symbol",
            filled("# is above what its speed symbol # allows.",
                   {speed_text(*speed_), standard::speed_row(symbol).letters}),
            {&standard::speed_symbol_source()});
  }

  void refuse(NoPressure reason, const patch::RatedTyre& tyre, const patch::Duty& duty) {
    switch (reason) {
      case NoPressure::overloaded:
        if (*load_ > tyre.greatest) return refuse_load(tyre.greatest);
        return caution(caution_of_overload_at_speed(
            duty.speed, *load_, patch::greatest_load_at(tyre, duty).value_or(Mass()), tyre.vehicle,
            units_));
      case NoPressure::above_symbol:
        return refuse_speed(tyre.symbol);
      case NoPressure::too_much_camber:
        return caution("too_much_camber", Level::unfit, "there is too much camber",
                       "No pressure is given for this much camber at this speed: the tables end at "
                       "4 degrees, and at 3 above 270 km/h.",
                       {&standard::camber_source()});
      case NoPressure::towing_too_fast:
        return caution("towing_too_fast", Level::unfit, "it is too fast for that load",
                       filled("With that load on the rear wheels no more than # is allowed.",
                              {speed_text(standard::towing_rear_tyre().at_most)}),
                       {standard::towing_rear_tyre().source});
      case NoPressure::not_a_number:
        break;
    }
  }

  void describe_need(const PressureDemand& demand, const patch::RatedTyre& tyre) {
    const auto part = [&](const char* id, const char* label, GaugePressure p, SomeSources sources) {
      if (p > kilopascals(0.0))
        figure(id, label, in_kilopascals(p), "kPa", write(p, units_), sources);
    };
    Sources laws{tyre.law.source, &patch::least_pressure_source()};
    const Mass rated = tyre.greatest;
    if (tyre.second_law) {
      part("need_first_law", "Needed by the US law",
           patch::pressure_needed(tyre.law, rated, *load_), {tyre.law.source});
      part("need_second_law", "Needed by the European law",
           patch::pressure_needed(*tyre.second_law, rated, *load_), {tyre.second_law->source});
      laws.push_back(tyre.second_law->source);
    }
    part("need_load", "For the load", demand.base, laws);
    part("need_speed", "More for the speed", demand.speed, {&standard::speed_pressure_source()});
    part("need_camber", "More for the camber", demand.camber,
         {&standard::camber_pressure_source()});
    part("need_towing", "More for towing", demand.towing, {standard::towing_rear_tyre().source});
    figure("pressure_needed", "Least cold pressure in all", in_kilopascals(demand.total()), "kPa",
           write_at_least(demand.total(), units_), laws);
    if (demand.total() > tyre.law.reference + pressure_gauge_error)
      caution("above_reference", Level::care,
              "it needs more than the pressure its load rating belongs to",
              filled("This asks for more than #, the pressure that its load rating belongs to. "
                     "Never set more than the sidewall allows: ask the tyre maker.",
                     {write(tyre.law.reference, units_)}),
              laws);
  }

  // ---- what to set ----

  // By a gauge that may be out.
  std::optional<GaugePressure> least() const {
    return need_ ? std::optional(*need_ + pressure_gauge_error) : std::nullopt;
  }

  patch::LeastPressure floor() const { return patch::least_pressure_of(*size_, load_); }

  // The larger of the placard and what the load needs.
  void find_setting() {
    set_ = placard_;
    if (placard_ && need_ && *placard_ < *need_ - rounding)
      caution("placard_under_need", Level::care, "the placard says less than this load needs",
              filled("The placard's # does not carry this load, which needs #: one of them is "
                     "wrong, or the tyre is not of the placard's size. Check both.",
                     {write(*placard_, units_), write_at_least(*need_, units_)}),
              {&placard_first, &patch::least_pressure_source()});
    if (const auto by_load = least()) set_ = std::max(*by_load, placard_.value_or(*by_load));
    if (!set_ || *set_ >= floor().pressure) return;
    caution("under_least", Level::unfit, "the placard's figure is too low for a tyre of this kind",
            filled("# is less than a tyre of this kind is ever set to (#). Read the placard again, "
                   "or ask the tyre maker.",
                   {write(*set_, units_), write_at_least(floor().pressure, units_)}),
            {floor().from});
    set_.reset();
  }

  // What to set where it stands, for the right pressure where it will be driven.
  void find_setting_here() {
    if (!set_ || (!stage_day_ && !height_there_)) return;
    const GaugePressure here = air::carried_over({*set_, there()}, {cold_day_, air_here()});
    if (!(here > *set_ + rounding)) return;
    set_here_ = here;
    figure("set_here", "Set here to have the right pressure there", in_kilopascals(here), "kPa",
           write_at_least(here, units_), {&air::gas_law_source(), &air::atmosphere_source()});
  }

  // What the gauge is to show where it stands.
  std::optional<GaugePressure> to_set() const { return set_here_ ? set_here_ : set_; }

  void told(GaugePressure pressure) { highest_ = std::max(highest_, pressure); }

  // The pressure that stands for its kind: that of its load rating, or the highest of those with
  // which cars are rated.
  std::optional<GaugePressure> reference() const {
    if (const auto laws = patch::laws_of(*size_)) return laws->law.reference;
    const bool car_or_motorcycle = size_->motorcycle ||
                                   size_->family == sidewall::Family::inch_cross_ply ||
                                   size_->family == sidewall::Family::us_alphanumeric ||
                                   size_->family == sidewall::Family::overall_diameter;
    return car_or_motorcycle ? std::optional(patch::european_extra_load().reference) : std::nullopt;
  }

  // Of all that was read and all that is to be set.
  void judge_highest() {
    if (to_set()) told(*to_set());
    const auto marked = size_->marked_pressure;
    if (marked && need_ && *least() > *marked + rounding)
      caution("no_room_under_marking", Level::unfit,
              "its load leaves no room under the pressure moulded on it",
              filled("This load needs # by a gauge that can be # out, and the sidewall allows #. "
                     "Load less.",
                     {write_at_least(*least(), units_), write(pressure_gauge_error, units_),
                      write(*marked, units_)}),
              {&patch::least_pressure_source()});
    else if (marked && highest_ > *marked + same_marking)
      caution(
          "above_marking", Level::unfit, "the pressure is above the one moulded on its sidewall",
          filled("# is above #, the pressure moulded on the sidewall. Never set more than that.",
                 {write(highest_, units_), write(*marked, units_)}));
    const auto usual = reference();
    if (!usual) return;
    const Sources law{&patch::least_pressure_source()};
    if (highest_ > *usual * absurd)
      caution("pressure_too_high", Level::unfit, "the pressure is far too high for it",
              filled("# is far more than a tyre of this kind is ever set to (about #): read the "
                     "gauge or the placard again.",
                     {write(highest_, units_), write(*usual, units_)}),
              law);
    else if (highest_ > *usual + noticeably_more && !(need_ && highest_ <= *least() + rounding))
      caution("pressure_high", Level::care, "the pressure is above what its load rating belongs to",
              filled("Pressure high: above # the tyre carries no more load, its patch gets shorter "
                     "and it rides and grips worse. Keep to the placard, and never above the "
                     "pressure moulded on the sidewall.",
                     {write(*usual, units_)}),
              law);
  }

  // ---- readings ----

  AbsolutePressure air_at(const std::optional<Length>& height) const {
    return height ? air::outside_at(*height) : air::standard_atmosphere;
  }
  AbsolutePressure air_here() const { return air_at(height_here_); }
  AbsolutePressure air_there() const {
    return air_at(height_there_ ? height_there_ : height_here_);
  }
  air::Conditions there() const { return {stage_day_.value_or(cold_day_), air_there()}; }

  // The reading as it would be at rest where it stands cold.
  void judge_reading() {
    const Temperature now = tyre_now_.value_or(cold_day_);
    const AbsolutePressure outside = air_at(height_here_);
    cold_ = std::max(kilopascals(0.0),
                     air::carried_over({*gauge_, {now, outside}}, {cold_day_, outside}));
    const bool warm = now > cold_day_ + kelvin_difference(3.0);
    if (warm) {
      figure("cold_equivalent", "The reading, once it is cold", in_kilopascals(*cold_), "kPa",
             write(*cold_, units_), {&air::gas_law_source()},
             filled("The same air at #.", {temperature_text(cold_day_)}));
      caution("hot_reading", Level::note, "",
              "Read warm. Never let air out of a hot tyre: cold it would be short, and it heats up "
              "the more for it.",
              {&hot_reading_advice(), &air::gas_law_source()});
    }
    told(*cold_);
    if (size_) compare_reading();
  }

  void compare_reading() {
    const auto set = to_set();
    const patch::LeastPressure kind = floor();
    const GaugePressure needed =
        std::max(need_.value_or(set_.value_or(kind.pressure)), kind.pressure);
    if (*cold_ < needed)
      caution("pressure_low", Level::unfit, "the pressure is too low for the load",
              filled("Cold it has #, and # are needed. Inflate before driving.",
                     {write(*cold_, units_), write_at_least(set.value_or(needed), units_)}),
              {&air::gas_law_source(), kind.from});
    else if (need_ && *cold_ < *least() - rounding)
      caution(
          "pressure_at_least", Level::unfit, "the pressure is within a gauge's error of too low",
          filled("Only just enough: a gauge can be # out.", {write(pressure_gauge_error, units_)}),
          {});
    else if (set_ && *cold_ < *set_ - pressure_gauge_error)
      caution("under_placard", Level::care, "it is under the placard",
              filled("Cold it has #, and the placard says #: the placard comes first.",
                     {write(*cold_, units_), write(*set_, units_)}),
              {&placard_first});
    else if (set && placard_ == set_ && *cold_ > *set + noticeably_more)
      caution("over_placard", Level::care, "it has more than the placard says",
              filled("Cold it has #, and # is what to set. If it was read warm, give the tyre's "
                     "temperature too; let air out of a cold tyre only.",
                     {write(*cold_, units_), write_at_least(*set, units_)}),
              {&placard_first, &hot_reading_advice()});
  }

  // A hot pressure wanted at work: what to set cold for it.
  void judge_target() {
    if (!hot_tyre_) {
      problem(
          "hot_tyre", "missing",
          "Tyre's temperature at work is missing: without it no cold setting can be worked out. "
          "Something like 80 °C would do.");
      return;
    }
    const GaugePressure cold =
        air::carried_over({*target_, {*hot_tyre_, air_there()}}, {cold_day_, air_here()});
    told(cold);
    figure("cold_setting", "Set cold for that hot pressure", in_kilopascals(cold), "kPa",
           write(cold, units_), {&air::gas_law_source()},
           filled("At # here, to be # at #.", {temperature_text(cold_day_), write(*target_, units_),
                                               temperature_text(*hot_tyre_)}));
    const GaugePressure lowest =
        size_ ? least().value_or(floor().pressure) : patch::least_pressure();
    const auto set = to_set();
    if (!set) {
      if (cold < lowest - rounding)
        caution("target_too_low", Level::unfit, "that hot pressure starts from too little",
                filled("Set to # cold it could not carry its load (# needed). Do not go under "
                       "that.",
                       {write(cold, units_), write_at_least(lowest, units_)}),
                {&air::gas_law_source()});
      return;
    }
    // What is to be set is not what the target would take: how hot it will be all the same.
    const GaugePressure hot =
        air::carried_over({*set, {cold_day_, air_here()}}, {*hot_tyre_, air_there()});
    figure("hot_at_setting", "At work, with what is to be set", in_kilopascals(hot), "kPa",
           write(hot, units_), {&air::gas_law_source()});
    const std::string target = write(*target_, units_);
    const std::string takes = write(cold, units_);
    const std::string told_cold = write_at_least(*set, units_);
    const std::string gives = write(hot, units_);
    const std::string at_work = temperature_text(*hot_tyre_);
    if (cold < lowest - rounding)
      caution("target_too_low", Level::unfit, "that hot pressure starts from too little",
              filled("# hot would take # cold, which could not carry the load: never set that. "
                     "With # cold it will have about # at #.",
                     {target, takes, told_cold, gives, at_work}),
              {&air::gas_law_source()});
    else if (placard_ && cold < *placard_ - pressure_gauge_error)
      caution("target_under_placard", Level::care,
              "that hot pressure starts from under the placard",
              filled("# hot would take # cold, which is under the placard, so it is not set. With "
                     "# cold it will have about # at #. Less is for a stage or a track only: set "
                     "it back before the road.",
                     {target, takes, told_cold, gives, at_work}),
              {&placard_first, &air::gas_law_source()});
    else if (cold > *set + pressure_gauge_error)
      caution("target_over_set", Level::note, "",
              filled("# hot would take # cold, more than is to be set. With # cold it will have "
                     "about # at #.",
                     {target, takes, told_cold, gives, at_work}),
              {&air::gas_law_source()});
  }

  // What the gauge will show of the same air where it will be driven.
  void carry_to_stage() {
    const auto now = cold_ ? cold_ : set_;
    if (!now || (!stage_day_ && !height_there_)) return;
    const GaugePressure shown = air::carried_over({*now, {cold_day_, air_here()}}, there());
    told(shown);
    figure("at_stage", "The same air there, cold", in_kilopascals(shown), "kPa",
           write(shown, units_), {&air::gas_law_source(), &air::atmosphere_source()},
           filled("# here at #.", {write(*now, units_), temperature_text(cold_day_)}));
    const bool short_of_need = need_ && shown < *least() - rounding;
    if (!set_ || (!short_of_need && shown >= *set_ - kilopascals(5.0))) return;
    const GaugePressure more = air::carried_over({*set_, there()}, {cold_day_, air_here()});
    caution(
        "short_at_stage", short_of_need ? Level::unfit : Level::care,
        short_of_need ? "it will be too low for the load there" : "it will be low there",
        filled("There it will show #. Set # here, or set # there once it has cooled.",
               {write(shown, units_), write_at_least(more, units_), write_at_least(*set_, units_)}),
        {&air::gas_law_source()});
  }

  // ---- warnings and what time does ----

  // Of the US rule's floors, the one for this kind of tyre; UN R141 for one tyre.
  bool concerns_this_tyre(const air::WarningRule& rule) const {
    if (rule.id == "un") return true;
    if (!size_) return false;
    const std::string_view mine = size_->light_truck  ? "us-truck"
                                  : size_->extra_load ? "us-extra"
                                                      : "us";
    return rule.id == mine;
  }

  void say_warnings() {
    const auto set = to_set();
    if (!set) return;
    for (const air::WarningRule& rule : air::warning_rules()) {
      if (!concerns_this_tyre(rule)) continue;
      const GaugePressure lamp = air::warning_pressure(rule, *set);
      figure("warning_lamp", filled("Warning lamp by #", {rule.title}), in_kilopascals(lamp), "kPa",
             write(lamp, units_), {rule.source, rule.floor_from});
    }
    const GaugePressure stop = air::do_not_drive_below(*set);
    figure("do_not_drive", "Do not drive under", in_kilopascals(stop), "kPa",
           write_at_least(stop, units_), {&air::do_not_drive_source()});
    const GaugePressure colder =
        air::carried_over({*set, {cold_day_, air::standard_atmosphere}},
                          {cold_day_ - kelvin_difference(10.0), air::standard_atmosphere});
    const GaugePressure drop = *set - colder;
    figure("ten_kelvins", "Lost with every 10 °C colder", in_kilopascals(drop), "kPa",
           write(drop, units_), {&air::gas_law_source()});
    const air::PressureBand month =
        air::natural_loss(air::AirHolder::tubeless, cold_day_, days(30.0));
    figure("natural_loss", "Lost through the rubber in a month", in_kilopascals(month.high), "kPa",
           filled("# to #", {write(month.low, units_), write(month.high, units_)}),
           {&air::natural_loss_source()}, "", in_kilopascals(month.low),
           in_kilopascals(month.high));
    draw_temperature(*set);
  }

  // ---- the contact patch ----

  // How it changes with pressure, load and camber.
  void list_patches() {
    const auto set = to_set();
    const auto size = size_ ? patch::nominal_size(*size_) : std::optional<patch::TyreSize>();
    const auto rated = size_ ? patch::greatest_load(*size_) : std::optional<patch::GreatestLoad>();
    if (!set || !size || !rated || !load_ || size_->motorcycle) return;
    if (size_->construction != sidewall::Construction::radial) return say_cross_ply(*size, *set);
    Table table{"patch",
                "The contact patch, and what changes it",
                "By equations for belted radials, which read up to 31 % long and large against two "
                "measured tyres.",
                {"", "Long", "Wide", "Area"},
                {}};
    const auto row = [&](std::string_view name, GaugePressure pressure, Mass load, double degrees) {
      const auto p = patch::contact_patch(*size, pressure, load, rated->mass);
      const auto shares = patch::camber_shares(degrees);
      if (!shares) return;
      table.rows.push_back({std::string(name), write_size(p.length * shares->length, units_),
                            write_size(p.width * shares->width, units_),
                            write(p.area * shares->area, units_)});
    };
    row(filled("# and #", {write_at_least(*set, units_), write(*load_, units_)}), *set, *load_,
        0.0);
    row("A fifth less pressure", *set * 0.8, *load_, 0.0);
    row("A fifth more pressure", *set * 1.2, *load_, 0.0);
    row("A fifth less load", *set, *load_ * 0.8, 0.0);
    row("A fifth more load", *set, *load_ * 1.2, 0.0);
    row("2 degrees of camber", *set, *load_, 2.0);
    row("4 degrees of camber", *set, *load_, 4.0);
    answer_.tables.push_back(std::move(table));
    const auto p = patch::contact_patch(*size, *set, *load_, rated->mass);
    figure("patch_area", "Contact area at that pressure", in_square_centimetres(p.area), "cm²",
           filled("about #", {write(p.area, units_)}),
           {&patch::contact_area_source(), &patch::contact_length_source(),
            &patch::contact_width_source(), &patch::stiffness_source(),
            &patch::measured_patch_source()},
           "Provisional: the stiffness constants are from memory.");
  }

  void say_cross_ply(const patch::TyreSize& size, GaugePressure set) {
    if (size_->construction != sidewall::Construction::cross_ply) return;
    const auto found = patch::cross_ply_patch(size, set, set, weight(*load_));
    if (!found) return;
    figure("patch_area", "Contact area of a cross-ply", in_square_centimetres(found->area_high),
           "cm²",
           filled("# to #", {write(found->area_low, units_), write(found->area_high, units_)}),
           {&patch::cross_ply_source(), &patch::cross_ply_stiffness_source()},
           "Two sources contradict each other, and neither was seen in print.",
           in_square_centimetres(found->area_low), in_square_centimetres(found->area_high));
  }

  // ---- charts ----

  double shown(GaugePressure p) const {
    return units_ == UnitSystem::metric ? in_bars(p) : in_psi(p);
  }
  const char* pressure_unit() const { return units_ == UnitSystem::metric ? "bar" : "psi"; }
  double shown(Temperature t) const {
    return units_ == UnitSystem::us ? in_celsius(t) * 1.8 + 32.0 : in_celsius(t);
  }
  std::string temperature_text(Temperature t) const {
    return filled(units_ == UnitSystem::us ? "# °F" : "# °C", {fixed(shown(t), 0)});
  }

  void draw_temperature(GaugePressure set) {
    Chart chart;
    chart.id = "temperature";
    chart.title = "The same air, colder and hotter";
    chart.text = filled("Set to # at #, this is what the gauge shows as the tyre cools and heats.",
                        {write_at_least(set, units_), temperature_text(cold_day_)});
    chart.x = {"Temperature of the tyre", units_ == UnitSystem::us ? "°F" : "°C"};
    chart.y = {"Gauge pressure", pressure_unit()};
    Series air_in_it{"subject", "The air in it", {}, {}, {}, {}};
    chart.table.columns = {"Tyre", "Gauge"};
    for (int celsius_now = -20; celsius_now <= 100; celsius_now += 10) {
      const Temperature t = celsius(celsius_now);
      const GaugePressure p = air::carried_over({set, {cold_day_, air::standard_atmosphere}},
                                                {t, air::standard_atmosphere});
      air_in_it.x.push_back(shown(t));
      air_in_it.y.push_back(shown(p));
      chart.table.rows.push_back({temperature_text(t), write(p, units_)});
    }
    if (need_) {
      Series least{"reference",
                   "Needed cold for the load",
                   {air_in_it.x.front(), air_in_it.x.back()},
                   {shown(*need_), shown(*need_)},
                   {},
                   {}};
      chart.series = {air_in_it, std::move(least)};
    } else {
      chart.series = {air_in_it};
    }
    chart.marks = {{shown(cold_day_), shown(set), "Set here"}};
    answer_.charts.push_back(std::move(chart));
  }

  void draw_capacity(const patch::RatedTyre& tyre) {
    Chart chart;
    chart.id = "capacity";
    chart.title = "Load it can carry";
    chart.text = filled("What this tyre carries at each cold pressure, up to its rating of #.",
                        {write(tyre.greatest, units_)});
    const bool us = units_ == UnitSystem::us;
    const auto mass = [&](Mass m) { return us ? in_pounds(m) : in_kilograms(m); };
    chart.x = {"Cold pressure", pressure_unit()};
    chart.y = {"Load", us ? "lb" : "kg"};
    chart.table.columns = {"Cold pressure", "Load"};
    Series carried{"subject", "Carries", {}, {}, {}, {}};
    for (int step = 0; step <= 12; ++step) {
      const double share = static_cast<double>(step) / 12.0;
      const GaugePressure p =
          patch::least_pressure() + (tyre.law.reference - patch::least_pressure()) * share;
      const Mass m = patch::load_capacity(tyre.second_law.value_or(tyre.law), tyre.greatest, p);
      carried.x.push_back(shown(p));
      carried.y.push_back(mass(m));
      if (step % 3 == 0) chart.table.rows.push_back({write(p, units_), write(m, units_)});
    }
    chart.series = {std::move(carried)};
    if (need_) chart.marks = {{shown(*need_), mass(*load_), "This load"}};
    answer_.charts.push_back(std::move(chart));
  }

  void finish() {
    const auto set = to_set();
    if (!placard_ && set)
      caution(
          "placard_first", Level::care, "the placard's figure was not given",
          "The vehicle's placard comes before this figure; it is often higher, for handling and "
          "speed.",
          {&placard_first});
    const std::string pressure = set ? write_at_least(*set, units_) : std::string();
    conclude(set ? filled("Set # cold.", {pressure}) : std::string("No pressure can be named."),
             set ? filled("Set # cold, with care: ", {pressure}).append("#.").c_str()
                 : "No pressure can be named yet: #.");
    if (answer_.verdict->level != Level::unfit) {
      if (set) speak(filled("#: set # cold.", {size_->canonical, pressure}));
    } else if (set && air_cures_it()) {
      speak(filled("#: not fit until # is set cold.", {size_->canonical, pressure}));
    } else {
      speak(filled("#: #", {size_->canonical, answer_.verdict->text}));
    }
  }

  bool air_cures_it() const {
    return std::all_of(answer_.cautions.begin(), answer_.cautions.end(), [](const Caution& c) {
      return c.level != Level::unfit || c.id == "pressure_low" || c.id == "pressure_at_least" ||
             c.id == "short_at_stage";
    });
  }

  std::optional<sidewall::Reading> size_;
  std::optional<Mass> load_;
  std::optional<Speed> speed_;
  std::optional<GaugePressure> placard_;
  double camber_ = 0.0;
  bool towing_ = false;
  std::optional<GaugePressure> gauge_;
  Temperature cold_day_ = room;
  std::optional<Temperature> tyre_now_;
  std::optional<Temperature> stage_day_;
  std::optional<Length> height_here_;
  std::optional<Length> height_there_;
  std::optional<GaugePressure> target_;
  std::optional<Temperature> hot_tyre_;
  std::optional<GaugePressure> need_;
  std::optional<GaugePressure> set_;       // where it will be driven
  std::optional<GaugePressure> set_here_;  // more, where the air there asks for it
  GaugePressure highest_;                  // of all that was read and is to be set
  std::optional<GaugePressure> cold_;      // the reading, cold
};

}  // namespace

Answer cold_pressure(const Input& input) { return ColdPressure(input).run(); }

Sources cold_pressure_sources() {
  Sources all = {&standard::load_index_source(),
                 &standard::speed_symbol_source(),
                 &standard::speed_load_source(),
                 &standard::motorcycle_source(),
                 &standard::speed_pressure_source(),
                 &standard::camber_source(),
                 &standard::camber_pressure_source(),
                 standard::towing_rear_tyre().source,
                 patch::european_standard_load().source,
                 patch::european_at_marked_pressure(kilopascals(0.0)).source,
                 patch::linear_at_marked_pressure(kilopascals(0.0)).source,
                 patch::temporary_spare_law().source,
                 patch::p_metric_standard_load().source,
                 &patch::least_pressure_source(),
                 &patch::p_metric_capacity_source(),
                 &air::gas_law_source(),
                 &air::atmosphere_source(),
                 &air::natural_loss_source(),
                 &air::do_not_drive_source(),
                 &hot_reading_advice(),
                 &placard_first,
                 &patch::beaded_edge_least_source(),
                 &patch::beaded_edge_1909_source(),
                 &patch::beaded_edge_1921_source(),
                 &patch::beaded_edge_motorcycle_source(),
                 &date_code_source(),
                 &age_advice_source(),
                 air::get_home(air::Way::temporary_spare, 0.0).source,
                 &patch::contact_area_source(),
                 &patch::contact_length_source(),
                 &patch::contact_width_source(),
                 &patch::stiffness_source(),
                 &patch::measured_patch_source(),
                 &patch::cross_ply_source(),
                 &patch::cross_ply_stiffness_source()};
  for (const air::WarningRule& rule : air::warning_rules()) {
    add_once(all, *rule.source);
    add_once(all, *rule.floor_from);
  }
  return all;
}

}  // namespace treadwater::answer
