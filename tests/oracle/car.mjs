// Another size of tyre or wheel, axle loads by levers, and what a wheel's mass does: geometry and mechanics.
import { D, grid, max, NONE, pi, pow, some, sqrt, sum } from './exact.mjs';

const size = (s, a, rim) => [s / 1000, a, rim * 0.0254];
const usual = (s, a) => D(s).times(a >= 65 ? '0.7' : a >= 50 ? '0.75' : a >= 35 ? '0.85' : '0.9');
const section = (s, a, rim) => D(s).plus(rim === NONE ? 0 : D('0.4').times(D(rim).minus(usual(s, a))));
const overall = (s, a, d) => D(d).plus(D(s).times(D(a)).div(50));

const wheels = [[...size(205, 55, 16), 0, NONE, 0.045], [...size(225, 45, 17), 0, 0.1905, 0.035], [...size(165, 80, 13), 1, 0.1143, 0], [...size(195, 65, 15), 0, 0.1524, -0.012]];
const laws = [[250, '0.8'], [290, '0.8'], [420, '0.8'], [240, '0.5'], [280, '0.5']];
const densities = [7850, 2680, 2700, 1800];

export const checks = [
  {
    formula: 'fitment_change', over: wheels.flatMap((a) => wheels.map((b) => [...a, ...b])), scale: 0.1,
    expected: (s1, a1, d1, cross1, rim1, et1, s2, a2, d2, cross2, rim2, et2) => {
      const [before, after] = [overall(s1, a1, d1), overall(s2, a2, d2)];
      const round = (d, cross) => d.times(cross ? '2.99' : '3.05');
      const half = section(s2, a2, rim2).minus(section(s1, a1, rim1)).div(2);
      const moved = D(et2).minus(D(et1));
      return [round(after, cross2).div(round(before, cross1)), after.minus(before), after.minus(before).div(2), section(s2, a2, rim2).minus(section(s1, a1, rim1)), half.plus(moved), half.minus(moved), round(before, cross1).div(round(after, cross2))];
    },
  },
  { formula: 'turns_per_kilometre', over: [[1.754], [1.927], [2.2]], expected: (c) => D(1000).div(D(c)) },
  {
    formula: 'pressure_for_equal_load', over: some(60, [0, 1, 3], [475, 615], [160, 200, 250], [0, 1, 4], [500, 615, 690]),
    expected: (before, most, p, after, mostAfter) => {
      const [reference, exponent] = laws[before];
      const load = D(most).times(pow(D(p).div(reference), exponent));
      const capped = p > reference ? D(most) : load;
      return capped.gt(D(mostAfter)) ? NONE : max(150, D(laws[after][0]).times(pow(capped.div(D(mostAfter)), D(1).div(laws[after][1]))));
    },
  },
  {
    formula: 'axle_loads', over: some(60, [850, 1180.5, 2100], [0, 0.42, 0.55, 1], [0, 1], [1, 2], [0, 1, 3], [75, 62.5], [0, 35], [0, 40], [0, 75]),
    expected: (kerb, front, counted, people, behind, person, boot, roof, ball) => {
      const loads = [[D(person).times(people - counted), '0.5'], [D(person).times(behind), '0.9'], [D(boot), '1.15'], [D(roof), '0.5'], [D(ball), '1.35']];
      const rear = D(kerb).times(D(1).minus(D(front))).plus(sum(loads.map(([m, at]) => m.times(at))));
      const all = D(kerb).plus(sum(loads.map(([m]) => m)));
      return [all.minus(rear), rear, all];
    },
    scale: 1000,
  },
  { formula: 'axle_loads', over: [[850, 1.01, 0, 1, 0, 75, 0, 0, 0], [850, -0.01, 0, 1, 0, 75, 0, 0, 0], [-1, 0.5, 0, 1, 0, 75, 0, 0, 0], [850, 0.5, 0, 1, -1, 75, 0, 0, 0], [850, 0.5, 0, 1, 0, 75, -1, 0, 0]], expected: () => NONE },
  { formula: 'wheel_hop_hertz', over: grid([20630, 25000], [200000, 300000], [35, 40, 45]), expected: (s, t, m) => sqrt(D(s).plus(D(t)).div(D(m))).div(pi.times(2)) },
  { formula: 'hop_speed', over: grid([12.62, 14.25], [0.2, 1]), expected: (f, pitch) => D(f).times(D(pitch)).times('3.6') },
  { formula: 'movement_for', over: grid([100, 2349], [20630], [200000, 300000]), expected: (f, s, t) => D(f).div(D(s).plus(D(t))) },
  { formula: 'ride_rate', over: grid([20630, 25000], [200000, 300000]), expected: (s, t) => D(s).times(D(t)).div(D(s).plus(D(t))) },
  { formula: 'equivalent_mass', over: grid([0.736, 1], [0.29, 0.3]), expected: (i, r) => D(i).div(D(r).pow(2)) },
  { formula: 'equivalent_mass_factor', over: grid([900, 1500], [3.2, 5.6], [0.29, 0.32]), expected: (m, i, r) => D(1).plus(D(i).div(D(m).times(D(r).pow(2)))) },
  { formula: 'tyre_equivalent_mass', over: [[9.3], [12]], expected: (m) => D(m).times('0.736').div(D('0.3').pow(2)).div('9.3') , relative: '0.001' },
  { formula: 'wheel_in', over: grid([6.5, 9], [0, 1, 2, 3], [0, 1, 2, 3]), expected: (m, from, to) => D(m).times(densities[to]).div(densities[from]) },
  {
    // Q 160, T 190 and V 240 km/h; a snowflake excuses from 160 km/h up.
    formula: 'symbol_fit', over: grid([[19, 150], [20, 160], [23, 190], [26, 240]], [0, 149, 150, 160, 160.1, 190, 239, 240.1], [0, 1]).map(([[symbol, most], v, flake]) => [symbol, v, flake, most]),
    line: ([symbol, v, flake]) => `${symbol} ${v} ${flake}`, expected: (symbol, v, flake, most) => D(v <= most ? 0 : flake && most >= 160 ? 1 : 2),
  },
  { formula: 'speed_with_tolerance', over: grid([100, 145, 150, 150.1, 163, 200, 230], [0, 1]), expected: (v, european) => (european ? D(v).times('1.05') : v <= 150 ? D(v).times('1.03').plus('3.5') : D(v).times('1.01').plus('6.5')) },
];
