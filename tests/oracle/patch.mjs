// Load, pressure, size and contact. Sources: UN R30 and the tables printed for it, the load laws as quoted in
// handbooks, Rhyne 2005, Besselink 2010, Smiley and Horne 1958 (docs/method.md says how each is known).
import { D, g, grid, inch, line, max, min, mph, NONE, pound, pow, psi, some, sqrt, sum } from './exact.mjs';

const mm = (v) => D(v).times(1000);
const symbols = { F: 12, G: 13, J: 14, K: 15, L: 16, M: 17, N: 18, P: 19, Q: 20, R: 21, S: 22, T: 23, U: 24, H: 25, V: 26, W: 27, Y: 28, ZR: 29 };
const speedOf = { Q: 160, R: 170, S: 180, T: 190, U: 200, H: 210, V: 240, W: 270, Y: 300, ZR: 240, F: 80, G: 90, J: 100, K: 110, L: 120, M: 130, N: 140, P: 150 };
const symbolOf = (place) => Object.keys(symbols).find((s) => symbols[s] === place);

// ---- load against speed, camber ----

function loadPercent(symbol, v) {
  const name = symbolOf(symbol);
  if (D(v).gt(speedOf[name])) return NONE;
  const from = { V: 210, W: 240, Y: 270 }[name];
  if (from === undefined || D(v).lte(from)) return D(100);
  return D(100).minus(D(name === 'V' ? '0.3' : '0.5').times(D(v).minus(from)));
}
function riseForSpeed(symbol, v) {
  const name = symbolOf(symbol);
  const rise = line([[160, 0], [210, 30]], v);
  const steep = { W: 190, Y: 220 }[name];
  return steep === undefined ? rise : max(rise, D(v).minus(steep));
}
const camberLoad = (degrees, top) => {
  const tilt = D(degrees).abs();
  if (tilt.gt(4) || (tilt.gt(3) && D(top).gt(270))) return NONE;
  return line([[2, 1], [4, '0.9']], tilt);
};
const camberPressure = (degrees, top) => {
  const share = camberLoad(degrees, top);
  return share === NONE ? NONE : pow(share, '-1.25');
};

// UN R54 Annex 8 as remembered: per cent of change every 5 km/h from 0; first the column, then its symbols.
const heavy = { // load index 122 and over
  F: '150 110 80 65 50 35 25 19 15 13 12 11 10 7.5 5 2.5 0 -3 -6 -10 -15',
  G: '150 110 80 65 50 35 25 19 15 13 12 11 10 8.5 7 5.5 4 2 0 -2.5 -5 -8 -13',
  J: '150 110 80 65 50 35 25 19 15 13 12 11 10 8.5 7 5.5 4 3 2 1 0 -2 -4 -7 -12',
  K: '150 110 80 65 50 35 25 19 15 13 12 11 10 8.5 7 5.5 4 3 2 1 0 0 0 -3 -7',
  L: '150 110 80 65 50 35 25 19 15 13 12 11 10 8.5 7 5.5 4 3 2 1 0 0 0 0 0',
  M: '150 110 80 65 50 35 25 19 15 13 12 11 10 8.5 7 5.5 4 3 2 1 0 0 0 0 0 0 0',
};
const to121 = {
  L: '110 90 75 60 50 42 35 29 25 22 20 17.5 15 13.5 12.5 11 10 8.5 7.5 6.5 5 3.75 2.5 1.25 0 -2.5 -5 -7.5 -10',
  M: '110 90 75 60 50 42 35 29 25 22 20 17.5 15 13.5 12.5 11 10 8.5 7.5 6.5 5 3.75 2.5 1.25 0 0 0 -2.5 -5 -7.5 -10',
  N: '110 90 75 60 50 42 35 29 25 22 20 17.5 15 13.5 12.5 11 10 8.5 7.5 6.5 5 3.75 2.5 1.25 0 0 0 0 0 -2.5 -5 -7.5 -10',
  P: '110 90 75 60 50 42 35 29 25 22 20 17.5 15 13.5 12.5 11 10 8.5 7.5 6.5 5 3.75 2.5 1.25 0 0 0 0 0 0 0 -2.5 -5',
};
function commercial(index, symbol, v) {
  const column = (index >= 122 ? heavy : to121)[symbolOf(symbol)];
  const row = column?.split(' ')[Math.ceil(v / 5)];
  return row === undefined ? NONE : D(100).plus(row);
}
function motorcycle(symbol, v) {
  const steps = { V: [[210, 100], [220, 95], [230, 90], [240, 85]], W: [[240, 100], [250, 95], [260, 85], [270, 75]] }[symbolOf(symbol)];
  if (steps === undefined) return v <= speedOf[symbolOf(symbol)] ? D(100) : NONE;
  const row = steps.find(([to]) => v <= to);
  return row === undefined ? NONE : D(row[1]);
}
// 0 a car's tyre, 1 a motor cycle's.
function percentAtSpeed(vehicle, symbol, v) {
  const percents = vehicle === 0 ? [loadPercent(symbol, v)] : [loadPercent(symbol, v), motorcycle(symbol, v)];
  return percents.includes(NONE) ? NONE : min(...percents);
}

