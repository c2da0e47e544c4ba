#include "core/answer/stopping.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/answer/advice.hpp"
#include "core/answer/teller.hpp"
#include "core/answer/tyre_kind.hpp"
#include "core/grip/cornering.hpp"
#include "core/grip/limits.hpp"
#include "core/grip/rubber.hpp"
#include "core/grip/stopping.hpp"
#include "core/quantity/language.hpp"
#include "core/standard/road_surface.hpp"
#include "core/water/crossing.hpp"
#include "core/water/estimate.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"

namespace treadwater::answer {
namespace {

constexpr Length usual_tread = millimetres(3.0);
constexpr Length new_tread = millimetres(8.0);
constexpr Length worn_tread = millimetres(1.6);
constexpr GaugePressure soft_pressure = kilopascals(200.0);
// Thinner films take grip, and that is in the friction; no treaded tyre was seen to float on them.
constexpr Length thinnest_to_float = millimetres(1.0);
constexpr Speed none = kilometres_per_hour(0.0);
constexpr Speed end_of_tables = kilometres_per_hour(130.0);  // core/grip/film.hpp
constexpr Speed end_of_model = kilometres_per_hour(400.0);   // core/grip/limits.hpp

class Stopping : Teller {
 public:
  explicit Stopping(const Input& input) : Teller(stopping_sheet(), input) {}

  Answer run() {
    read_form();
    if (answer_.ok()) {
      say_what_was_taken();
      judge_water();
      if (!deep()) tell_the_rest();
      finish();
    }
    return std::move(answer_);
  }

 private:
  void read_form() {
    speed_ = quantity<Speed>("speed").value_or(none);
    if (const auto id = choice("surface")) case_.surface = standard::find_friction_surface(*id);
    const auto wetness = choice("wetness");
    measured_ = quantity<Length>("water");
    if (const auto id = choice("tyre_kind")) case_.tyre = grip::find_tyre_grip(*id);
    case_.tread = quantity<Length>("tread").value_or(usual_tread);
    const auto rubber = choice("rubber");
    case_.rubber = grip::find_rubber(rubber.value_or(""));
    if (case_.rubber == nullptr) case_.rubber = grip::find_rubber(case_.tyre->rubber);
    case_.tread_heat = quantity<Temperature>("tread_heat");
    pressure_ = quantity<GaugePressure>("pressure");
    reaction_ = quantity<Duration>("reaction").value_or(grip::cautious_reaction);
    road_.grade = number("grade").value_or(0.0) / 100.0;
    seen_ = quantity<Length>("seen");
    obstacle_ = quantity<Length>("obstacle");
    in_bend_ = {road_.grade, quantity<Length>("radius"), number("bank").value_or(0.0) / 100.0};
    const auto chord = quantity<Length>("chord");
    const auto sagitta = quantity<Length>("sagitta");
    paced_ = !in_bend_.radius && chord && sagitta;
    if (paced_) in_bend_.radius = grip::radius_from_chord(*chord, *sagitta);
    const grip::Wetness word = wetness == "damp"       ? grip::Wetness::damp
                               : wetness == "wet"      ? grip::Wetness::wet
                               : wetness == "standing" ? grip::Wetness::standing
                                                       : grip::Wetness::dry;
    case_.film = measured_.value_or(grip::film_of(word));
  }

  void tell_the_rest() {
    tell_friction();
    tell_stop();
    judge_sight();
    judge_obstacle();
    judge_bend();
    compare_with_new();
    tell_gap();
    tell_rules();
    draw_by_speed();
    draw_to_scale();
  }

  bool deep() const { return case_.film >= water::deepest_to_enter; }
  bool wet() const { return case_.film > Length(); }
  bool paved() const { return case_.surface->ground == standard::Ground::paved; }

