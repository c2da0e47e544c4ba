// What a sidewall is rated for, and the patch it stands on.
#include "core/patch/beaded_edge.hpp"
#include "core/patch/contact.hpp"
#include "core/patch/cross_ply.hpp"
#include "core/patch/inclined.hpp"
#include "core/patch/load_capacity.hpp"
#include "core/patch/measured.hpp"
#include "core/patch/pressure_demand.hpp"
#include "core/patch/rating.hpp"
#include "core/standard/load_index.hpp"
#include "tests/register/register.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::checks {
namespace {

using namespace patch;

LoadLaw law_named(Asked& in, const std::string& name) {
  if (name == "European, standard") return european_standard_load();
  if (name == "European, reinforced") return european_extra_load();
  if (name == "P-metric, standard") return p_metric_standard_load();
  const GaugePressure marked = in.of<GaugePressure>("marked");
  if (name == "European, marked pressure") return european_at_marked_pressure(marked);
  if (name == "light truck") return light_truck_at_marked_pressure(marked);
  if (name != "linear") in.fail("no such law: ", name);
  return linear_at_marked_pressure(marked);
}
LoadLaw law(Asked& in) { return law_named(in, in.text("law")); }

Wheels wheels(Asked& in) { return in.text("wheels") == "twin" ? Wheels::twin : Wheels::single; }

Force load_of(Asked& in) { return in.of<Force>("load"); }
Mass as_mass(Force load) { return kilograms(in_newtons(load) / exact::standard_gravity); }

Stiffness stiffness_of(Asked& in) {
  return vertical_stiffness(in.size("size"), in.of<GaugePressure>("pressure"));
}

ContactPatch patch_of(Asked& in) {
  return contact_patch(in.size("size"), in.of<GaugePressure>("pressure"), as_mass(load_of(in)),
                       in.of<Mass>("rated"));
}

CrossPly cross_ply(Asked& in) {
  return {in.of<Length>("width"), in.of<Length>("diameter"), in.of<GaugePressure>("pressure"),
          in.of<GaugePressure>("rated")};
}

CamberShares shares(Asked& in) {
  const auto found = camber_shares(-in.number("camber"));
  if (!found) in.fail("no shares for that camber", "");
  return found.value_or(CamberShares{});
}

// The measured print at a load and pressure, upright.
const MeasuredFootprint& print_at(Asked& in, const char* pressure) {
  const GaugePressure p = in.of<GaugePressure>(pressure);
  const Force load = load_of(in);
  for (const MeasuredFootprint& print : measured_footprints())
    if (print.camber_degrees == 0.0 && std::fabs(in_psi(print.pressure) - in_psi(p)) < 0.1 &&
        std::fabs(in_newtons(print.load) - in_newtons(load)) < 1.0)
      return print;
  in.fail("no such print", "");
  return *measured_footprints().begin();
}

double ours_longer(const MeasuredFootprint& low, const MeasuredFootprint& high) {
  const TyreSize size{millimetres(255.0), 40.0, inches(17.0)};
  const auto length = [&](const MeasuredFootprint& print) {
    return contact_patch(size, print.pressure, as_mass(print.load), kilograms(750.0)).length;
  };
  return length(low) / length(high);
}

// What the 25 upright prints say together.
struct Prints {
  double count = 0.0, net = 0.0, gross = 0.0;
  Band empty{9.0, 0.0}, fill{9.0, 0.0}, push{9.0, 0.0};
};
void widen(Band& band, double v) {
  band.low = std::min(band.low, v);
  band.high = std::max(band.high, v);
}
Prints prints() {
  Prints all;
  for (const MeasuredFootprint& print : measured_footprints()) {
    if (!print.net || print.camber_degrees != 0.0) continue;
    all.count += 1.0;
    all.net += in_square_metres(*print.net);
    all.gross += in_square_metres(print.gross);
    widen(all.empty, 1.0 - *print.net / print.gross);
    widen(all.fill, print.gross / rectangle(print.length, print.width));
    widen(all.push, in_newtons(print.load) / in_square_metres(print.gross) / 1000.0 /
                        in_kilopascals(print.pressure));
  }
  return all;
}

Band measured_stiffness() {
  Band all{1e9, 0.0};
  for (const MeasuredStiffness& row : measured_stiffnesses()) widen(all, row.stiffness.stored());
  return all;
}

// The mean share of the upright stiffness left under a camber, measured at five pressures.
double stiffness_left(double camber) {
  double left = 0.0, upright = 1.0;
  for (const MeasuredStiffness& row : measured_stiffnesses()) {
    if (row.camber_degrees == 0.0) upright = row.stiffness.stored();
    if (row.camber_degrees == camber) left += row.stiffness.stored() / upright / 5.0;
  }
  return left;
}

std::string_view refusal(NoPressure why) {
  switch (why) {
    case NoPressure::not_a_number:
      return "not a number";
    case NoPressure::overloaded:
      return "overloaded";
    case NoPressure::above_symbol:
      return "above its symbol";
    case NoPressure::too_much_camber:
      return "too much camber";
    case NoPressure::towing_too_fast:
      return "towing too fast";
  }
  return "refused";
}

Value demand(Asked& in) {
  const auto greatest = standard::load_of_index(static_cast<int>(in.number("index")));
  RatedTyre tyre{greatest.value_or(Mass()), in.symbol("symbol"), law(in), std::nullopt};
  if (in.has("second law")) tyre.second_law = law_named(in, in.text("second law"));
  Duty duty{in.of<Mass>("load"), in.of<Speed>("speed"), 0.0, {}, in.yes("towing")};
  if (in.has("camber")) duty.camber_degrees = in.number("camber");
  duty.car_top_speed = in.of<Speed>("top speed", Speed());
  const auto asked = pressure_demand(tyre, duty);
  return asked ? in.answer(asked->total()) : in.answer(refusal(asked.error()));
}

constexpr Check checks[] = {
    // Geometry.
    {"overall diameter", [](Asked& in) { return in.answer(overall_diameter(in.size("size"))); }},
    {"least overall diameter, radial",
     [](Asked& in) { return in.answer(overall_diameter_band(in.size("size"), false).low); }},
    {"greatest overall diameter, radial",
     [](Asked& in) { return in.answer(overall_diameter_band(in.size("size"), false).high); }},
    {"section width on a rim",
     [](Asked& in) {
       return in.answer(
           section_width_on_rim(in.size("size"), in.of<Length>("rim"), in.of<Length>("usual rim")));
     }},
    {"rolling circumference",
     [](Asked& in) { return in.answer(rolling_circumference(in.size("size"), false).nominal); }},
    {"turns a mile",  // more turns, a smaller circumference
     [](Asked& in) {
       const auto band = rolling_circumference(in.size("size"), false);
       return Value(Band{miles(1.0) / band.high, miles(1.0) / band.low});
     }},
    // Stiffness and contact.
    {"vertical stiffness", [](Asked& in) { return in.answer(stiffness_of(in)); }},
    {"deflection", [](Asked& in) { return in.answer(deflection(load_of(in), stiffness_of(in))); }},
    {"static loaded radius",
     [](Asked& in) {
       return in.answer(static_loaded_radius(in.size("size"), load_of(in), stiffness_of(in)));
     }},
    {"contact length of a stiffness",
     [](Asked& in) {
       return in.answer(
           contact_length(load_of(in), in.of<Stiffness>("stiffness"), in.of<Length>("radius")));
     }},
    {"contact length", [](Asked& in) { return in.answer(patch_of(in).length); }},
    {"contact width", [](Asked& in) { return in.answer(patch_of(in).width); }},
    {"contact area", [](Asked& in) { return in.answer(patch_of(in).area); }},
    {"area by the balance of forces",
     [](Asked& in) {
       return in.answer(
           contact_area(load_of(in), in.of<GaugePressure>("pressure"), in.number("share")));
     }},
    {"contact length, band",
     [](Asked& in) {
       const LengthBand band = contact_length_band(patch_of(in));
       return in.answer(band.low, band.high);
     }},
    {"contact area, band",
     [](Asked& in) {
       const AreaBand band = contact_area_band(patch_of(in));
       return in.answer(band.low, band.high);
     }},
    {"area by the fit",
     [](Asked& in) {
       return in.answer(fitted_area_255_40_17(load_of(in), in.of<GaugePressure>("pressure")));
     }},
    {"length under camber",
     [](Asked& in) { return in.answer(in.of<Length>("upright length") * shares(in).length); }},
    {"width under camber",
     [](Asked& in) { return in.answer(in.of<Length>("upright width") * shares(in).width); }},
    {"area under camber",
     [](Asked& in) { return in.answer(in.of<Area>("upright area") * shares(in).area); }},
    {"share of the area under camber, low",
     [](Asked& in) { return in.answer(shares(in).area_low); }},
    {"share of the area under camber, high",
     [](Asked& in) { return in.answer(shares(in).area_high); }},
    {"stiffness lost to camber", [](Asked& in) { return in.answer(1.0 - shares(in).stiffness); }},
    // The measured prints themselves.
    {"prints, upright", [](Asked& in) { return in.answer(prints().count); }},
    {"prints, mean void", [](Asked& in) { return in.answer(1.0 - prints().net / prints().gross); }},
    {"prints, least void", [](Asked& in) { return in.answer(prints().empty.low); }},
    {"prints, greatest void", [](Asked& in) { return in.answer(prints().empty.high); }},
    {"prints, least fill", [](Asked& in) { return in.answer(prints().fill.low); }},
    {"prints, greatest fill", [](Asked& in) { return in.answer(prints().fill.high); }},
    {"prints, least contact pressure over inflation",
     [](Asked& in) { return in.answer(prints().push.low); }},
    {"prints, greatest contact pressure over inflation",
     [](Asked& in) { return in.answer(prints().push.high); }},
    {"prints, length at a lower pressure over that at a higher",
     [](Asked& in) { return in.answer(print_at(in, "low").length / print_at(in, "high").length); }},
    {"prints, area at a lower pressure over that at a higher",
     [](Asked& in) { return in.answer(print_at(in, "low").gross / print_at(in, "high").gross); }},
    {"our length at the same two pressures",
     [](Asked& in) { return in.answer(ours_longer(print_at(in, "low"), print_at(in, "high"))); }},
    {"measured stiffness, least",
     [](Asked& in) { return in.answer(Stiffness::stored(measured_stiffness().low)); }},
    {"measured stiffness, greatest",
     [](Asked& in) { return in.answer(Stiffness::stored(measured_stiffness().high)); }},
    {"measured stiffness lost to camber",
     [](Asked& in) { return in.answer(1.0 - stiffness_left(in.number("camber"))); }},
    // Cross-ply.
    {"cross-ply load",
     [](Asked& in) {
       return in.answer(cross_ply_load(cross_ply(in), in.of<Length>("deflection")));
     }},
    {"cross-ply length",
     [](Asked& in) {
       return in.answer(cross_ply_length(cross_ply(in), in.of<Length>("deflection")));
     }},
    {"cross-ply area",
     [](Asked& in) {
       return in.answer(cross_ply_area(cross_ply(in), in.of<Length>("deflection")));
     }},
    // Load and pressure.
    {"pressure needed",
     [](Asked& in) {
       return in.answer(pressure_needed(law(in), in.of<Mass>("greatest"), in.of<Mass>("load")));
     }},
    {"pressure needed, share",
     [](Asked& in) {
       const LoadLaw asked = law(in);
       return in.answer(pressure_needed(asked, in.of<Mass>("greatest"), in.of<Mass>("load")) /
                        asked.reference);
     }},
    {"load sure of a US size",
     [](Asked& in) {
       const auto tyre = sidewall::read(in.text("tyre"));
       const auto greatest = tyre ? patch::greatest_load(*tyre) : std::nullopt;
       if (!greatest) in.fail("no rating", "");
       return in.answer(greatest ? greatest->sure : Mass());
     }},
    {"load capacity",
     [](Asked& in) {
       return in.answer(
           load_capacity(law(in), in.of<Mass>("greatest"), in.of<GaugePressure>("pressure")));
     }},
    {"P-metric capacity",
     [](Asked& in) {
       const TyreSize size = in.size("size");
       return in.answer(p_metric_capacity(size.section_width, size.aspect_percent,
                                          size.rim_diameter, in.of<GaugePressure>("pressure")));
     }},
    {"P-metric capacity by the square-root law",
     [](Asked& in) {
       const TyreSize size = in.size("size");
       const Mass full = p_metric_capacity(size.section_width, size.aspect_percent,
                                           size.rim_diameter, kilopascals(240.0));
       return in.answer(
           load_capacity(p_metric_standard_load(), full, in.of<GaugePressure>("pressure")));
     }},
    {"nearest load index of the P-metric capacity",
     [](Asked& in) {
       const TyreSize size = in.size("size");
       return in.answer(static_cast<double>(standard::nearest_load_index(
           p_metric_capacity(size.section_width, size.aspect_percent, size.rim_diameter,
                             in.of<GaugePressure>("pressure")))));
     }},
    {"pressure for a duty", demand},
    // Beaded edge and its time.
    {"beaded edge, 1909",
     [](Asked& in) { return in.answer(beaded_edge_1909(in.of<Length>("section"))); }},
    {"beaded edge, 1909, an inch of section",
     [](Asked& in) {
       const Length section = in.of<Length>("section");
       const auto p = beaded_edge_1909(section);
       return in.answer(p ? in_psi(*p) / in_inches(section) : 0.0);
     }},
    {"beaded edge, 1921",
     [](Asked& in) {
       return in.answer(
           beaded_edge_1921(in.of<Length>("section"), in.of<Mass>("axle load"), wheels(in)));
     }},
    {"beaded edge, least pressure",
     [](Asked& in) {
       const auto band =
           beaded_edge_pressure(in.of<Length>("section"), in.of<Mass>("axle load"), wheels(in));
       return band ? in.answer(band->low) : in.answer(std::string_view("none"));
     }},
    {"beaded edge, greatest pressure",
     [](Asked& in) {
       const auto band =
           beaded_edge_pressure(in.of<Length>("section"), in.of<Mass>("axle load"), wheels(in));
       return band ? in.answer(band->high) : in.answer(std::string_view("none"));
     }},
    {"beaded edge, load today",
     [](Asked& in) { return in.answer(beaded_edge_load_today(in.of<Length>("section"))); }},
    {"beaded edge, load of a wheel",
     [](Asked& in) { return in.answer(in.of<Mass>("axle load") / 2.0); }},
    {"beaded edge, diameter over the beads",
     [](Asked& in) {
       return in.answer(beaded_edge_rim(in.of<Length>("overall"), in.of<Length>("section")));
     }},
    {"beaded edge, motor cycle, least",
     [](Asked& in) { return in.answer(beaded_edge_motorcycle().low); }},
    {"beaded edge, motor cycle, greatest",
     [](Asked& in) { return in.answer(beaded_edge_motorcycle().high); }},
    {"straight side, 1921",
     [](Asked& in) { return in.answer(straight_side_1921(in.of<Mass>("car"))); }},
};

}  // namespace

Checks patch_checks() { return {std::begin(checks), std::end(checks)}; }

}  // namespace treadwater::checks
