// Water: film depth, published onset speeds, our central estimate and its band, powers. Sources: FHWA-RD-79-31,
// Road Research Laboratory LR 236, NCHRP 1-29, NASA TN D-2056 and the others of docs/method.md, in their own units.
import { D, foot, grid, inch, knot, line, max, min, mph, NONE, numbers, pow, psi, some, sqrt } from './exact.mjs';

const mm = (v) => D(v).times(1000);
const inches = (v) => D(v).div(inch);

// ---- film depth ----

const manning = ['0.031', '0.0327', '0.0355'];
function film(model, rain, l, s, t, pavement) {
  if (!(rain >= 0.5 && rain <= 150 && l >= 1 && l <= 50 && s >= 0.005 && s <= 0.1 && t >= 0.0001 && t <= 0.004)) return NONE;
  const us = (k, a, b, c, d) =>
    D(k).times(pow(inches(t), a)).times(pow(D(l).div(foot), b)).times(pow(D(rain).div('25.4'), c)).times(pow(s, D(d).negated())).minus(inches(t)).times(inch);
  const metric = (k, slope) =>
    D(k).times(pow(mm(t), '0.11')).times(pow(l, '0.43')).times(pow(rain, '0.59')).div(pow(slope, '0.42')).minus(mm(t)).div(1000);
  switch (model) {
    case 0: return us('0.00338', '0.11', '0.43', '0.59', '0.42');
    case 1: return metric('0.01485', s);
    case 2: return metric('0.103', D(s).times(100));
    case 3: return us('0.003726', '0.125', '0.519', '0.562', '0.364');
    case 4: return D('0.015').times(sqrt(D(l).times(D(rain).div(10)))).times(pow(D(1).div(D(s)), '0.2')).div(100).minus(D(t));
    case 5: return D('0.046').times(sqrt(D(l).times(D(rain)))).times(pow(s, '-0.2')).div(1000).minus(D(t));
    default: return pow(D(manning[pavement]).times(D(l)).times(D(rain)).div(D('36.1').times(sqrt(s))), '0.6').div(1000).minus(D(t));
  }
}
const roads = some(90, [0.5, 2, 10, 25, 50, 150], [1, 7.3, 14.6, 50], [0.005, 0.01, 0.025, 0.1], [0.0001, 0.0004, 0.0007, 0.0015, 0.004], [0, 1, 2]);
const beyond = [[0.49, 7, 0.02, 0.0007, 1], [150.1, 7, 0.02, 0.0007, 1], [50, 0.99, 0.02, 0.0007, 1], [50, 50.1, 0.02, 0.0007, 1], [50, 7, 0.00499, 0.0007, 1], [50, 7, 0.1001, 0.0007, 1], [50, 7, 0.02, 0.0000999, 1], [50, 7, 0.02, 0.00401, 1]];

// ---- onset ----

const thin = '0.0005';
const factorA = (wd, t) => {
  const power = pow(inches(max(wd, thin)), '0.06');
  const a1 = D('10.409').div(power).plus('3.507');
  const a2 = D('28.952').div(power).minus('7.817').times(pow(inches(t), '0.14'));
  return D(t).isZero() ? a1 : max(a1, a2);
};
const factorTyre = (p, td, sd) => pow(sd, '0.04').times(pow(D(p).div(psi), '0.3')).times(pow(inches(td).times(32).plus(1), '0.06'));
const filmOnset = (p, td, wd, t, sd) => factorTyre(p, td, sd).times(factorA(wd, t)).times(mph);
const pressureOnset = (p) => D('10.35').times(sqrt(D(p).div(psi))).times(mph);
const spinUp = (p) => D('7.7').times(sqrt(D(p).div(psi))).times(knot);
const footprint = (p, far) => D('7.95').times(sqrt(D(p).div(psi).div(D(far)))).times(mph);
const truck = (p, far) => D('23.3').times(pow(D(p).div(psi), '0.21')).times(sqrt(D('1.4').div(D(far)))).times(mph);
const design = (wd, t) => {
  const w = inches(max(wd, thin));
  return (w.lt('0.095') ? D('26.04').times(pow(w, '-0.259')) : D('3.09').times(factorA(wd, t))).times(mph);
};
const smooth = (wl, p, wd) => pow(wl, '0.2').times(sqrt(p)).times(D('0.82').div(pow(mm(max(wd, thin)), '0.06')).plus('0.49'));

