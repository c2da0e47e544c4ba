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
    what: 'stage-tyres: names that a person typed stand as they are in French too, whose quotation marks had been cut through the middle of a character',
    is: ({ sheet, language, before, after }) => sheet === 'stage-tyres' && language === 'fr' && typeof before === 'string' && before.includes('\uFFFD') && before.replaceAll('\uFFFD', '') === after,
  },
  {
    what: 'stage-tyres: water on a stage names all that the onset rests on, as every sheet does',
    is: ({ sheet, path, before, after, answer }) => {
      if (sheet !== 'stage-tyres' || !answer.includes('"water_on_stage"')) return false;
      const more = /^(onset-pressure|measured-.|texture-(asphalt|loose))$/;
      if (/^sources\.(.*)/.test(path)) return before === undefined && more.test(/^sources\.(.*)/.exec(path)[1]);
      if (path === 'sources (order)') return after.split(',').filter((id) => !more.test(id)).join() === before;
      return path === 'cautions[water_on_stage].sources[]';
    },
  },
  {
    what: 'stage-tyres: water deeper than any test is said in the words of the other sheets',
    is: ({ sheet, path, answer }) => sheet === 'stage-tyres' && path === 'cautions[beyond_measured_water].text' && answer.includes('"water_on_stage"'),
  },
];
