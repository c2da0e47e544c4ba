// Tables of the standards: load index, speed symbol, load against speed, laws, textures, friction.
#include "core/standard/friction.hpp"
#include "core/standard/load_adjustment.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/rain_words.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/speed_load.hpp"
#include "core/standard/speedometer.hpp"
#include "core/standard/tread_law.hpp"
#include "tests/register/register.hpp"

namespace treadwater::checks {
namespace {

using namespace standard;

int index(Asked& in, const char* name) { return static_cast<int>(in.number(name)); }

Mass rated(Asked& in, const char* name = "index") {
  const auto load = load_of_index(index(in, name));
  if (!load) in.fail("no such load index: ", name);
  return load.value_or(Mass());
}

std::optional<Allowance> allowance(Asked& in) {
  const std::string of = in.text("allowance");
  if (of == "towing, rear tyre") return towing_rear_tyre();
  if (of == "car tyre on a trailer") return car_tyre_on_trailer();
  if (of == "C tyre on a trailer") return commercial_tyre_on_trailer();
  if (of == "US trailer tyre") return us_trailer_tyre(in.of<Speed>("speed"));
  in.fail("no such allowance: ", of);
  return std::nullopt;
}

template <class Q>
Value part_of_allowance(Asked& in, Q Allowance::*part) {
  const auto a = allowance(in);
  return a ? in.answer((*a).*part) : in.answer(std::string_view("none"));
}

RainScale scale(Asked& in) {
  const std::string name = in.text("scale");
  if (name == "UK rain") return RainScale::uk_rain;
  if (name == "UK showers") return RainScale::uk_showers;
  if (name != "US") in.fail("no such scale: ", name);
  return RainScale::us;
}

const TreadLaw& law(Asked& in) {
  const TreadLaw* found = find_tread_law(in.text("place"));
  if (found == nullptr) in.fail("no such place: ", "place");
  return found == nullptr ? *tread_laws().begin() : *found;
}

Value winter_depth(Asked& in, Length WinterRule::*construction) {
  const auto& rule = law(in).winter;
  return rule ? in.answer((*rule).*construction) : in.answer(std::string_view("none"));
}

MotorcycleLoad motorcycle_load(Asked& in) {
  const std::string name = in.text("capacity");
  if (name == "light") return MotorcycleLoad::light;
  if (name == "extra") return MotorcycleLoad::extra;
  if (name != "normal") in.fail("no such capacity: ", name);
  return MotorcycleLoad::normal;
}

// The rows of one source for one surface, dry or wet, in the order of the table.
const FrictionRow* friction_row(Asked& in) {
  const std::string source = in.text("of"), surface = in.text("surface");
  const bool wet = in.text("state") == "wet";
  double nth = in.has("nth") ? in.number("nth") : 1.0;
  for (const FrictionRow& row : friction_rows())
    if (row.source->id == source && row.surface == surface && row.wet == wet && --nth == 0.0)
      return &row;
  in.fail("no such row of friction: ", surface);
  return nullptr;
}

constexpr Check checks[] = {
    {"load of index", [](Asked& in) { return in.answer(load_of_index(index(in, "index"))); }},
    {"speed of symbol", [](Asked& in) { return in.answer(speed_row(in.symbol("symbol")).speed); }},
    {"load percent",
     [](Asked& in) { return in.answer(load_percent(in.symbol("symbol"), in.of<Speed>("speed"))); }},
    {"load at speed",
     [](Asked& in) {
       const auto percent = load_percent(in.symbol("symbol"), in.of<Speed>("speed"));
       return in.answer(rated(in) * (percent.value_or(0.0) / 100.0));
     }},
    {"pressure for speed",
     [](Asked& in) {
       return in.answer(pressure_for_speed(in.symbol("symbol"), in.of<Speed>("speed")));
     }},
    {"pressure printed higher at 210 km/h",
     [](Asked& in) { return in.answer(printed_higher_at_210); }},
    {"camber load factor",
     [](Asked& in) {
       return in.answer(camber_load_factor(in.number("camber"), in.of<Speed>("top speed")));
     }},
    {"camber pressure rise",
     [](Asked& in) {
       const auto f = camber_pressure_factor(-in.number("camber"), in.of<Speed>("top speed"));
       return f ? in.answer(100.0 * (*f - 1.0)) : in.answer(std::string_view("none"));
     }},
    {"allowance, percent", [](Asked& in) { return part_of_allowance(in, &Allowance::percent); }},
    {"allowance, greatest speed",
     [](Asked& in) { return part_of_allowance(in, &Allowance::at_most); }},
    {"allowance, pressure to add",
     [](Asked& in) { return part_of_allowance(in, &Allowance::at_least_more); }},
    {"allowance, load",
     [](Asked& in) {
       const auto a = allowance(in);
       return in.answer(a ? a->of(rated(in)) : Mass());
     }},
    {"twinned car tyres", [](Asked& in) { return in.answer(rated(in) * twinned_car_tyres); }},
    {"car tyre on a truck",
     [](Asked& in) { return in.answer(rated(in) / us_car_tyre_on_truck_divisor); }},
    {"single axle", [](Asked& in) { return in.answer(single_axle(rated(in))); }},
    {"twin axle", [](Asked& in) { return in.answer(twin_axle(rated(in))); }},
    {"share of the twin index",
     [](Asked& in) { return in.answer(rated(in, "twin") / rated(in, "single")); }},
    {"low speed percent",
     [](Asked& in) { return in.answer(low_speed_percent(in.of<Speed>("speed"))); }},
    {"commercial percent more",
     [](Asked& in) {
       const auto p =
           commercial_percent(index(in, "index"), in.symbol("symbol"), in.of<Speed>("speed"));
       return p ? in.answer(*p - 100.0) : in.answer(std::string_view("none"));
     }},
    {"commercial load",
     [](Asked& in) {
       const auto p =
           commercial_percent(index(in, "index"), in.symbol("symbol"), in.of<Speed>("speed"));
       return in.answer(rated(in) * (p.value_or(0.0) / 100.0));
     }},
    {"motor-cycle percent",
     [](Asked& in) {
       return in.answer(motorcycle_percent(in.symbol("symbol"), in.of<Speed>("speed")));
     }},
    {"motor-cycle measuring pressure",
     [](Asked& in) {
       return in.answer(motorcycle_measuring_pressure(motorcycle_load(in), in.symbol("symbol")));
     }},
    {"most a speedometer may show",
     [](Asked& in) { return in.answer(most_shown(in.of<Speed>("speed"))); }},
    {"speedometer allowed",
     [](Asked& in) {
       return in.answer(speedometer_allowed(in.of<Speed>("shown"), in.of<Speed>("speed")));
     }},
    {"rain word",
     [](Asked& in) {
       const RainWord* word = rain_word(scale(in), in.of<RainIntensity>("rain"));
       return in.answer(word == nullptr ? std::string_view("none") : word->id);
     }},
    {"least tread", [](Asked& in) { return in.answer(law(in).least); }},
    {"least winter tread, radial",
     [](Asked& in) { return winter_depth(in, &WinterRule::least_radial); }},
    {"least winter tread, cross-ply",
     [](Asked& in) { return winter_depth(in, &WinterRule::least_cross_ply); }},
    {"texture",
     [](Asked& in) {
       const RoadSurface* surface = find_road_surface(in.text("surface"));
       if (surface == nullptr) in.fail("no such surface: ", "surface");
       return in.answer(surface == nullptr ? Length() : surface->texture);
     }},
    {"friction, low",
     [](Asked& in) {
       const FrictionRow* row = friction_row(in);
       return in.answer(row == nullptr ? 0.0 : row->low);
     }},
    {"friction, high",
     [](Asked& in) {
       const FrictionRow* row = friction_row(in);
       return in.answer(row == nullptr ? 0.0 : row->high);
     }},
    {"rows of friction",
     [](Asked& in) {
       const std::string source = in.text("of");
       double rows = 0.0;
       for (const FrictionRow& row : friction_rows()) rows += row.source->id == source ? 1.0 : 0.0;
       return in.answer(rows);
     }},
};

}  // namespace

Checks standard_checks() { return {std::begin(checks), std::end(checks)}; }

}  // namespace treadwater::checks