  void say_what_was_taken() {
    if (!given("tread"))
      caution(
          "tread_assumed", Level::note, "",
          filled("No tread depth was given, so # was taken.", {write_depth(usual_tread, units_)}));
    if (!in_bend_.radius && (given("chord") || given("sagitta") || given("bank")))
      caution("bend_not_judged", Level::note, "",
              "For the bend give its radius, or both the chord and how far the bend stands off "
              "from its middle.");
    if (reaction_ < grip::median_reaction)
      caution("reaction_quick", Level::care, "the reaction is quicker than most drivers'",
              filled("You gave # s to react; taken by surprise, half of all drivers need more than "
                     "#, and slow ones 2.7.",
                     {trimmed(in_seconds(reaction_), 2), median_text()}),
              {&grip::reaction_source});
    if (speed_ > end_of_tables)
      caution("beyond_tables", Level::care, "no table of friction goes that fast",
              filled("Above # nobody printed friction: the figures are carried on beyond it.",
                     {speed_text(end_of_tables)}),
              {&grip::handbook_source});
  }

  static std::string median_text() { return fixed(in_seconds(grip::median_reaction), 1); }

  // ---- water: above the onset of floating no friction is to be trusted ----

  // A ruler's depth is always judged; of the words only standing water is, and for a tyre with next
  // to no grooves a wet road.
  bool may_float() const {
    const bool bare = case_.tread * case_.tyre->groove_credit < worn_tread;
    return measured_ ? wet()
                     : case_.film >= thinnest_to_float ||
                           (bare && case_.film > grip::film_of(grip::Wetness::damp));
  }

  void judge_water() {
    if (deep()) {
      const std::string depth = write_water(water::deepest_to_enter, units_);
      fixed_limit("aquaplaning", "The water", none,
                  filled("Water of # and more can stall or float a car.", {depth}),
                  {&deep_water_advice()});
      caution("deep_water", Level::unfit, "the water is too deep to drive into",
              filled("Do not drive into # of water or more, nor into any moving water. Turn back.",
                     {depth}),
              {&deep_water_advice()});
      return;
    }
    if (!may_float()) return;
    const standard::RoadSurface& road =
        *standard::find_road_surface(paved() ? case_.surface->road_surface : "loose");
    const auto onset = water::aquaplaning_onset({pressure_.value_or(soft_pressure), case_.tread,
                                                 case_.tyre->groove_credit, std::nullopt,
                                                 case_.film, road.texture});
    if (!onset) return;
    floats_from_ = onset->low;
    const std::string depth = write_water(case_.film, units_);
    Limit limit;
    limit.id = "aquaplaning";
    limit.label = "Aquaplaning";
    limit.low = onset->low;
    limit.central = onset->central;
    limit.high = onset->high;
    limit.share_kept = water::hold_to_share;
    limit.text = filled("about #", {band_text(onset->central, onset->low, onset->high)});
    limit.why = filled(
        "# of water can lift this tyre off the road from about #. The hold-to speed keeps a tenth "
        "below it.",
        {depth, speed_text(onset->low)});
    limit.sources = {&water::estimate_source(), &water::film_source(),
                     &water::pressure_only_source(), &water::clearing_source(), &road.source};
    for (const auto& row : water::measured_onsets()) add_once(limit.sources, row.source);
    const bool likely = speed_ > onset->central;
    if (above(onset->low * water::hold_to_share))
      caution("floats", likely ? Level::unfit : Level::care,
              likely ? "it floats at that speed" : "it may float at that speed",
              filled("At # the tyres may float on #: then nothing stops or steers the car.",
                     {speed_text(speed_), depth}),
              limit.sources);
    add_limit(answer_, std::move(limit));
    say_of_water(depth);
  }

  void say_of_water(std::string_view depth) {
    if (!measured_)
      caution("water_assumed", Level::note, "",
              filled("No depth was measured, so # was taken. Where a ruler finds more, go slower.",
                     {depth}));
    if (!pressure_)
      caution("pressure_assumed", Level::note, "",
              filled("No pressure was given, so a soft # was taken for whether it floats.",
                     {write(soft_pressure, units_)}));
    if (!paved())
      caution("unpaved_water", Level::note, "",
              "The water formulas were made on paved roads: here they are a guess, and no credit "
              "was given for the ground.");
  }

  bool floating() const { return floats_from_ && speed_ > *floats_from_; }

  // ---- what there is ----

