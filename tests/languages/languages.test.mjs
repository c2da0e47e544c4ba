// Every sentence in every language: each text keeps its sentence's gaps, figures and units, and an
// answer means the same whatever language it is given in. A sentence without a translation stays in
// English: their number is printed here, and only a release requires none (release.mjs).
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';

import { compact } from '../../web/languages/compile.mjs';
import { isTranslated, pluralRule } from '../../web/languages/po.mjs';
import { chosen } from '../parity/inputs.mjs';
import { loadModule } from '../support/core.mjs';
import { read, root } from '../support/paths.mjs';
import { left, pretend, read as texts } from './asked.mjs';
import { keysOf, phrases, progress } from './progress.mjs';
import { pageEscapes, templates, wordsIn } from './templates.mjs';

const module = await loadModule();
const description = JSON.parse(module.describe());

for (const [language, { po, missing, said, inStep }] of progress) {
  console.log(said);
  if (!inStep) console.log(`web/languages/${language}.po is not in step with the sources: node web/languages/update.mjs`);
  // What waits for its text is put into signs that no language has, so that the rest can be judged.
  const waiting = keysOf(missing).map((key) => [key, pretend(key.replace(/^.*\u0004/s, '')).replaceAll('·', '.')]);
  module.learn(language, JSON.stringify({ ...Object.fromEntries(waiting), ...compact(po) }));
}

// Each English sentence with its counterpart, the forms of a plural apart.
const pairsOf = ({ entries }) => [...entries.values()].filter(isTranslated).flatMap(({ msgid, msgid_plural: plural, msgstr }) =>
  (plural ? [[msgid, msgstr[0]], [plural, msgstr[1]]] : [[msgid, msgstr[0]]]));

