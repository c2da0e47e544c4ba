// The public functions of the core that no oracle recomputes, and why.
const reasons = {
  'a unit that a quantity is stored in: the number itself': [
    'in_metres', 'square_metres', 'in_square_metres', 'cubic_metres', 'in_cubic_metres', 'kilograms_per_cubic_metre',
    'in_kilograms_per_cubic_metre', 'kilograms_per_second', 'in_kilograms_per_second', 'seconds', 'in_seconds',
    'kilometres_per_hour', 'in_kilometres_per_hour', 'kilograms', 'in_kilograms', 'newtons', 'in_newtons', 'in_newtons_per_metre',
    'kilopascals', 'in_kilopascals', 'kilopascals_absolute', 'in_kilopascals_absolute', 'millimetres_per_hour',
    'in_millimetres_per_hour', 'kelvin', 'in_kelvin', 'kelvin_difference', 'kilogram_square_metres', 'kilograms_a_cubic_metre',
  ],
  'writes or finds words: tests/unit/read_test.cpp and quantity_test.cpp, tests/languages': [
    'report', 'read_quantity', 'filled', 'joined', 'add_item', 'is_digit', 'in_quotes', 'plain_spaces', 'utf8_length', 'at_head', 'learn', 'worded', 'within_sentence', 'worded_quantity', 'find_unit_system', 'trimmed',
    'significant', 'write', 'write_at_least', 'write_at_most', 'write_speed_range', 'write_depth', 'write_water', 'write_size', 'standing_name', 'weather_name', 'heat_caution',
  ],
  'figures out of a table, held against print in tests/register and tests/unit': [
    'friction_surfaces', 'friction_rows', 'towing_rear_tyre', 'car_tyre_on_trailer', 'commercial_tyre_on_trailer', 'single_axle',
    'twin_axle', 'motorcycle_measuring_pressure', 'rain_words', 'find_rain_word', 'rain_word', 'road_surfaces', 'find_road_surface',
    'speed_row', 'find_speed_symbol', 'tread_laws', 'find_tread_law', 'least_pressure', 'measured_footprints', 'measured_stiffnesses',
    'measured_onsets', 'measured_stops', 'thinnest_film', 'rubbers', 'find_rubber', 'find_warning_rule', 'find_tyre_kind',
  ],
  'what a sidewall says, read into a size or a law: tests/unit/sidewall_*.cpp, pressure_demand_test.cpp': ['nominal_size', 'laws_of', 'greatest_load', 'speed_symbol', 'vehicle_of', 'least_pressure_of'],
  'a rule of comparisons without arithmetic: tests/unit/car_test.cpp, fitment_test.cpp, air_test.cpp, grip_test.cpp, standard_test.cpp, tyre_check_test.cpp': [
    'in_season', 'crossing_figures', 'heat_of', 'repair', 'adequacy', 'may_be_mixed', 'match_on_axle', 'pressure_difference', 'tread_difference',
    'deeper_tread_in_front', 'even', 'wear_pattern', 'index_fits',
  ],
  'the same draws or times as a function that is recomputed, in order: tests/unit/onset_draws_test.cpp, leak_test.cpp, tests/property': [
    'at_share', 'chance_of_floating', 'sorted_kmh', 'onset_map', 'friction', 'leak_curve',
  ],
  'the planner, solved again in tests/solver and tests/property/stage_properties.cpp': [
    'check', 'refusal', 'safe_in', 'plan', 'too_much', 'first_choices', 'planned', 'time_step', 'work', 'start', 'choose', 'worn_after', 'mark',
  ],
};
const reasonOf = new Map(Object.entries(reasons).flatMap(([reason, names]) => names.map((name) => [name, reason])));

// A source is what it says: its fields are held against docs/method.md in tests/unit.
export function notRecomputed(place, name) {
  return /_source$/.test(name) ? 'a source' : reasonOf.get(name);
}
notRecomputed.names = [...reasonOf.keys()];
