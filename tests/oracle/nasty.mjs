// Extreme values, in each argument of each formula in turn.
//
// NaN: every value of the answer that depends on it is nothing, NaN or infinite, or the answer is
// one of those listed below. Zero and numbers from 1e-12 to 1e12 of either sign: a formula that can
// return nothing returns no NaN. Beyond, to the ends of a double's range: any answer.
const values = [NaN, 0, -0, -1, -1e-9, 1e-12, 1e12, -1e12, 1e30, Infinity, -Infinity, 1e308, -1e308, 5e-324, 2.2e-308];
const tame = (value) => value === 0 || (Math.abs(value) >= 1e-12 && Math.abs(value) <= 1e12);

// The worst that there is, as the core writes it, by "formula place".
// No friction: uphill the car stops all the same, by its weight.
const noGrip = ['0 0 0', '23.923038889530858 23.923038889530858 23.923038889530858'];
const noSideGrip = ['0 0 0', '37.04884834587574 37.04884834587574 37.04884834587574']; // a bank alone holds some
const allLeft = ['130.01954757232255', '129.01987743345771'].map((v) => [v, v, v].join(' '));
const worst = {
  'load_capacity 1': '0', 'load_capacity 2': '0', // carries nothing
  'speedometer_allowed 0': '0', 'speedometer_allowed 1': '0',
  'crossing_limits 2': ['0 0.29999999999999999', '0 0.59999999999999998'], // no depth at all in such a flow
  'estimated_profile 0': '0', // no texture, no friction at speed
  'speed_left 1': ['90', '130'], 'speed_left 2': ['90', '130'], // all of it
  'comfortable_side_friction 0': '0.10000000000000001', 'comfortable_corner_speed 0': '0', 'comfortable_corner_speed 1': '0',
  'judge_crossing 1': '4', 'judge_crossing 3': '4', // afloat
  'friction_told 2': '0 0 0', 'friction_told 3': '0 0 0', 'friction_told 7': '0 0 0',
  'friction_at 2': '0 0 0', 'friction_at 3': '0 0 0', 'friction_at 4': '0 0 0',
  'corner_speed_band 2': noSideGrip, 'corner_speed_band 3': noSideGrip, 'corner_speed_band 4': '0 0 0', 'corner_speed_band 5': '0 0 0',
  'share_kept 0': '0 0 0', 'share_kept 1': '0 0 0', 'share_kept 2': '0 0 0',
  'seen_distance_speed 2': noGrip, 'seen_distance_speed 3': noGrip, 'seen_distance_speed 4': '0 0 0', 'seen_distance_speed 5': '0 0 0', 'seen_distance_speed 6': '0 0 0',
  'speed_left_band 2': allLeft, 'speed_left_band 3': allLeft, 'speed_left_band 5': '130 130 130',
  'braking_left 0': '0', 'braking_left 1': '0', 'braking_left 2': '0',
  'handbook_friction 0': '0', 'handbook_friction 2': '0',
  'beaded_edge_least 0': '413.68543759010163', // a section of no table: what any car's has at least
  'beaded_edge_least 1': ['482.63301052178525', '620.52815638515244'], // as the greatest load
  'chance_of_more_than 1': '1', 'get_home 1': '0 0',
};

// Not looked at in the case asked: the answer is what it is without it.
const unused = [
  'camber_load_factor 1', 'camber_pressure_factor 1', // to 3 degrees the car's speed does not count
  'section_height 2', 'theoretical_rim_width 2', 'section_width_on_rim 1', 'section_width_on_rim 2', 'contact_width 2',
  'cross_ply_length 0', 'cross_ply_length 2', 'cross_ply_length 3', 'cross_ply_area 2', 'cross_ply_area 3',
  'clearing 1', 'design_onset 1', 'film_onset 3', 'onset_model 4', // deep grooves; the film alone is the lower of the two
  'speed_left 0', // none is left of any speed
  'braking_band 8', 'stopping_band 8', // no bend, no bank
  'after_months 1', 'after_months 2', // 0 per cent, or 0 months
  'texture_share 1', // no less texture than usual
  'seen_distance_speed 8', 'speed_left_band 8',
  'punctures_in_time 1',
];