// As the table of docs/method.md has them: where each is asked, and its formula.
const models = [
  { asked: (c) => c.flooded && c.p >= 135 && c.p <= 2000, of: (c) => pressureOnset(c.p) },
  { asked: (c) => c.flooded && c.p >= 135 && c.p <= 2000, of: (c) => spinUp(c.p) },
  { asked: (c) => c.flooded && c.far !== NONE && c.p >= 135 && c.p <= 830 && c.far >= 0.59 && c.far <= 1.5, of: (c) => footprint(c.p, c.far) },
  { asked: (c) => c.truck && c.flooded && c.far !== NONE && c.p >= 410 && c.p <= 830 && c.far >= 0.8 && c.far <= 1.5, of: (c) => truck(c.p, c.far) },
  { asked: (c) => !c.truck && c.film >= 0.0005 && c.film <= 0.01 && c.p >= 120 && c.p <= 280, of: (c) => filmOnset(c.p, c.grooves, c.film, c.texture, 10) },
  { asked: (c) => !c.truck && c.film >= 0.0005 && c.film <= 0.01 && c.p >= 165 && c.grooves >= 0.0024, of: (c) => design(c.film, c.texture) },
  { asked: (c) => c.flooded && c.load !== NONE && c.film >= 0.0005 && c.film <= 0.01 && c.p >= 165 && c.p <= 250 && c.load >= 2400 && c.load <= 4800, of: (c) => smooth(c.load, c.p, c.film) },
];
const conditions = some(240, [0, 1, 2, 3, 4, 5, 6], [100, 136, 164, 180, 220, 249, 260, 290, 411, 600, 829, 840, 2001], [0, 0.0016, 0.0023, 0.003, 0.008], [0.0004, 0.0011, 0.004, 0.0089, 0.011], [0, 0.0007, 0.0015], [NONE, 0.5, 0.7, 1.2, 1.6], [NONE, 2000, 3000, 4700, 5000], [0, 1]);

// ---- our own: the central value ----

const clearing = (grooves, bare) => line([[0, bare], ['0.0016', '0.55'], ['0.003', '0.8'], ['0.008', 1]], grooves);
// What bare rubber clears: the line from 3 to 1.6 mm carried on, 0.264.
const bareByLine = D('0.55').minus(D('1.6').times(D('0.25').div('1.4')));
const none = Infinity; // no floating
// From 3 mm of water up.
function steady(p, tread, credit, width, water, t) {
  const film = max(water, '0.003');
  const flooded = min(1, pow(film.div('0.008'), D(2).div(3)));
  const worn = D(1).minus(D(1).minus(clearing(D(tread).times(credit), bareByLine)).times(flooded));
  const wide = sqrt(D('0.205').div(width === NONE ? '0.205' : width >= 0.025 ? max(width, '0.155') : 1));
  return filmOnset(min(p, 280), '0.008', film, t, 10).times(worn).times(wide).times(pow(min(1, D('0.01').div(film)), '0.25'));
}
function central(p, tread, credit, width, wd, t) {
  const water = min(1, max(wd, 0));
  const x = steady(p, tread, credit, width, water, t);
  if (water.gte('0.003')) return x;
  const y = D(3).minus(mm(water)).div(D(3).minus(min('1.8', mm(tread).times(credit).times('0.145')))).pow(2);
  return y.gte(1) || x.gte(180) ? none : D(180).minus(D(180).minus(x).times(D(1).minus(y)));
}
// The core rounds readings to 2^-30 m and 2^-10 kPa, about a nanometre and a pascal: here they are whole ones.
const whole = (v) => (v === NONE ? v : Math.round(v * 2 ** 30) / 2 ** 30);
const tyres = some(200, [120, 165.5, 220, 250.001, 280, 310], [0, 0.0005, 0.0016, 0.002345678, 0.003, 0.0055, 0.008, 0.011, 0.013], [1, 0.5, 0], [NONE, 0.145, 0.205, 0.255, 0.02, 1.5], [0.0002, 0.0005, 0.001, 0.0015, 0.0024, 0.003, 0.0034567, 0.008, 0.02, 0.3], [0, 0.0004, 0.0007, 0.0015, 0.004])
  .map(([p, tread, credit, width, wd, t]) => [Math.round(p * 1024) / 1024, whole(tread), credit, width, whole(wd), t]);

