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
#include "core/standard/instrument.hpp"
#include "core/standard/road_surface.hpp"
#include "core/water/estimate.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"

namespace treadwater::answer {
namespace {

constexpr Length usual_tread = millimetres(3.0);
constexpr Length new_tread = millimetres(8.0);
constexpr GaugePressure soft_pressure = kilopascals(200.0);
// Thinner films take grip, and that is in the friction; no treaded tyre was seen to float on them.
constexpr Length thinnest_to_float = millimetres(1.0);

class Stopping : Teller {
 public:
  explicit Stopping(const Input& input) : Teller(stopping_sheet(), input) {}

  Answer run() {
    read_form();
    if (speed_ && case_.surface != nullptr && case_.tyre != nullptr) {
      tell_friction();
      tell_stop();
      judge_sight();
      judge_obstacle();
      judge_bend();
      judge_water();
      compare_with_new();
      tell_gap();
      public_tables();
      draw();
    }
    if (answer_.ok()) finish();
    return std::move(answer_);
  }

 private:
  void read_form() {
    speed_ = quantity<Speed>("speed");
    if (const auto id = choice("surface")) case_.surface = standard::find_friction_surface(*id);
    const auto wetness = choice("wetness");
    const auto water = quantity<Length>("water");
    if (const auto id = choice("tyre_kind")) case_.tyre = grip::find_tyre_grip(*id);
    case_.tread = quantity<Length>("tread").value_or(usual_tread);
    if (const auto id = choice("rubber")) case_.rubber = grip::find_rubber(*id);
    case_.tread_heat = quantity<Temperature>("heat");
    pressure_ = quantity<GaugePressure>("pressure").value_or(soft_pressure);
    reaction_ = quantity<Duration>("reaction").value_or(grip::cautious_reaction);
    road_.grade = number("grade").value_or(0.0) / 100.0;
    seen_ = quantity<Length>("seen");
    obstacle_ = quantity<Length>("obstacle");
    road_.bank = number("bank").value_or(0.0) / 100.0;
    radius_ = quantity<Length>("radius");
    const auto chord = quantity<Length>("chord");
    const auto sagitta = quantity<Length>("sagitta");
    if (!radius_ && chord && sagitta) {
      radius_ = grip::radius_from_chord(*chord, *sagitta);
      if (radius_)
        figure("radius", "Radius of the bend", in_metres(*radius_), "m", distance_text(*radius_),
               {&grip::cornering_source}, "From the chord and how far the bend stands off it.");
    }
    const grip::Wetness word = wetness == "damp"       ? grip::Wetness::damp
                               : wetness == "wet"      ? grip::Wetness::wet
                               : wetness == "standing" ? grip::Wetness::standing
                                                       : grip::Wetness::dry;
    case_.film = water.value_or(grip::film_of(word));
    if (!given("tread"))
      caution(
          "tread_assumed", Level::note, "",
          filled("No tread depth was given, so # was taken.", {write_depth(usual_tread, units_)}));
  }

  // ---- what there is ----

  void tell_friction() {
    const grip::Friction friction = grip::friction(case_, *speed_);
    sources_ = friction.sources;
    figure("friction", filled("Friction at #", {speed_text(*speed_)}), friction.band.central, "",
           filled("about # (# to #)", {fixed(friction.band.central, 2), fixed(friction.band.low, 2),
                                       fixed(friction.band.high, 2)}),
           sources_, "Braking force over load.", friction.band.low, friction.band.high);
    std::string unknown;
    for (const std::string_view sentence : friction.unknown) add_item(unknown, sentence, " ");
    if (!unknown.empty()) caution("not_known", Level::note, "", unknown);
    if (case_.rubber == nullptr) return;
    const std::string_view said =
        grip::heat_caution(*case_.rubber, grip::heat_of(*case_.rubber, case_.tread_heat));
    if (!said.empty())
      caution("rubber_heat", Level::care, "the rubber may not be warm", said,
              {&grip::rubber_range_source, &grip::rubber_order_source});
  }

  std::string band_of(const grip::DistanceBand& band) const {
    if (!band.shortest) return "will not stop";
    if (!band.longest) return filled("# at best; may not stop", {distance_text(*band.shortest)});
    return filled("about # (# to #)", {distance_text(*band.central), distance_text(*band.shortest),
                                       distance_text(*band.longest)});
  }

