// The public functions of the core that no oracle recomputes, and why.
const reasons = {
  'a unit that a quantity is stored in: the number itself': [
    'in_metres', 'square_metres', 'in_square_metres', 'cubic_metres', 'in_cubic_metres', 'kilograms_per_cubic_metre',
    'in_kilograms_per_cubic_metre', 'kilograms_per_second', 'in_kilograms_per_second', 'seconds', 'in_seconds',
    'kilometres_per_hour', 'in_kilometres_per_hour', 'kilograms', 'in_kilograms', 'newtons', 'in_newtons', 'in_newtons_per_metre',
    'kilopascals', 'in_kilopascals', 'kilopascals_absolute', 'in_kilopascals_absolute', 'millimetres_per_hour',
    'in_millimetres_per_hour', 'kelvin', 'in_kelvin', 'kelvin_difference', 'kilogram_square_metres', 'kilograms_a_cubic_metre',
  ],
  'writes or finds words: tests/unit/read_test.cpp, quantity_test.cpp, writing_test.cpp and words_test.cpp, tests/languages': [
    'report', 'read_quantity', 'joined', 'add_item', 'is_digit', 'plain_spaces', 'utf8_length', 'hash_of', 'find_unit_system', 'trimmed',
    'use_decimal_sign', 'decimal_sign', 'significant', 'significant_at_most', 'significant_at_least', 'write', 'write_at_least', 'write_at_most', 'write_depth', 'write_worn',
    'write_water', 'write_size', 'write_signed', 'write_signed_size', 'write_signed_percent', 'write_rim', 'write_wheel', 'write_signed_wheel', 'write_kelvins',
    'write_distance', 'write_whole_distance', 'write_estimated_distance', 'write_estimated_number', 'write_longest_distance', 'write_rain', 'write_seconds', 'write_minutes',
    'write_share', 'shown_depth', 'shown_water', 'shown_distance', 'in_road_units', 'speed_shown_as', 'distance_shown_as', 'road_unit', 'round_speed',
    'standing_name', 'weather_name', 'heat_caution', 'name_of',
  ],
  'the calendar, against printed dates: tests/unit/date_test.cpp': ['days_since_1970', 'date_of', 'read_iso_date', 'write_iso_date', 'monday_of_week', 'today_by_the_clock', 'read_date_code'],
  'laws that are recomputed, put to one tyre: tests/unit/supported_test.cpp': [
    'rating_at', 'pressure_for_load', 'reference', 'two_laws', 'capacity', 'least_capacity', 'carried_at', 'needed', 'needed_at', 'speed_supported', 'sources',
  ],
  'formulas that are recomputed, put to one road, log or team: tests/unit/moved_rules_test.cpp': [
    'rain_to_reckon_with', 'may_be_deeper', 'depth_from_rain', 'groove_credit', 'up_to', 'wear_matters', 'when_new', 'speed_where_new_stops', 'gap_road', 'add', 'first_day',
    'last_day', 'least_of', 'last_rise', 'since', 'odometer_runs_back', 'wear_of', 'worst_wear', 'slick', 'tread_left', 'wear_factor', 'plan_team', 'same_kind', 'least_true',
  ],
  'figures out of a table, held against print in tests/register and tests/unit': [
    'friction_surfaces', 'friction_rows', 'towing_rear_tyre', 'car_tyre_on_trailer', 'commercial_tyre_on_trailer', 'single_axle',
    'twin_axle', 'motorcycle_measuring_pressure', 'rain_words', 'find_rain_word', 'rain_word', 'road_surfaces', 'find_road_surface',
    'speed_row', 'find_speed_symbol', 'tread_laws', 'find_tread_law', 'least_pressure', 'measured_footprints', 'measured_stiffnesses',
    'measured_onsets', 'further_onsets', 'measured_stops', 'wetness_word', 'find_wetness', 'thinnest_film', 'rubbers', 'find_rubber', 'find_warning_rule', 'find_tyre_kind', 'find_set_kind',
  ],
  'a part of the stop, which is recomputed as a whole': ['square_law', 'told_to', 'paved_side', 'wetness_of', 'blend'],
  'a part of the onset, which is recomputed as a whole': [
    'rounded', 'held_tread', 'held_film', 'held_width', 'held_pressure', 'root', 'not_shallow', 'flooding', 'width_factor',
    'pressure_factor', 'new_tyre_film_law', 'deep_cautious', 'on_grid', 'onset_of', 'risen', 'shallowness', 'grooves_hold', 'cautious_grooves',
    'cautious_water', 'cautious_rise', 'at_ranks', 'sorted',
  ],
  'what water is given as, what is told of a band, and which of two is asked: tests/unit/onset_law_test.cpp': [
    'by_ruler', 'between', 'shallow', 'middle', 'deep', 'reading_error', 'at_low_end', 'at_high_end', 'one_depth',
    'floats_at_road_speed', 'held', 'onset_in_puddles', 'shallower_than_puddles', 'stricter', 'counts_as_slick',
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
    'check', 'refusal', 'safe_in', 'plan', 'too_much', 'first_choices', 'planned', 'time_step', 'work', 'start', 'choose', 'worn_after', 'mark', 'best', 'every', 'count', 'path', 'likeliest_on',
    'no_usable_set', 'no_set_left', 'solve', 'look_for_swing', 'walk',
  ],
};
const reasonOf = new Map(Object.entries(reasons).flatMap(([reason, names]) => names.map((name) => [name, reason])));

// A source is what it says: its fields are held against docs/method.md in tests/unit.
export function notRecomputed(place, name) {
  return /_source$/.test(name) ? 'a source' : reasonOf.get(name);
}
notRecomputed.names = [...reasonOf.keys()];
