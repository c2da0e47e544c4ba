// Every table of the core and a sweep of every formula, over its range and past its ends, held in
// one line each. tests/register and the other tests here say what is right; these say that nothing
// moved.
#include "tests/support/pinned.hpp"
#include "core/air/gas_law.hpp"
#include "core/air/get_home.hpp"
#include "core/air/leak.hpp"
#include "core/air/natural_loss.hpp"
#include "core/air/odds.hpp"
#include "core/air/repair.hpp"
#include "core/air/warning.hpp"
#include "core/car/axle_load.hpp"
#include "core/car/fitment.hpp"
#include "core/car/rules.hpp"
#include "core/car/wheel.hpp"
#include "core/grip/cornering.hpp"
#include "core/grip/limits.hpp"
#include "core/grip/measured.hpp"
#include "core/grip/rubber.hpp"
#include "core/grip/skid.hpp"
#include "core/grip/stopping.hpp"
#include "core/patch/beaded_edge.hpp"
#include "core/patch/contact.hpp"
#include "core/patch/cross_ply.hpp"
#include "core/patch/inclined.hpp"
#include "core/patch/load_capacity.hpp"
#include "core/patch/measured.hpp"
#include "core/patch/pressure_demand.hpp"
#include "core/patch/rating.hpp"
#include "core/quantity/read.hpp"
#include "core/quantity/splitmix.hpp"
#include "core/quantity/text.hpp"
#include "core/quantity/write.hpp"
#include "core/sidewall/sidewall.hpp"
#include "core/stage/plan.hpp"
#include "core/standard/friction.hpp"
#include "core/standard/load_adjustment.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/rain_words.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/speed_load.hpp"
#include "core/standard/tread_law.hpp"
#include "core/water/crossing.hpp"
#include "core/water/estimate.hpp"
#include "core/water/film.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"
#include "core/wear/rate.hpp"
#include "core/words/measure.hpp"
#include "core/words/say.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/stage_events.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

// From least to most in so many steps, both ends among them.
std::vector<double> over(double least, double most, int steps) {
  std::vector<double> all;
  for (int i = 0; i <= steps; ++i) all.push_back(least + (most - least) * i / steps);
  return all;
}

constexpr patch::TyreSize sizes[] = {{millimetres(205), 55, inches(16)},
                                     {millimetres(155), 80, inches(13)},
                                     {millimetres(315), 80, inches(22.5)}};

}  // namespace

// ---- standard ----

TEST_CASE("pinned: load indices") {
  Row row;
  for (int i = -1; i <= 280; ++i) row.add(standard::load_of_index(i));
  for (const double kg : over(30, 3000, 997)) row.add(standard::nearest_load_index(kilograms(kg)));
  CHECK(row.text() == "1560 figures, 5fecb78eb1f81748");
}

TEST_CASE("pinned: speed symbols, and load and pressure against speed") {
  Row row;
  for (int s = 0; s <= static_cast<int>(standard::SpeedSymbol::VR); ++s) {
    const auto symbol = static_cast<standard::SpeedSymbol>(s);
    const auto& line = standard::speed_row(symbol);
    row.add(line.letters, line.speed, standing_name(line.standing));
    for (const double kmh : over(0, 340, 68)) {
      const Speed speed = kilometres_per_hour(kmh);
      row.add(standard::load_percent(symbol, speed), standard::pressure_for_speed(symbol, speed),
              standard::motorcycle_percent(symbol, speed));
      for (const int index : {99, 121, 122, 123, 160})
        row.add(standard::commercial_percent(index, symbol, speed));
    }
    using standard::MotorcycleLoad;
    for (const auto load : {MotorcycleLoad::light, MotorcycleLoad::normal, MotorcycleLoad::extra})
      row.add(standard::motorcycle_measuring_pressure(load, symbol));
  }
  CHECK(row.text() == "19823 figures, 7c6fc35679533cf5");
}

TEST_CASE("pinned: other adjustments of load") {
  Row row;
  for (const double degrees : over(-1, 6, 56))
    for (const double kmh : {100.0, 160.0, 210.0, 240.0, 241.0, 270.0, 271.0, 300.0})
      row.add(standard::camber_load_factor(degrees, kilometres_per_hour(kmh)),
              standard::camber_pressure_factor(degrees, kilometres_per_hour(kmh)));
  for (const auto& allowance : {standard::towing_rear_tyre(), standard::car_tyre_on_trailer(),
                                standard::commercial_tyre_on_trailer()})
    row.add(allowance.percent, allowance.at_most, allowance.at_least_more);
  for (const double mph : over(40, 90, 100)) {
    const auto allowance = standard::us_trailer_tyre(miles_per_hour(mph));
    row.add(allowance.has_value());
    if (allowance) row.add(allowance->percent, allowance->at_least_more);
  }
  for (const double kmh : over(0, 120, 120))
    row.add(standard::low_speed_percent(kilometres_per_hour(kmh)));
  CHECK(row.text() == "2070 figures, 80be880d453b97cc");
}

TEST_CASE("pinned: laws of tread, surfaces, friction and words for rain") {
  Row row;
  for (const auto& law : standard::tread_laws()) {
    row.add(law.id, law.place, law.least, law.winter.has_value());
    if (!law.winter) continue;
    const auto& winter = *law.winter;
    row.add(winter.least_radial, winter.least_cross_ply, winter.only_in_winter_conditions,
            winter.else_counts_as_summer_tyre, winter.any_tyre);
    for (int month = 1; month <= 12; ++month)
      for (int day = 1; day <= 31; ++day) row.add(standard::in_season(winter, {month, day}));
  }
  for (const auto& surface : standard::road_surfaces())
    row.add(surface.id, surface.texture, surface.paved);
  for (const auto& surface : standard::friction_surfaces())
    row.add(surface.id, static_cast<int>(surface.ground), surface.road_surface, surface.share);
  for (const auto& line : standard::friction_rows())
    row.add(line.surface, line.wet, line.low, line.high, line.source->id);
  using standard::RainScale;
  for (const auto& word : standard::rain_words())
    row.add(word.id, static_cast<int>(word.scale), word.low, word.high);
  for (const auto scale : {RainScale::uk_rain, RainScale::uk_showers, RainScale::us})
    for (const double rain : over(-1, 60, 610)) {
      const auto* word = standard::rain_word(scale, millimetres_per_hour(rain));
      row.add(word == nullptr ? "none" : word->id);
    }
  CHECK(row.text() == "31347 figures, b8e7abab702dffcb");
}