  void stop_figure(const char* id, const char* label, const grip::DistanceBand& band,
                   const char* note) {
    if (!band.shortest) return;
    const auto value = [](const std::optional<Length>& l) {
      return l ? std::optional(in_metres(*l)) : std::nullopt;
    };
    figure(id, label, in_metres(band.central.value_or(*band.shortest)), "m", band_of(band),
           {&grip::limits_source, &grip::stopping_source}, note, value(band.shortest),
           value(band.longest));
  }

  void tell_stop() {
    const Length thought = travelled(*speed_, reaction_);
    figure("thinking", "Driven before the brakes bite", in_metres(thought), "m",
           distance_text(thought), {&grip::reaction_source},
           filled("In # s. The median driver takes 0.9 s, slow ones 2.7.",
                  {trimmed(in_seconds(reaction_), 1)}));
    const grip::DistanceBand braking = grip::braking_band(case_, *speed_, Speed(), road_);
    whole_ = grip::stopping_band(case_, *speed_, reaction_, road_);
    stop_figure("braking", "Braking", braking, "From the brakes' bite to a standstill.");
    stop_figure("stopping", "Stopping, in all", whole_, "");
    if (!braking.shortest)
      caution(
          "will_not_stop", Level::unfit, "it will not stop",
          "It will not stop here: the grade is as steep as the grip, or there is no grip left. Do "
          "not drive on to it.",
          {&grip::stopping_source});
    else if (!braking.longest)
      caution("may_not_stop", Level::unfit, "it may not stop",
              "With the least grip that fits this ground it does not stop at all.",
              {&grip::limits_source});
  }

  // ---- limits ----

  void band_limit(const char* id, std::string_view label, const grip::SpeedBand& band,
                  std::string_view why, SomeSources sources) {
    Limit limit;
    limit.id = id;
    limit.label = label;
    limit.low = band.low;
    limit.central = band.central;
    limit.high = band.high;
    limit.text = band.high > kilometres_per_hour(0.0) ? band_text(band.central, band.low, band.high)
                                                      : std::string("not at any speed");
    limit.why = why;
    limit.sources = sources.kept();
    if (*speed_ > band.low)
      caution("too_fast", *speed_ > band.central ? Level::unfit : Level::care,
              filled(*speed_ > band.central ? "it is too fast for #" : "it may be too fast for #",
                     {lower(label)}),
              filled("#: # is the most that is sure to do, and # is driven.",
                     {label, speed_text(band.low), speed_text(*speed_)}),
              sources);
    add_limit(answer_, std::move(limit));
  }

  static std::string lower(std::string_view label) {
    std::string text(label);
    if (!text.empty() && text[0] >= 'A' && text[0] <= 'Z')
      text[0] = static_cast<char>(text[0] - 'A' + 'a');
    return text;
  }

  void judge_sight() {
    if (!seen_) return;
    band_limit("seen_distance", "What you can see",
               grip::seen_distance_speed(case_, *seen_, reaction_, road_),
               filled("To stop within # with # s of reaction.",
                      {distance_text(*seen_), trimmed(in_seconds(reaction_), 1)}),
               {&grip::limits_source, &grip::stopping_source, &grip::reaction_source});
  }

  void judge_obstacle() {
    if (!obstacle_) return;
    const grip::SpeedBand left = grip::speed_left_band(case_, *speed_, *obstacle_, road_);
    figure("speed_left", filled("Still driven after # of braking", {distance_text(*obstacle_)}),
           in_kilometres_per_hour(left.central), "km/h",
           left.high > kilometres_per_hour(0.0) ? band_text(left.central, left.low, left.high)
                                                : std::string("stopped"),
           {&grip::limits_source, &grip::stopping_source}, "", in_kilometres_per_hour(left.low),
           in_kilometres_per_hour(left.high));
    if (left.central > kilometres_per_hour(0.0))
      caution("hits_obstacle", Level::unfit, "it does not stop before the obstacle",
              filled("Braking over # leaves about #.",
                     {distance_text(*obstacle_), speed_text(left.central)}),
              {&grip::limits_source});
  }

