#include "core/answer/fitment.hpp"

#include <algorithm>
#include <cmath>

#include "core/air/get_home.hpp"
#include "core/answer/advice.hpp"
#include "core/answer/teller.hpp"
#include "core/answer/tyre_age.hpp"
#include "core/car/fitment.hpp"
#include "core/car/rules.hpp"
#include "core/car/wheel.hpp"
#include "core/patch/contact.hpp"
#include "core/patch/pressure_demand.hpp"
#include "core/patch/rating.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/load_adjustment.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/speed_load.hpp"
#include "core/standard/speedometer.hpp"

namespace treadwater::answer {
namespace {

// A rolling circumference off by more than this wants a word: gearing, speedometer and the car's
// own electronics are all set for the old one.
constexpr double noticeable = 0.03;
constexpr Length close_clearance = millimetres(5.0);
// Twice that, and further than any usual spacer moves a wheel.
constexpr double too_much_change = 2.0 * noticeable;
constexpr Length too_far_moved = millimetres(30.0);

constexpr Source change_rule{"fitment-change", "How much another size may change",
                             "3 % of the circumference and 5 mm want a word, 6 % and 30 mm are too "
                             "much: our choice",
                             "2026", Standing::common_practice};
constexpr Length rim_may_differ = millimetres(25.4);
constexpr Source rim_rule{"rim-width", "How far a rim may differ from the one a size belongs to",
                          "an inch wants the maker's word, two are too much: our choice", "2026",
                          Standing::common_practice};
constexpr Source who_decides{
    "fitment-approval", "Other sizes: approval, insurer, a qualified fitter",
    "local law and the car maker's list come first", "", Standing::common_practice};

struct Tyre {
  std::optional<sidewall::Reading> reading;
  std::optional<patch::TyreSize> size;
  std::optional<patch::GreatestLoad> greatest;
  std::optional<standard::SpeedSymbol> symbol;
  bool cross_ply = false;
};

class Fitment : Teller {
 public:
  explicit Fitment(const Input& input) : Teller(fitment_sheet(), input) {}

  Answer run() {
    before_ = read_tyre("size");
    after_ = read_tyre("new_size");
    read_form();
    if (before_.size && after_.size) compare_sizes();
    if (before_.reading && after_.reading) judge_kind();
    judge_adequacy();
    judge_pressure();
    equal_load();
    draw_patches();
    weigh_wheels();
    caution(
        "who_decides", Level::note, "",
        "Whether it may be fitted is for the law of the place, the car maker's list of sizes and "
        "your insurer to say, and for a qualified fitter to check: turn the steering to its ends "
        "and load the car before you trust a clearance.",
        {&who_decides});
    if (answer_.ok())
      conclude("It fits by these figures; clearance must still be seen on the car.",
               "Fit only with care: #.", "Not to be fitted: #.");
    return std::move(answer_);
  }

 private:
  Tyre read_tyre(std::string_view path) {
    Tyre tyre;
    tyre.reading = sidewall_text(path);
    if (!tyre.reading) return tyre;
    tyre.size = patch::nominal_size(*tyre.reading);
    tyre.greatest = patch::greatest_load(*tyre.reading);
    tyre.symbol = patch::speed_symbol(*tyre.reading);
    tyre.cross_ply = tyre.reading->construction != sidewall::Construction::radial;
    if (!tyre.size)
      caution("size_unknown", Level::care, "a size does not give its own dimensions",
              filled("# does not give the height of its sidewall: measure its overall diameter.",
                     {tyre.reading->canonical}));
    return tyre;
  }