// ---- quantity ----

TEST_CASE("pinned: every unit, as read") {
  Row row;
  const std::string_view spellings[] = {
      "kPa",     "bar",    "bars",  "mbar", "MPa",   "psi",    "lb/in2", "lbf/in2", "kg/cm2",
      "kgf/cm2", "kg",     "kgs",   "kilo", "kilos", "t",      "lb",     "lbs",     "cwt",
      "mm",      "cm",     "m",     "in",   "inch",  "inches", "\"",     "/32 in",  "/32",
      "/32\"",   "/32nds", "32nds", "ft",   "yd",    "km",     "mi",     "miles",   "km/h",
      "kmh",     "kph",    "mph",   "m/s",  "kn",    "kt",     "knots",  "°C",      "C",
      "°F",      "F",      "K",     "N",    "lbf",   "kgf",    "mm/h",   "mm/hr",   "in/h",
      "in/hr",   "s",      "min",   "h",    "d",     "days",   "",       "%",       "°",
      "deg",     "degrees"};
  const std::string_view usual[] = {"kPa", "kg", "mm", "km/h", "°C", "N", "mm/h", "s", ""};
  for (int d = 0; d <= static_cast<int>(Dimension::number); ++d)
    for (const std::string_view spelling : spellings)
      for (const std::string_view number : {"7", "-3.25", "1 1/2", "2,5", "1e2", ".5", "1.2.3"}) {
        const QuantityRequest request{
            static_cast<Dimension>(d), usual[d], -1e9, 1e9, "little", "much", "7"};
        const auto read = read_stored(joined({number, " ", spelling}), request);
        if (read)
          row.add(*read);
        else
          row.add(read.error().code);
      }
  CHECK(row.text() == "56592 figures, 0874a41d23fb959b");
}

TEST_CASE("pinned: figures and texts, as written") {
  Row row;
  for (const UnitSystem units : {UnitSystem::metric, UnitSystem::uk, UnitSystem::us})
    for (const double x : {0.0, 0.04, 0.05, 0.5, 0.96, 1.0, 1.6, 2.449, 2.451, 9.95, 13.7, 99.5,
                           123.456, 1999.0, 54321.0})
      row.add(write(kilopascals(x), units), write(kilograms(x), units),
              write(kilometres_per_hour(x), units),
              say_range(kilometres_per_hour(x), kilometres_per_hour(1.3 * x), units),
              write_depth(millimetres(x), units), write_water(millimetres(x), units),
              write_size(millimetres(x), units), write_size(millimetres(x), units, 1),
              write(square_centimetres(x), units), floor_to_five(kilometres_per_hour(x), units));
  for (const double x : {0.0, -0.4, 0.5, -1.5, 2.5, 9.9951, 999.5, 1234567.0, 1e-7})
    for (int digits = 0; digits <= 6; ++digits)
      row.add(fixed(x, digits), trimmed(x, digits), significant(x, digits + 1));
  for (const std::string_view text :
       {"a", "\x1f", "\x7f", "é", "\xc1\x81", "\xc2", "€", "\xe2\x82", "🛞", "\xf4\x90",
        "\xf5\x80\x80\x80", "\xed\xa0\x80",
        "a\xff"
        "b",
        "\xe2\x28\xa1", "0123456789012345678901234567890123456789",
        "01234567890123456789012345678901234567890", " a \t b  c\n", "\u00a0a\u202f"})
    row.add(in_quotes(text), plain_spaces(text));
  CHECK(row.text() == "5307 figures, d3047640b8065dcc");
}

// ---- patch ----

TEST_CASE("pinned: beaded edges") {
  Row row;
  using patch::Wheels;
  for (const double mm : over(55, 135, 80)) {
    const Length section = millimetres(mm);
    row.add(patch::beaded_edge_1909(section), patch::beaded_edge_load_today(section));
    for (const double kg : over(0, 2000, 25))
      for (const Wheels wheels : {Wheels::single, Wheels::twin}) {
        row.add(patch::beaded_edge_1921(section, kilograms(kg), wheels));
        const auto band = patch::beaded_edge_pressure(section, kilograms(kg), wheels);
        if (band) row.add(band->low, band->high);
      }
  }
  for (const double kg : over(0, 4000, 80)) row.add(patch::straight_side_1921(kilograms(kg)));
  row.add(patch::beaded_edge_motorcycle().low, patch::beaded_edge_motorcycle().high);
  CHECK(row.text() == "7897 figures, 48c5d8cda7abc9e5");
}

TEST_CASE("pinned: measured footprints, and what was fitted to them") {
  Row row;
  for (const auto& one : patch::measured_footprints())
    row.add(one.load, one.pressure, one.camber_degrees, one.length, one.width, one.gross, one.net);
  for (const auto& one : patch::measured_stiffnesses())
    row.add(one.pressure, one.camber_degrees, one.stiffness);
  for (const double n : over(500, 7000, 13))
    for (const double kpa : over(50, 400, 14))
      row.add(patch::fitted_area_255_40_17(newtons(n), kilopascals(kpa)));
  for (const double degrees : over(-10, 10, 80)) {
    const auto shares = patch::camber_shares(degrees);
    row.add(shares.has_value());
    if (shares)
      row.add(shares->stiffness, shares->length, shares->width, shares->area_low, shares->area,
              shares->area_high);
  }
  CHECK(row.text() == "780 figures, 0d19fc70556d50ab");
}