  void judge_bend() {
    if (!radius_) return;
    band_limit("bend", "The bend", grip::corner_speed_band(case_, *radius_, road_.bank),
               filled("A bend of # radius, without braking in it.", {distance_text(*radius_)}),
               {&grip::limits_source, &grip::cornering_source, &grip::side_share_source});
    const Speed comfortable = grip::comfortable_corner_speed(*radius_, road_.bank);
    figure("comfortable", "Comfortable round it", in_kilometres_per_hour(comfortable), "km/h",
           speed_text(comfortable), {&grip::comfort_source},
           "What road designers take for passengers; it is no grip.");
    const double demand = grip::side_demand(*speed_, *radius_, road_.bank);
    const double friction = grip::friction(case_, *speed_).band.low;
    const double left =
        grip::braking_left(friction, friction * grip::side_share, std::max(0.0, demand));
    const double share = friction > 0.0 ? 100.0 * left / friction : 0.0;
    figure("braking_left", filled("Left for the brakes in the bend at #", {speed_text(*speed_)}),
           share, "%", filled("# %", {fixed(share, 0)}), {&grip::ellipse_source},
           "Of what they have on the straight. What the bend takes, the brakes do not have.");
  }

  // Above the onset of floating no friction here is to be trusted.
  void judge_water() {
    const bool paved = case_.surface->ground == standard::Ground::paved;
    if (!paved || case_.film < thinnest_to_float) return;
    const standard::RoadSurface* road = standard::find_road_surface(case_.surface->road_surface);
    if (road == nullptr) return;
    const auto onset = water::aquaplaning_onset({pressure_, case_.tread, case_.tyre->groove_credit,
                                                 std::nullopt, case_.film, road->texture});
    if (!onset) return;
    Limit limit;
    limit.id = "aquaplaning";
    limit.label = "Aquaplaning";
    limit.low = onset->low;
    limit.central = onset->central;
    limit.high = onset->high;
    limit.share_kept = water::hold_to_share;
    limit.text = filled("about #", {band_text(onset->central, onset->low, onset->high)});
    limit.why = filled("# of water can lift this tyre off the road from about #; no grip above it.",
                       {write_water(case_.film, units_), speed_text(onset->low)});
    limit.sources = {&water::estimate_source(), &water::film_source(),
                     &water::pressure_only_source(), &water::clearing_source(), &road->source};
    if (*speed_ > onset->low * water::hold_to_share)
      caution("floats", *speed_ > onset->central ? Level::unfit : Level::care,
              *speed_ > onset->central ? "it floats at that speed" : "it may float at that speed",
              filled("At # the tyres may float on #: then nothing here stops or steers it.",
                     {speed_text(*speed_), write_water(case_.film, units_)}),
              limit.sources);
    add_limit(answer_, std::move(limit));
  }

  // ---- beside it ----

  void compare_with_new() {
    if (case_.surface->ground != standard::Ground::paved || case_.film <= millimetres(0.0) ||
        case_.tread >= new_tread)
      return;
    const auto ratio = grip::worn_stop_ratio(case_, *speed_);
    if (ratio)
      figure("worn_ratio", "Braking against a new tread", ratio->central, "",
             filled("# times as long (# to #)",
                    {fixed(ratio->central, 2), fixed(ratio->low, 2), fixed(ratio->high, 2)}),
             {&grip::film_share_source, &grip::braking_test_source}, "", ratio->low, ratio->high);
    grip::GripCase fresh = case_;
    fresh.tread = new_tread;
    const auto stop = grip::braking_band(fresh, *speed_, Speed(), road_).central;
    if (!stop) return;
    const grip::SpeedBand left = grip::speed_left_band(case_, *speed_, *stop, road_);
    if (left.central > kilometres_per_hour(0.0))
      figure("speed_where_new_stops", "Still driven where a new tread has stopped",
             in_kilometres_per_hour(left.central), "km/h", speed_text(left.central),
             {&grip::limits_source, &grip::braking_test_source});
  }