// The band, drawn anew with plain doubles and other random numbers: the laws and ways to wear of docs/method.md.
// `error` is the ruler's, mm.
function drawn(p, tread, credit, width, wd, t, error = Math.min(1, 500 * wd), count = 120000) {
  const next = numbers(41);
  const off = (by) => (2 * next() - 1) * by;
  const A = (film, texture) => {
    const power = (film / 25.4) ** 0.06;
    return Math.max(10.409 / power + 3.507, texture > 0 ? (28.952 / power - 7.817) * (texture / 25.4) ** 0.14 : 0);
  };
  const law = (kpa, td, film, texture) => 10 ** 0.04 * (kpa / 6.894757293168361) ** 0.3 * (td / 0.79375 + 1) ** 0.06 * A(film, texture) * 1.609344;
  const all = [];
  for (let i = 0; i < count; ++i) {
    const kpa = Math.max(p + off(10), 0);
    const grooves = Math.max(1000 * tread + off(0.2), 0) * credit;
    const water = 1000 * wd + off(error);
    const film = Math.max(water, 3);
    const kind = i % 3; // 0 the film law, 1 the pressure law, 2 the cautious one
    const w = width === NONE ? [205, 155, 255][kind] : Math.max(1000 * width, 155);
    const wide = Math.sqrt(205 / w);
    const beyond = Math.min(1, 10 / film);
    const fresh = [
      () => law(Math.min(kpa, 280), 8, film, 1000 * t) * wide * beyond ** 0.25,
      () => 10.35 * Math.sqrt(Math.min(kpa, 250) / 6.894757293168361) * 1.609344 * Math.max(1, wide) * beyond ** 0.25,
      () => law(24 * 6.894757293168361, (3 * 25.4) / 32, film, Math.min(1000 * t, 0.7)) * Math.sqrt(Math.min(kpa, 220) / 220) * Math.min(1, wide) * beyond ** 0.5,
    ][kind]();
    const bare = [0.264, 0.264, 0.407, 0.55][Math.floor(i / 3) % 4];
    const c = grooves >= 8 ? 1 : grooves >= 3 ? 0.8 + (0.2 * (grooves - 3)) / 5 : grooves >= 1.6 ? 0.55 + (0.25 * (grooves - 1.6)) / 1.4 : bare + ((0.55 - bare) * grooves) / 1.6;
    const x = fresh * (1 - (1 - c) * Math.min(1, (film / 8) ** (2 / 3))) * (1 + off(0.11));
    const top = kind === 2 ? 144.5 : 180;
    const y = water >= 3 ? 0
      : kind === 2 ? Math.min(1, Math.max(0, 1 - (water - Math.min(1.35, Math.max(0, 0.18 * (grooves - 1.6)))) / 1.65)) ** 1.5
      : ((3 - water) / (3 - Math.min(1.8, 0.145 * grooves))) ** 2;
    all.push(water >= 3 ? x : y >= 1 || x >= top ? none : top - (top - x) * (1 - y));
  }
  const sorted = Float64Array.from(all).sort();
  return [0.05, 0.95].map((share) => sorted[Math.floor(count * share)]).map((kmh) => (kmh === none ? none : D(kmh)));
}

// Wetness by word: from, to, in m. Damp and dry have no film.
const wetness = [NONE, NONE, ['0.0002', '0.001'], ['0.001', '0.002'], ['0.002', '0.004']];
const worded = some(30, [165.5, 220, 260], [0, 0.0016, 0.003, 0.006, 0.008], [1, 0.5], [NONE, 0.165, 0.205, 0.245], [2, 3, 4], [0.0004, 0.0007, 0.0015])
  .map(([p, ...others]) => [Math.round(p * 1024) / 1024, ...others]);

