// Dated tread readings to a rate: the median of the slopes between all pairs, the line through the median of what is
// left (Sen 1968).
import { D, NONE, numbers } from './exact.mjs';

function median(list) {
  const sorted = [...list].sort((a, b) => a.comparedTo(b));
  const n = sorted.length;
  return n % 2 ? sorted[(n - 1) / 2] : sorted[n / 2 - 1].plus(sorted[n / 2]).div(2);
}

function fit(depth, ...readings) {
  const points = [];
  for (let i = 0; i < readings.length; i += 2) points.push([D(readings[i]), D(readings[i + 1])]);
  const slopes = points.flatMap(([x, y], i) => points.slice(0, i).filter(([u]) => !u.eq(x)).map(([u, v]) => v.minus(y).div(x.minus(u))));
  const rate = median(slopes);
  const zero = points.map(([x]) => x).reduce((a, b) => (a.gt(b) ? a : b));
  const there = median(points.map(([x, y]) => y.plus(rate.times(x.minus(zero)))));
  return [rate, zero, there, rate.gt(0) ? zero.plus(there.minus(D(depth)).div(rate)) : NONE];
}

const next = numbers(3);
const logs = Array.from({ length: 60 }, (_, i) => {
  const count = 2 + (i % 9);
  const rate = (1 + (i % 5)) * 2e-6;
  return [0.0016, ...Array.from({ length: count }, (_, k) => [k * 31 + Math.round(next() * 20), 0.008 - rate * k * 31 + (next() - 0.5) * 4e-4]).flat()];
});

export const checks = [
  // The rate, where the line is anchored, its depth there, and when it comes down to 1.6 mm; the band is the core's own.
  { formula: 'worn_down_to', over: logs, only: [0, 3, 4, 6], expected: fit, relative: '1e-11' },
  {
    // Where a reading lies against the line; odd is three errors of the gauge, 0.6 mm, off it.
    formula: 'off_the_line', over: logs.map((log, i) => [log[1] + 7.5, 0.006 + 0.0004 * (i % 6), ...log.slice(1)]),
    expected: (at, depth, ...readings) => {
      const [rate, zero, there] = fit(0, ...readings);
      const on = there.minus(rate.times(D(at).minus(zero)));
      return [on, D(D(depth).minus(on).abs().gt('0.0006') ? 1 : 0)];
    },
    relative: '1e-11',
  },
  { formula: 'worn_down_to', over: [[0.0016], [0.0016, 5, 0.007], [0.0016, 5, 0.007, 5, 0.006]], only: [0], expected: () => [NONE] },
];
