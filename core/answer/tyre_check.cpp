#include "core/answer/tyre_check.hpp"

#include <algorithm>

#include "core/answer/advice.hpp"
#include "core/answer/teller.hpp"
#include "core/answer/tyre_age.hpp"
#include "core/answer/tyre_kind.hpp"
#include "core/patch/contact.hpp"
#include "core/patch/load_capacity.hpp"
#include "core/patch/rating.hpp"
#include "core/quantity/language.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/load_adjustment.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/speed_load.hpp"
#include "core/standard/tread_law.hpp"
#include "core/water/crossing.hpp"
#include "core/water/estimate.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"

namespace treadwater::answer {
namespace {

using sidewall::Reading;
using standard::pressure_gauge_error;
using standard::ruler_error;
using standard::SpeedSymbol;
using standard::tread_gauge_error;

constexpr Source spare_speed{"spare-speed",
                             "Temporary spares: one at a time, 80 km/h, 420 kPa (UN R64)",
                             "as printed in handbooks and on sidewalls", "", Standing::secondary};
constexpr Source winter_advice{"tread-winter-4mm", "Advice for winter tyres: 4 mm",
                               "not seen in print", "", Standing::memory};
constexpr Source base_pressure{"base-speed", "Base pressures hold to 160 km/h",
                               "Crolla (ed.), Automotive Engineering, p. 291", "2009",
                               Standing::secondary};

// New car tyres have some 8 mm, winter ones to 10, off-road ones 12 and more. Common practice.
constexpr Length deepest_usual = millimetres(12.0);
constexpr GaugePressure hot_excess = kilopascals(40.0);
constexpr GaugePressure rounding = kilopascals(1e-9);
// L, the lowest symbol on tyres of cars and vans but for spares. Common practice, no source.
constexpr Speed without_symbol = kilometres_per_hour(120.0);

// What the tyre may carry, and by which law.
struct LoadBasis {
  Mass greatest;
  patch::LoadLaw law;
  std::optional<patch::LoadLaw> stricter;
  patch::LeastPressure least;

  Mass capacity(GaugePressure pressure) const {
    return patch::load_capacity(stricter.value_or(law), greatest, pressure);
  }
  GaugePressure needed(Mass load, double percent) const {
    const patch::LoadLaw& asking = stricter.has_value() ? *stricter : law;
    return std::max(patch::pressure_needed(asking, greatest * (percent / 100.0), load),
                    least.pressure);
  }
};

struct TopSpeed {
  SpeedSymbol symbol;
  Speed speed;
  std::string letters;
};

void add_measured(Sources& sources) {
  for (const auto& row : water::measured_onsets()) add_once(sources, row.source);
}

using Onset = std::optional<water::SpeedBand>(const water::WetTyre&, const water::OnsetsInWater*);

std::optional<water::SpeedBand> onset_of_one(const water::WetTyre& tyre,
                                             const water::OnsetsInWater*) {
  return water::aquaplaning_onset(tyre);
}

std::optional<water::SpeedBand> onset_of_many(const water::WetTyre& tyre,
                                              const water::OnsetsInWater* water) {
  const auto onset = water->of(tyre);
  return water::SpeedBand{onset.low, onset.central, onset.central};
}

class TyreCheck : Teller {
 public:
  explicit TyreCheck(const Input& input) : Teller(tyre_check_sheet(), input) {}

  Answer run() {
    judge();
    if (size_) {
      explain_sidewall();
      describe_patch();
    }
    if (answer_.ok()) {
      finish();
      say_it_aloud();
    }
    return std::move(answer_);
  }

  TyreFinding run_in_brief(const water::OnsetsInWater* water) {
    brief_ = true;
    onset_ = onset_of_many;
    in_water_ = water;
    judge();
    if (answer_.ok()) finish();
    return {std::move(answer_), std::move(size_), tread_, law_, age_};
  }

 private:
  // A list gives reasons and sources only where a sentence about the intended speed needs them.
  bool explained() const { return !brief_ || intended_; }

  void judge() {
    read_form();
    if (size_) say_what_the_sidewall_leaves_open();
    judge_speed_symbol();
    judge_load();
    judge_water();
    judge_tread();
    judge_age();
  }

  // ---- reading the form ----

  void read_form() {
    size_ = sidewall_text("size");
    load_ = quantity<Mass>("load");
    gauge_ = quantity<GaugePressure>("pressure");
    const auto state = choice("pressure_state");
    hot_ = state == "hot";
    if (gauge_ && state) cold_ = hot_ ? std::max(kilopascals(0.0), *gauge_ - hot_excess) : *gauge_;
    tread_ = quantity<Length>("tread");
    water_ = quantity<Length>("water");
    intended_ = quantity<Speed>("speed");
    if (const auto id = choice("tyre_kind")) kind_ = find_tyre_kind(*id);
    if (const auto id = choice("surface")) surface_ = standard::find_road_surface(*id);
    if (const auto id = choice("place")) law_ = standard::find_tread_law(*id);
    age_ = tyre_age("date_code", size_);
  }

  // ---- the sidewall ----