  void tell_friction() {
    const grip::Friction friction = grip::friction(case_, speed_);
    const auto& band = friction.band;
    figure("friction", filled("Friction at #", {speed_text(speed_)}), band.central, "",
           filled("about # (# to #)",
                  {fixed(band.central, 2), fixed(band.low, 2), fixed(band.high, 2)}),
           friction.sources, "Braking force over load.", band.low, band.high);
    const grip::Heat heat = grip::heat_of(*case_.rubber, case_.tread_heat);
    const std::string_view warmth = grip::heat_caution(*case_.rubber, heat);
    if (!warmth.empty())
      caution("rubber_heat", Level::care,
              heat == grip::Heat::too_hot ? "the rubber is too hot" : "the rubber may be cold",
              warmth, {&grip::rubber_heat_source});
    std::string unknown(worded("What this friction does not know."));
    for (const std::string_view sentence : friction.unknown)
      if (sentence != warmth) add_item(unknown, worded(sentence), " ");
    caution("not_known", Level::note, "", unknown);
  }

  void tell_stop() {
    const Length thought = travelled(speed_, reaction_);
    figure("thinking", "Driven before the brakes bite", in_metres(thought), "m",
           distance_text(thought), {&grip::reaction_source},
           filled(given("reaction") ? "In # s; nine drivers in ten keep within 2.5. The median "
                                      "driver's # s would be #."
                                    : "In # s, which nine drivers in ten keep within. The median "
                                      "driver's # s would be #.",
                  {trimmed(in_seconds(reaction_), 2), median_text(),
                   distance_text(travelled(speed_, grip::median_reaction))}));
    braking_ = grip::braking_band(case_, speed_, none, road_);
    whole_ = grip::stopping_band(case_, speed_, reaction_, road_);
    stop_figure("braking", "Braking, on a straight", braking_);
    stop_figure("stopping", "Stopping, in all", whole_);
    if (!braking_.longest) return say_no_stop();
    const Length taught = grip::highway_code(speed_).braking;
    if (!seen_ && *braking_.central > taught)
      caution(
          "longer_than_taught", Level::care, "it brakes longer than drivers are taught",
          filled("Braking takes about # here, and # is taught for a dry road: leave more room, or "
                 "go slower.",
                 {estimate_text(*braking_.central), distance_text(taught)}),
          {&grip::limits_source, &grip::highway_code_source});
  }

  void stop_figure(const char* id, const char* label, const grip::DistanceBand& band) {
    if (!band.shortest) return;
    const auto value = [](const std::optional<Length>& l) {
      return l ? std::optional(in_metres(*l)) : std::nullopt;
    };
    figure(id, label, in_metres(band.central.value_or(*band.shortest)), "m",
           band.longest ? filled("about #", {estimate_band(band)})
                        : filled("# at best; it may not stop", {estimate_text(*band.shortest)}),
           {&grip::limits_source, &grip::stopping_source},
           floating() ? "Only if it does not float." : "", value(band.shortest),
           value(band.longest));
  }

  void say_no_stop() {
    const bool never = !braking_.shortest;
    const bool steep = grip::deceleration(grip::Grip(case_).at(none).low, road_.grade) <= 0.0;
    if (steep)
      fixed_limit("grade", "The grade", none, "It may be steeper than the grip on this ground.",
                  {&grip::limits_source, &grip::stopping_source});
    caution(never ? "will_not_stop" : "may_not_stop", Level::unfit,
            never ? "it will not stop" : "it may not stop",
            steep
                ? (never ? "It will not stop: the grade is as steep as the grip, and the brakes "
                           "only lock the wheels. Do not drive on to it."
                         : "With the least grip that fits this ground the grade is too steep to "
                           "stop on. Do not drive on to it.")
                : (never ? "At this speed no grip is left to stop it."
                         : "At this speed the least grip that fits this ground does not stop it."),
            {&grip::limits_source, &grip::stopping_source});
  }

  // ---- limits ----

  bool above(Speed limit) const { return speed_ > floor_to_five(limit, units_); }