  void read_form() {
    top_speed_ = quantity<Speed>("top_speed");
    if (const auto index = number("asked_index"))
      asked_ = standard::load_of_index(static_cast<int>(*index));
    pressure_ = quantity<GaugePressure>("pressure");
    load_ = quantity<Mass>("load");
    rim_ = quantity<Length>("rim");
    new_rim_ = quantity<Length>("new_rim");
    offset_ = quantity<Length>("offset");
    new_offset_ = quantity<Length>("new_offset");
    mass_ = quantity<Mass>("wheel_mass");
    new_mass_ = quantity<Mass>("new_wheel_mass");
    unsprung_ = quantity<Mass>("unsprung");
    spring_ = number("suspension_rate");
  }

  // ---- size ----

  void compare_sizes() {
    const car::Wheel before{*before_.size, before_.cross_ply, rim_, offset_.value_or(metres(0.0))};
    const car::Wheel after{*after_.size, after_.cross_ply, new_rim_,
                           new_offset_.value_or(offset_.value_or(metres(0.0)))};
    const car::FitmentChange change = car::fitment_change(before, after);
    const auto rolling = [](const car::Wheel& wheel) {
      return patch::rolling_circumference(wheel.size, wheel.cross_ply).nominal;
    };
    Table table{"sizes",
                "Before and after",
                "Nominal sizes; real tyres differ by some per cent.",
                {"", "Now", "New", "Change"},
                {}};
    const auto row = [&](const char* name, Length now, Length then, int decimals) {
      table.rows.push_back({name, write_size(now, units_, decimals),
                            write_size(then, units_, decimals), signed_size(then - now, decimals)});
    };
    row("Overall diameter", patch::overall_diameter(before.size),
        patch::overall_diameter(after.size), 0);
    row("Section width on its rim", car::section_width(before), car::section_width(after), 0);
    row("Rolling circumference", rolling(before), rolling(after), 0);
    const bool miles = units_ != UnitSystem::metric;
    const double per = miles ? exact::metres_per_mile / 1000.0 : 1.0;
    const double turns_now = per * car::turns_per_kilometre(rolling(before));
    const double turns_then = per * car::turns_per_kilometre(rolling(after));
    table.rows.push_back({miles ? "Turns a mile" : "Turns a kilometre", fixed(turns_now, 0),
                          fixed(turns_then, 0), signed_number(turns_then - turns_now, 0)});
    answer_.tables.push_back(std::move(table));

    const Sources geometry{&patch::overall_diameter_source(),
                           &patch::rolling_circumference_source()};
    const double percent = 100.0 * (change.circumference - 1.0);
    figure("circumference_change", "Rolling circumference", percent, "%",
           filled("# %", {signed_number(percent, 1)}), geometry);
    figure("engine_speed", "Engine speed at the same road speed",
           100.0 * (change.engine_speed() - 1.0), "%",
           filled("# %", {signed_number(100.0 * (change.engine_speed() - 1.0), 1)}), geometry);
    length_figure("ride_height", "Ride height, and room lost under the arch", change.ride_height,
                  geometry);
    const Sources width{&patch::section_on_rim_source(), &patch::theoretical_rim_source()};
    length_figure("section_change", "Section width", change.section_width, width);
    length_figure("inward", "Nearer to the suspension", change.inward, width);
    length_figure("outward", "Further out", change.outward, width);
    if (!offset_ || !new_offset_)
      caution("offset_unknown", Level::note, "",
              "Without the offset of both wheels, inward and outward are for equal offsets.");

    if (std::fabs(percent) > 100.0 * noticeable) {
      const bool far = std::fabs(percent) > 100.0 * too_much_change;
      const std::string by = fixed(std::fabs(percent), 1);
      caution(
          "circumference", far ? Level::unfit : Level::care,
          filled("its circumference differs by # %", {by}),
          filled(percent > 0.0 ? "Its circumference is # % larger: speedometer, gearing, and the "
                                 "anti-lock and stability systems are set for the old one."
                               : "Its circumference is # % smaller: speedometer, gearing, and the "
                                 "anti-lock and stability systems are set for the old one.",
                 {by}),
          {&change_rule});
    }
    const Length moved = std::max(change.inward, change.outward);
    const Length nearest = std::max(moved, change.ride_height);
    if (moved > too_far_moved)
      caution("moved_too_far", Level::unfit, "it would stand too far in or out",
              filled("It would stand # further in or out than the wheel now: no car is made for "
                     "that much. "
                     "Read both sizes and offsets again, with their signs.",
                     {write_size(moved, units_)}),
              {&change_rule});
    else if (nearest > close_clearance)
      caution("clearance", Level::care, "it comes nearer to something",
              filled("It comes up to # nearer to suspension, arch or bodywork: see that nothing "
                     "touches at full lock and full bump.",
                     {write_size(nearest, units_)}),
              {&change_rule});
    judge_rim();
    speedometer(change.circumference);
    if (before_.reading->rim_diameter != after_.reading->rim_diameter)
      caution(
          "other_wheel", Level::note, "",
          "It wants a wheel of another diameter: its bolt circle, hub bore, load rating and room "
          "for the brakes must match. Larger spokes let more air to the brakes; a closed wheel "
          "keeps it out.");
  }