  void say_what_the_sidewall_leaves_open() {
    for (const std::string& text : size_->assumed) caution("assumed", Level::note, "", text);
    for (const std::string& text : size_->unsaid) caution("unsaid", Level::note, "", text);
    if (!size_->candidates.empty()) {
      std::string others;
      for (const std::string& other : size_->candidates) add_item(others, other, worded(", or "));
      caution("ambiguous_size", Level::care, "the sidewall text can be read in more than one way",
              filled("Read as # (#); the same text can also mean #. Check against the tyre.",
                     {size_->canonical, family_name(size_->family), others}));
    }
    for (const sidewall::Mark& mark : size_->marks)
      if (mark.id == "not_understood")
        caution("not_understood", Level::note, "",
                filled("Not understood and left out: #.", {in_quotes(mark.value)}));
    if (kind_ && !kind_->competition) caution(caution_of_road_use(*size_, Level::care));
    if (size_->run_flat)
      caution("run_flat", Level::note, "",
              "Run-flat construction: its stiff sidewall hides a loss of pressure, so trust the "
              "gauge and the warning lamp, not the look of the tyre. The patch below is worked out "
              "for a plain one.");
  }

  // The text as typed, laid out with what each part of it means.
  void explain_sidewall() {
    const std::string_view typed = text("size");
    Marking marking{"sidewall", "What the sidewall says", size_->canonical, {}};
    std::size_t at = 0;
    const auto stretch = [&](std::size_t end, std::string meaning) {
      if (end > at)
        marking.stretches.push_back({std::string(typed.substr(at, end - at)), std::move(meaning)});
      at = std::max(at, end);
    };
    for (const sidewall::Part& part : size_->parts) {
      if (part.begin < at || part.end > typed.size()) continue;
      stretch(part.begin, "");
      stretch(part.end, part.meaning);
    }
    stretch(typed.size(), "");
    answer_.markings.push_back(std::move(marking));
  }

  // ---- speed symbol and temporary spare ----

  std::optional<TopSpeed> top_speed() const {
    const auto symbol = size_ ? patch::speed_symbol(*size_) : std::optional<SpeedSymbol>();
    if (!symbol) return std::nullopt;
    const auto& row = standard::speed_row(*symbol);
    return TopSpeed{*symbol, row.speed, std::string(row.letters)};
  }

  void judge_speed_symbol() {
    if (!size_) return;
    const auto top = top_speed();
    if (size_->temporary_spare) {
      fixed_limit("temporary_spare", "Temporary spare", kilometres_per_hour(80.0),
                  "A temporary spare is for 80 km/h (50 mph) at most, one on a car, only as far as "
                  "a repair.",
                  {&spare_speed});
      caution("temporary_spare", Level::care, "it is a temporary spare",
              "Temporary spare: 80 km/h (50 mph) at most, never two, at 420 kPa (60 psi) unless "
              "its sidewall says otherwise. Its grip, braking and ground clearance are not those "
              "of the other three.",
              {&spare_speed});
    }
    if (top) {
      const bool from_size = !size_->service;
      std::string why =
          filled("Speed symbol #: not above #.", {top->letters, speed_text(top->speed)});
      if (top->symbol == SpeedSymbol::ZR || top->symbol == SpeedSymbol::VR)
        why = filled(
            "# in the size without a service description promises no more than # for certain; the "
            "tyre maker knows the rest.",
            {top->letters, speed_text(top->speed)});
      else if (size_->service && size_->service->above_symbol)
        why = filled(
            "The brackets mean that it is for more than #; how much more, only the tyre maker "
            "says.",
            {speed_text(top->speed)});
      else if (from_size)
        why += worded(" The letter stands in the size, as on tyres before about 1990.");
      fixed_limit("speed_symbol", filled("Speed symbol #", {top->letters}), top->speed, why,
                  {&standard::speed_symbol_source()});
    } else if (!size_->temporary_spare) {
      caution("speed_symbol_unknown", Level::care, "the speed symbol is not given",
              filled("No speed symbol was given, so nothing above # is told. It is the letter "
                     "after the load index, as the V in 91V: add it to the sidewall text.",
                     {speed_text(without_symbol)}));
    }
    if (intended_ && top && *intended_ > top->speed)
      caution("speed_above_symbol", Level::unfit, "the speed you intend is above its speed symbol",
              filled("You intend #, and # is for # at most.",
                     {speed_text(*intended_), top->letters, speed_text(top->speed)}),
              {&standard::speed_symbol_source()});
  }

  // ---- load and pressure ----

  std::optional<LoadBasis> load_basis(Mass greatest) {
    if (const auto laws = patch::laws_of(*size_))
      return LoadBasis{greatest, laws->law, laws->second, patch::least_pressure_of(*size_, load_)};
    caution("reference_pressure_unknown", Level::care,
            "the pressure its load rating belongs to is not given",
            "The load rating of this kind of tyre belongs to the pressure moulded beside it. Add "
            "that to the sidewall text (for example 475 kPa) to have load against pressure "
            "judged; until then only the full rating is used, and the vehicle's placard decides "
            "the pressure.");
    return std::nullopt;
  }