  void band_limit(const char* id, const char* label, const char* what, const grip::SpeedBand& band,
                  std::string_view why, SomeSources sources) {
    Limit limit;
    limit.id = id;
    limit.label = label;
    limit.low = band.low;
    limit.central = band.central;
    limit.high = band.high;
    limit.text = !(band.high > none)       ? std::string("not at any speed")
                 : band.low < end_of_model ? band_text(band.central, band.low, band.high)
                                           : filled("over #", {speed_text(end_of_model)});
    limit.why = why;
    limit.sources = sources.kept();
    add_limit(answer_, std::move(limit));
    if (!above(band.low)) return;
    const bool past_it = speed_ > band.central;
    caution("too_fast", past_it ? Level::unfit : Level::care,
            filled(past_it ? "it is too fast for #" : "it may be too fast for #", {what}),
            floor_to_five(band.low, units_) > none
                ? filled("For # no more than # is sure to do.", {what, speed_text(band.low)})
                : filled("For # no speed is sure to do.", {what}),
            sources);
  }

  void judge_sight() {
    if (!seen_) return;
    band_limit("seen_distance", "What you can see", "what you can see",
               grip::seen_distance_speed(case_, *seen_, reaction_, in_bend_),
               filled(in_bend_.radius ? "To stop within # after # s of reaction, in the bend."
                                      : "To stop within # after # s of reaction.",
                      {distance_text(*seen_), trimmed(in_seconds(reaction_), 2)}),
               {&grip::limits_source, &grip::stopping_source, &grip::reaction_source});
  }

  void judge_obstacle() {
    if (!obstacle_) return;
    const Length room = std::max(Length(), *obstacle_ - travelled(speed_, reaction_));
    const grip::SpeedBand left = grip::speed_left_band(case_, speed_, room, in_bend_);
    const Sources sources{&grip::limits_source, &grip::stopping_source, &grip::reaction_source};
    figure("speed_left",
           filled("Still driven at the obstacle, # away", {distance_text(*obstacle_)}),
           in_kilometres_per_hour(left.central), "km/h",
           left.high > none ? filled("about #", {band_text(left.central, left.low, left.high)})
                            : std::string("stopped before it"),
           sources,
           filled("The reaction takes its share: # are left to brake in.", {distance_text(room)}),
           in_kilometres_per_hour(left.low), in_kilometres_per_hour(left.high));
    if (!(left.high > none)) return;
    const bool hits = left.central > none;
    const Speed sure = floor_to_five(
        grip::seen_distance_speed(case_, *obstacle_, reaction_, in_bend_).low, units_);
    caution(
        "hits_obstacle", hits ? Level::unfit : Level::care,
        hits ? "it does not stop before the obstacle" : "it may not stop before the obstacle",
        filled(sure > none ? "Up to # may be left at the obstacle. Sure to stop before it: from "
                             "# down."
                           : "Up to # may be left at the obstacle, and no speed is sure to stop "
                             "before it.",
               {speed_text(left.high), speed_text(sure)}),
        sources);
  }

  void judge_bend() {
    if (!in_bend_.radius) return;
    const Length radius = *in_bend_.radius;
    if (paced_)
      figure("radius", "Radius of the bend", in_metres(radius), "m", distance_text(radius),
             {&grip::cornering_source}, "From the chord and how far the bend stands off it.");
    band_limit("bend", "The bend", "the bend",
               grip::corner_speed_band(case_, radius, in_bend_.bank),
               filled("A bend of # radius, without braking in it.", {distance_text(radius)}),
               {&grip::limits_source, &grip::cornering_source, &grip::side_share_source});
    const Speed comfortable = grip::comfortable_corner_speed(radius, in_bend_.bank);
    figure("comfortable", "Comfortable round it", in_kilometres_per_hour(comfortable), "km/h",
           speed_text(comfortable), {&grip::comfort_source},
           "What road designers take for passengers; it is no grip.");
    const double demand = grip::side_demand(speed_, radius, in_bend_.bank);
    const grip::FrictionBand friction = grip::Grip(case_).at(speed_);
    const auto left = [&](double mu) {
      return 100.0 * grip::braking_left(1.0, mu * grip::side_share, demand);
    };
    const double low = left(friction.low), central = left(friction.central),
                 high = left(friction.high);
    figure("braking_left", filled("Left for the brakes in the bend at #", {speed_text(speed_)}),
           central, "%",
           filled("about # % (# to # %)", {fixed(central, 0), fixed(low, 0), fixed(high, 0)}),
           {&grip::ellipse_source, &grip::side_share_source},
           "Of what they have on a straight. What the bend takes, the brakes do not have.", low,
           high);
  }

