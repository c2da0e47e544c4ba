// What the new core says otherwise than the old one, on purpose. `is` sees one difference of one answer.
const caution = (...ids) => ({ path }) => ids.some((id) => path === `cautions[${id}].text`);
const bar = /(\d+[.,]\d\d bar \((\d+) kPa\)|\d+ psi \(\d+ kPa\)|\d+ (?:kg|lb))/g;
// The same text but for pressures and masses one step further on: the larger written up, what may not be
// passed written down.
function rounded(before, after) {
  if (typeof before !== 'string' || typeof after !== 'string') return false;
  const bare = (text) => text.replace(bar, '~');
  if (bare(before) !== bare(after)) return false;
  const numbers = (text) => [...text.matchAll(bar)].map(([whole]) => Number(/(\d+) kPa/.exec(whole)?.[1] ?? /^\d+/.exec(whole)[0]));
  return numbers(before).every((n, i) => Math.abs(numbers(after)[i] - n) <= 7);
}

export const intended = [
  {
    what: 'what is needed is written rounded up, what may not be passed down, everywhere',
    is: ({ path, before, after }) => /^(limits\[load_at_pressure\]\.why|hold_to\.why|figures\[pressure_needed\]\.text|cautions\[(pressure_at_least|pressure_low|pressure_low_for_speed|pressure_high_for_load|overload|overload_at_speed)\]\.text|blocks\[radio\]\.text|verdict\.text)$/.test(path) && rounded(before, after),
  },
  {
    what: 'standing-water says of slicks, standing water, depths beyond any test and unpaved roads what tyre-check says',
    is: ({ sheet, path, before, after, answer }) =>
      sheet === 'standing-water' && typeof before === 'string' && typeof after === 'string' && after.length > before.length &&
      (path !== 'hold_to.why' || JSON.parse(answer).hold_to.governed_by === 'slick_in_water') &&
      /^(cautions\[(slick_in_water|standing_water|beyond_measured_water|unpaved)\]\.text|limits\[slick_in_water\]\.why|hold_to\.why)$/.test(path),
  },
  {
    what: 'stopping says of water too deep to drive into what tyre-check says',
    is: ({ sheet, path, answer }) => sheet === 'stopping' && /^(cautions\[deep_water\]\.text|limits\[aquaplaning\]\.(label|text))$/.test(path) && JSON.parse(answer).cautions.some(({ id }) => id === 'deep_water'),
  },
  {
    what: 'a place typed at length is read out cut at 40 characters, as everything typed',
    is: ({ sheet, path, before, after }) => sheet === 'standing-water' && path === 'blocks[radio].text' && /^.{40}…: /su.test(after) && before.startsWith(after.slice(0, after.indexOf('…'))) && before.endsWith(after.slice(after.indexOf('…') + 1)),
  },
];