TEST_CASE("pinned: size, patch and load of a tyre") {
  Row row;
  for (const auto& size : sizes) {
    for (const bool cross_ply : {false, true}) {
      const auto around = patch::overall_diameter_band(size, cross_ply);
      const auto rolled = patch::rolling_circumference(size, cross_ply);
      row.add(around.low, around.nominal, around.high, rolled.low, rolled.nominal, rolled.high);
    }
    row.add(patch::section_height(size), patch::theoretical_rim_width(size),
            patch::section_width_on_rim(size, inches(7), inches(6)));
    for (const double kpa : over(0, 500, 20))
      for (const double kg : over(0, 900, 9)) {
        const auto contact =
            patch::contact_patch(size, kilopascals(kpa), kilograms(kg), kilograms(615));
        const auto lengths = patch::contact_length_band(contact);
        const auto areas = patch::contact_area_band(contact);
        row.add(contact.stiffness, contact.deflection, contact.length, contact.width, contact.area,
                lengths.low, lengths.high, areas.low, areas.high,
                patch::static_loaded_radius(size, newtons(9.8 * kg), contact.stiffness));
        const patch::CrossPly old{size.section_width, patch::overall_diameter(size),
                                  kilopascals(kpa + 1), kilopascals(250)};
        const Length pressed = patch::cross_ply_deflection(old, newtons(10.0 * kg));
        row.add(pressed, patch::cross_ply_load(old, millimetres(kg / 8)),
                patch::cross_ply_length(old, pressed), patch::cross_ply_area(old, pressed));
        const auto both =
            patch::cross_ply_patch(size, kilopascals(kpa), kilopascals(250), newtons(10.0 * kg));
        row.add(both.has_value());
        if (both)
          row.add(both->deflection_low, both->deflection_high, both->length_low, both->length_high,
                  both->area_low, both->area_high);
      }
    for (const double kpa : over(100, 400, 60))
      row.add(patch::p_metric_capacity(size.section_width, size.aspect_percent, size.rim_diameter,
                                       kilopascals(kpa)));
  }
  for (const auto& law :
       {patch::european_standard_load(), patch::european_extra_load(),
        patch::european_at_marked_pressure(kilopascals(475)), patch::temporary_spare_law(),
        patch::p_metric_standard_load(), patch::p_metric_extra_load(),
        patch::linear_at_marked_pressure(kilopascals(300))}) {
    row.add(law.reference, law.exponent, law.source->id);
    for (const double x : over(0, 700, 70))
      row.add(patch::load_capacity(law, kilograms(615), kilopascals(x)),
              patch::pressure_needed(law, kilograms(615), kilograms(x)));
  }
  row.add(patch::least_pressure());
  CHECK(row.text() == "13358 figures, 77295cf8cfbf3c7f");
}

TEST_CASE("pinned: the pressure that a duty asks for, and what a sidewall is rated for") {
  Row row;
  const patch::RatedTyre tyres[] = {
      {kilograms(615), standard::SpeedSymbol::V, patch::european_standard_load(), {}},
      {kilograms(580), standard::SpeedSymbol::T, patch::p_metric_standard_load(),
       patch::european_at_marked_pressure(kilopascals(240))},
      {kilograms(690), standard::SpeedSymbol::Y, patch::european_extra_load(), {}}};
  for (const auto& tyre : tyres)
    for (const double kg : over(0, 720, 12))
      for (const double kmh : {0.0, 60.0, 100.0, 160.0, 190.0, 210.0, 240.0, 270.0, 300.0})
        for (const double degrees : {-1.0, 0.0, 2.0, 3.0, 4.5})
          for (const bool towing : {false, true}) {
            const auto asked =
                patch::pressure_demand(tyre, {kilograms(kg), kilometres_per_hour(kmh), degrees,
                                              kilometres_per_hour(200), towing});
            if (asked)
              row.add(asked->base, asked->speed, asked->camber, asked->towing);
            else
              row.add(static_cast<int>(asked.error()));
          }
  for (const std::string_view text :
       {"205/55 R16 91V", "225/40 ZR18 (92Y) XL", "P205/75R15 97S", "P225/60R16",
        "LT235/85R16 120/116R", "195/75 R16 C 107/105R", "195/75 R16 C 107/105R 475 kPa",
        "165 SR 13", "T125/80 D15 95M", "31x10.50R15LT", "31x10.50R15LT 109Q", "6.40-13",
        "185/80-15", "815x105", "MT90B16 72H", "180/55 ZR 17 M/C (73W)", "205/55R16", "FR78-15"}) {
    const auto reading = sidewall::read(text);
    row.add(reading.has_value());
    if (!reading) continue;
    const auto load = patch::greatest_load(*reading);
    const auto laws = patch::laws_of(*reading);
    const auto symbol = patch::speed_symbol(*reading);
    const auto size = patch::nominal_size(*reading);
    row.add(load.has_value(), laws.has_value(), symbol.has_value(), size.has_value(),
            patch::overall_diameter(*reading));
    if (load) row.add(load->mass, load->index, load->worked_out);
    if (laws) row.add(laws->law.reference, laws->law.exponent, laws->second.has_value());
    if (symbol) row.add(static_cast<int>(*symbol));
    if (size) row.add(size->section_width, size->aspect_percent, size->rim_diameter);
  }
  CHECK(row.text() == "9438 figures, 7635f01587a11a12");
}

// ---- water ----

TEST_CASE("pinned: films of rain, and water in ruts") {
  Row row;
  using water::FilmModel;
  using water::Pavement;
  for (const double rain : {0.4, 0.5, 3.0, 25.0, 150.0, 151.0})
    for (const double path : {0.9, 1.0, 6.0, 50.0, 51.0})
      for (const double slope : {0.004, 0.005, 0.025, 0.1, 0.11})
        for (const double texture : {0.05, 0.1, 0.7, 2.0, 4.0, 4.1})
          for (const Pavement pavement :
               {Pavement::concrete, Pavement::dense_asphalt, Pavement::open_graded_asphalt}) {
            const water::RainOnRoad road{
                millimetres_per_hour(rain), {metres(path), slope}, millimetres(texture), pavement};
            for (int m = 0; m <= static_cast<int>(FilmModel::kinematic); ++m)
              row.add(water::film_depth(static_cast<FilmModel>(m), road));
            const auto film = water::rain_film(road);
            if (film) row.add(film->low, film->central, film->high);
          }
  for (const double crossfall : {-0.03, 0.01, 0.025})
    for (const double x : over(0, 40, 20)) {
      const auto path = water::flow_path(metres(3.5), crossfall, x / 1000);
      row.add(path.length, path.slope, water::rut_water(millimetres(x), metres(0.6), crossfall));
    }
  CHECK(row.text() == "23409 figures, b5e0a850d42a066a");
}

