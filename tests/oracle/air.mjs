// The air in a tyre: the gas law at fixed volume, the standard atmosphere, flow through an orifice,
// and the time a leak takes, by quadrature of the differential equation. Sources in docs/method.md.
import { D, exp, grid, inch, integral, ln, max, min, pi, pow, psi, some, sqrt, zeroCelsius } from './exact.mjs';

const sea = 101.325;
const gamma = D('1.4');
const R = D('287.05');

// ---- flow ----

// Of the mass flow's p sqrt(gamma / R T) Cd A: what the pressure ratio leaves.
function psiOf(ratio, k = gamma) {
  const critical = pow(D(2).div(k.plus(1)), k.div(k.minus(1)));
  const r = max(ratio, critical);
  return sqrt(D(2).div(k.minus(1)).times(pow(r, D(2).div(k)).minus(pow(r, k.plus(1).div(k)))));
}

// ---- leak: dp/dt = -rate p psi(pa / p), the rate being Cd A c / V; cooled by its own expansion, the air
// left behind is at T = T1 (p/p1)^(2/7) and the fall gamma times as steep. p = pa + (p1 - pa) s^2 takes the
// root out of the flow's end; the two branches are integrated apart.
function time(rate, from, to, outside, adiabatic) {
  const [p1, p2, pa] = [D(from).plus(D(outside)), D(to).plus(D(outside)), D(outside)];
  if (p2.gte(p1)) return D(0);
  const choked = pa.times(pow('1.2', '3.5'));
  const slowness = (p) => {
    const fall = D(rate).times(p).times(psiOf(pa.div(p)));
    return D(1).div(adiabatic ? fall.times(gamma).times(pow(p.div(p1), D(1).div(7))) : fall);
  };
  const span = p1.minus(pa);
  const place = (p) => sqrt(max(0, p.minus(pa)).div(span));
  const part = (low, high) => (low.gte(high) ? D(0) : integral((s) => slowness(pa.plus(span.times(s).times(s))).times(span).times(s).times(2), place(low), place(high)));
  return part(p2, min(p1, choked)).plus(part(max(p2, choked), p1));
}

const carried = (p, t1, a1, t2, a2) => D(p).plus(D(a1)).times(D(t2)).div(D(t1)).minus(D(a2));
const speedOfSound = (t) => sqrt(gamma.times(R).times(D(t)));
const rates = (d, v, t, low, high) => [low, high].map((cd) => D(cd).times(pi).div(4).times(D(d).pow(2)).times(speedOfSound(t)).div(D(v)));

// ---- natural loss ----

const month = D('365.2425').div(12).times(86400);
function lossRate(holder, t) { // psi a second, low and high
  const held = min(max(t, D(-20).plus(zeroCelsius)), D(60).plus(zeroCelsius));
  const [cool, warm] = [D(21), D(32)].map((c) => c.plus(zeroCelsius));
  const slope = ln(2).div(D(1).div(cool).minus(D(1).div(warm))); // 0.75 to 1.5 psi
  const growth = exp(slope.times(D(1).div(cool).minus(D(1).div(held))));
  const [low, high] = holder === 0 ? [D('0.5').div(month), D(1).div(month)] : [D(1).div(7 * 86400), D(3).div(7 * 86400)];
  return [low.times(growth), high.times(growth)];
}

const leaks = some(14, [1e-4, 0.0031, 0.0272], [0, 0.0002], [230, 320, 90.5, 60, 12], [180, 91, 50, 10, 1, 0], [101.325, 85, 61]).map(([rate, more, from, to, out]) => [rate, rate + more, from, to, out]);