  // ---- beside it ----

  // Tread is known to matter on a wet paved road only.
  bool compares() const {
    return paved() && wet() && case_.tread < new_tread && case_.tyre->groove_credit > 0.0;
  }

  grip::GripCase fresh() const {
    grip::GripCase unworn = case_;
    unworn.tread = new_tread;
    return unworn;
  }

  void compare_with_new() {
    if (!compares()) return;
    const auto ratio = grip::worn_stop_ratio(case_, speed_);
    if (ratio)
      figure("worn_ratio", "Braking, against the same tyre new", ratio->central, "",
             filled("# times as long (# to #)",
                    {fixed(ratio->central, 2), fixed(ratio->low, 2), fixed(ratio->high, 2)}),
             {&grip::film_share_source, &grip::braking_test_source}, "", ratio->low, ratio->high);
    const grip::DistanceBand stop = grip::braking_band(fresh(), speed_, none, road_);
    if (!stop.longest) return;
    const Speed a = grip::speed_left_band(case_, speed_, *stop.shortest, road_).low;
    const Speed b = grip::speed_left_band(case_, speed_, *stop.central, road_).central;
    const Speed c = grip::speed_left_band(case_, speed_, *stop.longest, road_).high;
    const Speed low = std::min({a, b, c}), high = std::max({a, b, c});
    if (b > none)
      figure("speed_where_new_stops", "Still driven where the same tyre new has stopped",
             in_kilometres_per_hour(b), "km/h", filled("about #", {band_text(b, low, high)}),
             {&grip::limits_source, &grip::film_share_source, &grip::braking_test_source}, "",
             in_kilometres_per_hour(low), in_kilometres_per_hour(high));
  }

  bool frozen() const {
    return case_.surface->ground == standard::Ground::snow ||
           case_.surface->ground == standard::Ground::ice;
  }

  void tell_gap() {
    const grip::GapRoad road = frozen() ? grip::GapRoad::ice
                               : wet()  ? grip::GapRoad::wet
                                        : grip::GapRoad::dry;
    const Length gap = grip::following_gap(speed_, road);
    figure("gap", "Gap to the vehicle in front", in_metres(gap), "m",
           filled("#, # s", {distance_text(gap), fixed(in_seconds(grip::following_time(road)), 0)}),
           {&grip::highway_code_source});
  }

  // What drivers are taught. A rule is printed as the sum of its parts, each rounded.
  void tell_rules() {
    Table table{"taught",
                "What drivers are taught",
                "For a car on a dry, level road, unless the row says otherwise.",
                {"Rule", "Thinking", "Braking", "In all", "How known"},
                {}};
    const auto whole = [&](double value) {
      return filled(units_ == UnitSystem::us ? "# ft" : "# m", {fixed(value, 0)});
    };
    const auto row = [&](const char* id, std::string_view label, const grip::RuleDistance* parts,
                         double sum, const Source& source) {
      table.rows.push_back({std::string(label), parts ? whole(shown(parts->thinking)) : "",
                            parts ? whole(shown(parts->braking)) : "", whole(sum),
                            std::string(standing_name(source.standing))});
      if (id != nullptr)
        figure(id, label, in_metres(units_ == UnitSystem::us ? feet(sum) : metres(sum)), "m",
               whole(sum), {&source});
    };
    const auto sum = [&](const grip::RuleDistance& parts) {
      return std::round(shown(parts.thinking)) + std::round(shown(parts.braking));
    };
    const auto code = grip::highway_code(speed_);
    row("highway_code", "Highway Code, rule 126", &code, sum(code), grip::highway_code_source);
    if (wet() || frozen())
      row(nullptr,
          frozen() ? "The same on snow and ice: ten times"
                   : "The same in the wet: double, at least",
          nullptr, sum(code) * (frozen() ? grip::highway_code_ice : grip::highway_code_wet),
          grip::highway_code_source);
    const auto school = grip::driving_school(speed_, grip::Braking::normal);
    const auto full = grip::driving_school(speed_, grip::Braking::full);
    row("driving_school", "German driving schools", &school, sum(school),
        grip::driving_school_source);
    row(nullptr, "The same, braking fully", &full, sum(full), grip::driving_school_source);
    row("sight_distance", "AASHTO stopping sight distance", nullptr,
        shown(units_ == UnitSystem::us ? grip::sight_distance_us(speed_)
                                       : grip::sight_distance_metric(speed_)),
        grip::sight_distance_source);
    const auto on_grade = grip::sight_distance_on_grade(speed_, road_.grade);
    if (road_.grade != 0.0 && on_grade)
      row(nullptr, "The same on this grade", nullptr, shown(*on_grade),
          grip::sight_distance_source);
    answer_.tables.push_back(std::move(table));
  }