TEST_CASE("pinned: our onset by ruler and by word, the words, and the further rows") {
  Row row;
  for (const auto& word : standard::wetness_words)
    row.add(word.id, word.shallow, word.deep, word.film);
  for (const auto& one : water::further_onsets())
    row.add(one.id, static_cast<int>(one.says), one.tread, one.film, one.film_to, one.low, one.high,
            one.pressure, one.section_width, one.contradicts, one.remark);
  std::vector<water::Water> waters;
  for (const auto& word : standard::wetness_words)
    waters.push_back(water::Water::by_word(word.wetness));
  for (const double mm : {0.1, 0.6, 1.0, 1.7, 2.5, 3.2, 6.0, 12.0, 80.0})
    waters.push_back(millimetres(mm));
  for (const water::Water& depths : waters)
    for (const double kpa : {0.0, 150.0, 220.0, 290.0})
      for (const double tread : {0.0, 1.0, 1.6, 3.0, 8.0, 13.0})
        for (const double width : {0.0, 120.0, 205.0, 315.0}) {
          const auto band = water::aquaplaning_onset(
              {kilopascals(kpa), millimetres(tread), 1.0,
               width > 0.0 ? std::optional(millimetres(width)) : std::nullopt, depths,
               millimetres(0.9)});
          row.add(band.has_value());
          if (band)
            row.add(water::told(band->low), water::told(band->central), water::told(band->high),
                    water::held(*band));
        }
  CHECK(row.text() == "11584 figures, 05b16978e56f983f");
}

TEST_CASE("pinned: onset speeds, measured and by each model, and crossings") {
  Row row;
  for (const auto& one : water::measured_onsets())
    row.add(one.id, one.tread, one.film, one.low, one.high, one.section_width);
  for (const double bare : {0.1, 0.55})
    for (const double mm : over(0, 10, 100)) row.add(water::clearing(millimetres(mm), bare));
  for (const double kpa : {0.0, 50.0, 165.0, 220.0, 250.0, 410.0, 600.0, 830.0, 900.0}) {
    const GaugePressure pressure = kilopascals(kpa);
    row.add(water::pressure_only_onset(pressure), water::spin_up_onset(pressure));
    for (const double aspect : over(0.4, 1.6, 12))
      row.add(water::footprint_onset(pressure, aspect), water::truck_onset(pressure, aspect));
    for (const double film : {0.0, 0.4, 0.76, 1.0, 2.5, 5.0, 7.6, 10.0, 30.0})
      for (const double texture : {0.0, 0.2, 0.7, 3.0}) {
        row.add(water::design_onset(millimetres(film), millimetres(texture)),
                water::film_water_factor(millimetres(film), millimetres(texture)),
                water::smooth_tyre_onset(newtons(4200), pressure, millimetres(film)));
        for (const double grooves : {-0.1, 0.0, 0.5, 1.6, 4.0, 8.0, 8.5, 8.6}) {
          row.add(water::film_onset(
              {pressure, millimetres(grooves), millimetres(film), millimetres(texture)}));
          for (const bool truck : {false, true})
            for (const auto& model : water::onset_models()) {
              row.add(model.onset({pressure, millimetres(grooves), millimetres(film),
                                   millimetres(texture), 0.9, newtons(4200), truck}));
              row.add(model.onset({pressure,
                                   millimetres(grooves),
                                   millimetres(film),
                                   millimetres(texture),
                                   {},
                                   {},
                                   truck}));
            }
        }
      }
  }
  using water::VehicleKind;
  for (const auto& one : water::crossing_figures())
    row.add(one.vehicle.has_value(), one.depth, one.flow, one.floats, one.text);
  for (const auto vehicle :
       {VehicleKind::small_car, VehicleKind::large_car, VehicleKind::four_by_four})
    for (const bool moving : {false, true})
      for (const double kmh : {0.0, 3.0, 6.0, 10.0, 20.0}) {
        const water::Flow flow{moving, moving && kmh > 0.0
                                           ? std::optional<Speed>(kilometres_per_hour(kmh))
                                           : std::nullopt};
        const auto limits = water::crossing_limits(vehicle, flow);
        row.add(limits.stable_to, limits.afloat_at);
        for (const double mm : over(0, 800, 80))
          row.add(static_cast<int>(water::judge_crossing(vehicle, millimetres(mm), flow)));
      }
  CHECK(row.text() == "90508 figures, 194427e3df1bcdb5");
}

// ---- grip ----

TEST_CASE("pinned: rubber, and the friction of every surface under every tyre") {
  Row row;
  for (const auto& rubber : grip::rubbers()) {
    row.add(rubber.id, rubber.dry.low, rubber.dry.high, rubber.wet.low, rubber.wet.high,
            rubber.works_from, rubber.works_to, rubber.needs_heat);
    for (const double c : over(-20, 150, 170)) {
      const auto heat = grip::heat_of(rubber, celsius(c));
      row.add(static_cast<int>(heat), grip::heat_caution(rubber, heat).empty());
    }
    row.add(static_cast<int>(grip::heat_of(rubber, std::nullopt)));
  }
  for (const auto& surface : standard::friction_surfaces())
    for (const std::string_view id :
         {"road", "winter", "studded", "gravel", "wet", "cut-slick", "slick"}) {
      const auto* tyre = grip::find_tyre_grip(id);
      REQUIRE(tyre != nullptr);
      row.add(groove_credit(*tyre), tyre->paved, tyre->loose, tyre->winter);
      for (const double tread : {0.0, 1.6, 3.0, 8.0})
        for (const double film : {0.0, 0.1, 0.5, 1.0, 2.0, 5.0, 20.0}) {
          grip::GripCase grip_case;
          grip_case.surface = &surface;
          grip_case.tyre = tyre;
          grip_case.tread = millimetres(tread);
          grip_case.film = millimetres(film);
          if (tread > 2.0) grip_case.tread_heat = celsius(30.0 * tread - 80.0);
          const grip::Grip at(grip_case);
          for (const double kmh : {0.0, 20.0, 50.0, 90.0, 130.0, 200.0}) {
            const auto band = at.at(kilometres_per_hour(kmh));
            row.add(band.low, band.central, band.high);
          }
          const auto whole = grip::friction(grip_case, kilometres_per_hour(80));
          row.add(static_cast<int>(whole.sources.size()), static_cast<int>(whole.unknown.size()));
        }
    }
  for (const double kmh : over(0, 200, 40))
    for (const double tread : {-1.0, 0.0, 0.8, 1.6, 2.9, 8.0, 12.0})
      for (const double film : {0.0, 0.2, 0.7, 1.0, 1.7, 2.0, 5.0}) {
        const auto kept =
            grip::share_kept(kilometres_per_hour(kmh), millimetres(tread), millimetres(film));
        row.add(kept.low, kept.central, kept.high,
                grip::handbook_friction(kilometres_per_hour(kmh), millimetres(tread),
                                        millimetres(film)));
      }
  CHECK(row.text() == "61159 figures, ab332a1378980ed0");
}