// For each gap of the English sentence, the unit that stands right behind it.
const UNIT = /^[ \u00A0\u202F]?(s|h|min|%|°C|mm\/h|mm|km\/h|km|kg|lb|kPa|bar|psi|mph|Hz|MB|Mo|Mt)(?![\p{L}\p{N}'])/u;
function unitsOf(text) {
  const units = [];
  [...text.matchAll(/#([1-9]?)/g)].forEach(({ 0: gap, 1: place, index }, i) => {
    const unit = UNIT.exec(text.slice(index + gap.length))?.[1];
    units[place ? Number(place) - 1 : i] = /^M[ot]$/.test(unit) ? 'MB' : unit;
  });
  return units;
}

const gapsOf = (text) => [...text.matchAll(/#([1-9]?)/g)].map(([, place]) => place);

for (const [language, { po }] of progress) {
  const pairs = pairsOf(po);

  test(`${language}: the file says how many make a plural, as the browser's own rules do`, () => {
    const one = new Intl.PluralRules(language);
    const isOther = { 'n > 1': (n) => n > 1, 'n != 1': (n) => n !== 1 }[pluralRule(po.headers)];
    for (let n = 0; n < 1000; n++) assert.equal(isOther(n), one.select(n) !== 'one', `${n}`);
  });

  test(`${language}: the gaps of every sentence match`, () => {
    for (const [english, text] of pairs) {
      const wanted = gapsOf(english).length;
      const gaps = gapsOf(text);
      const places = gaps.some(Boolean) ? [...gaps].sort() : gaps.map((_, i) => String(i + 1));
      assert.deepEqual(places, Array.from({ length: wanted }, (_, i) => String(i + 1)), `${english} | ${text}`);
      assert.equal(/^ /.test(text), /^ /.test(english), `a space at the head of: ${english} | ${text}`);
      assert.equal(/ $/.test(text), / $/.test(english), `a space at the end of: ${english} | ${text}`);
    }
  });

  test(`${language}: a unit stands behind the same gap as in English`, () => {
    const swapped = pairs.filter(([english, text]) => {
      const units = unitsOf(english);
      return unitsOf(text).some((unit, gap) => unit !== units[gap]) || units.some((unit, gap) => unit !== unitsOf(text)[gap]);
    });
    assert.deepEqual(swapped, []);
  });

  test(`${language}: the figures in every sentence are those of the English one`, () => {
    const other = pairs.filter(([english, text]) =>
      english !== '.' && !MONTHS.test(english) && String(figuresIn(text)) !== String(figuresIn(english)));
    assert.deepEqual(other, []);
  });

  test(`${language}: a text is not itself a sentence with another text`, () => {
    const catalogue = compact(po);
    const twice = Object.entries(catalogue).filter(([, text]) => catalogue[text] && catalogue[text] !== text);
    assert.deepEqual(twice, []);
  });
}

test('fr: what stands before ; : ? and ! holds on to its word', () => {
  assert.deepEqual(pairsOf(progress.get('fr').po).filter(([, text]) => / [;:?!]/.test(text)), []);
});

// What is put together from pieces cannot be put in another order.
test('every sentence is whole: no blank at its ends, no sign that joins it to another', () => {
  const pieces = keysOf(phrases).map((key) => key.replace(/^.*\u0004/s, ''))
    .filter((english) => english !== '.' && (/^\s|\s$|^(?![#“])\p{P}|,$/u.test(english) || english === ''));
  assert.deepEqual(pieces, []);
});

// A season's days may be written with the number of their month.
const MONTHS = /November|April|March|December|Easter/;

// The numbers in a text, whatever sign parts their decimals.
function figuresIn(text) {
  return (text.replace(/#[1-9]?/g, ' ').match(/\d+(?:[.,]\d+)*/g) ?? []).map((number) => number.replace(',', '.')).sort();
}

test('nothing that the core says escapes the catalogues', async () => {
  const found = await left(new Set([...keysOf(phrases), ...[...progress.values()].flatMap(({ po }) => keysOf(po.entries))]));
  assert.deepEqual([...found].map(([word, text]) => `${word} | ${text}`), []);
});

// An answer without its words.
function bones(value, key = '') {
  if (typeof value === 'string') return WORDED.has(key) ? '' : value;
  if (Array.isArray(value)) return value.map((one) => bones(one, key));
  if (value && typeof value === 'object') return Object.fromEntries(Object.entries(value).map(([name, member]) => [name, bones(member, name)]));
  return value;
}
const WORDED = new Set(['label', 'hint', 'title', 'purpose', 'text', 'own_text', 'why', 'note', 'meaning', 'safety', 'columns', 'rows', 'row_names', 'standing', 'unit', 'picked_by']);

// Of English: a name of the trade, and the ids that only a program reads.
const ENGLISH_TOO = /extra load|“[^”]*”|„[^“]*“|”[^”]*”|«[^»]*»|"[^"]*"/gi;
const NAMES_IDS = /^There is no field |is not one of the choices\. They are /;

const STRANGE = /(?:^|[^\p{L}\p{N}])(?:the|and|with|this|that|from|not|of|is|are|tyre|load|speed)(?![\p{L}\p{N}'])/u;

const asked = chosen(description).filter(({ sheet }, i) => sheet !== 'stage-tyres' || i % 4 === 0);

for (const language of progress.keys()) {
  test(`${language}: ${asked.length} answers have the figures of the English ones, and none of their words`, () => {
    const wrong = [];
    for (const { sheet, input } of asked) {
      const english = JSON.parse(module.answer(sheet, JSON.stringify(input)));
      const text = module.answer(sheet, JSON.stringify({ ...input, language }));
      const said = JSON.parse(text);
      if (text.includes('\uFFFD') && !JSON.stringify(input).includes('\uFFFD')) wrong.push(`a letter cut in two: ${text}`);
      const where = `${sheet} ${JSON.stringify(input)}`;
      assert.deepEqual(bones(said), bones(english), where);
      const from = [...texts(english)];
      const typed = JSON.stringify(input);
      for (const [i, text] of [...texts(said)].entries()) {
        if (!MONTHS.test(from[i]) && String(figuresIn(text)) !== String(figuresIn(from[i]))) wrong.push(`${from[i]} | ${text}`);
        if (STRANGE.test(text.replace(ENGLISH_TOO, '')) && !typed.includes(text) && !NAMES_IDS.test(from[i])) wrong.push(text);
      }
    }
    assert.deepEqual([...new Set(wrong)].slice(0, 20), []);
  });

  test(`${language}: the sheets describe themselves in it`, () => {
    const said = JSON.parse(module.describeIn(language));
    assert.deepEqual(bones(said.sheets).map(({ id }) => id), description.sheets.map(({ id }) => id));
    for (const text of texts(said)) assert.ok(!STRANGE.test(text), text);
    for (const { id, example } of said.sheets) {
      const answer = JSON.parse(module.answer(id, JSON.stringify({ ...example.input, today: '2026-11-25', language })));
      assert.deepEqual(answer.problems, [], id);
    }
  });
}

// Even where they are a sentence of the tool's own.
test('what somebody typed stands between the quotes of the language, as it was typed', () => {
  const said = (language) => JSON.parse(module.answer('tyre-check', JSON.stringify({ water: 'yes', language }))).problems.find(({ field }) => field === 'water').text;
  for (const [language, quoted] of Object.entries({ en: '“yes”', fr: '«\u00A0yes\u00A0»', de: '„yes“', fi: '”yes”' })) assert.ok(said(language).includes(quoted), said(language));
});

// Names that are also sentences of ours, and letters of more than one byte.
const NAMES = ['Spare', 'Load', 'Wet', 'Front left', 'Road tyre', 'Ärmel’s «é»'];

for (const language of ['en', ...progress.keys()]) {
  test(`${language}: a name that somebody typed is not translated and not cut`, () => {
    const example = (id) => ({ ...description.sheets.find((sheet) => sheet.id === id).example.input, today: '2026-11-25', language });
    const list = example('field-list');
    const event = example('stage-tyres');
    for (const name of NAMES) {
      const rows = [{ ...list.rows[1], name }, { ...list.rows[0], name: '7' }];
      const said = module.answer('field-list', JSON.stringify({ ...list, rows }));
      const { blocks, limits } = JSON.parse(said);
      assert.deepEqual(blocks.filter(({ kind }) => kind === 'table').map(({ rows: [[first]] }) => first), [name, name]);
      assert.ok(limits[0].label.startsWith(name), `${name}: ${limits[0].label}`);
      const stages = event.stages.map((stage) => ({ ...stage, name }));
      const planned = module.answer('stage-tyres', JSON.stringify({ ...event, stages }));
      assert.deepEqual(JSON.parse(planned).problems, []);
      assert.ok(planned.includes(JSON.stringify(name).slice(1, -1)), `${name}: ${planned}`);
      assert.ok(!(said + planned).includes('\uFFFD'), name);
    }
  });
}

test('a language is spoken for one answer, and an unknown one is English', () => {
  const ask = (language) => module.answer('tyre-check', JSON.stringify({ size: '205/55 R16 91V', load: '430 kg', pressure: '2,3 bar', tread: '3,5 mm', today: '2026-11-25', ...language }));
  const english = ask({});
  assert.notEqual(ask({ language: 'de' }), english);
  assert.equal(ask({}), english);
  assert.equal(ask({ language: 'tlh' }), english);
  assert.match(ask({ language: 'de' }), /2,30 bar/);
  assert.match(english, /2\.30 bar/);
});

test('what is no catalogue is not learnt', () => {
  for (const text of ['', '[]', '"fr"', '{', 'null']) assert.equal(module.learn('yy', text), false, text);
  assert.equal(module.describeIn('yy'), module.describe());
});

test('nothing in the page\'s templates escapes the catalogues', () => {
  assert.deepEqual(pageEscapes(), [['Treadwater', 'web/index.html']], 'a name is the same in every language');
  const made = 'const a = html`<p title="Not said">${b ? html`<b>${c} rows.</b>` : \'so\'} Nor this.</p>`;';
  assert.deepEqual(templates(made).flatMap(wordsIn), ['rows.', 'Not said', 'Nor this.']);
  const files = readdirSync(join(root, 'web/src'), { recursive: true }).filter((file) => /\.ts$/.test(file) && !/generated/.test(file));
  for (const file of files) {
    const source = read(`web/src/${file}`);
    assert.equal(templates(source).length, [...source.matchAll(/\b(html|svg)`/g)].length, `every template of ${file} is read`);
  }
});