  // ---- writing distances ----

  double shown(Speed v) const {
    return units_ == UnitSystem::metric ? in_kilometres_per_hour(v) : in_miles_per_hour(v);
  }
  double shown(Length l) const { return units_ == UnitSystem::us ? in_feet(l) : in_metres(l); }

  std::string with_unit(std::string_view number) const {
    return filled(units_ == UnitSystem::us ? "# ft" : "# m", {number});
  }
  // As given or exact.
  std::string distance_text(Length l) const {
    return with_unit(trimmed(shown(l), shown(l) < 10.0 ? 1 : 0));
  }
  // As estimated: two digits, the longest rounded up.
  static std::string two_digits(double value, double (*round)(double)) {
    double step = 1.0;
    while (value >= 100.0 * step) step *= 10.0;
    return fixed(round(value / step) * step, 0);
  }
  static double nearest(double value) { return std::round(value); }
  static double upwards(double value) { return std::ceil(value); }
  std::string estimate_text(Length l) const { return with_unit(two_digits(shown(l), nearest)); }
  std::string longest_text(Length l) const { return with_unit(two_digits(shown(l), upwards)); }
  // "58 m (53 to 65 m)"
  std::string estimate_band(const grip::DistanceBand& band) const {
    return filled("# (# to #)",
                  {estimate_text(*band.central), two_digits(shown(*band.shortest), nearest),
                   longest_text(*band.longest)});
  }

  // ---- the pictures ----

  // Braking from ever higher speeds, each from the one before: the friction is looked up once a
  // step. An end that once does not stop never does from higher up.
  class Rising {
   public:
    Rising(const grip::GripCase& grip_case, const grip::Road& road)
        : case_(grip_case), road_(road) {}
    const grip::DistanceBand& up_to(Speed speed) {
      const grip::DistanceBand more = grip::braking_band(case_, speed, from_, road_);
      add(sum_.shortest, more.shortest);
      add(sum_.central, more.central);
      add(sum_.longest, more.longest);
      from_ = speed;
      return sum_;
    }

   private:
    static void add(std::optional<Length>& sum, const std::optional<Length>& more) {
      if (sum && more)
        sum = *sum + *more;
      else
        sum.reset();
    }
    grip::GripCase case_;
    grip::Road road_;
    Speed from_;
    grip::DistanceBand sum_{Length(), Length(), Length()};
  };