  void tell_gap() {
    const bool slippery = case_.surface->ground == standard::Ground::snow ||
                          case_.surface->ground == standard::Ground::ice;
    const grip::GapRoad road = slippery                        ? grip::GapRoad::ice
                               : case_.film > millimetres(0.0) ? grip::GapRoad::wet
                                                               : grip::GapRoad::dry;
    const Length gap = grip::following_gap(*speed_, road);
    figure("gap", "Gap to the vehicle in front", in_metres(gap), "m",
           filled("#, # s", {distance_text(gap), fixed(in_seconds(grip::following_time(road)), 0)}),
           {&grip::highway_code_source});
  }

  // What drivers are taught, for a car on a dry level road.
  void public_tables() {
    const auto rule = grip::highway_code(*speed_);
    const auto school = grip::driving_school(*speed_, grip::Braking::normal);
    const Length aashto = units_ == UnitSystem::us ? grip::sight_distance_us(*speed_)
                                                   : grip::sight_distance_metric(*speed_);
    Table table{"taught",
                "What drivers are taught",
                "For a car on a dry, level road.",
                {"Rule", "Thinking", "Braking", "In all"},
                {}};
    const auto row = [&](const char* name, Length thinking, Length braking) {
      table.rows.push_back({name, distance_text(thinking), distance_text(braking),
                            distance_text(thinking + braking)});
    };
    row("Highway Code, rule 126", rule.thinking, rule.braking);
    row("German driving schools", school.thinking, school.braking);
    table.rows.push_back({"AASHTO sight distance", "", "", distance_text(aashto)});
    answer_.tables.push_back(std::move(table));
    figure("highway_code", "The Highway Code's typical stop", in_metres(rule.total()), "m",
           distance_text(rule.total()), {&grip::highway_code_source});
    figure("driving_school", "German driving schools' rule", in_metres(school.total()), "m",
           distance_text(school.total()), {&grip::driving_school_source});
    figure("sight_distance", "AASHTO stopping sight distance", in_metres(aashto), "m",
           distance_text(aashto), {&grip::sight_distance_source});
  }

  // ---- the pictures ----

  double shown(Speed v) const {
    return units_ == UnitSystem::metric ? in_kilometres_per_hour(v) : in_miles_per_hour(v);
  }
  double shown(Length l) const { return units_ == UnitSystem::us ? in_feet(l) : in_metres(l); }
  std::string distance_text(Length l) const {
    const double value = shown(l);
    return filled(units_ == UnitSystem::us ? "# ft" : "# m",
                  {value < 10.0 ? fixed(value, 1) : fixed(value, 0)});
  }

  void draw() {
    Chart chart;
    chart.id = "stops";
    chart.title = "Stopping, by speed";
    chart.text =
        "Reaction and braking on this ground, with the band of its grip, beside a new tread.";
    chart.x = {"Speed", units_ == UnitSystem::metric ? "km/h" : "mph"};
    chart.y = {"Distance", units_ == UnitSystem::us ? "ft" : "m"};
    chart.table.columns = {"Speed", "Shortest", "About", "Longest", "New tread"};
    grip::GripCase fresh = case_;
    fresh.tread = std::max(case_.tread, new_tread);
    Series own{"subject", filled("This tyre, #", {write_depth(case_.tread, units_)}), {}, {}, {},
               {}};
    Series other{"reference", "New tread, 8 mm", {}, {}, {}, {}};
    const double unit = units_ == UnitSystem::metric ? 1.0 : kmh_per_mph;
    const double step = 10.0;
    const double last = step * std::ceil(std::max(shown(*speed_) * 1.25, 40.0) / step);
    const double none = std::numeric_limits<double>::quiet_NaN();
    const auto value = [&](const std::optional<Length>& l) { return l ? shown(*l) : none; };
    const auto text = [&](const std::optional<Length>& l) {
      return l ? distance_text(*l) : std::string("will not stop");
    };
    for (double v = step; v <= std::min(last, 200.0); v += step) {
      const Speed speed = kilometres_per_hour(v * unit);
      const auto band = grip::stopping_band(case_, speed, reaction_, road_);
      const auto fresh_band = grip::stopping_band(fresh, speed, reaction_, road_);
      own.x.push_back(v);
      own.y.push_back(value(band.central));
      own.low.push_back(value(band.shortest));
      own.high.push_back(value(band.longest));
      other.x.push_back(v);
      other.y.push_back(value(fresh_band.central));
      chart.table.rows.push_back({speed_text(speed), text(band.shortest), text(band.central),
                                  text(band.longest), text(fresh_band.central)});
    }
    chart.series = {std::move(own)};
    if (case_.tread < new_tread) chart.series.push_back(std::move(other));
    if (whole_.central) chart.marks = {{shown(*speed_), shown(*whole_.central), "You are here"}};
    answer_.charts.push_back(std::move(chart));
    draw_to_scale(fresh);
  }