  void judge_rim() {
    if (!new_rim_) return;
    const Length usual = patch::theoretical_rim_width(*after_.size);
    const Length off = std::max(*new_rim_ - usual, usual - *new_rim_);
    if (!(off > rim_may_differ)) return;
    const bool far = off > rim_may_differ * 2.0;
    caution("rim_width", far ? Level::unfit : Level::care,
            *new_rim_ < usual ? "the rim is too narrow for it" : "the rim is too wide for it",
            filled("Its size belongs to a rim of about #, and this one is #. The tyre maker's list "
                   "of rims decides.",
                   {write_rim(usual), write_rim(*new_rim_)}),
            {&rim_rule, &patch::theoretical_rim_source()});
  }

  static std::string write_rim(Length width) {
    return filled("# in", {trimmed(in_millimetres(width) / 25.4, 1)});
  }

  // A speedometer that was true, and one that read as high as the rule allows.
  void speedometer(double ratio) {
    const bool miles = units_ != UnitSystem::metric;
    const Speed shown = miles ? miles_per_hour(60.0) : kilometres_per_hour(100.0);
    const Speed true_if_true = standard::true_speed_after(shown, ratio);
    const Speed true_before = (shown - kilometres_per_hour(4.0)) / 1.1;
    const Speed true_if_high = standard::true_speed_after(true_before, ratio);
    figure("true_at_shown", filled("At # on the dial, if it was true", {speed_text(shown)}),
           in_kilometres_per_hour(true_if_true), "km/h", speed_text(true_if_true),
           {&standard::speedometer_source()});
    figure("true_at_shown_high", "The same, if it read as high as UN R39 allows",
           in_kilometres_per_hour(true_if_high), "km/h", speed_text(true_if_high),
           {&standard::speedometer_source()});
    if (true_if_high > shown)
      caution(
          "speedometer_low", Level::unfit, "the speedometer would read low",
          filled("Even if it read as high as the rule allows, the dial would show # at #: it may "
                 "never show less than the truth.",
                 {speed_text(shown), speed_text(true_if_high)}),
          {&standard::speedometer_source()});
    else if (true_if_true > shown)
      caution("speedometer", ratio > 1.0 + noticeable ? Level::care : Level::note,
              "the speedometer may read low",
              filled("If it was true before, # on the dial would now be #. A speedometer may never "
                     "show less than the truth: have it checked.",
                     {speed_text(shown), speed_text(true_if_true)}),
              {&standard::speedometer_source()});
    else if (shown > standard::most_shown(true_if_high))
      caution("speedometer_high", Level::note, "",
              "If the speedometer read as high as the rule allows before, it would now read higher "
              "than allowed.",
              {&standard::speedometer_source()});
  }

  // ---- of a kind for that ----

  bool changes_to(sidewall::Family family) const {
    return after_.reading->family == family && before_.reading->family != family;
  }

