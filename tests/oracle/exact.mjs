// Arithmetic for the oracle: decimal.js with 40 digits, the exact value of a double, exact units, and
// quadrature. Nothing here knows the core.
import Decimal from 'decimal.js';

Decimal.set({ precision: 40, toExpNeg: -9e15, toExpPos: 9e15, minE: -9e15, maxE: 9e15 });

export const D = (v) => (typeof v === 'number' ? exact(v) : new Decimal(v));

// A double is a fraction with a power of two below it; its shortest decimal is not quite that.
function exact(x) {
  if (Number.isInteger(x) && Math.abs(x) <= Number.MAX_SAFE_INTEGER) return new Decimal(x);
  const bytes = new DataView(new ArrayBuffer(8));
  bytes.setFloat64(0, x);
  const bits = bytes.getBigUint64(0);
  const biased = Number((bits >> 52n) & 0x7ffn);
  const fraction = bits & 0xfffffffffffffn;
  const mantissa = biased === 0 ? fraction : fraction | (1n << 52n);
  const scaled = new Decimal(mantissa.toString()).times(Decimal.pow(2, Math.max(biased, 1) - 1075));
  return bits >> 63n ? scaled.negated() : scaled;
}

export const pow = (base, exponent) => Decimal.pow(D(base), D(exponent));
export const sqrt = (v) => D(v).sqrt();
export const exp = (v) => D(v).exp();
export const ln = (v) => D(v).ln();
export const min = (...v) => Decimal.min(...v.map(D));
export const max = (...v) => Decimal.max(...v.map(D));
export const sum = (list) => list.reduce((a, b) => a.plus(b), D(0));
export const pi = Decimal.acos(-1);

// The international yard and pound of 1959, the standard acceleration of free fall, and what follows.
export const g = D('9.80665');
export const inch = D('0.0254');
export const foot = D('0.3048');
export const mile = D('1609.344');
export const pound = D('0.45359237');
export const psi = pound.times(g).div(inch.pow(2)).div(1000); // kPa
export const mph = mile.div(1000); // km/h
export const knot = D('1.852'); // km/h
export const zeroCelsius = D('273.15');

// Straight lines through points (x, y), held at both ends.
export function line(points, x) {
  const at = D(x);
  if (at.lte(D(points[0][0]))) return D(points[0][1]);
  for (let i = 1; i < points.length; ++i) {
    const [x0, y0] = points[i - 1].map(D);
    const [x1, y1] = points[i].map(D);
    if (at.lte(x1)) return y0.plus(y1.minus(y0).times(at.minus(x0)).div(x1.minus(x0)));
  }
  return D(points.at(-1)[1]);
}

// Gauss and Legendre with 40 points, each a root of the polynomial found by Newton's method.
const gauss = (() => {
  const n = 40;
  const legendre = (x) => {
    let [before, now] = [D(1), x];
    for (let k = 2; k <= n; ++k) [before, now] = [now, x.times(now).times(2 * k - 1).minus(before.times(k - 1)).div(k)];
    return [now, now.times(x).minus(before).times(n).div(x.times(x).minus(1))];
  };
  return Array.from({ length: n }, (_, i) => {
    let x = D(Math.cos((Math.PI * (i + 0.75)) / (n + 0.5)));
    for (let step = 0; step < 4; ++step) {
      const [p, slope] = legendre(x);
      x = x.minus(p.div(slope));
    }
    const [, slope] = legendre(x);
    return [x, D(2).div(D(1).minus(x.times(x)).times(slope.times(slope)))];
  });
})();

export function integral(f, from, to) {
  const half = D(to).minus(D(from)).div(2);
  const middle = D(to).plus(D(from)).div(2);
  return sum(gauss.map(([x, weight]) => f(middle.plus(half.times(x))).times(weight))).times(half);
}

// The root of a function that changes its sign between the two, to 25 digits.
export function root(f, low, high) {
  let [a, b] = [D(low), D(high)];
  const rising = f(b).gt(0);
  for (let i = 0; i < 100; ++i) {
    const middle = a.plus(b).div(2);
    if (f(middle).gt(0) === rising) b = middle;
    else a = middle;
  }
  return a.plus(b).div(2);
}

// ---- cases ----

// The same at every run.
export function numbers(start) {
  let state = BigInt(start) * 0x9e3779b97f4a7c15n;
  return () => {
    state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffffffffffffffffn;
    return Number(state >> 11n) / 2 ** 53;
  };
}

// Every combination of what stands in the lists.
export function grid(...lists) {
  return lists.reduce((rows, list) => rows.flatMap((row) => list.map((v) => [...row, v])), [[]]);
}

// Some of them, where all would be too many: the corners first, then a fixed choice.
export function some(count, ...lists) {
  const next = numbers(count + lists.length);
  const rows = [lists.map((l) => l[0]), lists.map((l) => l.at(-1))];
  while (rows.length < count) rows.push(lists.map((l) => l[Math.floor(next() * l.length)]));
  return rows;
}

// Evenly from low to high, both ends with it, and a few awkward numbers between.
export function range(low, high, count = 7) {
  const list = Array.from({ length: count }, (_, i) => (i === count - 1 ? high : low + ((high - low) * i) / (count - 1)));
  return [...list, low + (high - low) / 3, low + (high - low) * 0.7071];
}

export const NONE = 'none';
