// Friction, stopping and cornering.
#include "core/grip/cornering.hpp"
#include "core/grip/friction.hpp"
#include "core/grip/limits.hpp"
#include "core/grip/skid.hpp"
#include "core/grip/stopping.hpp"
#include "tests/register/register.hpp"

#include <cmath>

namespace treadwater::checks {
namespace {

using namespace grip;

GripCase grip_case(Asked& in, const char* tread = "tread") {
  GripCase c;
  if (in.has("surface")) {
    const std::string name = in.text("surface");
    c.surface = standard::find_friction_surface(name);
    if (c.surface == nullptr) in.fail("no such surface: ", name);
  }
  if (in.has("tyre")) {
    const std::string name = in.text("tyre");
    c.tyre = find_tyre_grip(name);
    if (c.tyre == nullptr) in.fail("no such tyre: ", name);
  }
  if (in.has("rubber")) {
    const std::string name = in.text("rubber");
    c.rubber = find_rubber(name);
    if (c.rubber == nullptr) in.fail("no such rubber: ", name);
  }
  if (c.surface == nullptr || c.tyre == nullptr) c = GripCase();
  if (in.has("road")) {
    const std::string name = in.text("road");
    c.road = name == "grippy"     ? RoadGrip::grippy
             : name == "ordinary" ? RoadGrip::ordinary
                                  : RoadGrip::polished;
  }
  c.tread = in.of<Length>(tread);
  c.film = in.of<Length>("film", Length());
  return c;
}

FrictionBand friction_of(Asked& in) { return Grip(grip_case(in)).at(in.of<Speed>("speed")); }

DistanceBand stop_of(Asked& in, const char* tread = "tread") {
  return braking_band(grip_case(in, tread), in.of<Speed>("speed"), Speed(), {});
}

// By the law of wet stops with this friction at rest, on its central side.
Value stop_by_the_law(Asked& in) {
  const Length tread = in.of<Length>("tread");
  const double at_rest = in.number("mu0") * wet_tread_share(tread);
  const double gone =
      in_kilometres_per_hour(grip_gone_at(tread, in.of<Length>("film"), std::nullopt).central);
  return in.answer(
      braked_by({at_rest, at_rest / (gone * gone)}, in.of<Speed>("speed"), Speed(), 0.0));
}

Value stop_band(Asked& in) {
  const DistanceBand band = stop_of(in);
  if (!band.shortest || !band.longest) return in.answer(std::string_view("none"));
  return in.answer(*band.shortest, *band.longest);
}

// A stop on a worn tread over that on a less worn one.
Value worn_ratio(Asked& in) {
  const auto worn = worn_stop_ratio(grip_case(in), in.of<Speed>("speed"));
  if (!worn) return in.answer(std::string_view("none"));
  if (!in.has("against")) return Band{worn->low, worn->high};
  const auto less = worn_stop_ratio(grip_case(in, "against"), in.of<Speed>("speed"));
  if (!less) return in.answer(std::string_view("none"));
  return Band{worn->low / less->low, worn->high / less->low};
}

// Metres longer on a worn tread. They depend on the depth of water much more than a ratio does, and
// a report that does not state it may mean anything between two depths: the least is that of the
// thinner film, the most that of the deeper.
Value metres_longer(Asked& in) {
  const auto extra = [&](const char* film, std::optional<Length> DistanceBand::*side) {
    const auto stop = [&](const char* tread) {
      GripCase c;
      c.tread = in.of<Length>(tread);
      c.film = in.of<Length>(film);
      return braking_band(c, in.of<Speed>("speed"), Speed(), {}).*side;
    };
    const auto worn = stop("tread"), less = stop("against");
    return worn && less ? std::optional(*worn - *less) : std::nullopt;
  };
  const auto least = extra("film from", &DistanceBand::shortest);
  auto most = extra("film to", &DistanceBand::longest);
  // Where the longest is not told, what is told at all.
  if (!most) most = extra("film to", &DistanceBand::central);
  if (!least || !most) return in.answer(std::string_view("none"));
  return in.answer(*least, *most);
}

Braking braking(Asked& in) {
  return in.text("braking") == "full" ? Braking::full : Braking::normal;
}

RuleDistance school(Asked& in) { return driving_school(in.of<Speed>("speed"), braking(in)); }

GapRoad gap_road(Asked& in) {
  const std::string name = in.text("road");
  return name == "dry" ? GapRoad::dry : name == "wet" ? GapRoad::wet : GapRoad::ice;
}

Length texture(Asked& in) { return in.of<Length>("texture"); }

double up_to_five(double v) { return 5.0 * std::ceil(v / 5.0); }

// The printed totals are the sums of the two parts, each rounded to a metre.
Length to_the_metre(Length l) { return metres(std::round(in_metres(l))); }

constexpr Check checks[] = {
    // Friction.
    {"friction in the handbook",
     [](Asked& in) {
       return in.answer(
           handbook_friction(in.of<Speed>("speed"), in.of<Length>("tread"), in.of<Length>("film")));
     }},
    {"friction, band",
     [](Asked& in) {
       const FrictionBand band = friction_of(in);
       return Value(Band{band.low, band.high});
     }},
    {"friction, band, old or hard tyres",
     [](Asked& in) {
       GripCase c = grip_case(in);
       c.old_or_hard = true;
       const FrictionBand band = Grip(c).at(in.of<Speed>("speed"));
       return Value(Band{band.low, band.high});
     }},
    {"deceleration, band",
     [](Asked& in) {
       const FrictionBand band = friction_of(in);
       return Value(Band{deceleration(band.low, 0.0), deceleration(band.high, 0.0)});
     }},
    {"deceleration, band, old or hard tyres",
     [](Asked& in) {
       GripCase c = grip_case(in);
       c.old_or_hard = true;
       const FrictionBand band = Grip(c).at(in.of<Speed>("speed"));
       return Value(Band{deceleration(band.low, 0.0), deceleration(band.high, 0.0)});
     }},
    {"friction, most", [](Asked& in) { return in.answer(friction_of(in).high); }},
    {"friction kept on a film, low",
     [](Asked& in) {
       return in.answer(
           share_kept(in.of<Speed>("speed"), in.of<Length>("tread"), in.of<Length>("film")).low);
     }},
    {"friction of an unstudded winter tyre over a studded one, least",
     [](Asked& in) {
       GripCase c = grip_case(in);
       c.tyre = find_tyre_grip("winter");
       const double plain = Grip(c).at(in.of<Speed>("speed")).low;
       c.tyre = find_tyre_grip("studded");
       return in.answer(plain / Grip(c).at(in.of<Speed>("speed")).low);
     }},
    {"high-grip synthetic in the wet over natural rubber in the dry",
     [](Asked& in) {
       GripCase c = grip_case(in);
       c.rubber = find_rubber("high-grip");
       const double wet = Grip(c).at(in.of<Speed>("speed")).central;
       c.rubber = find_rubber("natural");
       c.film = Length();
       return in.answer(wet / Grip(c).at(in.of<Speed>("speed")).central);
     }},
    {"heat of a rubber",
     [](Asked& in) {
       const Rubber* rubber = find_rubber(in.text("rubber"));
       if (rubber == nullptr) in.fail("no such rubber", "");
       if (rubber == nullptr) return Value();
       constexpr std::string_view words[] = {"unknown", "cold", "working", "too hot"};
       return in.answer(
           words[static_cast<int>(heat_of(*rubber, in.of<Temperature>("temperature")))]);
     }},
    // Skid number and friction index.
    {"texture by a sand patch",
     [](Asked& in) {
       return in.answer(sand_patch_texture(in.number("cubic inches"), in.of<Length>("patch")));
     }},
    {"skid gradient", [](Asked& in) { return in.answer(skid_gradient(texture(in))); }},
    {"skid gradient over the older form",
     [](Asked& in) {
       const Length t = texture(in);
       return in.answer(skid_gradient(t) / (4.1 * std::pow(1000.0 * in_inches(t), -0.47)));
     }},
    {"skid gradient by the older form",
     [](Asked& in) { return in.answer(4.1 * std::pow(1000.0 * in_inches(texture(in)), -0.47)); }},
    {"skid number",
     [](Asked& in) {
       const double gradient = skid_gradient(texture(in));
       const double at_zero =
           skid_number_at_zero_speed(in.number("SN"), gradient, in.of<Speed>("measured at"));
       return in.answer(skid_number(at_zero, gradient, in.of<Speed>("speed")));
     }},
    {"skid number from a pendulum",
     [](Asked& in) { return in.answer(skid_number_from_pendulum(in.number("BPN"))); }},
    {"speed constant from a profile",
     [](Asked& in) { return in.answer(speed_constant_from_profile(in.of<Length>("profile"))); }},
    {"speed constant from a sand patch",
     [](Asked& in) { return in.answer(speed_constant_from_sand_patch(texture(in))); }},
    {"speed constant from a profile, by way of a sand patch",
     [](Asked& in) {
       return in.answer(
           speed_constant_from_sand_patch(estimated_sand_patch(in.of<Length>("profile"))));
     }},
    {"friction by the index",
     [](Asked& in) {
       return in.answer(index_friction(in.number("F60"), in.number("Sp"), in.of<Speed>("slip")));
     }},
    // Stops of ours beside measured ones.
    {"stop, band", stop_band},
    {"stop, shortest", [](Asked& in) { return in.answer(stop_of(in).shortest); }},
    {"stop, central", [](Asked& in) { return in.answer(stop_of(in).central); }},
    {"stop, longest", [](Asked& in) { return in.answer(stop_of(in).longest); }},
    {"stop by the law", stop_by_the_law},
    {"stop on a worn tread, central, times as long",
     [](Asked& in) {
       const auto worn = stop_of(in).central;
       const auto fresh = stop_of(in, "against").central;
       return worn && fresh ? in.answer(*worn / *fresh) : in.answer(std::string_view("none"));
     }},
    {"stop, central over measured",
     [](Asked& in) {
       const auto central = stop_of(in).central;
       return in.answer(central.value_or(Length()) / in.of<Length>("measured"));
     }},
    {"stop on a worn tread, times as long", worn_ratio},
    {"stop on a worn tread, longer by", metres_longer},
    {"speed left, band",
     [](Asked& in) {
       const SpeedBand left =
           speed_left_band(grip_case(in), in.of<Speed>("speed"), in.of<Length>("after"), {});
       return in.answer(left.low, left.high);
     }},
    // Rules of stopping.
    {"Highway Code, thinking",
     [](Asked& in) {
       return in.answer(to_the_metre(highway_code(in.of<Speed>("speed")).thinking));
     }},
    {"Highway Code, braking",
     [](Asked& in) {
       return in.answer(to_the_metre(highway_code(in.of<Speed>("speed")).braking));
     }},
    {"Highway Code, both",
     [](Asked& in) {
       const RuleDistance rule = highway_code(in.of<Speed>("speed"));
       return in.answer(to_the_metre(rule.thinking) + to_the_metre(rule.braking));
     }},
    {"Highway Code, both in feet",
     [](Asked& in) { return in.answer(highway_code(in.of<Speed>("speed")).total()); }},
    {"Highway Code, times in the wet", [](Asked& in) { return in.answer(highway_code_wet); }},
    {"Highway Code, times on ice", [](Asked& in) { return in.answer(highway_code_ice); }},
    {"Highway Code, braking of a friction over it",
     [](Asked& in) {
       const Speed v = in.of<Speed>("speed");
       const auto braked = braking_distance(v, in.number("friction"), 0.0);
       return in.answer(braked.value_or(Length()) / highway_code(v).braking);
     }},
    {"following gap",
     [](Asked& in) { return in.answer(following_gap(in.of<Speed>("speed"), gap_road(in))); }},
    {"following time", [](Asked& in) { return in.answer(following_time(gap_road(in))); }},
    {"driving school, thinking", [](Asked& in) { return in.answer(school(in).thinking); }},
    {"driving school, braking", [](Asked& in) { return in.answer(school(in).braking); }},
    {"driving school, both", [](Asked& in) { return in.answer(school(in).total()); }},
    {"driving school, deceleration",
     [](Asked& in) {
       const double v = in_metres_per_second(in.of<Speed>("speed"));
       return in.answer(v * v / (2.0 * in_metres(school(in).braking)));
     }},
    {"sight distance, US",
     [](Asked& in) { return in.answer(sight_distance_us(in.of<Speed>("speed"))); }},
    {"sight distance, US, up to five feet",
     [](Asked& in) {
       return in.answer(feet(up_to_five(in_feet(sight_distance_us(in.of<Speed>("speed"))))));
     }},
    {"sight distance, metric",
     [](Asked& in) { return in.answer(sight_distance_metric(in.of<Speed>("speed"))); }},
    {"sight distance, metric, up to five metres",
     [](Asked& in) {
       return in.answer(
           metres(up_to_five(in_metres(sight_distance_metric(in.of<Speed>("speed"))))));
     }},
    {"sight distance on a grade",
     [](Asked& in) {
       return in.answer(sight_distance_on_grade(in.of<Speed>("speed"), in.number("grade")));
     }},
    {"braking distance",
     [](Asked& in) {
       return in.answer(braking_distance(in.of<Speed>("speed"), in.number("friction"),
                                         in.has("grade") ? in.number("grade") : 0.0));
     }},
    {"speed left",
     [](Asked& in) {
       return in.answer(
           speed_left(in.of<Speed>("speed"), in.of<Length>("room"), in.of<Length>("needed")));
     }},
    {"median reaction", [](Asked& in) { return in.answer(median_reaction); }},
    {"cautious reaction", [](Asked& in) { return in.answer(cautious_reaction); }},
    // Cornering.
    {"corner speed",
     [](Asked& in) {
       return in.answer(
           corner_speed(in.of<Length>("radius"), in.number("friction"), in.number("bank")));
     }},
    {"corner speed, simple form",
     [](Asked& in) {
       return in.answer(
           corner_speed_simple(in.of<Length>("radius"), in.number("friction"), in.number("bank")));
     }},
    {"design radius, US",
     [](Asked& in) {
       return in.answer(
           design_radius_us(in.of<Speed>("speed"), in.number("friction"), in.number("bank")));
     }},
    {"design radius, metric",
     [](Asked& in) {
       return in.answer(
           design_radius_metric(in.of<Speed>("speed"), in.number("friction"), in.number("bank")));
     }},
    {"design radius, metric, up to five metres",
     [](Asked& in) {
       return in.answer(metres(up_to_five(in_metres(design_radius_metric(
           in.of<Speed>("speed"), in.number("friction"), in.number("bank"))))));
     }},
    {"comfortable side friction",
     [](Asked& in) { return in.answer(comfortable_side_friction(in.of<Speed>("speed"))); }},
    {"comfortable speed on the US design radius",
     [](Asked& in) {
       const double bank = in.number("bank");
       return in.answer(comfortable_corner_speed(
           design_radius_us(in.of<Speed>("speed"), in.number("friction"), bank), bank));
     }},
    {"radius from a chord",
     [](Asked& in) {
       return in.answer(radius_from_chord(in.of<Length>("chord"), in.of<Length>("sagitta")));
     }},
    {"side peak over braking peak", [](Asked& in) { return in.answer(side_share); }},
    {"braking left in a bend",
     [](Asked& in) {
       return in.answer(braking_left(in.number("braking friction"), in.number("side friction"),
                                     in.number("demand")));
     }},
};

}  // namespace

Checks grip_checks() { return {std::begin(checks), std::end(checks)}; }

}  // namespace treadwater::checks
