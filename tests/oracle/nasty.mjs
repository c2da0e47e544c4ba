// What no formula should ever be asked, in each argument of each formula in turn. A number that is none may go
// through plain arithmetic as one that is none; it never becomes a number that reads well, and no other number
// ever becomes it where the header promises nothing, zero or the worst.
const values = [0, -0, -1, -1e-9, NaN, Infinity, -Infinity, 1e308, -1e308, 1e30, 5e-324, 2.2e-308, 1e-30];

// Arguments that are types of C++ and not numbers: enumerators, counts, yes and no.
const types = {
  load_of_index: [0], load_percent: [0], pressure_for_speed: [0], commercial_percent: [0, 1], motorcycle_percent: [0],
  load_capacity: [0], pressure_needed: [0], overall_diameter_band: [3], rolling_circumference: [3], beaded_edge_1921: [2],
  pressure_demand: [1, 2, 3, 8], film_depth: [0, 5], rain_film: [4], onset_model: [0, 7], crossing_limits: [0, 1],
  fixed: [1], driving_school: [1], following_gap: [1], natural_loss: [0], judge_loss: [0], chance_of_more_than: [0], get_home: [0],
  fitment_change: [3, 9], pressure_for_equal_load: [0, 3], axle_loads: [2, 3, 4], wheel_in: [1, 2],
  speed_with_tolerance: [1], judge: [0, 1, 2], stage_run: [0, 5, 6],
};

export function nasty(checks, lineOf) {
  const seen = new Set();
  return checks.flatMap((check) => {
    if (seen.has(check.formula) || check.line) return [];
    seen.add(check.formula);
    const rows = [check.over[Math.floor(check.over.length / 2)], check.over.at(-1)];
    return rows.flatMap((row) =>
      row.flatMap((given, i) =>
        typeof given !== 'number' || types[check.formula]?.includes(i) ? [] : values.map((value) => ({
          line: lineOf(check, row.with(i, value)), formula: check.formula, place: i, value,
          wrong: (got) => (got.some((v) => Number.isNaN(v)) ? 'no number' : ''),
        }))));
  });
}