  void judge_kind() {
    const sidewall::Reading& tyre = *after_.reading;
    if (tyre.temporary_spare)
      caution("temporary_spare", before_.reading->temporary_spare ? Level::care : Level::unfit,
              "it is a temporary spare",
              "A temporary spare is for 80 km/h (50 mph) at most, one on a car, only as far as a "
              "repair.",
              {air::get_home(air::Way::temporary_spare, 0.0).source});
    if (changes_to(sidewall::Family::special_trailer))
      caution("trailer_tyre", Level::unfit, "it is a trailer tyre",
              "A special trailer tyre is for trailers only.", {&who_decides});
    if (tyre.motorcycle != before_.reading->motorcycle)
      caution("other_vehicle", Level::unfit, "it is for another kind of vehicle",
              "One of the two is a motorcycle's tyre, and the other is not.", {&who_decides});
    caution(caution_of_road_use(tyre, Level::unfit));
    caution_of_marked_age(tyre);
  }

  // ---- strong and fast enough ----

  void judge_adequacy() {
    if (!after_.reading) return;
    Mass asked;  // nothing, where nobody says
    if (asked_)
      asked = *asked_;
    else if (before_.greatest)
      asked = before_.greatest->mass;
    if (!after_.greatest || !after_.symbol) {
      caution("rating_unknown", Level::care, "the new tyre's rating is not given",
              "Add the load index and speed symbol of the new tyre, such as 91V.");
      return;
    }
    caution(caution_of_load_worked_out(*after_.greatest, units_));
    figure("new_rating", "Load rating of the new tyre", in_kilograms(after_.greatest->mass), "kg",
           write(after_.greatest->mass, units_), {&standard::load_index_source()});
    if (asked > kilograms(0.0))
      figure("asked_rating", "Asked of it", in_kilograms(asked), "kg", write(asked, units_),
             {&standard::load_index_source()},
             asked_ ? "By the load index given." : "By the tyre now fitted.");
    const bool snowflake = sidewall::has_mark(*after_.reading, "three_peak");
    const standard::Vehicle vehicle = patch::vehicle_of(*after_.reading);
    const Speed top = top_speed_.value_or(kilometres_per_hour(0.0));
    const car::Adequacy enough =
        car::adequacy(after_.greatest->mass, vehicle, *after_.symbol, snowflake, asked, top);
    if (!(asked > kilograms(0.0)))
      caution("asked_unknown", Level::care, "what load is asked of it is not known",
              "The tyre now fitted gives no load index, and none was given as asked for: the load "
              "was not judged. The car's papers or its door frame name it.");
    const standard::SpeedSymbolRow& row = standard::speed_row(*after_.symbol);
    // Above 210 km/h it carries less; a symbol under the car's speed is refused for itself.
    const Mass carried =
        after_.greatest->mass *
        (standard::percent_at_speed(vehicle, *after_.symbol, std::min(top, row.speed))
             .value_or(0.0) /
         100.0);
    if (load_ && !(*load_ <= carried))
      caution("overload", Level::unfit, "it would be overloaded",
              filled("# on a tyre rated for #.",
                     {write_at_least(*load_, units_), write_at_most(carried, units_)}),
              sources_of_load_at_speed(vehicle));
    if (!enough.load)
      caution("load_too_low", Level::unfit, "its load rating is too low",
              filled("It carries # at that speed, and # are asked of it.",
                     {write_at_most(carried, units_), write_at_least(asked, units_)}),
              sources_of_load_at_speed(vehicle));
    else if (asked_ && before_.greatest && after_.greatest->mass < before_.greatest->mass)
      caution("under_the_tyre_now", Level::care, "its load rating is under that of the tyre now",
              filled("It is rated for #, and the tyre now for #. The load index asked for allows "
                     "that: see that it is the one in the car's papers.",
                     {write(after_.greatest->mass, units_), write(before_.greatest->mass, units_)}),
              {&standard::load_index_source()});
    if (!top_speed_) {
      judge_symbol_by_tyre_now(row);
    } else if (enough.speed == car::SymbolFit::too_low) {
      caution("speed_too_low", Level::unfit, "its speed symbol is too low for the car",
              filled("Its symbol # is for #, and the car does #.",
                     {standard::speed_row(*after_.symbol).letters,
                      speed_text(standard::speed_row(*after_.symbol).speed), speed_text(top)}),
              {&standard::speed_symbol_source()});
    } else if (enough.speed == car::SymbolFit::winter_exception) {
      caution(
          "winter_label", Level::care, "as a winter tyre it is slower than the car",
          filled("As a winter tyre it may be fitted in many places if a label in the driver's view "
                 "says #. Keep to it.",
                 {speed_text(standard::speed_row(*after_.symbol).speed)}),
          {&car::winter_exception_source()});
    }
    if (before_.reading && before_.reading->construction && after_.reading->construction &&
        before_.reading->construction != after_.reading->construction)
      caution(
          "other_construction", Level::care, "its construction is another",
          "It is of another construction than the tyre now: never mix them on an axle, and change "
          "all four.",
          {&car::mixing_source()});
  }