export const checks = [
  { formula: 'carried_over', over: some(80, [0, 138, 220, 250, 900], [233.15, 273.15, 294.26, 343.15], [60, 101.325], [233.15, 283.15, 327.6, 373.15], [60, 101.325, 95]), expected: carried, scale: 400 },
  { formula: 'outside_at', over: [-500, -100, 0, 1, 250, 1000, 2757, 5000, 8999, 9000].map((h) => [h]), expected: (h) => D(sea).times(pow(D(1).minus(D('0.0065').times(D(h)).div('288.15')), D('9.80665').div(D('0.0065').times('287.05287')))) , relative: '2e-7' },
  { formula: 'cavity_volume', over: [[0.185, 50, 14], [0.205, 55, 16], [0.165, 80, 13], [0.225, 45, 17], [0.315, 30, 20]].flatMap(([s, a, d]) => [1, 0.775].map((fill) => [s, a, d * 0.0254, fill])), expected: (s, a, rim, fill) => {
    const w = D(s).times(1000);
    return pi.times(w.pow(2)).times(D(a)).times(w.times(D(a)).plus(D(rim).div(inch).times(2540))).div('1e10').div(1000).times(D(fill));
  } },
  { formula: 'air_density', over: grid([50, 101.325, 321.325], [233.15, 293.15, 360]), expected: (p, t) => D(p).times(1000).div(R.times(D(t))) },
  { formula: 'orifice_flow', over: grid([101.4, 120, 191.7, 191.9, 321.325, 900], [1.2, 3.9], [101.325, 60], [7.854e-7], [1.05, 1.3, 1.4, 1.667]), expected: (p, rho, out, a, k) => D(a).times(sqrt(D(k).times(D(rho)).times(D(p)).times(1000))).times(psiOf(D(out).div(D(p)), D(k))) },
  { formula: 'orifice_flow', over: [[101.325, 1.2, 101.325, 1e-6, 1.4], [90, 1.2, 101.325, 1e-6, 1.4]], expected: () => D(0) },
  { formula: 'choking_pressure', over: [[101.325], [60]], expected: (p) => D(p).times(pow('1.2', '3.5').minus(1)) },
  { formula: 'leak_through', over: some(24, [0.0002, 0.001, 0.0032, 0.006], [0.0292, 0.04], [253.15, 293.15, 330], [[0.563, 0.84], [0.8, 0.8]]).map(([d, v, t, cd]) => [d, v, t, ...cd]), expected: rates },
  { formula: 'hole_of', over: grid([1e-6, 0.001, 0.05], [0.0292, 0.05], [263.15, 293.15], [0.6, 0.8]), expected: (rate, v, t, cd) => sqrt(D(rate).times(D(v)).times(4).div(pi.times(D(cd)).times(speedOfSound(t)))) },
  {
    // The closed forms of the core against quadrature.
    formula: 'time_between', over: leaks, expected: (slow, fast, from, to, out) => (to >= from ? [D(0), D(0)] : [time(fast, from, to, out, true), time(slow, from, to, out, false)]),
  },
  { // Forward again: what is left after a time is where quadrature says the time has gone.
    formula: 'pressure_after', over: [[0.0031, 0.0031, 230, 30, sea], [0.0031, 0.005, 230, 300, sea], [0.02, 0.03, 320, 20, 85], [1e-4, 1e-4, 60, 2000, sea], [0.0031, 0.0031, 90, 5, sea]],
    expected: (slow, fast, from, elapsed) => [D(elapsed), D(elapsed)], back: (slow, fast, from, elapsed, out, low, high) => [time(fast, from, low, out, true), time(slow, from, high, out, false)], relative: '1e-9',
  },
  { // Without an error of the gauge: a leak slow enough to be timed keeps the air warm.
    formula: 'leak_between', over: [[230, 190, 600], [230, 60, 7200], [300, 299, 86400], [80, 20, 90]].map(([a, b, t]) => [a, 293.15, sea, b, 293.15, sea, t, 0]),
    expected: (a, t1, o1, b, t2, o2, apart) => [time(1, a, b, o1, false), time(1, a, b, o1, false)].map((t) => t.div(D(apart))),
  },
  {
    formula: 'natural_loss', over: grid([0, 1], [243.15, 253.15, 278.15, 294.15, 305.15, 313.15, 333.15, 350], [3600, 604800, 2.6e6, 3e7]),
    expected: (holder, t, d) => lossRate(holder, t).map((rate) => rate.times(psi).times(D(d))),
  },
  { formula: 'after_months', over: grid([180, 240], [0, 2, 3.5, 10], [0, 0.5, 3, 12]), expected: (p, percent, months) => D(p).times(pow(D(1).minus(D(percent).div(100)), months)) },
  { formula: 'judge_loss', over: [[0, 230, 293.15, sea, 210, 283.15, sea, 2.6e6, 10], [1, 230, 293.15, sea, 150, 303.15, 95, 86400, 10]], only: [1], expected: (holder, p, t1, a1, q, t2, a2) => [D(p).minus(carried(q, t2, a2, t1, a1))], scale: 300 },
  { formula: 'punctures_in_time', over: grid([4.7e7, 1e6], [1.2e7], [0, 3600, 3e7]), expected: (one, year, t) => D(t).div(D(one)) },
  { formula: 'punctures_over_distance', over: grid([4.7e7, 1e6], [1.2e7, 3e6], [0, 1e3, 5e6]), expected: (one, year, way) => D(way).div(D(year)).times(month.times(12)).div(D(one)) },
  {
    formula: 'chance_of_more_than', over: grid([0, 1, 2, 5, 11], [0, 1e-9, 1e-4, 0.02, 0.5, 1, 3, 20, 200]),
    expected: (spares, lambda) => {
      // What is left of 1 may be small: 1e-120 of it has 1e-280 of error here.
      const Long = D(0).constructor.clone({ precision: 400 });
      const rate = new Long(D(lambda).toString());
      let term = rate.negated().exp();
      let left = new Long(1);
      for (let k = 0; k <= spares; ++k) {
        left = left.minus(term);
        term = term.times(rate).div(k + 1);
      }
      return D(left.toString());
    },
  },
  { formula: 'repairable_width', over: [[0.125, '0.6'], [0.155, '0.6'], [0.165, '0.65'], [0.2, '0.65'], [0.205, '0.7'], [0.315, '0.7']], line: ([w]) => `${w}`, expected: (w, share) => D(w).times(share) },
  {
    // The warm pressure less 20 % or 150 kPa (UN R141); the placard less 25 % or 140, 160, 240 kPa (FMVSS 138).
    formula: 'warning_pressure', over: grid([0, 1, 2, 3, 4], [0, 150, 187.4, 187.6, 230, 320.5, 450]),
    expected: (rule, set) => max(D(set).times(rule < 2 ? '0.8' : '0.75'), [150, 150, 140, 160, 240][rule]),
  },
  { formula: 'do_not_drive_below', over: [20, 100, 187, 187.4, 188, 200, 224.9, 225.1, 250, 420].map((p) => [p]), expected: (p) => max(D(p).times(2).div(3), min(150, D(p).times('0.8'))) },
  { formula: 'get_home', over: [[0, 0], [0, 0.4], [0, 0.65], [0, 0.8], [0, 1]], expected: (way, share) => [D(80), D(80000).times(min(1, D('0.65').div(max(share, '0.0001'))))] },
  { formula: 'get_home', over: [[0, 1.001], [0, 3]], expected: () => [D(0), D(0)] },
];
