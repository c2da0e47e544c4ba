// The WebAssembly that the page loads, in Node: it answers, and does not crash whatever the input.
import assert from 'node:assert/strict';
import { before, test } from 'node:test';

import { loadCore, loadModule } from '../support/core.mjs';

const motorist = {
  size: '205/55 R16 91V', load: '430 kg', pressure: '220 kPa', tread: '3 mm', water: '5 mm', today: '2026-11-25',
};
let core;

before(async () => {
  core = await loadCore();
});

const ask = (changes) => core.answer('tyre-check', { ...motorist, ...changes });
const figure = (answer, id) => answer.figures.find((f) => f.id === id);

test('a physical fact: a tyre at 220 kPa floats near 94 km/h by pressure alone (NASA TN D-2056)', () => {
  const { value } = figure(ask({}), 'onset_pressure_only');
  assert.ok(value > 93.5 && value < 94.5, `${value}`);
});

test('3 mm of tread in 5 mm of water: hold to 50 km/h', () => {
  const answer = ask({});
  assert.equal(answer.ok, true);
  assert.equal(answer.hold_to.text, '50 km/h');
  assert.equal(answer.hold_to.governed_by, 'aquaplaning');
  assert.equal(answer.verdict.level, 'care');
});

// What a person may type or paste by mistake: a sentence for each, and nothing that rests on it.
for (const [name, change, rests] of [
  ['half a size', { size: '205/55' }, ['load_rating', 'overall_diameter', 'patch_area']],
  ['a speed symbol that is none', { size: '205/55 R16 99Z' }, ['load_rating', 'overall_diameter', 'patch_area']],
  ['a word', { size: 'banana' }, ['load_rating', 'overall_diameter', 'patch_area']],
  ['nothing', { size: '' }, ['load_rating', 'overall_diameter', 'patch_area']],
  ['10 kB of text', { size: '205/55 '.repeat(1500) }, ['load_rating', 'overall_diameter']],
  ['a depth below zero', { tread: '-3 mm' }, ['onset_film', 'onset_estimate']],
  ['more than any gauge', { pressure: '1e999 bar' }, ['load_capacity', 'onset_pressure_only', 'patch_area']],
  ['emoji', { load: '🛞🛞' }, ['pressure_needed', 'patch_area', 'deflection']],
  ['two numbers', { water: '5 6 mm' }, ['onset_film', 'onset_estimate']],
  ['a mass for a pressure', { pressure: '430 kg' }, ['load_capacity', 'onset_pressure_only']],
]) {
  test(`${name} is answered with a sentence, and no figure rests on it`, () => {
    const answer = ask(change);
    assert.equal(answer.ok, false);
    assert.equal(answer.problems.length, 1);
    const [problem] = answer.problems;
    assert.equal(problem.field, Object.keys(change)[0]);
    assert.match(problem.text, /[a-z].*[.?]$/s);
    assert.ok(problem.text.length < 600, problem.text);
    assert.equal(answer.verdict, undefined);
    assert.equal(answer.hold_to, undefined);
    for (const id of rests) assert.equal(figure(answer, id), undefined, id);
  });
}

test('bad JSON, deep JSON and broken bytes do not stop the module', async () => {
  const module = await loadModule();
  for (const text of ['', '{', '['.repeat(60000), '{"size":' + '['.repeat(30000), 'null', '"\ud800"', '\0'])
    assert.equal(JSON.parse(module.answer('tyre-check', text)).ok, false);
  assert.equal(JSON.parse(module.answer('tyre-check', JSON.stringify(motorist))).hold_to.kmh, 50);
});

test('an answer that tells how far it has come is the same answer, and tells nothing that falls back', async () => {
  const module = await loadModule();
  const { id, example } = core.describe().sheets.find((sheet) => sheet.long);
  const shares = [];
  const said = module.answerTelling(id, JSON.stringify(example.input), (share) => shares.push(share));
  assert.equal(said, module.answer(id, JSON.stringify(example.input)));
  assert.equal(JSON.parse(said).ok, true);
  shares.forEach((share, i) => assert.ok(share >= (shares[i - 1] ?? 0) && share <= 1, `${shares}`));
  assert.equal(JSON.parse(module.answerTelling('tyre-check', JSON.stringify(motorist), () => {})).hold_to.kmh, 50);
});