TEST_CASE("pinned: the law of wet stops, and the stops that were measured") {
  Row row;
  for (const auto& stop : grip::measured_stops())
    row.add(stop.id, stop.tread, stop.film, stop.from, stop.stop, stop.source->id, stop.worked_out);
  const grip::SpeedBand floats{kilometres_per_hour(55), kilometres_per_hour(80),
                               kilometres_per_hour(105)};
  for (int told = 0; told <= static_cast<int>(grip::RoadGrip::polished); ++told) {
    const auto road = static_cast<grip::RoadGrip>(told);
    for (const auto& rest : {grip::wet_grip_at_rest(road), grip::dry_grip(road)})
      row.add(rest.low, rest.central, rest.high);
    for (const double tread : {0.0, 0.7, 1.6, 2.4, 4.0, 8.0, 12.0}) {
      row.add(grip::wet_tread_share(millimetres(tread)));
      for (const double film : {0.0, 0.05, 0.2, 0.7, 1.0, 1.5, 2.0, 2.6, 3.0, 20.0}) {
        grip::GripCase grip_case;
        grip_case.tread = millimetres(tread);
        grip_case.film = millimetres(film);
        grip_case.road = road;
        for (const bool old : {false, true})
          for (const bool onset : {false, true}) {
            grip_case.old_or_hard = old;
            grip_case.onset.reset();
            if (onset) grip_case.onset = floats;
            const auto gone = grip::grip_gone_at(grip_case.tread, grip_case.film, grip_case.onset);
            if (film > 0.0) row.add(gone.low, gone.central, gone.high);
            for (const double kmh : {30.0, 70.0, 110.0}) {
              const auto at = grip::Grip(grip_case).at(kilometres_per_hour(kmh));
              const auto band = grip::braking_band(grip_case, kilometres_per_hour(kmh), Speed(),
                                                   {-0.02, {}, 0.0});
              row.add(at.low, at.central, at.high, band.shortest, band.central, band.longest);
            }
          }
      }
    }
  }
  CHECK(row.text() == "32092 figures, 2c5023f52ab23522");
}

TEST_CASE("pinned: stops and bends") {
  Row row;
  for (const double film : {0.0, 1.0, 5.0}) {
    grip::GripCase grip_case;
    grip_case.tread = millimetres(4);
    grip_case.film = millimetres(film);
    for (const double grade : {-0.3, -0.08, 0.0, 0.1})
      for (const double bend : {0.0, 25.0, 120.0}) {
        grip::Road road{grade, {}, 0.03};
        if (bend > 0.0) road.radius = metres(bend);
        for (const double kmh : {0.0, 30.0, 70.0, 110.0, 160.0}) {
          const Speed speed = kilometres_per_hour(kmh);
          for (const auto& band :
               {grip::braking_band(grip_case, speed, kilometres_per_hour(20), road),
                grip::stopping_band(grip_case, speed, seconds(1.2), road)})
            row.add(band.shortest, band.central, band.longest);
          const auto left = grip::speed_left_band(grip_case, speed, metres(25), road);
          const auto seen = grip::seen_distance_speed(grip_case, metres(kmh), seconds(1.2), road);
          row.add(left.low, left.central, left.high, seen.low, seen.central, seen.high);
        }
      }
    for (const double radius : {0.0, 8.0, 60.0, 400.0})
      for (const double bank : {-0.1, 0.0, 0.12}) {
        const auto band = grip::corner_speed_band(grip_case, metres(radius), bank);
        row.add(band.low, band.central, band.high,
                grip::comfortable_corner_speed(metres(radius), bank));
      }
    const auto worn = grip::worn_stop_ratio(grip_case, kilometres_per_hour(80));
    row.add(worn.has_value());
    if (worn) row.add(worn->low, worn->central, worn->high);
  }
  for (const double x : over(0, 160, 32)) {
    const Speed speed = kilometres_per_hour(x);
    for (const double friction : {0.0, 0.05, 0.3, 0.9, 9.0})
      for (const double grade : {-0.4, -0.06, 0.0, 0.2}) {
        row.add(grip::braking_distance(speed, friction, grade),
                grip::stopping_distance(speed, seconds(1), friction, grade),
                grip::speed_to_stop_within(metres(x), seconds(1.5), friction, grade),
                grip::deceleration(friction, grade), grip::corner_speed(metres(x), friction, grade),
                grip::corner_speed_simple(metres(x), friction, grade),
                grip::side_demand(speed, metres(50), grade),
                grip::braking_left(0.9, friction, x / 100));
      }
    row.add(grip::radius_from_chord(metres(x), metres(2)),
            grip::design_radius_us(speed, 0.15, 0.06),
            grip::design_radius_metric(speed, 0.15, 0.06), grip::comfortable_side_friction(speed),
            grip::highway_code(speed).thinking, grip::highway_code(speed).braking,
            grip::driving_school(speed, grip::Braking::normal).total(),
            grip::driving_school(speed, grip::Braking::full).total(),
            grip::sight_distance_us(speed), grip::sight_distance_metric(speed),
            grip::sight_distance_on_grade(speed, -0.06), grip::sight_distance_on_grade(speed, 0.03),
            grip::speed_left(kilometres_per_hour(100), metres(x), metres(90)));
    for (const auto gap : {grip::GapRoad::dry, grip::GapRoad::wet, grip::GapRoad::ice})
      row.add(grip::following_gap(speed, gap), grip::following_time(gap));
    row.add(grip::skid_number(60, 1.2, speed), grip::skid_number_at_zero_speed(40, 1.2, speed),
            grip::skid_gradient(millimetres(x / 40 + 0.1)), grip::skid_number_from_pendulum(x),
            grip::sand_patch_texture(1.5, millimetres(x + 50)),
            grip::index_friction(0.4, 80, speed),
            grip::speed_constant_from_profile(millimetres(x / 40)),
            grip::speed_constant_from_sand_patch(millimetres(x / 40)),
            grip::estimated_sand_patch(millimetres(x / 40)),
            grip::estimated_profile(millimetres(x / 40)));
    for (const double texture : {0.1, 0.4, 0.7, 1.5, 3.0}) {
      const auto share = grip::texture_share(millimetres(texture), speed);
      row.add(share.low, share.high);
    }
  }
  for (const auto& word : standard::wetness_words) row.add(word.shallow, word.deep);
  CHECK(row.text() == "12358 figures, 234e65dca88827c9");
}