  void draw_by_speed() {
    Chart chart;
    chart.id = "stops";
    chart.title = "Stopping, by speed";
    chart.text = worded("Reaction and braking on this ground, with the band of its grip.");
    if (floats_from_)
      chart.text += filled(" From # up it may float, and the curve does not hold.",
                           {speed_text(*floats_from_)});
    chart.x = {"Speed", units_ == UnitSystem::metric ? "km/h" : "mph"};
    chart.y = {"Distance", units_ == UnitSystem::us ? "ft" : "m"};
    chart.table.columns = {"Speed", "Shortest", "About", "Longest"};
    Series own{"subject", filled("This tyre, #", {write_depth(case_.tread, units_)}), {}, {}, {},
               {}};
    Series other{"reference", filled("The same tyre new, #", {write_depth(new_tread, units_)}),
                 {},          {},
                 {},          {}};
    if (compares()) chart.table.columns.push_back("New");
    const double unit = units_ == UnitSystem::metric ? 1.0 : kmh_per_mph;
    const double wanted = std::max(shown(speed_) * 1.25, 40.0);
    const double step = wanted > 150.0 ? 25.0 : 10.0;
    const double last = std::min(step * std::ceil(wanted / step), shown(end_of_model));
    const auto value = [&](const std::optional<Length>& l, Length thought) {
      return l ? shown(*l + thought) : std::numeric_limits<double>::quiet_NaN();
    };
    const auto text = [&](const std::optional<Length>& l, Length thought) {
      return l ? estimate_text(*l + thought) : std::string("will not stop");
    };
    const auto longest = [&](const std::optional<Length>& l, Length thought) {
      return l ? longest_text(*l + thought) : std::string("will not stop");
    };
    Rising mine(case_, road_), theirs(fresh(), road_);
    for (double v = step; v <= last; v += step) {
      const Speed speed = kilometres_per_hour(v * unit);
      const Length thought = travelled(speed, reaction_);
      const grip::DistanceBand& band = mine.up_to(speed);
      own.x.push_back(v);
      own.y.push_back(value(band.central, thought));
      own.low.push_back(value(band.shortest, thought));
      own.high.push_back(value(band.longest, thought));
      chart.table.rows.push_back({speed_text(speed), text(band.shortest, thought),
                                  text(band.central, thought), longest(band.longest, thought)});
      if (!compares()) continue;
      const std::optional<Length> unworn = theirs.up_to(speed).central;
      other.x.push_back(v);
      other.y.push_back(value(unworn, thought));
      chart.table.rows.back().push_back(text(unworn, thought));
    }
    if (seen_ && whole_.central && *seen_ < *whole_.central * 2.0)
      chart.series.push_back(
          {"reference", "What you can see", {step, last}, {shown(*seen_), shown(*seen_)}, {}, {}});
    if (compares()) chart.series.push_back(std::move(other));
    chart.series.insert(chart.series.begin(), std::move(own));
    if (whole_.central) chart.marks = {{shown(speed_), shown(*whole_.central), "You are here"}};
    answer_.charts.push_back(std::move(chart));
  }

  // Bars to scale, one under the other, each from where the driver sees the need to stop.
  void draw_to_scale() {
    if (!whole_.longest || floating()) return;
    const double scale = in_metres(*whole_.longest) < 50.0 ? 10.0 : 1.0;  // millimetres a metre
    const double thought = scale * in_metres(travelled(speed_, reaction_));
    const double stop = scale * in_metres(*whole_.central);
    Drawing drawing;
    drawing.id = "to_scale";
    drawing.title = filled("The stop, to scale 1 : #", {scale > 1.0 ? "100" : "1000"});
    drawing.text = filled("From #, from seeing the need to a standstill: about #.",
                          {speed_text(speed_), estimate_band(whole_)});
    drawing.width = scale * in_metres(*whole_.longest);
    const double bar = drawing.width / 14.0;
    const auto box = [&](double x, double end, const char* role, std::string_view label) {
      drawing.boxes.push_back({x, drawing.height, end - x, bar, 0.0, role, std::string(label)});
    };
    box(0.0, thought, "detail", "Thinking");
    box(thought, stop, "subject", "Braking on this tyre");
    box(stop, drawing.width, "reference", "More, with the least grip that fits");
    drawing.height += bar;
    const auto unworn = grip::stopping_band(fresh(), speed_, reaction_, road_).central;
    if (compares() && unworn) {
      drawing.height += bar / 2.0;
      box(0.0, scale * in_metres(*unworn), "detail",
          filled("Below it: the same tyre new, about #", {estimate_text(*unworn)}));
      drawing.height += bar;
    }
    if (seen_ && *seen_ < *whole_.longest * 2.0) {
      drawing.height += bar / 2.0;
      const double sight = scale * in_metres(*seen_);
      box(0.0, sight, "reference",
          filled("At the bottom: what you can see, #", {distance_text(*seen_)}));
      drawing.height += bar;
      drawing.width = std::max(drawing.width, sight);
    }
    answer_.drawings.push_back(std::move(drawing));
  }

  // ---- the end of it ----

