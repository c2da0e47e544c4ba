// What the new core says differently from the old one, on purpose. `is` gets one difference in one
// answer.
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
// The figures of a text, in kPa or as masses.
const figures = (text) => [...String(text).matchAll(bar)].map(([whole]) => /(\d+) kPa/.exec(whole)?.[1] ?? whole);
// The same text but for one phrase in place of another, each in the language of the answer.
const reworded = (language, from, to) => ({ before, after }) => typeof before === 'string' && before.includes(from[language]) && before.replace(from[language], to[language]) === after;
const wouldBeOverloaded = { en: 'it would be overloaded', fr: 'il serait surchargé', de: 'er wäre überladen', fi: 'se olisi ylikuormassa' };
const isOverloaded = { en: 'it is overloaded', fr: 'il est surchargé', de: 'er ist überladen', fi: 'se on ylikuormassa' };
const tooLowForLoad = { en: 'the pressure is too low for the load', fr: 'la pression est trop basse pour la charge', de: 'der Druck ist zu niedrig für die Last', fi: 'paine on kuormalle liian pieni' };
const tooLow = { en: 'the pressure is too low', fr: 'la pression est trop basse', de: 'der Druck ist zu niedrig', fi: 'paine on liian pieni' };

// The same text but for a number that is one step of its last digit further on.
function oneDigit(before, after) {
  const number = /\d+(?:[.,]\d+)?/g;
  const bare = (text) => text.replace(number, '~');
  const numbers = (text) => text.match(number).map((one) => Number(one.replace(',', '.')));
  return bare(before) === bare(after) && numbers(before).every((n, i) => Math.abs(numbers(after)[i] - n) <= 0.1 * n);
}

const sameSentence = (before, after) => before.replace(/\d+/g, '~') === after.replace(/\d+/g, '~');

// A name that the old core had cut at French quotation marks, inside a character.
const uncut = (text) => typeof text === 'string' ? text.replaceAll('\uFFFD', '') : text;
const problemIn = (answer, field, code) => answer.includes(`{"field":"${field}","code":"${code}"`);

export const intended = [
  {
    what: 'in French 0 takes the singular',
    is: ({ language, path, before, after }) => language === 'fr' && path === 'cautions[odometer_back].text' && before.replace(/ 0 miles/g, ' 0 mile') === after,
  },
  {
    what: 'two published laws that had no text in another language have one',
    is: ({ sheet, language, path, before }) => sheet === 'standing-water' && language !== 'en' && (/^figures\[onset_published\]\.(label|note)$/.test(path)) && /^(Road designer's car|Smooth tyre, load and film|cars; film|smooth tyre or flooded)/.test(before),
  },
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
  {
    what: 'what the load needs by each law, a pressure for an equal load and what is to be set are written rounded up too; what is in the tyre, down',
    is: ({ path, before, after }) => /^figures\[(need_load|need_first_law|need_second_law|equal_pressure|cold_equivalent)\]\.text$|^figures\[at_stage\]\.note$|^cautions\[(placard_under_need|under_least|under_placard|over_placard)\]\.text$/.test(path) && rounded(before, after),
  },
  {
    what: 'overload in cold-pressure and fitment in the words of tyre-check, which name the rating; at the car\'s top speed, what is carried at it',
    is: ({ sheet, path, before, after }) => /^(cold-pressure|fitment)$/.test(sheet) && path === 'cautions[overload].text' &&
      (/^(Overloaded|Surchargé|Überladen|Ylikuorma)/.test(after) ? figures(before)[0] === figures(after)[0] : sheet === 'fitment' && figures(before).reverse().join() === figures(after).join()),
  },
  {
    what: 'the same in the verdict of fitment',
    is: ({ sheet, language, path, before, after }) => sheet === 'fitment' && path === 'verdict.text' && reworded(language, wouldBeOverloaded, isOverloaded)({ before, after }),
  },
  {
    what: 'overload in fitment goes by the load index alone, as in tyre-check; the loads at a speed are named where the speed matters',
    is: ({ sheet, path, before, after, answer }) => sheet === 'fitment' && answer.includes('"id":"overload"') &&
      (/^(cautions\[overload\]\.sources\[\]|sources\.speed-load(-motorcycle)?)$/.test(path) ? after === undefined && /speed-load|Load percentage above 210|UN R75/.test(JSON.stringify(before))
        : path === 'sources (order)' && before.split(',').filter((id) => !/^speed-load(-motorcycle)?$/.test(id) || after.split(',').includes(id)).join() === after),
  },
  {
    what: 'a temporary spare in fitment in the words of the other sheets',
    is: ({ sheet, path, after }) => sheet === 'fitment' && path === 'cautions[temporary_spare].text' && after.includes('420 kPa (60 psi)'),
  },
  {
    what: 'too little pressure in cold-pressure: what the load needs, as every sheet says it, before what to set; where only the kind of tyre is known, its least',
    is: ({ sheet, path, before, after }) => {
      if (sheet !== 'cold-pressure' || path !== 'cautions[pressure_low].text') return false;
      const [has, set] = figures(before), now = figures(after);
      return (now.length === 2 || now.length === 4) && (now[0] === has || now[0] === String(has - 1)) && now.at(-1) === set;
    },
  },
  {
    what: 'the same in the verdict, where only the kind of tyre is known',
    is: ({ sheet, language, path, before, after }) => sheet === 'cold-pressure' && /^(verdict|blocks\[radio\])\.text$/.test(path) && reworded(language, tooLowForLoad, tooLow)({ before, after }),
  },
  {
    what: 'only just enough pressure in cold-pressure in the words of tyre-check, which name the least',
    is: ({ sheet, path, before, after }) => sheet === 'cold-pressure' && path === 'cautions[pressure_at_least].text' && figures(before).length === 1 && figures(after).length === 2 && figures(before)[0] === figures(after)[0],
  },
  {
    what: 'a speed above the symbol in cold-pressure in the words of tyre-check',
    is: ({ sheet, path, before, after }) => sheet === 'cold-pressure' && path === 'cautions[speed_above_symbol].text' && /\d+ (km\/h|mph)/.exec(before)[0] === /\d+ (km\/h|mph)/.exec(after)[0],
  },
  {
    what: 'a bound is what its words say: -50 °C to the last digit',
    is: ({ sheet, path, before, after }) => sheet === 'cold-pressure' && /^(figures\[\w+\]\.value|blocks\[temperature\]\.(series\[\]\.[xy]\[\]|marks\[\]\.[xy]))$/.test(path) && Math.abs(before - after) <= 1e-13 * Math.max(1, Math.abs(before)) * 2,
  },
  {
    what: 'a bound is what its words say: no rim above 23 in (it was 600 mm)',
    is: ({ sheet, path, answer }) => sheet === 'fitment' && /"field":"(new_)?rim","code":"above_range"[^}]*23\.[5-6]\d* in/.test(answer) && /^(problems\[\]|figures\[(section_change|inward|outward)\]|blocks\[sizes\])/.test(path),
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