// ---- load against pressure ----

// As the core numbers its laws; the last two are given a pressure.
const laws = [[250, '0.8'], [290, '0.8'], [420, '0.8'], [240, '0.5'], [280, '0.5']];
const lawOf = (law) => (Array.isArray(law) ? [law[1], law[0] === 5 ? '0.8' : '1'] : laws[law]);
const lawList = [0, 1, 2, 3, 4, [5, 475], [5, 350], [6, 450]];
const needed = (law, greatest, load) => {
  const [reference, exponent] = lawOf(law);
  return max(150, D(reference).times(pow(D(load).div(D(greatest)), D(1).div(exponent))));
};
const capacity = (law, greatest, p) => {
  const [reference, exponent] = lawOf(law);
  if (D(p).lt(150)) return D(0);
  return D(greatest).times(min(1, pow(D(p).div(reference), exponent)));
};

// ---- size and contact ----

const size = (s, a, rim) => [s / 1000, a, rim * 0.0254];
const sizes = [size(155, 80, 13), size(175, 70, 14), size(205, 55, 16), size(225, 45, 17), size(255, 40, 17), size(315, 30, 19), size(185, 82, 15), size(195, 65, 15), size(245, 35, 20.5)];
const height = (s, a) => D(s).times(D(a)).div(100);
const overall = (s, a, rim) => D(rim).plus(height(s, a).times(2));
const treadWidth = (s, a) => D('1.03').minus(D('0.004').times(D(a))).times(D(s));
const stiffness = (s, a, rim, p) =>
  D('0.00028').times(D(p)).times(sqrt(mm(treadWidth(s, a)).times(mm(overall(s, a, rim))))).plus('3.45').times(g).times(1000);
const contactLength = (f, k, r) => {
  const x = D(f).div(D(k).times(D(r)));
  return D(2).times(D(r)).times(D('0.7308').times(x).plus(D('0.6715').times(sqrt(x))));
};
const contactWidth = (s, a, share) => treadWidth(s, a).times(pow(min(1, share), '0.14'));
const contactArea = (f, p, share) => D(f).div(1000).div(D(p).plus(min(1, share).times(25)));
function contact(s, a, rim, p, load, rated) {
  const f = D(load).times(g);
  const k = stiffness(s, a, rim, p);
  const share = D(load).div(D(rated));
  const width = contactWidth(s, a, share);
  const area = contactArea(f, p, share);
  const length = max(contactLength(f, k, overall(s, a, rim).div(2)).times('0.87'), area.div(width.times('0.97')));
  return [k, f.div(k), length, width, area, width.div(length), f.div(area).div(1000)];
}
const share = (a) => (a >= 65 ? '0.7' : a >= 50 ? '0.75' : a >= 35 ? '0.85' : '0.9');

// Smiley and Horne, type I tyres: in any one system of units, so here metres and kPa give kN.
function crossPlyLoad(w, d, p, rated, deflection) {
  const x = D(deflection).div(D(w));
  const c = D('0.03');
  const f = x.lte(c.times(10).div(3)) ? D('0.96').times(x).plus(D('0.216').times(x).times(x).div(c)) : D('2.4').times(x.minus(c));
  return D(p).plus(D('0.08').times(D(rated))).times(D(w)).times(sqrt(D(w).times(D(d)))).times(f).times(1000);
}
const crossPlyLength = (d, deflection) => {
  const x = D(deflection).div(D(d));
  return D('1.7').times(D(d)).times(sqrt(x.minus(x.times(x))));
};

