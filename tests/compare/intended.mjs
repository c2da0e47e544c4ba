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

// A name that the old core had cut at French quotation marks, inside a character.
const uncut = (text) => typeof text === 'string' ? text.replaceAll('\uFFFD', '') : text;
const problemIn = (answer, field, code) => answer.includes(`{"field":"${field}","code":"${code}"`);

export const intended = [
  {
    what: 'what is needed is written rounded up, what may not be passed down, everywhere',
    is: ({ path, before, after }) => /^(limits\[load_at_pressure\]\.why|hold_to\.why|figures\[pressure_needed\]\.text|cautions\[(pressure_at_least|pressure_low|pressure_low_for_speed|pressure_high_for_load|overload|overload_at_speed)\]\.text|blocks\[radio\]\.text|verdict\.text)$/.test(path) && rounded(before, after),
  },
  {
    what: "field-list, French: a row's name keeps all its bytes",
    is: ({ sheet, language, before, after }) => sheet === 'field-list' && language === 'fr' && typeof before === 'string' && before.includes('\uFFFD') && (uncut(before) === uncut(after) || rounded(uncut(before), uncut(after))),
  },
  {
    what: "field-list: a row's name is never translated (one named Spare was)",
    is: ({ sheet, path, before, after }) => sheet === 'field-list' && /^blocks\[(unread|field|scrutineer)\]\.rows\[\]\[\]$/.test(path) && after === 'Spare' && ['Roue de secours', 'Reserverad', 'Vararengas'].includes(before),
  },
  {
    what: 'field-list: 1 year, not 1 years',
    is: ({ sheet, path, before, after }) => sheet === 'field-list' && path === 'blocks[scrutineer].rows[][]' && /^1 (years|ans|Jahre|vuotta), /.test(before) && after === before.replace('years', 'year').replace('ans', 'an').replace('Jahre', 'Jahr').replace('vuotta', 'vuosi'),
  },
  {
    what: "car-check: what does not read is told with this form's own example, not with the one of the sheet for one tyre",
    is: ({ sheet, path, before, after }) => sheet === 'car-check' && path === 'problems[].text' && (after === before.replace('90 km/h', '110 km/h') || after === before.replace('5 mm', '3 mm')),
  },
  {
    what: 'car-check: a load out of bounds is told in the units that were asked for, without decimals',
    is: ({ sheet, path, before, after }) => sheet === 'car-check' && path === 'problems[].text' && before?.replace(/\d+[.,]\d{3} kg/, '~') === after?.replace(/\d+ (kg|lb)/, '~'),
  },
  {
    what: "car-check: where one axle's load is missing the tyres of the other are judged all the same (no verdict is given either way)",
    is: ({ sheet, path, answer }) => sheet === 'car-check' && (problemIn(answer, 'front_axle', 'missing') || problemIn(answer, 'rear_axle', 'missing')) && /^(blocks\[corners\]\.rows\[\]\[\]|limits\[\]|cautions\[\]|problems\[\]|sources\b.*)$/.test(path),
  },
  {
    what: 'car-check: a speed that is only too fast stops no car, as it stops no single tyre: the limit that it passes is held to',
    is: ({ sheet, path, before, after, answer }) => sheet === 'car-check' && answer.includes('"id":"speed_above_hold_to","level":"unfit"') &&
      (path === 'limits[]' ? before === `speed_above_hold_to,${after}`
        : path === 'hold_to.governed_by' ? before === 'speed_above_hold_to'
          : path === 'hold_to.kmh' ? before === 0 && after > 0
            : /^(hold_to\.(text|why)|blocks\[radio\]\.text)$/.test(path)),
  },
  {
    what: "car-check: a corner's tread is judged as it was read, no longer rounded to a micrometre on the way",
    is: ({ sheet, path, before, after }) => sheet === 'car-check' && /^limits\[aquaplaning\]\.(kmh|low_kmh|high_kmh)$/.test(path) && Math.abs(after / before - 1) < 1e-4,
  },
];