// Published figures of fords and floods: still water to, depth x speed to, afloat at.
const crossing = [['0.15', '0.15', '0.3'], ['0.15', '0.3', '0.3'], ['0.45', '0.45', '0.6']];

const bases = [5e-324, 2.2250738585072014e-308, 1e-300, 1e-12, 0.001, 0.5, Math.SQRT1_2, 0.9999999999999999, 1, 1.0000000000000002, Math.SQRT2, 2, 3, 10, 205, 1e6, 1e300, 1.7976931348623157e308];

export const checks = [
  { formula: 'flow_path', over: grid([0, 3.5, 7.3, 11], [0.02, -0.025, 0.1], [0, 0.05, -0.08]), expected: (w, x, along) => {
    const s = sqrt(D(x).pow(2).plus(D(along).pow(2)));
    return [D(w).times(s).div(D(x).abs()), s];
  } },
  ...[0, 1, 2, 3, 4, 5, 6].map((model) => ({ formula: 'film_depth', over: [...roads, ...beyond].map((road) => [model, ...road]), expected: film, scale: 0.0001 })),
  { formula: 'rain_film', over: [...roads, ...beyond], scale: 0.0001, expected: (...road) => {
    const all = [0, 3, 4, 6].map((model) => film(model, ...road));
    return all[0] === NONE ? NONE : [min(...all), all[0], max(...all)];
  } },
  { formula: 'rut_water', over: grid([0, 0.005, 0.01, 0.025], [0.3, 0.6, 1], [0, 0.01, -0.025, 0.06, 0.2]), expected: (d, w, s) => {
    const fall = D(s).abs().times(D(w));
    return fall.gte(D(d).times(4)) ? D(0) : D(d).times(D(1).minus(fall.div(D(d).times(4))).pow(2));
  } },
  { formula: 'pressure_only_onset', over: [[0], [137.9], [180], [220], [689.5]], expected: pressureOnset },
  { formula: 'spin_up_onset', over: [[0], [137.9], [180], [220], [689.5]], expected: spinUp },
  { formula: 'footprint_onset', over: grid([137.9, 220, 689.5], [0.3, 0.59, 1, 1.4]), expected: footprint },
  { formula: 'truck_onset', over: grid([137.9, 220, 689.5], [0.59, 0.8, 1.4]), expected: truck },
  { formula: 'film_onset', over: some(120, [120, 165.5, 220, 280], [0, 0.0016, 0.003, 0.008], [1e-9, 0.0004, 0.0005, 0.001, 0.00254, 0.008, 0.03], [0, 0.0001, 0.0007, 0.000965, 0.0015, 0.004], [1, 10, 50]), expected: filmOnset },
  { formula: 'film_tyre_factor', over: grid([120, 165.5, 220, 280], [0, 0.0016, 0.003, 0.008], [1, 10, 50]), expected: factorTyre },
  { formula: 'film_water_factor', over: grid([0, 0.0005, 0.001, 0.00254, 0.008], [0, 0.0004, 0.0007, 0.0015, 0.003]), expected: factorA },
  { formula: 'design_onset', over: grid([0, 0.0005, 0.00127, 0.00241, 0.00242, 0.00508], [0, 0.0007, 0.000965, 0.002]), expected: design },
  { formula: 'smooth_tyre_onset', over: grid([2400, 4000, 4800], [165, 186.2, 250], [0.0001, 0.0005, 0.002, 0.00762]), expected: smooth },
  { formula: 'onset_model_count', over: [[]], expected: () => D(models.length) },
  { formula: 'onset_model', over: conditions, expected: (which, p, grooves, wd, texture, far, load, heavy) => {
    const c = { p, grooves, film: wd, texture, far, load, truck: heavy === 1, flooded: wd >= grooves && wd >= 0.0005 }; // under the thinnest film nothing is flooded
    return models[which].asked(c) ? models[which].of(c) : NONE;
  } },
  { formula: 'clearing', over: grid([0, 0.0004, 0.0016, 0.002, 0.003, 0.005, 0.008, 0.02], [0, 0.264, 0.407, 0.55]), expected: clearing },
  { formula: 'aquaplaning_onset', over: tyres, only: [1], expected: (...tyre) => [central(...tyre)] },
  {
    // Monte Carlo of the core's 20 160 draws against 120 000 others: 2 % for the sampling of both.
    formula: 'aquaplaning_onset', over: some(30, [165.5, 220, 260], [0, 0.001, 0.0016, 0.003, 0.006, 0.008], [1, 0.5], [NONE, 0.165, 0.205, 0.245], [0.0005, 0.001, 0.002, 0.003, 0.008, 0.02], [0.0004, 0.0007, 0.0015]), only: [0, 2],
    relative: '0.02', expected: drawn,
  },
  { formula: 'aquaplaning_onset', over: [[220, 0.003, 1, NONE, 0, 0.0007], [220, 0.003, 1, NONE, -0.001, 0.0007]], expected: () => NONE },
  { formula: 'onset_by_word', over: grid([220], [0.003], [1], [NONE], [0, 1], [0.0007]), expected: () => NONE },
  {
    // Its middle is a depth that is no whole nanometre.
    formula: 'onset_by_word', over: worded, only: [1], relative: '1e-6', expected: (p, tread, credit, width, word, t) => {
      const [from, to] = wetness[word];
      return [central(p, tread, credit, width, D(from).plus(to).div(2), t)];
    },
  },
  {
    // Low at the deep edge, high at the shallow one, no ruler.
    formula: 'onset_by_word', over: worded.slice(0, 10), only: [0, 2], relative: '0.02', expected: (p, tread, credit, width, word, t) => {
      const [from, to] = wetness[word].map(Number);
      return [drawn(p, tread, credit, width, to, t, 0)[0], drawn(p, tread, credit, width, from, t, 0)[1]];
    },
  },
  { formula: 'ruler_error_at', over: [[0], [0.0004], [0.002], [0.0021], [0.05]], expected: (read) => min('0.001', D(read).div(2)) },
  { formula: 'crossing_limits', over: grid([0, 1, 2], [[0, NONE], [1, NONE], [1, 1.8], [1, 3.6], [1, 7.2], [1, 36]]).map(([v, f]) => [v, ...f]), expected: (vehicle, moving, flow) => {
    const [still, product, afloat] = crossing[vehicle];
    const speed = !moving ? null : flow === NONE ? D(1) : D(flow).div('3.6');
    return [speed === null ? D(still) : min(still, D(product).div(speed)), D(afloat)];
  } },
  {
    // Dry (what moves is water), with caution under 10 cm of still water, not to be entered, unstable, afloat.
    formula: 'judge_crossing', over: grid([0, 1, 2], [0, 0.001, 0.0999, 0.1, 0.12, 0.1501, 0.2999, 0.3, 0.44, 0.6, 2], [[0, NONE], [1, NONE], [1, 1.8]]).map(([v, depth, f]) => [v, depth, ...f]), expected: (vehicle, depth, moving, flow) => {
      const [still, product, afloat] = crossing[vehicle];
      const stable = moving ? Math.min(still, product / (flow === NONE ? 1 : flow / 3.6)) : Number(still);
      return D(depth <= 0 && !moving ? 0 : depth >= Number(afloat) ? 4 : depth >= stable ? 3 : moving || depth >= 0.1 ? 2 : 1);
    },
  },

  // The core's own series: within 1e-13, as power.hpp promises.
  { formula: 'log2_of', over: bases.filter((b) => b > 1e-307).map((b) => [b]), within: () => D('1e-13'), expected: (x) => D(x).log(2) },
  { formula: 'exp2_of', over: [-60, -59.9999, -7.3, -1, -0.5, -1e-17, 0, 1e-9, 0.5, 1 / 3, 1, 2.7, 10.01, 59.4, 60].map((y) => [y]), relative: '1e-13', expected: (y) => pow(2, y) },
  { formula: 'power', over: grid([0.001, 0.0007, 0.5, 1, 2, 32.5, 1000, 4800], [-0.47, -0.06, 0, 0.04, 0.06, 0.11, 0.14, 0.3, 2 / 3, 1, 1.39]), relative: '1e-13', expected: pow },
];
