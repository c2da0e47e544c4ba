#include "core/answer/advice.hpp"

#include "core/standard/load_index.hpp"
#include "core/standard/speed_load.hpp"

namespace treadwater::answer {
namespace {

constexpr Source hot_reading_words{
    "hot-reading", "Car handbooks and tyre makers: a hot tyre reads 20 to 40 kPa high",
    "never let air out of a hot tyre", "", Standing::secondary};
constexpr Source deep_water_words{
    "deep-water", "Motoring club and environment agency advice on flood water",
    "do not enter more than 10 cm, or moving water", "", Standing::secondary};
constexpr Source thin_film_words{
    "thin-film", "Dunlap et al., Transportation Research Record 584",
    "traction falls at depths well below those needed for hydroplaning", "1976",
    Standing::published};
constexpr Source wet_braking_words{
    "wet-braking", "The Highway Code: stopping distances at least double on a wet road",
    "rule 126 and its notes, as reported", "", Standing::secondary};
constexpr Source tread_words{"tread-3mm", "Comparative wet braking tests of 3 mm and 1.6 mm tread",
                             "about a quarter longer from 50 mph at 1.6 mm", "2003",
                             Standing::secondary};

}  // namespace

const Source& hot_reading_advice() { return hot_reading_words; }
const Source& deep_water_advice() { return deep_water_words; }
const Source& thin_film_advice() { return thin_film_words; }
const Source& wet_braking_advice() { return wet_braking_words; }
const Source& tread_advice() { return tread_words; }

std::optional<Caution> caution_of_low_tread(Length tread, UnitSystem units) {
  constexpr Length low = millimetres(3.0);
  if (!(tread <= low)) return std::nullopt;
  return Caution{
      "tread_low",
      Level::care,
      filled("the tread is at or under #", {write_depth(low, units)}),
      filled("At or under # wet grip falls away fast: plan to replace it, and leave more "
             "room in the wet now.",
             {write_depth(low, units)}),
      {&tread_words}};
}

std::optional<Caution> caution_of_load_worked_out(const patch::GreatestLoad& load,
                                                  UnitSystem units) {
  if (!load.worked_out) return std::nullopt;
  return Caution{
      "load_index_assumed",
      Level::care,
      "its load index had to be worked out",
      filled("No load index was given. A P-metric tyre of this size works out at #, #, by "
             "the equation of its standard: check it against the sidewall.",
             {std::to_string(load.index), write(load.mass, units)}),
      {&patch::p_metric_capacity_source()}};
}

Caution caution_of_overload_at_speed(Speed speed, Mass load, Mass carried,
                                     standard::Vehicle vehicle, UnitSystem units) {
  return {"overload_at_speed", Level::unfit, "it is overloaded at the speed you intend",
          filled("At # this tyre carries # at most, and its load is #. No pressure makes up for "
                 "that: drive slower, or unload.",
                 {write(speed, units), write_at_most(carried, units), write_at_least(load, units)}),
          sources_of_load_at_speed(vehicle)};
}

Sources sources_of_load_at_speed(standard::Vehicle vehicle) {
  Sources sources{&standard::load_index_source(), &standard::speed_load_source()};
  if (vehicle == standard::Vehicle::motorcycle) sources.push_back(&standard::motorcycle_source());
  return sources;
}

std::optional<Caution> caution_of_narrow_beaded_edge(const sidewall::Reading& tyre,
                                                     UnitSystem units) {
  if (tyre.family != sidewall::Family::beaded_edge || tyre.motorcycle || !tyre.section_width ||
      *tyre.section_width >= patch::narrowest_of_cars)
    return std::nullopt;
  const patch::PressureBand usual = patch::beaded_edge_motorcycle();
  return Caution{
      "narrow_beaded_edge",
      Level::care,
      "it may be a motor cycle's tyre",
      filled("Judged as a car's beaded edge, which needs far more pressure than a motor cycle's (# "
             "to #). If it is on a motor cycle, add M/C to the sidewall text.",
             {write(usual.low, units), write(usual.high, units)}),
      {&patch::beaded_edge_motorcycle_source()}};
}

std::optional<Caution> caution_of_road_use(const sidewall::Reading& tyre, Level level) {
  if (!sidewall::has_mark(tyre, "competition") && !sidewall::has_mark(tyre, "nhs"))
    return std::nullopt;
  return Caution{"marked_not_for_road",
                 level,
                 "it is marked as not for the public road",
                 "Marked as not for the public road: on a stage the event's rules decide.",
                 {}};
}

}  // namespace treadwater::answer
