// Units: exact by definition (SI brochure; NIST SP 811, appendix B.8).
import { D, foot, g, grid, inch, knot, mile, mph, pound, psi, zeroCelsius } from './exact.mjs';

const values = [0, 1, -1, 2.2, 33, 7 / 32, 1e-3, 1234.567, -40, 1e9, 1e-9, 6.02e23, 5e-324, 0.1 + 0.2];
const factor = (formula, by) => ({ formula, over: values.map((v) => [v]), expected: (v) => D(v).times(by) });

// What people write, as [dimension, unit, value of one unit in what is stored, what is added].
const written = [
  [0, 'kPa', 1], [0, 'bar', 100], [0, 'mbar', '0.1'], [0, 'MPa', 1000], [0, 'psi', psi], [0, 'kg/cm2', g.times(10)],
  [1, 'kg', 1], [1, 't', 1000], [1, 'lb', pound], [1, 'cwt', pound.times(112)],
  [2, 'mm', '0.001'], [2, 'cm', '0.01'], [2, 'm', 1], [2, 'in', inch], [2, '/32 in', inch.div(32)], [2, 'ft', foot],
  [2, 'yd', foot.times(3)], [2, 'km', 1000], [2, 'miles', mile],
  [3, 'km/h', 1], [3, 'mph', mph], [3, 'm/s', '3.6'], [3, 'kn', knot],
  [4, '°C', 1, zeroCelsius], [4, '°F', D(5).div(9), zeroCelsius.minus(D(160).div(9))], [4, 'K', 1],
  [5, 'N', 1], [5, 'lbf', pound.times(g)], [5, 'kgf', g],
  [6, 'mm/h', 1], [6, 'in/h', '25.4'], [7, 's', 1], [7, 'min', 60], [7, 'h', 3600], [7, 'days', 86400], [8, '%', 1],
];

export const checks = [
  factor('metres', 1), factor('millimetres', '0.001'), factor('inches', inch), factor('kilometres', 1000),
  factor('miles', mile), factor('feet', foot), factor('thirty_seconds', inch.div(32)),
  factor('square_centimetres', '1e-4'), factor('litres', '1e-3'), factor('minutes', 60), factor('days', 86400),
  factor('months', D('365.2425').div(12).times(86400)), factor('miles_per_hour', mph), factor('knots', knot),
  factor('metres_per_second', '3.6'), factor('pounds', pound), factor('newtons_per_millimetre', 1000),
  factor('kilograms_force_per_millimetre', g.times(1000)), factor('bars', 100), factor('psi', psi),
  factor('inches_per_hour', '25.4'),
  factor('in_millimetres', 1000), factor('in_inches', D(1).div(inch)), factor('in_kilometres', '0.001'),
  factor('in_feet', D(1).div(foot)), factor('in_thirty_seconds', D(32).div(inch)), factor('in_square_centimetres', 10000),
  factor('in_square_inches', D(1).div(inch.pow(2))), factor('in_litres', 1000), factor('in_miles_per_hour', D(1).div(mph)),
  factor('in_metres_per_second', D(1).div('3.6')), factor('in_pounds', D(1).div(pound)), factor('weight', g),
  factor('in_newtons_per_millimetre', '0.001'), factor('in_bars', '0.01'), factor('in_psi', D(1).div(psi)),
  factor('in_inches_per_hour', D(1).div('25.4')),
  // Sums: relative to the greatest part.
  { formula: 'celsius', over: values.map((v) => [v]), expected: (v) => D(v).plus(zeroCelsius), scale: 273 },
  { formula: 'fahrenheit', over: values.map((v) => [v]), expected: (v) => D(v).minus(32).times(5).div(9).plus(zeroCelsius), scale: 273 },
  { formula: 'in_celsius', over: [[0], [273.15], [288.15], [400]], expected: (k) => D(k).minus(zeroCelsius), scale: 273 },
  { formula: 'absolute', over: grid([0, 33.3, 220, 900], [50, 101.325]), expected: (p, a) => D(p).plus(D(a)) },
  { formula: 'gauge', over: grid([0, 33.3, 220, 900], [50, 101.325]), expected: (p, a) => D(p).minus(D(a)), scale: 100 },
  { formula: 'rectangle', over: grid(values, [0, 0.25, 3]), expected: (a, b) => D(a).times(D(b)) },
  {
    // Down to a five in the person's unit; one 1e-9 of a step short of it is at it.
    formula: 'floor_to_five', over: grid([0, 0.1, 4.999, 5, 37.3, 50, 80.4672, 112.65408, 129.99, 240], [0, 1, 2]),
    expected: (v, units) => {
      const unit = units === 0 ? D(1) : mph;
      return D(v).div(unit).div(5).plus('1e-9').floor().times(5).times(unit);
    },
  },
  { formula: 'travelled', over: grid(values, [0, 0.9, 2.5, 86400]), expected: (v, t) => D(v).div('3.6').times(D(t)) },
  {
    formula: 'read',
    over: written.flatMap(([dimension, unit, by, offset]) =>
      ['0', '1', '33', '2.2', '2,3', '0.125', '1234.5', '-7', '.5'].map((text) => [dimension, text, unit, by, offset])),
    line: ([dimension, text, unit]) => (unit.startsWith('/') ? `${dimension} ${text}${unit}` : `${dimension} ${text} ${unit}`),
    expected: (dimension, text, unit, by, offset) =>
      // 2.2/32 in is no fraction that people write.
      unit.startsWith('/') && !/^\d+$/.test(text) ? undefined : D(text.replace(',', '.')).times(by).plus(offset ?? 0),
    scale: (dimension) => (dimension === 4 ? 273 : 0),
  },
  {
    formula: 'fixed',
    over: grid([0, 0.005, 0.285, 1.115, 2.345, 2.675, 99.9995, 1234.5678, -0.04, -2.5, 1e8 / 3], [0, 1, 2, 3, 6]),
    // Never off by more than half of its last decimal, and an ulp of the product that it rounds.
    within: (value, decimals) => D(10).pow(-decimals).div(2).plus(D(value).abs().times(D(2).pow(-52))),
    expected: (value) => D(value),
  },
];

// The door: NaN and infinity never come in, and what is out of range is refused.
export const refused = ['nan', 'inf', '-inf', 'infinity', '1e999', '-1e999', 'NaN', '1e400', '', '--1', '1.2.3', '0x10', '１'].flatMap(
  (text) => written.map(([dimension, , ]) => ['read', dimension, text, written.find((w) => w[0] === dimension)[1]]));