  // From the load index; for a P-metric tyre without one, from its dimensions, aloud.
  std::optional<Mass> greatest_load() {
    const auto fits = patch::index_fits(*size_);
    const auto found = patch::greatest_load(*size_);
    if (fits == patch::IndexFits::no_tyre)
      caution("load_index_wrong", Level::unfit, "its load index cannot be right",
              filled("No tyre of this size has load index #: read it again.",
                     {std::to_string(size_->service->load_index)}),
              {&patch::index_fits_source()});
    if (fits == patch::IndexFits::extra_load && !size_->extra_load && !size_->high_load)
      caution("extra_load_assumed", Level::care, "its load index is that of an extra-load tyre",
              filled("Load index # is that of an extra-load tyre of this size (XL), and it was "
                     "judged as one: it needs more pressure for the same load. Look for XL.",
                     {std::to_string(size_->service->load_index)}),
              {&patch::index_fits_source()});
    if (found && found->marked)
      caution("marked_load_lower", Level::care, "the load marked on it is less than its index's",
              filled("MAX LOAD on the sidewall is #, less than index # says: the lower was used.",
                     {write(found->mass, units_), std::to_string(found->index)}));
    const std::string index = found ? std::to_string(found->index) : "";
    if (found && !found->worked_out) {
      figure("load_rating", filled("Load rating (index #)", {index}), in_kilograms(found->mass),
             "kg", write(found->mass, units_), {&standard::load_index_source()});
      return found->mass;
    }
    if (found) {
      figure("load_rating", filled("Load rating worked out from the size (index #)", {index}),
             in_kilograms(found->mass), "kg", write(found->mass, units_),
             {&patch::p_metric_capacity_source()});
      caution(caution_of_load_worked_out(*found, units_));
      return found->mass;
    }
    if (size_->service) return std::nullopt;
    caution("load_index_unknown", Level::care, "the load index is not given",
            "No load index was given, so the load cannot be judged. It is the number before the "
            "speed symbol, as the 91 in 91V: add it to the sidewall text.");
    return std::nullopt;
  }

  void judge_load() {
    if (!size_) return;
    if (!judge_load_by_law()) refuse_soft();
    caution(caution_of_narrow_beaded_edge(*size_, units_));
  }

  // Is the load now judged at this pressure?
  bool judge_load_by_law() {
    const auto greatest = greatest_load();
    if (!greatest) return false;
    const auto basis = load_basis(*greatest);
    if (basis && cold_ && !brief_) describe_capacity(*basis);
    if (!load_) return false;
    const bool overloaded = *load_ > *greatest;
    if (overloaded && (cold_ || !basis)) refuse_overload(*greatest);
    if (overloaded || !basis) return false;
    const Mass carried = carried_at(*basis, judged_speed());
    std::optional<GaugePressure> needed;
    if (*load_ > carried)
      caution(caution_of_overload_at_speed(judged_speed(), *load_, carried,
                                           patch::vehicle_of(*size_), units_));
    else
      needed = pressure_needed(*basis);
    if (cold_) limit_by_load(*basis, needed);
    return cold_.has_value();
  }

  GaugePressure pressure_needed(const LoadBasis& basis) {
    const GaugePressure needed = pressure_at(basis, judged_speed());
    Sources sources = law_of(basis);
    if (needed > pressure_at(basis, kilometres_per_hour(0.0)))
      sources.push_back(&standard::speed_pressure_source());
    figure("pressure_needed", "Least cold pressure for this load", in_kilopascals(needed), "kPa",
           write(needed, units_), sources,
           "The vehicle's placard comes first; it is often higher, for handling and speed.");
    return needed;
  }

  // Where no law tells, no load is carried under the least pressure of its kind.
  void refuse_soft() {
    const patch::LeastPressure least = patch::least_pressure_of(*size_, load_);
    if (!cold_ || *cold_ >= least.pressure) return;
    const std::string text =
        filled("#: no tyre of this kind is driven on with less than #.",
               {write(*cold_, units_), write_at_least(least.pressure, units_)});
    fixed_limit("load_at_pressure", "Load at this pressure", kilometres_per_hour(0.0), text,
                {least.from});
    caution("pressure_low", Level::unfit, "the pressure is too low", text, {least.from});
  }

  static Sources law_of(const LoadBasis& basis) {
    Sources sources{basis.law.source, basis.least.from};
    if (basis.stricter) add_once(sources, *basis.stricter->source);
    return sources;
  }

  double percent_at(SpeedSymbol symbol, Speed speed) const {
    return standard::percent_at_speed(patch::vehicle_of(*size_), symbol, speed).value_or(0.0);
  }

  // What it may carry at a speed, at any pressure.
  Mass carried_at(const LoadBasis& basis, Speed speed) const {
    const auto top = top_speed();
    return top ? basis.greatest * (percent_at(top->symbol, speed) / 100.0) : basis.greatest;
  }

  // The speed that pressures are judged at: the intended one, as far as the symbol goes.
  Speed judged_speed() const {
    const Speed intended = intended_.value_or(kilometres_per_hour(0.0));
    const auto top = top_speed();
    return top ? std::min(intended, top->speed) : intended;
  }

  // The cold pressure that this load needs at a speed up to the symbol's.
  GaugePressure pressure_at(const LoadBasis& basis, Speed speed) const {
    const auto top = top_speed();
    if (!top) return basis.needed(*load_, 100.0);
    return basis.needed(*load_, percent_at(top->symbol, speed)) +
           standard::pressure_for_speed(top->symbol, speed);
  }