  // Bars to scale, ten metres to the height of a bar: reaction, then braking on this tyre and on a
  // new tread.
  void draw_to_scale(const grip::GripCase& fresh) {
    const auto mine = grip::braking_band(case_, *speed_, Speed(), road_).central;
    const auto theirs = grip::braking_band(fresh, *speed_, Speed(), road_).central;
    if (!mine || !theirs) return;
    const double thought = in_metres(travelled(*speed_, reaction_));
    const double whole = thought + std::max(in_metres(*mine), in_metres(*theirs));
    const double bar = whole / 14.0;
    Drawing drawing;
    drawing.id = "to_scale";
    drawing.title = "The distances, to scale";
    drawing.text =
        filled("Thinking #; braking # on this tyre and # on a new tread.",
               {distance_text(metres(thought)), distance_text(*mine), distance_text(*theirs)});
    drawing.width = whole;
    drawing.height = 2.6 * bar;
    drawing.boxes = {
        {0.0, 0.0, thought, bar, 0.0, "reference", "Thinking"},
        {thought, 0.0, in_metres(*mine), bar, 0.0, "subject", "Braking on this tyre"},
        {0.0, 1.6 * bar, thought, bar, 0.0, "reference", ""},
        {thought, 1.6 * bar, in_metres(*theirs), bar, 0.0, "detail", "Braking on a new tread"}};
    answer_.drawings.push_back(std::move(drawing));
  }

  void finish() {
    hold_to();
    if (answer_.hold_to && answer_.hold_to->speed <= kilometres_per_hour(0.0))
      answer_.hold_to->text = "Do not drive on it";
    if (case_.film > millimetres(0.0))
      caution("wet_road", Level::note, "",
              "On a wet road leave twice the room; the shine you see may be ice when it is near "
              "freezing.",
              {&wet_braking_advice()});
    const std::string fit = filled("From # it stops in #.", {speed_text(*speed_), band_of(whole_)});
    conclude(fit, ("Only with care: #. " + fit).c_str(),
             ("Too fast or too slippery: #. " + fit).c_str());
    if (answer_.hold_to && answer_.hold_to->speed > kilometres_per_hour(0.0))
      speak(filled("#, #: hold to #. The limit is #.",
                   {case_.surface->label, wet_words(), spoken_speed(answer_.hold_to->speed),
                    lower(answer_.limits.front().label)}));
  }

  std::string wet_words() const {
    return case_.film > millimetres(0.0) ? filled("# of water", {write_water(case_.film, units_)})
                                         : std::string("dry");
  }

  std::optional<Speed> speed_;
  grip::GripCase case_;
  grip::Road road_;
  GaugePressure pressure_;
  Duration reaction_;
  std::optional<Length> seen_;
  std::optional<Length> obstacle_;
  std::optional<Length> radius_;
  grip::DistanceBand whole_;
  Sources sources_;
};

}  // namespace

Answer stopping(const Input& input) { return Stopping(input).run(); }

Sources stopping_sources() {
  Sources all = {
      &grip::limits_source,       &grip::stopping_source,         &grip::reaction_source,
      &grip::cornering_source,    &grip::side_share_source,       &grip::comfort_source,
      &grip::ellipse_source,      &grip::film_share_source,       &grip::braking_test_source,
      &grip::highway_code_source, &grip::driving_school_source,   &grip::sight_distance_source,
      &grip::rubber_range_source, &grip::rubber_order_source,     &water::estimate_source(),
      &water::film_source(),      &water::pressure_only_source(), &water::clearing_source(),
      &wet_braking_advice()};
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
