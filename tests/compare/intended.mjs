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

// The same text but for a number that is one step of its last digit further on.
function oneDigit(before, after) {
  const number = /\d+(?:[.,]\d+)?/g;
  const bare = (text) => text.replace(number, '~');
  const numbers = (text) => text.match(number).map((one) => Number(one.replace(',', '.')));
  return bare(before) === bare(after) && numbers(before).every((n, i) => Math.abs(numbers(after)[i] - n) <= 0.1 * n);
}

const sameSentence = (before, after) => before.replace(/\d+/g, '~') === after.replace(/\d+/g, '~');

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
  {
    what: 'how long a soft tyre lasts and how far it gets one is written rounded down, the way to go up',
    is: ({ sheet, path, before, after }) => sheet === 'puncture' && /^(cautions\[(leaking|leaking_fast|too_far)\]\.text|limits\[leaking_fast\]\.why|hold_to\.why|figures\[get_home_distance\]\.text)$/.test(path) && oneDigit(before, after),
  },
  {
    what: 'an overload is worded as in the check of one tyre',
    is: ({ sheet, path, before, after }) => sheet === 'puncture' && /^(cautions\[overload\]\.text|limits\[overload\]\.why|hold_to\.why)$/.test(path) && !sameSentence(before, after) && before.slice(0, before.indexOf('. ')) === after.slice(0, after.indexOf('. ')),
  },
  {
    what: 'a tread under the least is worded as in the check of one tyre',
    is: ({ sheet, path, before, after }) => sheet === 'puncture' && /^(cautions\[tread_law\]\.text|limits\[tread_law\]\.why|hold_to\.why)$/.test(path) && /1[.,]6 mm[\s:]/.test(before) && !/\(/.test(before) && /^(Tread|Sculpture|Profil|Urasyvyys) .* \((Elsewhere|Ailleurs|Anderswo|Muualla)\)/.test(after),
  },
  {
    what: 'words that no catalogue had are said in the language: "no" of a repair, "days" of an axis',
    is: ({ sheet, language, path, before, after }) => sheet === 'puncture' && language !== 'en' && ((path === 'blocks[repair].text' && before.replace(/(: )no\b/g, `$1${{ fr: 'non', de: 'nein', fi: 'ei' }[language]}`) === after) || (path === 'blocks[leak].x.unit' && before === 'days' && after === { fr: 'jours', de: 'Tage', fi: 'vrk' }[language])),
  },
  {
    what: 'more spares than whole ones are not named: the label says the number that was reckoned with',
    is: ({ sheet, path, before, after }) => sheet === 'puncture' && path === 'figures[chance_stranded].label' && before.replace(/\d+/, '') === after.replace(/\d+/, '') && Number(/\d+/.exec(before)[0]) === Number(/\d+/.exec(after)[0]) + 1,
  },
  {
    what: 'earlier readings that are left out have a singular',
    is: ({ sheet, path, before, after }) => {
      if (sheet !== 'wear-log' || path !== 'cautions[tread_rose].text') return false;
      const [, count, noun] = /(\d+) (earlier readings?|mesures? antérieures?|frühere Messung(?:en)?|aiempi lukema|aiempaa lukemaa)/.exec(after) ?? [];
      const one = ['earlier reading', 'mesure antérieure', 'frühere Messung', 'aiempi lukema'].includes(noun);
      return before.includes(`: ${count}.`) && one === (count === '1') && after.startsWith(before.slice(0, before.lastIndexOf(';')).trimEnd());
    },
  },
  {
    what: 'an odometer stands at 1 mile, not at 1 miles',
    is: ({ sheet, path, before, after }) => sheet === 'wear-log' && path === 'cautions[odometer_back].text' && before.replace(/\b1 (miles|Meilen|mailia)\b/g, (_, many) => `1 ${{ miles: 'mile', Meilen: 'Meile', mailia: 'maili' }[many]}`) === after,
  },
];