  void describe_capacity(const LoadBasis& basis) {
    const Mass capacity = patch::load_capacity(basis.law, basis.greatest, *cold_);
    std::optional<double> low, high;
    std::string note;
    if (basis.stricter) {
      low = in_kilograms(basis.capacity(*cold_));
      high = in_kilograms(capacity);
      note = filled("Another law gives # here; the lower is what this check goes by.",
                    {write(basis.capacity(*cold_), units_)});
    }
    figure("load_capacity", "Load it can carry at this pressure", in_kilograms(capacity), "kg",
           write(capacity, units_), law_of(basis), note, low, high);
  }

  void refuse_overload(Mass greatest) {
    fixed_limit(
        "load_at_pressure", "Load", kilometres_per_hour(0.0),
        filled("The wheel carries #, and the tyre is rated for #. No pressure makes up for that.",
               {write(*load_, units_), write(greatest, units_)}),
        {&standard::load_index_source()});
    caution(
        "overload", Level::unfit, "it is overloaded",
        filled(
            "Overloaded: # on a tyre rated for #. Unload, or fit a tyre with a higher load index.",
            {write(*load_, units_), write(greatest, units_)}),
        {&standard::load_index_source()});
  }

  // The greatest whole km/h at which this pressure supports the load; 0 where none does.
  Speed speed_supported(const LoadBasis& basis, GaugePressure pressure) const {
    const auto top = top_speed();
    const Speed cap = top ? top->speed : without_symbol;
    const auto supported = [&](int kmh) {
      const Speed v = kilometres_per_hour(kmh);
      return *load_ <= carried_at(basis, v) && pressure + rounding >= pressure_at(basis, v);
    };
    int good = -1;
    int bad = static_cast<int>(in_kilometres_per_hour(cap)) + 1;
    while (bad - good > 1) {
      const int middle = (good + bad) / 2;
      (supported(middle) ? good : bad) = middle;
    }
    return kilometres_per_hour(std::max(0, good));
  }

  // `needed` at the intended speed; nothing where no pressure does.
  void limit_by_load(const LoadBasis& basis, std::optional<GaugePressure> needed) {
    Limit limit;
    limit.id = "load_at_pressure";
    limit.label = "Load at this pressure";
    limit.central = speed_supported(basis, *cold_);
    limit.low = speed_supported(basis, std::max(kilopascals(0.0), *cold_ - pressure_gauge_error));
    limit.high = speed_supported(basis, *cold_ + pressure_gauge_error);
    limit.sources = law_of(basis);
    const auto top = top_speed();
    if (top && in_kilometres_per_hour(top->speed) > 210.0)
      for (const Source* source : sources_of_load_at_speed(patch::vehicle_of(*size_)))
        add_once(limit.sources, *source);
    if (limit.high > kilometres_per_hour(160.0))
      limit.sources.push_back(&standard::speed_pressure_source());
    else
      limit.sources.push_back(&base_pressure);
    const GaugePressure base = basis.needed(*load_, 100.0);
    if (explained())
      limit.why = filled("# needs at least # cold, and more from # up; the tyre has #.",
                         {write(*load_, units_), write(base, units_),
                          speed_text(kilometres_per_hour(160.0)), write(*cold_, units_)});
    limit.text = limit.low == limit.high ? speed_text(limit.central)
                                         : band_text(limit.central, limit.low, limit.high);
    if (limit.high == kilometres_per_hour(0.0)) limit.text = "not at any speed";
    caution_about_pressure(basis, base, needed, limit);
    add_limit(answer_, std::move(limit));
  }

  void caution_about_pressure(const LoadBasis& basis, GaugePressure base,
                              std::optional<GaugePressure> needed, const Limit& limit) {
    const Sources law = law_of(basis);
    if (*cold_ < base) {
      caution("pressure_low", Level::unfit, "the pressure is too low for the load",
              filled("Pressure too low for the load: #, and # needs at least # cold. Inflate to "
                     "the vehicle's placard before driving.",
                     {write(*cold_, units_), write(*load_, units_), write(base, units_)}),
              law);
    } else if (limit.low == kilometres_per_hour(0.0)) {
      caution(
          "pressure_at_least", Level::care, "the pressure is within a gauge's error of too low",
          filled("Pressure only just enough: a gauge can be # out, and then it is too low for the "
                 "load. Inflate to at least #, or to the placard if that is more.",
                 {write(pressure_gauge_error, units_), write(base + pressure_gauge_error, units_)}),
          law);
    } else if (needed && *cold_ < *needed) {
      caution("pressure_low_for_speed", Level::unfit,
              "the pressure is too low for the speed you intend",
              filled("For # this load needs # cold; the tyre has #.",
                     {speed_text(*intended_), write(*needed, units_), write(*cold_, units_)}),
              {&standard::speed_pressure_source()});
    }
    const GaugePressure reference = basis.law.reference;
    if (*cold_ > reference + kilopascals(30.0))
      caution("pressure_high", Level::care, "the pressure is above what its load rating belongs to",
              filled("Pressure high: above # the tyre carries no more load, its patch gets shorter "
                     "and it rides and grips worse. Keep to the placard, and never above the "
                     "pressure moulded on the sidewall.",
                     {write(reference, units_)}),
              law);
    else if (*cold_ > base * 1.6 && *cold_ > kilopascals(240.0))
      caution("pressure_high_for_load", Level::note, "",
              filled("More pressure than this load needs (#). That is right where the placard says "
                     "so; otherwise the patch is shorter than it could be.",
                     {write(base, units_)}),
              law);
  }

