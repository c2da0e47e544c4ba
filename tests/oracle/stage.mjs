// Choices under uncertainty, and the chain of the weather: Anderson et al., eq. 13.1; Rockafellar and Uryasev 2002;
// the chain and the figures of time and wear as docs/method.md and the headers state them.
import { D, grid, max, min, NONE, numbers, some, sum } from './exact.mjs';

function judge(choices, states, choice, level, ...rest) {
  const chance = rest.slice(0, states).map(D);
  const rows = Array.from({ length: choices }, (_, i) => rest.slice(states * (i + 1), states * (i + 2)).map(D));
  const own = rows[choice];
  const regret = own.map((loss, w) => loss.minus(min(...rows.map((row) => row[w]))));
  const mean = (list) => sum(list.map((v, w) => v.times(chance[w])));
  // The infimum over t lies at one of the losses.
  const tail = min(...own.map((t) => t.plus(mean(own.map((loss) => max(0, loss.minus(t)))).div(D(1).minus(D(level))))));
  const there = own.map((_, w) => w).filter((w) => !chance[w].isZero());
  return [mean(own), mean(regret), max(...there.map((w) => regret[w])), tail, max(...there.map((w) => own[w]))];
}

// Quarters and eighths, which sum to 1 in doubles too.
const next = numbers(7);
const tables = Array.from({ length: 60 }, (_, i) => {
  const states = 2 + (i % 4);
  const choices = 1 + (i % 3);
  const chance = [[0.5, 0.5], [0.25, 0.5, 0.25], [0.125, 0.625, 0.25, 0], [0.125, 0.125, 0.25, 0.375, 0.125]][states - 2];
  const losses = Array.from({ length: states * choices }, () => Math.round(next() * 4000) / 16 - 40);
  return [choices, states, i % choices, [0, 0.5, 0.8, 0.9, 0.99][i % 5], ...chance, ...losses];
});

const chances = [
  [1, 0, 0, 0, 0, 0], [0.5, 0.25, 0.25, 0, 0, 0], [0.25, 0.25, 0.25, 0.25, 0, 0], [0, 0, 0.125, 0.125, 0.5, 0.25], [0.125, 0.25, 0.125, 0.25, 0.125, 0.125], [0, 0, 1, 0, 0, 0],
];
const follows = (...all) => {
  const [last, after, s] = [all.slice(0, 6).map(D), all.slice(6, 12).map(D), D(all[12])];
  const more = after.map((n, j) => max(0, n.minus(last[j])));
  const total = sum(more);
  return last.flatMap((here, i) => {
    const stays = here.isZero() ? null : min(1, after[i].div(here));
    return after.map((n, j) => {
      const tied = stays === null ? n : (i === j ? stays : D(0)).plus(total.isZero() ? 0 : D(1).minus(stays).times(more[j]).div(total));
      return s.times(tied).plus(D(1).minus(s).times(n));
    });
  });
};
const withWet = (...all) => {
  const [c, wet] = [all.slice(0, 6).map(D), D(all[6])];
  const now = c[2].plus(c[3]);
  return c.map((chance, w) => {
    const among = w === 2 || w === 3;
    const [side, target] = among ? [now, wet] : [D(1).minus(now), D(1).minus(wet)];
    return side.isZero() ? ((among ? w === 2 : w === 0) ? target : D(0)) : chance.times(target).div(side);
  });
};

export const checks = [
  { formula: 'judge', over: tables, expected: judge, scale: 100 },
  { formula: 'weather_follows', over: chances.flatMap((a) => chances.flatMap((b) => [0, 0.3, 1].map((s) => [...a, ...b, s]))), expected: follows, scale: 1 },
  { formula: 'wet_chance', over: chances, expected: (dry, damp, wet, standing) => D(wet).plus(D(standing)) },
  { formula: 'with_wet_chance', over: chances.flatMap((c) => [0, 0.3, 1].map((wet) => [...c, wet])), expected: withWet, scale: 1 },
  {
    formula: 'usable_life', over: grid([0.0055, 0.008], [0, 0.0016], [0, 0.0016, 0.003, 0.0054, 0.007]),
    expected: (deep, worn, least) => (least <= worn ? D(1) : D(deep).minus(D(least)).div(D(deep).minus(D(worn)))),
  },
  { formula: 'usable_life', over: [[0, 0, 0.001]], expected: () => D(-1) }, // a slick has no tread
  {
    // Pace and life are the core's own figures and come back with the answer; time and wear are worked out from them.
    formula: 'stage_run', over: some(300, Array.from({ length: 11 }, (_, i) => i), [4000, 12345.6, 30000], [60, 80, 101.3], [0, 0.25, 0.6, 1], [0.5, 1, 1.7], [0, 1, 2, 3, 4, 5], [0, 1], [0.003]), only: [0, 1, 2],
    expected: () => [D(0), D(0), D(0)], scale: 1,
    back: (kind, length, average, gravel, abrasion, weather, careful, tread, right, lost, wear, worn, tarmacLow, tarmacHigh, tarmacSafe, looseLow, looseHigh, looseSafe, tarmacLife, looseLife) => {
      const seconds = D(length).div(D(average).div('3.6'));
      // The middle of its range; for the careful its slow end, and none that is not safe.
      const pace = (low, high, safe) => (careful ? (safe ? D(high) : D(0)) : D(low).plus(D(high)).div(2));
      const parts = [[D(1).minus(D(gravel)), pace(tarmacLow, tarmacHigh, tarmacSafe), tarmacLife], [D(gravel), pace(looseLow, looseHigh, looseSafe), looseLife]].filter(([share]) => !share.isZero());
      const outOf = (value, should) => (should === NONE || value === Infinity ? D(should === NONE && value === Infinity ? 0 : 1) : D(value).minus(should));
      const slow = parts.some(([, factor]) => factor.isZero()) ? NONE : sum(parts.map(([share, factor]) => share.times(factor.minus(1)).times(seconds)));
      const used = parts.some(([, , life]) => life === 0) ? NONE : sum(parts.map(([share, , life]) => share.times(D(length)).times(D(abrasion)).div(D(life))));
      return [D(right).minus(seconds).div(seconds), outOf(lost, slow).div(seconds), outOf(wear, used)];
    },
  },
];