// ---- air ----

TEST_CASE("pinned: hot and cold, and air that goes") {
  Row row;
  for (const double c : over(-30, 90, 24)) {
    row.add(air::carried_over({kilopascals(220), {celsius(20), air::outside_at(metres(20 * c))}},
                              {celsius(c), air::outside_at(metres(30 * c))}),
            air::outside_at(metres(100 * c)));
    for (const auto holder : {air::AirHolder::tubeless, air::AirHolder::natural_rubber_tube}) {
      const auto lost = air::natural_loss(holder, celsius(c), days(c + 31));
      row.add(lost.low, lost.high);
      for (const double kpa : over(150, 240, 30)) {
        const auto judged = air::judge_loss(holder, {kilopascals(230), {celsius(15)}},
                                            {kilopascals(kpa), {celsius(c)}}, days(20));
        row.add(static_cast<int>(judged.kind), judged.lost, judged.natural.low,
                judged.natural.high);
      }
    }
    row.add(air::after_months(kilopascals(220), c / 10, 3));
  }
  row.add(air::hot_rise.low, air::hot_rise.high);
  for (const auto& size : sizes) row.add(air::cavity_volume(size), air::cavity_volume(size, 0.5));
  for (const double mm : {-1.0, 0.0, 0.5, 2.0, 6.0})
    for (const auto discharge : {air::sharp_hole, air::short_channel, air::any_hole}) {
      const auto leak = air::leak_through(millimetres(mm), litres(28), celsius(15), discharge);
      row.add(leak.has_value());
      if (!leak) continue;
      row.add(leak->slowest, leak->fastest);
      for (const double kpa : {-1.0, 0.0, 40.0, 90.0, 230.0, 700.0}) {
        for (const double to : {0.0, 20.0, 100.0, 230.0}) {
          const auto time = air::time_between(*leak, kilopascals(kpa), kilopascals(to));
          row.add(time.has_value());
          if (time) row.add(time->soonest, time->latest);
        }
        for (const double s : {-1.0, 0.0, 30.0, 600.0, 9000.0}) {
          const auto band = air::pressure_after(*leak, kilopascals(kpa), seconds(s));
          row.add(band.has_value());
          if (band) row.add(band->low, band->high);
        }
        const auto curve = air::leak_curve(*leak, kilopascals(kpa));
        row.add(curve.has_value());
        if (curve)
          for (const auto& point : *curve)
            row.add(point.pressure, point.time.soonest, point.time.latest);
      }
    }
  for (const double kpa : over(0, 260, 26)) {
    const auto leak = air::leak_between({kilopascals(230), {celsius(15)}},
                                        {kilopascals(kpa), {celsius(12)}}, minutes(40));
    row.add(leak.has_value());
    if (leak)
      row.add(leak->slowest, leak->fastest, air::hole_of(leak->fastest, litres(28), celsius(15)));
    row.add(air::orifice_flow(kilopascals_absolute(kpa + 90), kilograms_per_cubic_metre(2.5),
                              kilopascals_absolute(101), square_centimetres(0.03)),
            air::air_density(kilopascals_absolute(kpa), celsius(15)),
            air::choking_pressure(kilopascals_absolute(kpa + 1)));
  }
  CHECK(row.text() == "12305 figures, 82df80b45f20141a");
}

TEST_CASE("pinned: getting home, repair, warning and odds") {
  Row row;
  using air::Way;
  for (const Way way : {Way::self_supporting, Way::lubricated, Way::temporary_spare,
                        Way::sealant_kit, Way::plain_flat})
    for (const double share : over(0, 1.2, 12)) {
      const auto home = air::get_home(way, share);
      row.add(home.id, home.speed, home.distance, home.claimed, home.pressure, home.at_once);
    }
  using air::Place;
  for (const Place place : {Place::tread, Place::shoulder, Place::sidewall, Place::bead})
    for (const double centre : over(0, 110, 22))
      for (const double hole : {-1.0, 0.0, 3.0, 6.0, 6.1})
        for (int flags = 0; flags < 64; ++flags) {
          air::Damage damage;
          damage.place = place;
          damage.from_centre = millimetres(centre);
          damage.hole = millimetres(hole);
          damage.section_width = millimetres(205);
          damage.tread = millimetres(flags & 1 ? 1.5 : 1.6);
          damage.driven_flat = (flags & 2) != 0;
          damage.self_supporting = (flags & 4) != 0;
          damage.sealant_used = (flags & 8) != 0;
          damage.cords_or_cracks = (flags & 16) != 0;
          damage.earlier_repairs = flags & 32 ? 2 : 0;
          if (flags % 3) damage.between_outer_grooves = flags % 3 == 1;
          if (flags % 5) damage.age_years = 2.5 * (flags % 5);
          if (flags % 7) damage.symbol = static_cast<standard::SpeedSymbol>(20 + flags % 7);
          const auto found = air::repair(damage);
          row.add(static_cast<int>(found.british), static_cast<int>(found.american));
          for (const auto* reason : found.reasons) row.add(reason->id);
        }
  for (const double mm : over(100, 400, 60)) row.add(air::repairable_width(millimetres(mm)));
  for (const auto& rule : air::warning_rules()) {
    row.add(rule.id, rule.share, rule.floor, rule.within, rule.from);
    for (const double kpa : over(100, 400, 30))
      row.add(air::warning_pressure(rule, kilopascals(kpa)),
              air::do_not_drive_below(kilopascals(kpa)));
  }
  for (const double x : over(0, 60, 30)) {
    row.add(air::expected_punctures({}, months(x)),
            air::expected_punctures({}, kilometres(900 * x)));
    for (int spares = 0; spares < 4; ++spares) row.add(air::chance_of_more_than(spares, x / 20));
  }
  CHECK(row.text() == "1827316 figures, a711fa7678c6f185");
}