  // ---- water ----

  void judge_water() {
    if (hot_ && gauge_)
      caution("hot_reading", Level::care, "the pressure was read hot",
              filled("Read warm or hot: the cold pressure may be as low as #, and that is what "
                     "this goes by. Measure again when cold; never let air out of a hot tyre.",
                     {write(*cold_, units_)}),
              {&hot_reading_advice()});
    if (!kind_) return;
    if (kind_->competition)
      caution("competition_tyre", Level::care, "it is a competition tyre",
              "A competition tyre is not for the public road unless it is marked and moulded for "
              "it; on a stage the event's rules decide.");
    if (!water_) {
      if (!given("water"))
        caution("water_not_given", Level::note, "",
                "No depth of water was given, so aquaplaning was not judged. Stand a ruler in the "
                "deepest place the wheel will cross; 0 for no standing water.");
      return;
    }
    caution_about_thin_film();
    if (*water_ <= millimetres(0.0)) return;
    if (!brief_) published_onsets();
    limit_by_water();
  }

  void caution_about_thin_film() {
    if (*water_ <= millimetres(0.0)) {
      caution("no_dynamic_aquaplaning", Level::note, "",
              "No water above the texture of the road: no dynamic aquaplaning is expected.");
      if (kind_->groove_credit == 0.0)
        caution("slick_on_wet", Level::care, "a slick on a wet road has nowhere to put water",
                "If the road is wet at all, a slick loses far more grip than a treaded tyre, and "
                "the first puddle floats it.");
    }
    caution("thin_film", Level::note, "",
            "Wet roads take grip long before a tyre floats, most of all smooth roads and worn "
            "tyres: expect braking distances to double, at any speed.",
            {&thin_film_advice(), &wet_braking_advice()});
  }

  void published_onsets() {
    if (!gauge_ || !cold_) return;
    const auto speed_figure = [&](const char* id, std::string_view label, Speed v,
                                  SomeSources sources, std::string_view note) {
      figure(id, label, in_kilometres_per_hour(v), "km/h", speed_text(v), sources, note);
    };
    speed_figure("onset_pressure_only", "Onset by pressure alone",
                 water::pressure_only_onset(*cold_), {&water::pressure_only_source()},
                 "A smooth tyre, or water deeper than the grooves. Not a safe speed.");
    if (const auto patch = patch_of_tyre())
      speed_figure("onset_footprint", "Onset by pressure and footprint",
                   water::footprint_onset(*cold_, patch->aspect_ratio),
                   {&water::footprint_source()},
                   "Flooded, worn tyre; made for trucks. Not a safe speed.");
    if (tread_ && surface_)
      speed_figure(
          "onset_film", "Onset by film, tread, texture and pressure",
          water::film_onset({*cold_, *tread_ * kind_->groove_credit, *water_, surface_->texture}),
          {&water::film_source(), &surface_->source},
          "Made on tyres of the 1970s; reads up to 61 % too high for worn ones. Not a safe speed.");
  }

  void limit_by_water() {
    if (!cold_ || !tread_ || !surface_) return;
    const bool slick = kind_->groove_credit == 0.0;
    const auto band =
        onset_({*cold_, *tread_, kind_->groove_credit,
                size_ ? size_->section_width : std::optional<Length>(), *water_, surface_->texture},
               in_water_);
    if (!band) return;
    Limit limit;
    limit.id = "aquaplaning";
    limit.label = "Aquaplaning";
    limit.central = band->central;
    limit.low = band->low;
    limit.high = band->high;
    limit.share_kept = water::hold_to_share;
    limit.text = filled("about #", {band_text(band->central, band->low, band->high)});
    if (explained()) explain_water(limit);
    if (*water_ >= water::deepest_to_enter) {
      limit.central = limit.low = limit.high = kilometres_per_hour(0.0);
      limit.text = "do not enter";
      limit.why = filled("Water of # and more can stall or float a car.",
                         {write_water(water::deepest_to_enter, units_)});
      limit.sources.push_back(&deep_water_advice());
      caution("deep_water", Level::unfit, "the water is too deep to drive into",
              filled("Do not drive into # of water or more, nor into any moving water. Stop, turn "
                     "back, report it.",
                     {write_water(water::deepest_to_enter, units_)}),
              {&deep_water_advice()});
    } else if (slick) {
      caution("slick_in_water", Level::unfit, "a slick floats on standing water",
              "A slick in any standing water is the worst case there is: nothing clears the water, "
              "and a thin film is enough. Change it, or do not go.",
              {&water::clearing_source()});
    } else if (!intended_) {
      caution("standing_water", Level::care, "there is standing water",
              "In standing water ease off before it, hold the wheel straight and do not brake in "
              "it. A puddle under one side pulls the car that way.");
    }
    if (*water_ > millimetres(10.0) && *water_ < water::deepest_to_enter)
      caution("beyond_measured_water", Level::care, "the water is deeper than any test",
              "Deeper than any published test (9.5 mm, 3/8 in): the figures are carried on beyond "
              "the measurements, with the low one made lower still.");
    if (!surface_->paved)
      caution("unpaved", Level::care, "the formulas are for paved roads",
              "The water formulas were made on paved roads. On gravel, earth or grass take them as "
              "a guess, and no credit was given for the surface.");
    add_limit(answer_, std::move(limit));
  }