  // Where nobody says how fast the car is: no slower than the tyre now.
  void judge_symbol_by_tyre_now(const standard::SpeedSymbolRow& row) {
    // ZR and VR name no end: nothing but themselves is sure to be as fast.
    const bool open_ended =
        before_.symbol == standard::SpeedSymbol::ZR || before_.symbol == standard::SpeedSymbol::VR;
    if (!before_.symbol || (open_ended && before_.symbol != after_.symbol))
      return caution("top_speed_unknown", Level::care, "its speed symbol was not judged",
                     "Without the car's top speed the speed symbol was not judged.");
    const standard::SpeedSymbolRow& now = standard::speed_row(*before_.symbol);
    if (row.speed < now.speed)
      caution("symbol_under_the_tyre_now", Level::care,
              "its speed symbol is under that of the tyre now",
              filled("Its symbol # is for #, and that of the tyre now, #, for #. Give the car's "
                     "top speed: the symbol must not be under it.",
                     {row.letters, speed_text(row.speed), now.letters, speed_text(now.speed)}),
              {&standard::speed_symbol_source()});
    else
      caution("symbol_by_the_tyre_now", Level::note, "",
              "Without the car's top speed the speed symbol was judged by that of the tyre now.",
              {&standard::speed_symbol_source()});
  }

  // The new tyre at the pressure now, by a gauge that may be out.
  void judge_pressure() {
    if (!load_ || !pressure_ || !after_.greatest || !after_.symbol) return;
    const auto laws = patch::laws_of(*after_.reading);
    if (!laws) return;
    patch::Duty duty;
    duty.load = *load_;
    duty.speed = duty.car_top_speed = std::min(top_speed_.value_or(kilometres_per_hour(0.0)),
                                               standard::speed_row(*after_.symbol).speed);
    const auto demand = patch::pressure_demand({after_.greatest->mass, *after_.symbol, laws->law,
                                                laws->second, patch::vehicle_of(*after_.reading)},
                                               duty);
    if (!demand) return;  // overloaded, and said
    const GaugePressure least = demand->total() + standard::pressure_gauge_error;
    if (*pressure_ < least)
      caution(
          "pressure_low", Level::care, "the pressure now is too low in it for that load",
          filled("# is too little in it for #: at least # cold, or the placard if that is more.",
                 {write(*pressure_, units_), write_at_least(*load_, units_),
                  write_at_least(least, units_)}),
          {laws->law.source, &patch::least_pressure_source()});
  }