// ---- wear and car ----

TEST_CASE("pinned: rates of wear") {
  Row row;
  const std::vector<std::vector<wear::Depth>> logs{
      {{0, millimetres(8)}, {100, millimetres(7.1)}},
      {{0, millimetres(8)}, {90, millimetres(7.2)}, {250, millimetres(5.1)}, {400, millimetres(4)}},
      {{0, millimetres(5)}, {50, millimetres(5.3)}, {51, millimetres(4.4)}},
      {{0, millimetres(5)}, {50, millimetres(5.0)}, {90, millimetres(5)}},
      {{0, millimetres(5)}, {0, millimetres(4)}},
      {{3, millimetres(5)}}};
  for (const auto& log : logs) {
    const auto rate = wear::rate_of(log);
    row.add(rate.has_value());
    if (!rate) continue;
    row.add(rate->per_unit, rate->low, rate->high, rate->zero, rate->depth_there);
    for (const double x : over(-100, 900, 20)) row.add(wear::depth_at(*rate, x));
    for (const double mm : over(0, 9, 45)) {
      const auto until = wear::until(*rate, millimetres(mm));
      row.add(until.earliest, until.central, until.latest,
              wear::is_odd(*rate, {120, millimetres(mm)}));
    }
  }
  CHECK(row.text() == "1326 figures, b99485274c95709e");
}

TEST_CASE("pinned: the rules of a car, another size, wheels and axle loads") {
  Row row;
  using sidewall::Construction;
  const std::string_view texts[] = {
      "205/55 R16 91V", "205/55 R16 91V XL", "205/55 ZR16", "195/65 R15 91T",
      "6.40-13",        "165 SR 13",         "185/80-15",   "815x105"};
  for (const auto left : texts)
    for (const auto right : texts) {
      const auto one = sidewall::read(left);
      const auto other = sidewall::read(right);
      if (!one || !other) continue;
      row.add(static_cast<int>(car::match_on_axle(*one, *other)),
              one->construction && other->construction &&
                  car::may_be_mixed(*one->construction, *other->construction));
    }
  for (const double a : over(100, 300, 20))
    for (const double b : over(100, 300, 20)) {
      row.add(static_cast<int>(car::pressure_difference(kilopascals(a), kilopascals(b))));
      row.add(static_cast<int>(car::tread_difference(millimetres(a / 40), millimetres(b / 40))));
      row.add(car::deeper_tread_in_front(millimetres(a / 40), millimetres(b / 40)));
      const auto pattern =
          car::wear_pattern(millimetres(a / 40), millimetres(5), millimetres(b / 40));
      row.add(pattern.has_value());
      if (pattern)
        row.add(pattern->under_inflated, pattern->over_inflated,
                static_cast<int>(pattern->alignment), pattern->even());
    }
  row.add(car::wear_pattern(millimetres(-1), millimetres(5), millimetres(5)).has_value());
  for (int s = 0; s <= static_cast<int>(standard::SpeedSymbol::VR); ++s)
    for (const double kmh : over(100, 320, 22))
      for (const bool flake : {false, true})
        row.add(static_cast<int>(car::symbol_fit(static_cast<standard::SpeedSymbol>(s),
                                                 kilometres_per_hour(kmh), flake)));
  for (const double kmh : over(100, 320, 22))
    for (const bool european : {false, true})
      row.add(car::speed_with_tolerance(kilometres_per_hour(kmh), european));
  for (const auto& before : sizes)
    for (const auto& after : sizes)
      for (const bool cross_ply : {false, true}) {
        const auto change = car::fitment_change({before, false, inches(6.5), millimetres(40)},
                                                {after, cross_ply, {}, millimetres(25)});
        row.add(change.circumference, change.diameter, change.ride_height, change.section_width,
                change.inward, change.outward, change.engine_speed());
      }
  for (const double kpa : over(100, 350, 25))
    for (const double kg : {300.0, 615.0, 800.0})
      row.add(car::pressure_for_equal_load(patch::european_standard_load(), kilograms(615),
                                           kilopascals(kpa), patch::european_extra_load(),
                                           kilograms(kg)));
  row.add(car::turns_per_kilometre(metres(1.95)));
  for (const double kg : over(200, 900, 14)) {
    const auto enough =
        car::adequacy(kilograms(kg), standard::Vehicle::car, standard::SpeedSymbol::T, false,
                      kilograms(500), kilometres_per_hour(kg / 3));
    row.add(enough.load, static_cast<int>(enough.speed));
  }
  for (const double x : over(0, 60, 12)) {
    car::CarLoad load;
    load.kerb = kilograms(900 + 10 * x);
    load.front_share = x / 50;
    load.driver_in_kerb = x > 20;
    load.front_people = static_cast<int>(x) % 3;
    load.rear_people = static_cast<int>(x) % 4;
    load.boot = kilograms(x);
    load.roof = kilograms(2 * x);
    load.tow_ball = kilograms(x - 5);
    const auto axles = car::axle_loads(load);
    row.add(axles.has_value());
    if (axles) row.add(axles->front, axles->rear);
    row.add(
        car::wheel_hop_hertz(newtons_per_millimetre(x + 5), newtons_per_millimetre(190),
                             kilograms(30 + x)),
        car::hop_speed(x, metres(0.7)),
        car::movement_for(newtons(100 * x), newtons_per_millimetre(25),
                          newtons_per_millimetre(x + 100)),
        car::ride_rate(newtons_per_millimetre(25), newtons_per_millimetre(x + 100)),
        car::equivalent_mass(car::kilogram_square_metres(x), metres(0.3)),
        car::equivalent_mass_factor(kilograms(1000), car::kilogram_square_metres(x), metres(0.3)),
        car::tyre_equivalent_mass(kilograms(x)));
  }
  using car::Metal;
  for (const Metal from :
       {Metal::steel, Metal::cast_aluminium, Metal::forged_aluminium, Metal::magnesium})
    row.add(car::kilograms_a_cubic_metre(from), car::wheel_in(kilograms(9), Metal::steel, from));
  CHECK(row.text() == "5538 figures, eedabf3cb5034bf8");
}