  void explain_water(Limit& limit) {
    limit.sources = {&water::estimate_source(), &water::film_source(),
                     &water::pressure_only_source(), &water::clearing_source()};
    add_measured(limit.sources);
    limit.sources.push_back(&surface_->source);
    figure("onset_estimate", "Our estimate of the onset", in_kilometres_per_hour(limit.central),
           "km/h", limit.text, limit.sources,
           "Ours: the film formula, worn down as measured tyres are.",
           in_kilometres_per_hour(limit.low), in_kilometres_per_hour(limit.high));
    limit.why = filled(
        "# of water can lift this tyre off the road from about #. That allows for a ruler # out, a "
        "tread gauge # and a pressure gauge #; the hold-to speed keeps a tenth below it.",
        {write_water(*water_, units_), speed_text(limit.low), write_water(ruler_error, units_),
         write_depth(tread_gauge_error, units_), write(pressure_gauge_error, units_)});
  }

  // ---- tread and age ----

  void judge_tread() {
    if (!tread_) return;
    bool under_the_law = false;
    if (law_ && kind_) {
      if (*tread_ < law_->least) {
        under_the_law = true;
        fixed_limit("tread_law", "Legal tread", kilometres_per_hour(0.0),
                    filled("The law (#) asks for # (#).",
                           {law_->place, write_depth(law_->least, units_), law_->where_measured}),
                    {&law_->source});
        caution(
            "tread_law", Level::unfit, "the tread is under the legal minimum",
            filled("Tread #, and the least the law allows (#) is #. Replace it.",
                   {write_depth(*tread_, units_), law_->place, write_depth(law_->least, units_)}),
            {&law_->source});
      } else if (*tread_ <= law_->least + tread_gauge_error) {
        under_the_law = true;
        caution(
            "tread_at_law", Level::care, "the tread is at the legal minimum",
            filled("Tread # is at the legal minimum of # (#), within what a gauge can be trusted "
                   "to. Replace it now.",
                   {write_depth(*tread_, units_), write_depth(law_->least, units_), law_->place}),
            {&law_->source});
      }
      judge_winter_tread();
      if (size_ && size_->service && size_->service->load_index >= 122 && !size_->light_truck)
        caution("heavy_vehicle", Level::care, "heavy vehicles have their own tread laws",
                "By its load index this may be a heavy vehicle's tyre. Only the law for cars and "
                "vehicles to 3500 kg is known here, and heavier ones often need more tread.",
                {&law_->source});
    }
    if (*tread_ > deepest_usual)
      caution("tread_deep", Level::care, "hardly any tyre has so much tread",
              filled("Tread #: more than # is rare on a car. Read the gauge again.",
                     {write_depth(*tread_, units_), write_depth(deepest_usual, units_)}));
    if (under_the_law) return;
    caution(caution_of_low_tread(*tread_, units_));
  }

  void judge_winter_tread() {
    if (law_->winter && (kind_->winter || law_->winter->any_tyre)) {
      const auto& rule = *law_->winter;
      const bool cross_ply = size_ && size_->construction == sidewall::Construction::cross_ply;
      const Length least = cross_ply ? rule.least_cross_ply : rule.least_radial;
      if (*tread_ <= least + tread_gauge_error) {
        const bool now = standard::in_season(rule, {today_.month, today_.day});
        if (!now && !kind_->winter) return;
        std::string text =
            filled(kind_->winter ? "As a winter tyre (#) it needs # #, and has #. Judged for #."
                                 : "In winter any tyre (#) needs # #; this has #. Judged for #.",
                   {law_->place, write_depth(least, units_), rule.words,
                    write_depth(*tread_, units_), write_iso_date(today_)});
        if (rule.else_counts_as_summer_tyre)
          text += worded(" Below that it counts only as a summer tyre.");
        caution("winter_tread_law", now && *tread_ < least ? Level::unfit : Level::care,
                "the tread is not clear of the minimum for winter", text, {&*law_->winter_source});
        return;
      }
    }
    if (kind_->winter && *tread_ < millimetres(4.0))
      caution("winter_tread", Level::care,
              filled("a winter tyre under # does little on snow",
                     {write_depth(millimetres(4.0), units_)}),
              filled("Under # a winter tyre has lost most of what makes it one.",
                     {write_depth(millimetres(4.0), units_)}),
              {&winter_advice});
  }

  void judge_age() {
    if (!age_) return;
    const int years = static_cast<int>(age_->least_years);
    std::string made = filled("Made in week # of #, # years before #. ",
                              {std::to_string(age_->week), std::to_string(age_->year),
                               std::to_string(years), write_iso_date(today_)});
    if (age_->before_2000)
      made =
          filled("Three digits: made before 2000, in # at the latest (the decade is not coded). ",
                 {std::to_string(age_->year)});
    caution(caution_of_age(age_->least_years, made));
  }

  // ---- contact patch ----

  // Only where the equations were made for it: a belted radial, pressure not far below the laws'.
  std::optional<patch::ContactPatch> patch_of_tyre() const {
    const auto size = size_ ? patch::nominal_size(*size_) : std::optional<patch::TyreSize>();
    if (!size || !load_ || !gauge_ || *gauge_ < kilopascals(100.0)) return std::nullopt;
    if (size_->construction != sidewall::Construction::radial || size_->motorcycle)
      return std::nullopt;
    const auto rated = size_->service ? standard::load_of_index(size_->service->load_index)
                                      : std::optional<Mass>();
    return patch::contact_patch(*size, *gauge_, *load_, rated.value_or(*load_ / 0.8));
  }