  void finish() {
    if (answer_.limits.empty()) {
      caution("no_limit", Level::note, "",
              "Say how far you can see, the radius of the bend or the depth of the water, and a "
              "speed to hold to follows.");
    } else if (answer_.limits.front().low * answer_.limits.front().share_kept > end_of_tables) {
      fixed_limit("end_of_tables", "Where the friction tables end", end_of_tables,
                  "Nothing asked here bites below it, and nobody printed friction above it.",
                  {&grip::handbook_source});
    }
    hold_to();
    const bool held = answer_.hold_to && answer_.hold_to->speed > none;
    if (answer_.hold_to && !held && !deep()) answer_.hold_to->text = "Do not drive on it";
    if (wet())
      caution("wet_road", Level::note, "",
              "On a wet road leave twice the room; the shine you see may be ice when it is near "
              "freezing.",
              {&wet_braking_advice()});
    const std::string first =
        floating() ? filled("At # it may float, and then nothing stops or steers it. ",
                            {speed_text(speed_)})
                   : std::string();
    const std::string last = floating() || deep() ? std::string() : joined({" ", stop_words()});
    conclude(answer_.limits.empty() ? stop_words()
                                    : joined({worded("Slow enough for what is asked here."), last}),
             joined({first, worded("Only with care: #."), last}).c_str(),
             joined({first, worded("Not like this: #."), last}).c_str());
    if (answer_.hold_to)
      speak(held ? filled("#, #: hold to #. The limit is #.",
                          {case_.surface->label, wet_words(), spoken_speed(answer_.hold_to->speed),
                           within_sentence(answer_.limits.front().label)})
                 : filled("#, #: do not drive on it.", {case_.surface->label, wet_words()}));
  }

  std::string stop_words() const {
    const std::string speed = speed_text(speed_);
    if (!braking_.shortest) return filled("From # it does not stop.", {speed});
    if (!whole_.longest)
      return filled("From # it stops in # at best, or not at all.",
                    {speed, estimate_text(*whole_.shortest)});
    return filled("From # it stops in about #.", {speed, estimate_band(whole_)});
  }

  std::string wet_words() const {
    return wet() ? filled("# of water", {write_water(case_.film, units_)}) : std::string("dry");
  }

  Speed speed_;
  grip::GripCase case_;
  grip::Road road_;     // straight
  grip::Road in_bend_;  // with the bend, where there is one
  bool paced_ = false;
  std::optional<Length> measured_;
  std::optional<GaugePressure> pressure_;
  Duration reaction_;
  std::optional<Length> seen_;
  std::optional<Length> obstacle_;
  std::optional<Speed> floats_from_;
  grip::DistanceBand braking_;
  grip::DistanceBand whole_;
};

}  // namespace

Answer stopping(const Input& input) { return Stopping(input).run(); }

Sources stopping_sources() {
  Sources all = {&grip::limits_source,         &grip::stopping_source,
                 &grip::reaction_source,       &grip::cornering_source,
                 &grip::side_share_source,     &grip::comfort_source,
                 &grip::ellipse_source,        &grip::film_share_source,
                 &grip::braking_test_source,   &grip::highway_code_source,
                 &grip::driving_school_source, &grip::sight_distance_source,
                 &grip::rubber_heat_source,    &water::estimate_source(),
                 &water::film_source(),        &water::pressure_only_source(),
                 &water::clearing_source(),    &wet_braking_advice(),
                 &deep_water_advice()};
  for (const auto& row : water::measured_onsets()) add_once(all, row.source);
  // Every surface and tyre brings its own.
  for (const auto& surface : standard::friction_surfaces())
    for (const TyreKind& kind : tyre_kinds)
      for (const double film : {0.0, 0.5}) {
        grip::GripCase one;
        one.surface = &surface;
        one.tyre = grip::find_tyre_grip(kind.id);
        one.tread = usual_tread;
        one.film = millimetres(film);
        for (const Source* source : grip::friction(one, kilometres_per_hour(80.0)).sources)
          add_once(all, *source);
      }
  for (const auto& surface : standard::road_surfaces()) add_once(all, surface.source);
  return all;
}

}  // namespace treadwater::answer