// ---- beaded edge ----

const cwt = pound.times(112);
const of1909 = [['3.5', 60], [4, 75], ['4.5', 85], [5, 90], ['5.5', 95]].map(([section, p]) => [D(section).times(inch), psi.times(p)]);
const of1921 = { // section: [[single], [twin]], each of [cwt on the axle, psi]
  90: [[[12, 56], [14, 62], [16, 70]]],
  105: [[[16, 60], [18, 70]]],
  120: [[[18, 56], [20, 60], [24, 70]], [[30, 56], [36, 60], [42, 70]]],
  135: [[[25, 56], [28, 60], [32, 70]], [[50, 56], [55, 60], [60, 70]]],
  150: [[[30, 60], [32, 65], [35, 75]]],
  155: [[[35, 65], [40, 75], [45, 90]], [[67, 65], [77, 75], [80, 80], [87, 90]]],
};

export const checks = [
  {
    // Within 2 % of a power of ten, and the decade rule: eighty steps are a factor of ten.
    formula: 'load_of_index', over: Array.from({ length: 280 }, (_, i) => [i]),
    expected: (i) => D(45).times(pow(10, D(i).div(80))), within: (i) => D(45).times(pow(10, D(i).div(80))).times('0.0195'),
  },
  { formula: 'load_of_index', over: [[-1], [280], [100000]], expected: () => NONE },
  { formula: 'load_percent', over: grid(Object.values(symbols).filter((s) => s >= 20), [0, 1, 160, 200, 210, 210.0001, 215, 225, 239.999, 240, 241, 262, 270, 270.01, 285, 300, 300.001, 1000]), expected: loadPercent },
  { formula: 'pressure_for_speed', over: grid([20, 25, 26, 27, 28], [0, 100, 160, 160.5, 185, 190, 195, 210]).concat(grid([26], [220, 240]), grid([27], [215, 225, 240]), grid([28], [215, 230, 250, 260, 270])), expected: riseForSpeed },
  { formula: 'camber_load_factor', over: grid([-4.01, -4, -3, -2, 0, 1, 2, 2.01, 2.5, 3, 3.01, 3.3, 4, 4.0001, 90], [100, 270, 270.1, 400]), expected: camberLoad },
  { formula: 'camber_pressure_factor', over: grid([-4.01, -4, -3, -2, 0, 1, 2, 2.01, 2.5, 3, 3.01, 3.3, 4, 4.0001, 90], [100, 270, 270.1, 400]), expected: camberPressure },
  { formula: 'low_speed_percent', over: [[0, 142], [25, 142], [25.01, 135], [30, 135], [31, 125], [40, 125], [49, 115], [50, 115], [59, 110], [60, 110], [60.1, 100], [200, 100]], line: ([v]) => `${v}`, expected: (v, percent) => D(percent) },
  { formula: 'commercial_percent', over: grid([100, 121, 122, 150], Object.values(symbols).filter((s) => s <= 19), [0, 1, 5, 33, 40, 60, 62, 75, 80, 97, 100, 105, 110, 115, 119, 120, 130, 140, 150]).filter(([, s, v]) => v <= speedOf[symbolOf(s)]), expected: commercial },
  { formula: 'motorcycle_percent', over: grid([22, 25, 26, 27], [0, 180, 180.1, 210, 211, 220, 230.5, 240, 241, 250, 265, 270, 271]), expected: motorcycle },
  { formula: 'percent_at_speed', over: grid([0, 1], [25, 26, 27, 28, 29], [0, 180, 210, 210.5, 221, 239, 240, 240.1, 250, 262, 270, 285, 300, 301]), expected: percentAtSpeed },
  {
    // The core's own table, held above, gives the masses; the nearest of them is what is looked for.
    formula: 'nearest_load_index', first: Array.from({ length: 280 }, (_, i) => `load_of_index ${i}`),
    over: [0, 1, 45, 46.25, 46.3, 243.5, 244, 250, 615, 622, 622.6, 999, 5000, 1e5, 1e9].map((m) => [m]),
    expected: (m, masses) => D(masses.map(Number).reduce((best, mass, i, all) => (Math.abs(mass - m) < Math.abs(all[best] - m) ? i : best), 0)),
  },
  {
    // Per cent, to what speed, with how much more air, and of 615 kg: 65, 75 and 85 mph, 10 psi.
    formula: 'us_trailer_tyre', over: [[0, 0], [100, 0], [104.6, 0], [104.61, 1], [120.7, 1], [120.71, 2], [136.79, 2]], line: ([v]) => `${v}`,
    expected: (v, step) => [[100, 65, 0], [100, 75, 10], [90, 85, 10]].map(([percent, to, more]) => [D(percent), mph.times(to), psi.times(more), D(percent).times('6.15')])[step],
  },
  { formula: 'us_trailer_tyre', over: [[136.8], [200]], expected: () => NONE },
  { formula: 'speedometer_allowed', over: grid([0, 4, 50, 59, 59.01, 100, 114, 114.01], [0, 50, 100]), expected: (shown, truth) => D(D(shown).gte(truth) && D(shown).lte(D(truth).times('1.1').plus(4)) ? 1 : 0) },
  { formula: 'true_speed_after', over: grid([0, 33.3, 120], [0.97, 1, 1.05]), expected: (v, ratio) => D(v).times(D(ratio)) },
  { formula: 'most_shown', over: [[0], [33.3], [100], [250]], expected: (v) => D(v).times('1.1').plus(4) },

  { formula: 'load_capacity', over: grid(lawList, [335, 615, 1450], [0, 100, 149.999, 150, 180, 193.7, 220, 239, 240, 250, 290, 475, 1000]), expected: capacity },
  { formula: 'pressure_needed', over: grid(lawList, [335, 615, 1450], [0.01, 100, 250, 334, 412.5]), expected: needed },
  { formula: 'there_and_back', over: grid(lawList, [335, 615], [150, 180.3, 239]), expected: () => D(1) },
  {
    // Series 50 to 80, the rim in whole millimetres.
    formula: 'p_metric_capacity', over: grid([0.155, 0.205, 0.225, 0.265], [50, 55, 60, 75, 80], [13, 15, 16.5, 18].map((d) => d * 0.0254), [150, 180, 240, 280]),
    expected: (s, a, rim, p) => {
      const sd = D('0.34848').plus(D('0.6497').times(D(a)).div(100)).times(mm(s));
      return D('6.67e-5').times(sqrt(p)).times(pow(sd, '1.39')).times(mm(rim).toDecimalPlaces(0).plus(sd));
    },
  },
  { formula: 'section_height', over: sizes, expected: height },
  { formula: 'overall_diameter', over: sizes, expected: overall },
  {
    formula: 'overall_diameter_band', over: sizes.flatMap((s) => [[...s, 0], [...s, 1]]),
    expected: (s, a, rim, crossPly) => ['0.97', '1', crossPly ? '1.08' : '1.04'].map((by) => D(rim).plus(height(s, a).times(2).times(by))),
  },
  { formula: 'theoretical_rim_width', over: [25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 82].map((a) => size(205, a, 16)), expected: (s, a) => D(s).times(share(a)) },
  { formula: 'section_width_on_rim', over: sizes.flatMap((s) => [0.1143, 0.1524, 0.2286].map((rim) => [...s, rim, 0.165])), expected: (s, a, d, rim, usual) => D(s).plus(D('0.4').times(D(rim).minus(D(usual)))) },
  {
    formula: 'rolling_circumference', over: sizes.flatMap((s) => [[...s, 0], [...s, 1]]),
    expected: (s, a, rim, crossPly) => (crossPly ? ['2.95', '2.99', '3.11'] : ['3.03', '3.05', '3.11']).map((f) => overall(s, a, rim).times(f)),
  },
  { formula: 'vertical_stiffness', over: sizes.flatMap((s) => [150, 180, 220.5, 248.2, 300, 420].map((p) => [...s, p])), expected: stiffness },
  { formula: 'deflection', over: grid([0, 1, 2500, 4000, 9000], [1e5, 209651.5, 3e5]), expected: (f, k) => D(f).div(D(k)) },
  { formula: 'static_loaded_radius', over: sizes.map((s) => [...s, 4000, 238400]), expected: (s, a, rim, f, k) => overall(s, a, rim).div(2).minus(D(f).div(D(k))) },
  { formula: 'contact_length', over: grid([1, 2000, 4000, 6000], [158500, 209651.5, 311400], [0.28, 0.3135, 0.4]), expected: contactLength },
  { formula: 'contact_area', over: grid([0, 1, 2500, 4000, 9000], [150, 220, 420], [0, 0.1, 0.83, 1, 1.3]), expected: contactArea },
  { formula: 'contact_width', over: sizes.flatMap((s) => [1e-6, 0.1, 0.5, 0.999, 1, 1.3].map((x) => [...s, x])), expected: (s, a, rim, x) => contactWidth(s, a, x) },
  { formula: 'contact_patch', over: sizes.flatMap((s) => some(12, [150, 190, 220, 250, 310], [100, 250, 430, 615, 800], [615, 750]).map((rest) => [...s, ...rest])), expected: contact },
  {
    formula: 'fitted_area_255_40_17', over: grid([2199, 2200.1, 3000, 4000, 5000, 6199, 6201], [164.9, 165, 180, 220, 249.9, 250.1]),
    expected: (f, p) => (f < 2200 || f > 6200 || p < 165 || p > 250 ? NONE : D(f).div(D('52.6').plus(D('0.660').times(D(p))).plus(D('6.45').times(D(f)).div(1000))).div(1000)),
  },
  {
    // Of the prints of one tyre at 0, 2 and 4 degrees; of the stiffness only the ends of its five pressures are told here.
    formula: 'camber_shares', over: [-4, -2.5, -1, 0, 0.5, 2, 3, 3.9, 4].map((d) => [d]), only: [1, 2, 4],
    expected: (degrees) => [['4.06', '4.76', '5.38'], ['8.25', '8.28', '7.84'], ['30.9', '32.2', '29.4']].map(([a, b, c]) => line([[0, 1], [2, D(b).div(a)], [4, D(c).div(a)]], D(degrees).abs())),
  },
  { formula: 'camber_shares', over: [[4.001], [-4.1], [90]], expected: () => NONE },
  { formula: 'contact_length_band', over: [[0.05], [0.1234], [0.2]], expected: (l) => ['0.85', '1', '1.15'].map((by) => D(l).times(by)) },
  { formula: 'contact_area_band', over: [[0.01], [0.01834], [0.03]], expected: (a) => ['0.85', '1', '1.15'].map((by) => D(a).times(by)) },
  { formula: 'cross_ply_load', over: grid([0.145, 0.165], [0.6, 0.7], [100, 160, 240], [180], [0.001, 0.0145, 0.0165, 0.02, 0.04]), expected: crossPlyLoad },
  { formula: 'cross_ply_deflection', over: grid([0.145, 0.165], [0.6, 0.7], [100, 160, 240], [180], [10, 500, 1655, 2400, 4000]), expected: (w, d, p, r, f) => D(f), back: (w, d, p, r, f, deflection) => crossPlyLoad(w, d, p, r, deflection) },
  { formula: 'cross_ply_length', over: some(8, [0.145, 0.165], [0.62, 0.7], [200], [200], [0.001, 0.015, 0.025, 0.05]), expected: (w, d, p, r, x) => crossPlyLength(d, x) },
  { formula: 'cross_ply_area', over: some(8, [0.145, 0.165], [0.62, 0.7], [200], [200], [0.001, 0.015, 0.025, 0.05]), expected: (w, d, p, r, x) => D('2.3').times(D(x)).times(sqrt(D(w).times(D(d)))) },
  {
    // The stiff end is the radial's stiffness times 1.2; the soft end is checked by the load it carries.
    formula: 'cross_ply_patch', over: [[...size(155, 80, 13), 160, 180, 1600], [...size(165, 82, 15), 200, 200, 2500], [...size(145, 82, 12), 150, 150, 900]], only: [0, 2],
    expected: (s, a, rim, p, rated, f) => {
      const k = stiffness(s, a, rim, p).times('1.2');
      return [D(f).div(k), contactLength(f, k, overall(s, a, rim).div(2))];
    },
  },
  { formula: 'beaded_edge_1909', over: [88.9, 90, 100, 101.6, 105, 114.3, 120, 127, 135, 139.7].map((s) => [s / 1000]), expected: (s) => line(of1909, s) },
  {
    formula: 'beaded_edge_1921',
    over: Object.entries(of1921).flatMap(([section, columns]) => columns.flatMap((column, twin) => {
      const [least, most] = [column[0][0], column.at(-1)[0]].map((c) => c * 50.80234544);
      return [0, 0.001, 0.3, 0.5, 0.77, 0.999, 1].map((part) => [section / 1000, least + (most - least) * part, twin]);
    })),
    expected: (section, load, twin) => line(of1921[Math.round(section * 1000)][twin].map(([c, p]) => [cwt.times(c), psi.times(p)]), load),
  },
  {
    // Between what 1909 and 1921 printed, never under 60 psi, nor its high end under 65.
    formula: 'beaded_edge_pressure', over: [[105, 17, 0], [120, 19, 0], [120, 24, 0], [120, 33, 1], [135, 26, 0], [135, 31.5, 0]].map(([s, c, twin]) => [s / 1000, c * 50.80234544, twin]),
    expected: (section, load, twin) => {
      const both = [line(of1909, section), line(of1921[Math.round(section * 1000)][twin].map(([c, p]) => [cwt.times(c), psi.times(p)]), load)];
      return [max(psi.times(60), min(...both)), max(psi.times(65), max(...both))];
    },
  },
  {
    // The low end of that; from the greatest load of 1921 on, as there.
    formula: 'beaded_edge_least', over: [[105, 10], [105, 17], [105, 30], [120, 19], [120, 23], [120, 40], [135, 31.5], [155, 30], [155, 44], [155, 60]].map(([s, c]) => [s / 1000, c * 50.80234544]),
    expected: (section, load) => {
      const rows = of1921[Math.round(section * 1000)][0].map(([c, p]) => [cwt.times(c), psi.times(p)]);
      return max(psi.times(60), min(section > 0.14 ? D(Infinity) : line(of1909, section), line(rows, load)));
    },
  },
  { formula: 'beaded_edge_least', over: [[0.065, 300], [0.087, 500], [0.1601, 2000]], expected: () => psi.times(60) },
  { formula: 'beaded_edge_load_today', over: [[0.1181], [0.12], [0.1219]], expected: () => pound.times(585) },
  { formula: 'beaded_edge_load_today', over: [[0.105], [0.1179], [0.1221], [0.135]], expected: () => NONE },
  { formula: 'beaded_edge_motorcycle', over: [[]], expected: () => [psi.times(32), psi.times(40)] },
  { formula: 'straight_side_1921', over: [[40.01, 55], [44.99, 55], [45.01, 60], [54.9, 60], [55.1, 65], [80, 65]].map(([c, p]) => [c * 50.80234544, p]), line: ([m]) => `${m}`, expected: (m, p) => psi.times(p) },
  { formula: 'beaded_edge_rim', over: [[0.815, 0.105], [0.88, 0.12]], expected: (d, s) => D(d).minus(D(s).times(2)) },
  {
    // The car's top speed rules where it is above the duty's.
    formula: 'greatest_load_at',
    over: some(200, [236, 615], [25, 26, 27, 28], [0], [NONE], [0, 1], [100], [0, 200, 210, 211, 235, 240, 255, 265, 300, 305], [0, 2, -2.5, 3.3, 4.1], [150, 280], [0]),
    expected: (greatest, symbol, law, second, vehicle, load, v, camber, top) => {
      const percent = percentAtSpeed(vehicle, symbol, v);
      const upright = camberLoad(camber, max(v, top));
      return percent === NONE || upright === NONE ? NONE : D(greatest).times(percent).div(100).times(v > 210 ? upright : 1);
    },
  },
  {
    // Duties without a trailer, within the rating as speed and camber leave it.
    formula: 'pressure_demand',
    over: some(160, [615, 750], [25, 26, 27, 28], [0, 1, 3], [NONE, 0], [0, 1], [100, 300, 450, 560], [0, 130, 165, 205, 210], [0, 1.5, -2.5, 3.3], [150, 210], [0]),
    expected: (greatest, symbol, law, second, vehicle, load, v, camber, top) => {
      const base = second === NONE ? needed(law, greatest, load) : max(needed(law, greatest, load), needed(second, greatest, load));
      const parts = [base, riseForSpeed(symbol, v), base.times(camberPressure(camber, max(v, top)).minus(1)), D(0)];
      return [...parts, sum(parts)];
    },
    scale: 150,
  },
];