  void describe_size() {
    const auto diameter = patch::overall_diameter(*size_);
    const auto size = patch::nominal_size(*size_);
    if (!diameter) return;
    const auto length = [&](const char* id, std::string_view label, const patch::LengthBand& band,
                            int decimals, SomeSources sources, std::string_view note) {
      figure(id, label, in_millimetres(band.nominal), "mm",
             write_size(band.nominal, units_, decimals), sources, note, in_millimetres(band.low),
             in_millimetres(band.high));
    };
    const bool stated = size_->stated_outer_diameter.has_value();
    const bool cross_ply = size_->construction != sidewall::Construction::radial;
    if (!size || stated) {
      figure("overall_diameter", "Overall diameter", in_millimetres(*diameter), "mm",
             write_size(*diameter, units_, 1), {&patch::overall_diameter_source()},
             "As the size itself states it.");
      return;
    }
    const auto diameters = patch::overall_diameter_band(*size, cross_ply);
    length("overall_diameter", "Overall diameter", diameters, 1,
           {&patch::overall_diameter_source(), &patch::size_tolerance_source()},
           filled("Nominal, unloaded; a real tyre from # to #.",
                  {write_size(diameters.low, units_), write_size(diameters.high, units_)}));
    const auto rolling = patch::rolling_circumference(*size, cross_ply);
    length("rolling_circumference", "Rolling circumference", rolling, 0,
           {&patch::rolling_circumference_source()},
           filled("From # to # by what is printed and measured.",
                  {write_size(rolling.low, units_), write_size(rolling.high, units_)}));
    const Length rim = patch::theoretical_rim_width(*size);
    const Length wider = rim + inches(0.5);
    figure("theoretical_rim", "Rim width the nominal section belongs to", in_millimetres(rim), "mm",
           write_size(rim, units_),
           {&patch::theoretical_rim_source(), &patch::section_on_rim_source()},
           filled("Every half inch of rim more or less is # of section. The tyre maker's own "
                  "measuring rim comes first.",
                  {write_size(patch::section_width_on_rim(*size, wider, rim) - size->section_width,
                              units_, 1)}));
  }

  void describe_patch() {
    describe_size();
    const auto found = patch_of_tyre();
    if (!found) {
      if (load_ && gauge_ && size_->construction != sidewall::Construction::radial)
        caution("patch_not_given", Level::note, "",
                "No contact patch is given: its equations are for belted radials, and this tyre is "
                "not marked as one.");
      return;
    }
    const patch::ContactPatch& p = *found;
    const double deflection = in_millimetres(p.deflection);
    const double length = in_millimetres(p.length);
    const double area = in_square_centimetres(p.area);
    const double pressure = in_kilopascals(p.ground_pressure);
    figure("deflection", "Deflection under the load", deflection, "mm",
           write_size(p.deflection, units_), {&patch::stiffness_source()},
           "Provisional: the stiffness constants are from memory.", 0.895 * deflection,
           1.08 * deflection);
    figure("patch_length", "Contact length", length, "mm", write_size(p.length, units_),
           {&patch::contact_length_source(), &patch::stiffness_source()},
           "Against two measured tyres it reads 0 to 31 % long.", length / 1.31, length);
    figure("patch_width", "Contact width", in_millimetres(p.width), "mm",
           write_size(p.width, units_), {&patch::contact_width_source()});
    figure("patch_area", "Gross contact area", area, "cm²",
           filled("about #", {write(p.area, units_)}), {&patch::contact_area_source()},
           "Against two measured tyres it reads up to 31 % large.", area / 1.31, 1.1 * area);
    figure("footprint_aspect", "Footprint width / length", p.aspect_ratio, "",
           significant(p.aspect_ratio, 2), {&patch::contact_length_source()});
    figure("ground_pressure", "Mean ground pressure", pressure, "kPa",
           write(p.ground_pressure, units_), {&patch::contact_area_source()},
           "The load over the gross area.", pressure / 1.1, 1.31 * pressure);
    draw_patch(p);
  }

  // ISO/IEC 7810 ID-1: the payment card everybody carries.
  void draw_patch(const patch::ContactPatch& p) {
    constexpr double card_width = 85.60;
    constexpr double card_height = 53.98;
    constexpr double gap = 12.0;
    const double width = in_millimetres(p.width);
    const double length = in_millimetres(p.length);
    Drawing drawing;
    drawing.id = "contact_patch";
    drawing.title = "Contact patch, to scale";
    drawing.text = filled(
        "All that touches the road is about # wide and # long, #, drawn beside a payment card. The "
        "car moves up the page.",
        {write_size(p.width, units_), write_size(p.length, units_), write(p.area, units_)});
    drawing.width = width + gap + card_width;
    drawing.height = std::max(length, card_height);
    drawing.boxes = {{0.0, drawing.height - length, width, length, std::min(width, length) * 0.2,
                      "subject", "Contact patch"},
                     {width + gap, drawing.height - card_height, card_width, card_height, 3.18,
                      "scale", "Payment card"}};
    answer_.drawings.push_back(std::move(drawing));
  }