// By formula, what sees to it that none comes so far, or that it does no harm.
const elsewhere = {
  aquaplaning_onset: 'counts as the worst reading: "no number: water" in tests/property',
  ruler_error_at: 'the depth that it is the error of counts as the deepest: "no number: water" in tests/property',
  clearing: 'no grooves: what a bare tyre clears',
  design_onset: 'no texture: the film alone, the lower of the two',
  film_water_factor: 'no texture: the film alone, the lower of the two',
  exp2_of: 'the least that it gives, as its header says',
  power: 'an exponent is a constant of the core',
  log2_of: 'power, which alone asks it, keeps it out',
  fixed: 'a dash',
  nearest_load_index: 'the lightest, of a load out of a table',
  theoretical_rim_width: 'the aspect ratio is a whole number of a size that was read',
  fitment_change: 'the same',
  off_the_line: 'odd, or no line at all',
  judge_loss: 'doubtful: "no number: air" in tests/property',
  judge: 'check() of event.hpp lets no such event come to a plan',
  weather_follows: 'the same', wet_chance: 'the same', with_wet_chance: 'the same', stage_run: 'the same', usable_life: 'the same',
};

// Arguments that are types of C++ and not numbers: enumerators, counts, yes and no.
const types = {
  floor_to_five: [1], warning_pressure: [0], symbol_fit: [0, 2], following_time: [0],
  onset_by_word: [4], wet_grip_at_rest: [0], dry_grip: [0], friction_told: [4, 5], braking_told: [4, 5],
  load_of_index: [0], load_percent: [0], pressure_for_speed: [0], commercial_percent: [0, 1], motorcycle_percent: [0], percent_at_speed: [0, 1],
  load_capacity: [0], pressure_needed: [0], overall_diameter_band: [3], rolling_circumference: [3], beaded_edge_1921: [2],
  pressure_demand: [1, 2, 3, 4, 9], greatest_load_at: [1, 2, 3, 4, 9], film_depth: [0, 5], rain_film: [4], onset_model: [0, 7], crossing_limits: [0, 1],
  fixed: [1], driving_school: [1], following_gap: [1], natural_loss: [0], judge_loss: [0], chance_of_more_than: [0], get_home: [0],
  fitment_change: [3, 9], pressure_for_equal_load: [0, 3], axle_loads: [2, 3, 4], wheel_in: [1, 2],
  there_and_back: [0], judge_crossing: [0, 2], beaded_edge_pressure: [2], speed_with_tolerance: [1], judge: [0, 1, 2], stage_run: [0, 5, 6],
};

// Of each formula the two rows of its first check that lie in the middle and last; `usual` is the line as it was.
export function nasty(checks, lineOf) {
  const seen = new Set();
  return checks.flatMap((check) => {
    if (seen.has(check.formula) || check.line) return [];
    seen.add(check.formula);
    const rows = [check.over[Math.floor(check.over.length / 2)], check.over.at(-1)];
    return rows.flatMap((row) =>
      row.flatMap((given, i) =>
        typeof given !== 'number' || types[check.formula]?.includes(i)
          ? []
          : values.map((value) => ({ line: lineOf(check, row.with(i, value)), usual: lineOf(check, row), formula: check.formula, place: `${check.formula} ${i}`, value }))));
  });
}

// What is wrong with the answers to these lines; `usual` answers the lines as they were.
export function nastyFaults(lines, answers, usual) {
  const canBeNothing = new Set(lines.filter((_, i) => /none/.test(answers[i])).map(({ formula }) => formula));
  const needed = new Set();
  const wrong = lines.flatMap(({ line, formula, place, value }, i) => {
    const answer = answers[i];
    if (answer.startsWith('?')) return [`${line}: ${answer}`];
    const words = answer.split(' ');
    if (!Number.isNaN(value)) return tame(value) && canBeNothing.has(formula) && words.some((w) => /nan/.test(w)) ? [`${line}: ${answer}, where nothing was to be given`] : [];
    const no = (w) => /^-?(nan|none|inf)$/.test(w);
    const was = usual[i].split(' ');
    if (words.some(no) && words.every((w, k) => no(w) || w === was[k])) return [];
    if ([worst[place]].flat().includes(answer)) return needed.add(place), [];
    if (unused.includes(place) && answer === usual[i]) return needed.add(place), [];
    if (elsewhere[formula]) return needed.add(formula), [];
    return [`${line}: ${answer} (${usual[i]} as it was): ${place} is listed nowhere, or otherwise`];
  });
  const idle = [...Object.keys(worst), ...unused, ...Object.keys(elsewhere)].filter((entry) => !needed.has(entry));
  return [...wrong, ...idle.map((entry) => `${entry} is listed for nothing`)];
}
