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
// The figures of a text, in kPa or as masses.
const figures = (text) => [...String(text).matchAll(bar)].map(([whole]) => /(\d+) kPa/.exec(whole)?.[1] ?? whole);
// The same text but for one phrase in place of another, each in the language of the answer.
const reworded = (language, from, to) => ({ before, after }) => typeof before === 'string' && before.includes(from[language]) && before.replace(from[language], to[language]) === after;
const wouldBeOverloaded = { en: 'it would be overloaded', fr: 'il serait surchargé', de: 'er wäre überladen', fi: 'se olisi ylikuormassa' };
const isOverloaded = { en: 'it is overloaded', fr: 'il est surchargé', de: 'er ist überladen', fi: 'se on ylikuormassa' };
const tooLowForLoad = { en: 'the pressure is too low for the load', fr: 'la pression est trop basse pour la charge', de: 'der Druck ist zu niedrig für die Last', fi: 'paine on kuormalle liian pieni' };
const tooLow = { en: 'the pressure is too low', fr: 'la pression est trop basse', de: 'der Druck ist zu niedrig', fi: 'paine on liian pieni' };

export const intended = [
  {
    what: 'what is needed is written rounded up, what may not be passed down, everywhere',
    is: ({ path, before, after }) => /^(limits\[load_at_pressure\]\.why|hold_to\.why|figures\[pressure_needed\]\.text|cautions\[(pressure_at_least|pressure_low|pressure_low_for_speed|pressure_high_for_load|overload|overload_at_speed)\]\.text|blocks\[radio\]\.text|verdict\.text)$/.test(path) && rounded(before, after),
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
];