  void equal_load() {
    if (!pressure_ || !before_.greatest || !after_.greatest) return;
    const auto before = patch::laws_of(*before_.reading);
    const auto after = patch::laws_of(*after_.reading);
    if (!before || !after) return;
    const Sources laws{before->law.source, after->law.source, &patch::least_pressure_source()};
    const auto equal =
        car::pressure_for_equal_load(before->law, before_.greatest->mass, *pressure_,
                                     after->second.value_or(after->law), after_.greatest->mass);
    if (equal)
      figure("equal_pressure", "Pressure that carries the same load", in_kilopascals(*equal), "kPa",
             write(*equal, units_), laws,
             filled("As # in the tyre now. The car maker's figure for the new size comes first.",
                    {write(*pressure_, units_)}));
    else
      caution("no_equal_pressure", Level::care, "no pressure in it carries the same load",
              "At no pressure does the new tyre carry what the one now does at its pressure.",
              laws);
  }

  // ---- patch over patch ----

  void draw_patches() {
    if (!load_ || !pressure_ || !before_.size || !after_.size || before_.cross_ply ||
        after_.cross_ply)
      return;
    const auto rated = [&](const Tyre& tyre) {
      return tyre.greatest ? tyre.greatest->mass : *load_ / 0.8;
    };
    const auto now = patch::contact_patch(*before_.size, *pressure_, *load_, rated(before_));
    const auto then = patch::contact_patch(*after_.size, *pressure_, *load_, rated(after_));
    const double wide = in_millimetres(std::max(now.width, then.width));
    const double high = in_millimetres(std::max(now.length, then.length));
    const auto box = [&](const patch::ContactPatch& p, const char* role, const char* label) {
      const double w = in_millimetres(p.width);
      const double h = in_millimetres(p.length);
      return Box{(wide - w) / 2.0, (high - h) / 2.0, w, h, std::min(w, h) * 0.2, role, label};
    };
    constexpr double gap = 12.0, card_width = 85.60, card_height = 53.98;
    Drawing drawing;
    drawing.id = "patches";
    drawing.title = "Contact patch over contact patch, to scale";
    drawing.text = filled(
        "The new one # wide and # long, the one now # and #, at the same pressure and "
        "load, beside a payment card.",
        {write_size(then.width, units_), write_size(then.length, units_),
         write_size(now.width, units_), write_size(now.length, units_)});
    drawing.width = wide + gap + card_width;
    drawing.height = std::max(high, card_height);
    drawing.boxes = {box(now, "reference", "Now"),
                     box(then, "subject", "New"),
                     {wide + gap, drawing.height - card_height, card_width, card_height, 3.18,
                      "scale", "Payment card"}};
    answer_.drawings.push_back(std::move(drawing));
    figure("area_change", "Contact area at the same pressure", 100.0 * (then.area / now.area - 1.0),
           "%", filled("# %", {signed_number(100.0 * (then.area / now.area - 1.0), 0)}),
           {&patch::contact_area_source(), &patch::contact_width_source(),
            &patch::contact_length_source(), &patch::stiffness_source()},
           "Provisional: the stiffness constants are from memory.");
  }

  // ---- the wheel's mass ----