  // ---- the conclusion ----

  void finish() {
    // Only where a speed would be told anyhow.
    if (size_ && !size_->temporary_spare && !top_speed() && !answer_.limits.empty())
      fixed_limit(
          "speed_symbol", "Speed symbol not given", without_symbol,
          filled("Without the symbol nothing above # is told.", {speed_text(without_symbol)}), {});
    stop_where_no_speed_helps();
    hold_to();
    judge_intended_speed();
    conclude("Fit for this load at this pressure, as far as these readings tell.");
  }

  void judge_intended_speed() {
    if (!intended_ || !answer_.hold_to || *intended_ <= answer_.hold_to->speed) return;
    if (answer_.hold_to->governed_by == "speed_symbol") return;  // said already, in its own words
    // The one that is passed may be another than the one that governs.
    const Limit* said = &answer_.limits.front();
    for (const Limit& limit : answer_.limits)
      if (*intended_ <= said->central && limit.central < *intended_) said = &limit;
    const bool past_it = *intended_ > said->central;
    caution("speed_above_hold_to", past_it ? Level::unfit : Level::care,
            past_it ? "the speed you intend is past the limit"
                    : "the speed you intend is above the hold-to speed",
            filled("You intend #. #: #.", {speed_text(*intended_), said->label, said->text}),
            said->sources);
  }

  void say_it_aloud() {
    if (!answer_.hold_to || !size_) return;
    std::string said = without_marks(size_->canonical);
    if (tread_) said += filled(", tread #", {write_depth(*tread_, units_)});
    if (water_ && *water_ > millimetres(0.0))
      said += filled(", water #", {write_water(*water_, units_)});
    if (answer_.hold_to->speed <= kilometres_per_hour(0.0))
      said += filled(": #.", {answer_.hold_to->text});
    else
      said += filled(
          ": hold to #. The limit is #.",
          {spoken_speed(answer_.hold_to->speed), within_sentence(answer_.limits.front().label)});
    speak(said);
  }

  // Size and service description come first in the canonical text; for a radio they will do.
  static std::string without_marks(std::string_view canonical) {
    constexpr std::size_t enough = 24;
    if (canonical.size() <= enough) return std::string(canonical);
    return std::string(canonical.substr(0, canonical.rfind(' ', enough)));
  }

  std::optional<Reading> size_;
  std::optional<Mass> load_;
  std::optional<GaugePressure> gauge_;  // as read
  std::optional<GaugePressure> cold_;   // what it may be cold
  bool hot_ = false;
  std::optional<Length> tread_;
  std::optional<Length> water_;
  std::optional<Speed> intended_;
  const TyreKind* kind_ = nullptr;
  const standard::RoadSurface* surface_ = nullptr;
  const standard::TreadLaw* law_ = nullptr;
  std::optional<TyreAge> age_;
  bool brief_ = false;  // one of many: nothing is said that only its own sheet shows
  Onset* onset_ = onset_of_one;
  const water::OnsetsInWater* in_water_ = nullptr;
};

}  // namespace

Answer tyre_check(const Input& input) { return TyreCheck(input).run(); }

TyreFinding find_tyre(const Input& input, const water::OnsetsInWater* water) {
  return TyreCheck(input).run_in_brief(water);
}

Sources tyre_check_sources() {
  Sources all = {&standard::load_index_source(),
                 &standard::speed_symbol_source(),
                 &standard::speed_load_source(),
                 &standard::speed_pressure_source(),
                 &base_pressure,
                 patch::european_standard_load().source,
                 patch::european_at_marked_pressure(kilopascals(0.0)).source,
                 patch::linear_at_marked_pressure(kilopascals(0.0)).source,
                 patch::temporary_spare_law().source,
                 patch::p_metric_standard_load().source,
                 &patch::least_pressure_source(),
                 &patch::p_metric_capacity_source(),
                 &patch::index_fits_source(),
                 &patch::beaded_edge_least_source(),
                 &patch::beaded_edge_1909_source(),
                 &patch::beaded_edge_1921_source(),
                 &patch::beaded_edge_motorcycle_source(),
                 &standard::motorcycle_source(),
                 &patch::overall_diameter_source(),
                 &patch::size_tolerance_source(),
                 &patch::theoretical_rim_source(),
                 &patch::section_on_rim_source(),
                 &patch::rolling_circumference_source(),
                 &patch::stiffness_source(),
                 &patch::contact_length_source(),
                 &patch::contact_width_source(),
                 &patch::contact_area_source(),
                 &water::pressure_only_source(),
                 &water::footprint_source(),
                 &water::film_source(),
                 &water::clearing_source(),
                 &water::estimate_source(),
                 &thin_film_advice(),
                 &wet_braking_advice(),
                 &deep_water_advice(),
                 &hot_reading_advice(),
                 &spare_speed,
                 &tread_advice(),
                 &winter_advice,
                 &date_code_source(),
                 &age_advice_source()};
  add_measured(all);
  for (const auto& surface : standard::road_surfaces()) add_once(all, surface.source);
  for (const auto& law : standard::tread_laws()) {
    add_once(all, law.source);
    if (law.winter_source) add_once(all, *law.winter_source);
  }
  return all;
}

}  // namespace treadwater::answer
