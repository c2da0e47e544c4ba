// Every formula of the core, recomputed to 40 digits by independent arithmetic, over grids with
// their ends and awkward numbers: equal to 1e-12 relative, natively and in WebAssembly. What the
// core approximates by design must meet its stated bound; each such row says which.
//
// A check: {formula, over: [arguments...], expected(...arguments)}, values or "none"; `only` picks values of the
// core's line; `scale` is the size of the parts where they are subtracted; `relative` and `within` are stated bounds;
// `back` is for what has no closed form: the core's values go in and must give what is expected.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { nativeFolder, read } from '../support/paths.mjs';
import * as air from './air.mjs';
import * as car from './car.mjs';
import { D } from './exact.mjs';
import * as grip from './grip.mjs';
import { functionsOf, withoutComments } from './headers.mjs';
import { nasty, nastyFaults } from './nasty.mjs';
import { notRecomputed } from './not-recomputed.mjs';
import * as patch from './patch.mjs';
import * as quantity from './quantity.mjs';
import * as stage from './stage.mjs';
import * as water from './water.mjs';
import * as wear from './wear.mjs';

const rooms = { quantity, patch, water, grip, air, wear, car, stage };
const shown = Number(process.env.ORACLE_SHOW ?? 20);
const module = await loadModule('oracle');

function native(lines) {
  const run = spawnSync(join(nativeFolder, 'oracle_native'), { input: lines.join('\n') + '\n', maxBuffer: 1 << 28, encoding: 'utf8' });
  assert.equal(run.status, 0, run.stderr);
  return run.stdout.trimEnd().split('\n');
}
const wasm = (lines) => module.evaluate(lines.join('\n') + '\n').trimEnd().split('\n');

const words = (value) => (Array.isArray(value) ? value.map(words).join(' ') : typeof value === 'number' && Object.is(value, -0) ? '-0' : String(value));
const lineOf = (check, row) => `${check.formula} ${check.line ? check.line(row) : words(row)}`.trimEnd();
const number = (word) => (word === 'none' ? 'none' : word === 'inf' ? Infinity : word === '-inf' ? -Infinity : word === 'nan' || word === '-nan' ? NaN : Number(word));

// What is wrong with the core's line; nothing where all is well.
function fault(check, row, expectedOf, answer) {
  let got = answer.split(' ').map(number);
  let expected = expectedOf;
  if (expected === undefined) return '';
  expected = Array.isArray(expected) ? expected : [expected];
  if (check.only && expected[0] !== 'none') got = check.only.map((i) => got[i]);
  const all = check.back ? [].concat(check.back(...row, ...answer.split(' ').map(number))) : got;
  if (expected.length === 1 && expected[0] === 'none') return got[0] === 'none' ? '' : 'something is given where there is nothing';
  if (all.length !== expected.length) return `${all.length} values for ${expected.length}`;
  for (const [i, value] of all.entries()) {
    const should = expected[i];
    if (value === 'none' || should === 'none' || should === Infinity) {
      if (value !== should) return `value ${i}: ${value} and ${should}`;
      continue;
    }
    const is = D(value);
    const scale = typeof check.scale === 'function' ? check.scale(...row) : (check.scale ?? 0);
    const size = should.abs().gt(D(scale)) ? should.abs() : D(scale);
    const allowed = check.within ? check.within(...row) : size.times(check.relative ?? '1e-12');
    // Below the least normal number a double has not the digits.
    const floor = D('1e-307');
    if (!is.isFinite() || is.minus(should).abs().gt(allowed.gt(floor) ? allowed : floor))
      return `value ${i}: ${value}, should be ${should.toSignificantDigits(20)}, off by ${is.minus(should).abs().div(size.isZero() ? 1 : size).toExponential(2)}`;
  }
  return '';
}

function faults(check, ask) {
  const lines = check.over.map((row) => lineOf(check, row));
  const answers = ask(lines);
  assert.equal(answers.length, lines.length);
  return check.over.flatMap((row, i) => {
    if (answers[i].startsWith('?')) return [`${lines[i]}: ${answers[i]}`];
    const wrong = fault(check, row, check.computed[i], answers[i]);
    return wrong ? [`${lines[i]}: ${wrong}`] : [];
  });
}

const counts = {};
for (const [room, { checks }] of Object.entries(rooms)) {
  counts[room] = checks.reduce((n, check) => n + check.over.length, 0);
  test(`${room}: ${counts[room]} points of ${new Set(checks.map((c) => c.formula)).size} formulas agree with their recomputation`, () => {
    const wrong = [];
    for (const check of checks) {
      const known = check.first ? [native(check.first)] : [];
      [check.known] = known;
      check.computed = check.over.map((row) => check.expected(...row, ...known));
      for (const ask of [native, wasm]) wrong.push(...faults(check, ask).map((text) => `${ask.name} ${text}`));
    }
    assert.equal(wrong.length, 0, `${wrong.length} disagree\n${wrong.slice(0, shown).join('\n')}`);
  });
}

test('the door refuses what is no number', () => {
  for (const ask of [native, wasm])
    for (const [i, answer] of ask(quantity.refused.map(words)).entries()) assert.equal(answer, 'none', words(quantity.refused[i]));
});

for (const ask of [native, wasm])
  test(`nasty values in every argument never come out as a number that reads well (${ask.name})`, () => {
    const lines = nasty(Object.values(rooms).flatMap(({ checks }) => checks), lineOf);
    assert.ok(lines.length > 10000);
    const wrong = nastyFaults(lines, ask(lines.map(({ line }) => line)), ask(lines.map(({ usual }) => usual)));
    assert.equal(wrong.length, 0, `${wrong.length} of ${lines.length}\n${wrong.slice(0, shown).join('\n')}`);
  });

test('every formula that can be asked by name is recomputed', () => {
  const recomputed = new Set(Object.values(rooms).flatMap(({ checks }) => checks.map((check) => check.formula)));
  const missing = native(['names'])[0].trim().split(' ').filter((name) => !recomputed.has(name));
  assert.deepEqual(missing, []);
});

test('every public function of a core header can be asked by name, or is listed with a reason', () => {
  const asked = withoutComments(read('tests/oracle/formulas.cpp'));
  const declared = functionsOf([...Object.keys(rooms), 'standard']);
  assert.ok(declared.length > 300);
  const wrong = [];
  const listed = new Set();
  for (const { place, name } of declared) {
    const covered = new RegExp(`\\b${name}\\b`).test(asked);
    const reason = notRecomputed(place, name);
    if (reason) listed.add(name);
    if (!covered && !reason) wrong.push(`${place}: ${name} is neither recomputed nor listed`);
    if (covered && reason) wrong.push(`${place}: ${name} is recomputed and listed too`);
  }
  for (const name of notRecomputed.names) if (!listed.has(name)) wrong.push(`${name} is listed and no such function is there`);
  assert.deepEqual(wrong, []);
});