  void weigh_wheels() {
    if (!mass_ || !new_mass_) return;
    const Mass more = *new_mass_ - *mass_;
    figure("unsprung_change", "Unsprung mass, each corner", in_kilograms(more), "kg",
           filled("# kg", {signed_number(in_kilograms(more), 1)}),
           {&car::equivalent_mass_source()});
    const Mass felt = more + car::tyre_equivalent_mass(more);
    figure("equivalent_mass", "Felt when speeding up or braking, as mass", in_kilograms(felt), "kg",
           filled("# kg", {signed_number(in_kilograms(felt), 1)}),
           {&car::equivalent_mass_source(), &car::tyre_inertia_source()},
           "If what is added or saved lies as far out as a tyre's.");
    const auto lighter = [&](const char* id, const char* name, car::Metal metal) {
      const Mass wheel = car::wheel_in(*new_mass_ * 0.5, car::Metal::cast_aluminium, metal);
      figure(
          id, name, in_kilograms(wheel), "kg", filled("# kg", {fixed(in_kilograms(wheel), 1)}),
          {&car::density_source()},
          "By density alone, for half of the mass given; real wheels in light metals are thicker.");
    };
    lighter("in_magnesium", "A cast aluminium wheel, in magnesium", car::Metal::magnesium);
    lighter("in_steel", "The same in steel", car::Metal::steel);
    if (!unsprung_ || !spring_ || !pressure_ || !before_.size || !after_.size) return;
    const Stiffness suspension = newtons_per_millimetre(*spring_);
    const auto hop = [&](const Tyre& tyre, Mass unsprung) {
      return car::wheel_hop_hertz(suspension, patch::vertical_stiffness(*tyre.size, *pressure_),
                                  unsprung);
    };
    if (!(*unsprung_ > *mass_ && *unsprung_ + more > kilograms(0.0)))
      return problem("unsprung", "below_wheel",
                     filled("Unsprung mass: # is less than the wheel itself weighs, #. With hub, "
                            "brake and half the suspension it is more.",
                            {write(*unsprung_, units_), write(*mass_, units_)}));
    const double now = hop(before_, *unsprung_);
    const double then = hop(after_, *unsprung_ + more);
    figure("wheel_hop", "Wheel-hop frequency", then, "Hz",
           filled("# Hz, now # Hz", {fixed(then, 1), fixed(now, 1)}),
           {&car::wheel_hop_source(), &patch::stiffness_source()},
           "The lower, the more the wheel leaves the road over close bumps.");
  }

  // ---- words ----

  static std::string signed_number(double value, int decimals) {
    std::string text = fixed(value, decimals);
    return value > 0.0 ? "+" + text : text;
  }
  std::string signed_size(Length change, int decimals) const {
    std::string text = write_size(change, units_, decimals);
    return change > metres(0.0) ? "+" + text : text;
  }
  void length_figure(const char* id, const char* label, Length change, SomeSources sources) {
    figure(id, label, in_millimetres(change), "mm", signed_size(change, 0), sources);
  }

  Tyre before_;
  Tyre after_;
  std::optional<Speed> top_speed_;
  std::optional<Mass> asked_;
  std::optional<GaugePressure> pressure_;
  std::optional<Mass> load_;
  std::optional<Length> rim_;
  std::optional<Length> new_rim_;
  std::optional<Length> offset_;
  std::optional<Length> new_offset_;
  std::optional<Mass> mass_;
  std::optional<Mass> new_mass_;
  std::optional<Mass> unsprung_;
  std::optional<double> spring_;
};

}  // namespace

Answer fitment(const Input& input) { return Fitment(input).run(); }

Sources fitment_sources() {
  return {&patch::overall_diameter_source(),
          &patch::rolling_circumference_source(),
          &patch::section_on_rim_source(),
          &patch::theoretical_rim_source(),
          &standard::speedometer_source(),
          &standard::load_index_source(),
          &standard::speed_symbol_source(),
          &car::winter_exception_source(),
          &car::mixing_source(),
          &standard::speed_load_source(),
          &standard::motorcycle_source(),
          &patch::p_metric_capacity_source(),
          air::get_home(air::Way::temporary_spare, 0.0).source,
          &date_code_source(),
          &age_advice_source(),
          patch::european_standard_load().source,
          patch::european_at_marked_pressure(kilopascals(0.0)).source,
          patch::linear_at_marked_pressure(kilopascals(0.0)).source,
          patch::temporary_spare_law().source,
          patch::p_metric_standard_load().source,
          &patch::least_pressure_source(),
          &patch::contact_area_source(),
          &patch::contact_width_source(),
          &patch::contact_length_source(),
          &patch::stiffness_source(),
          &car::equivalent_mass_source(),
          &car::tyre_inertia_source(),
          &car::density_source(),
          &car::wheel_hop_source(),
          &change_rule,
          &rim_rule,
          &who_decides};
}

}  // namespace treadwater::answer