// ---- stage ----

TEST_CASE("pinned: kinds of stage tyre, and the weather that follows") {
  Row row;
  for (std::size_t i = 0; i < stage::set_kind_count; ++i) {
    const auto kind = stage::set_kind(i);
    row.add(kind.id, kind.undriven_life, kind.land_low, kind.land_high, kind.coolest, kind.hottest,
            kind.new_tread, kind.least_tread, static_cast<int>(kind.roughest), kind.studded,
            kind.moulded, kind.road_legal, kind.pace_known->id, kind.life_known->id,
            kind.land_known->id, kind.window_known->id);
    for (const auto& ground : kind.pace)
      for (const auto& pace : ground) row.add(pace.low, pace.high, pace.safe);
    for (const auto& ground : kind.life)
      for (const auto& life : ground) row.add(life);
    for (const double mm : over(-1, 12, 26)) row.add(stage::worn(kind, millimetres(mm)));
  }
  const stage::Chances some[] = {
      {1.0}, {0.5, 0.2, 0.2, 0.1}, {0, 0, 0.6, 0.4}, {0, 0, 0, 0, 0.7, 0.3}};
  for (const auto& last : some)
    for (const auto& next : some)
      for (const double persistence : {0.0, 0.4, 1.0}) {
        for (const auto& from : stage::weather_follows(last, next, persistence))
          for (const double chance : from) row.add(chance);
        for (const double chance : stage::with_wet_chance(next, persistence)) row.add(chance);
        row.add(stage::wet_chance(next));
      }
  CHECK(row.text() == "3593 figures, 7bd0e8cb481087f7");
}

namespace {

// Events drawn by SplitMix64: a few stages, halts, kinds and rules each.
class Drawn {
 public:
  explicit Drawn(std::uint64_t number) : stream_(number) {}
  int whole(int low, int high) {
    return low + static_cast<int>(stream_.next() % static_cast<std::uint64_t>(high - low + 1));
  }
  stage::Event event() {
    using namespace stage;
    Event event;
    for (int i = whole(1, 5); i > 0; --i) {
      const double wet = whole(0, 4) / 4.0;
      const double standing = wet * whole(0, 2) / 4.0;
      Stage stage =
          plain_stage(whole(4, 30), {(1 - wet) * 0.75, (1 - wet) * 0.25, wet - standing, standing},
                      static_cast<Halt>(whole(0, 3)));
      stage.gravel = whole(0, 3) == 0 ? 0.4 : 0.0;
      stage.abrasion = whole(5, 20) / 10.0;
      stage.roughness = static_cast<Roughness>(whole(0, 9) / 5);
      if (whole(0, 1)) stage.air = celsius(whole(-10, 35));
      event.stages.push_back(stage);
    }
    for (int i = whole(2, 4); i > 0; --i)
      event.sets.push_back(
          {set_kind(static_cast<std::size_t>(whole(0, 10))), whole(1, 2), whole(0, 6) / 10.0});
    if (whole(0, 2) == 0) event.rules.most_sets = whole(1, 3);
    event.rules.least_tread = millimetres(whole(0, 2) * 0.8);
    event.rules.no_studs = whole(0, 3) == 0;
    event.rules.moulded_only = whole(0, 4) == 0;
    event.rules.road_sections = whole(0, 3) == 0;
    event.drive = static_cast<Drive>(whole(0, 2));
    event.persistence = whole(0, 4) / 4.0;
    return event;
  }

 private:
  SplitMix64 stream_;
};

}  // namespace

TEST_CASE("pinned: plans of 400 events drawn at random") {
  Row row;
  int planned = 0;
  for (std::uint64_t number = 1; number <= 400; ++number) {
    const stage::Event event = Drawn(number).event();
    for (const auto attitude :
         {stage::Attitude::average, stage::Attitude::steady, stage::Attitude::safe}) {
      stage::Question question;
      question.attitude = attitude;
      question.look_for_swing = number % 5 == 0;
      const auto plan = stage::plan(event, question);
      row.add(plan.has_value());
      if (!plan) {
        for (const auto& problem : plan.error()) row.add(problem.code, problem.stage, problem.set);
        continue;
      }
      ++planned;
      row.add(plan->right_tyre_seconds, plan->expected_lost, plan->tail_lost, plan->worst_lost,
              plan->regret, plan->largest_regret, plan->every_path, plan->regret_error,
              plan->time_step, plan->wear_levels, plan->swing_complete);
      for (const auto& first : plan->first)
        row.add(static_cast<int>(first.set), first.loss, first.regret);
      for (const auto& halt : plan->halts) {
        row.add(static_cast<int>(halt.stage), static_cast<int>(halt.seen), halt.chance,
                static_cast<int>(halt.set));
        for (const double share : halt.fits) row.add(share);
      }
      for (const auto& left : plan->left)
        row.add(left.expected, left.least, left.undriven_expected, left.undriven_least);
      row.add(plan->swing.has_value(), plan->air_swing.has_value());
      if (plan->swing)
        row.add(static_cast<int>(plan->swing->stage), plan->swing->wet_now, plan->swing->wet_then,
                plan->swing->set ? static_cast<int>(*plan->swing->set) : -1);
      if (plan->air_swing)
        row.add(plan->air_swing->kelvins,
                plan->air_swing->set ? static_cast<int>(*plan->air_swing->set) : -1);
    }
  }
  CHECK(planned > 400);
  CHECK(row.text() == "36466 figures, cd263e6292b8cae6");
}
