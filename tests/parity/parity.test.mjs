// The same inputs through the native core and through the WebAssembly that the page loads: every text
// the same, every number within a few units in the last place.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { before, test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { nativeFolder } from '../support/paths.mjs';
import { inputs } from './inputs.mjs';

// glibc and musl may differ by an ulp in pow, exp and sqrt's neighbours; a formula has a few of them.
const ulps = 8;

function close(a, b) {
  if (a === b) return true;
  return Math.abs(a - b) <= ulps * Number.EPSILON * Math.max(Math.abs(a), Math.abs(b));
}

function differences(a, b, path = '') {
  if (typeof a === 'number' && typeof b === 'number') return close(a, b) ? [] : [`${path}: ${a} and ${b}`];
  if (a === null || b === null || typeof a !== 'object' || typeof b !== 'object')
    return a === b ? [] : [`${path}: ${JSON.stringify(a)} and ${JSON.stringify(b)}`];
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].flatMap((key) => differences(a[key], b[key], `${path}/${key}`));
}

const module = await loadModule();
const asked = inputs(JSON.parse(module.describe()));
let native;

before(() => {
  const run = spawnSync(join(nativeFolder, 'parity_native'), {
    input: asked.map((line) => JSON.stringify(line)).join('\n') + '\n',
    maxBuffer: 1 << 28,
    encoding: 'utf8',
  });
  assert.equal(run.status, 0, run.stderr);
  native = run.stdout.trimEnd().split('\n').map((line) => JSON.parse(line));
});

test('the sheets describe themselves alike', () => {
  assert.deepEqual(JSON.parse(module.describe()), native[0]);
});

test(`${asked.length} inputs are answered alike, at least 200 of them`, () => {
  assert.ok(asked.length >= 200);
  assert.equal(native.length, asked.length + 1);
  asked.forEach(({ sheet, input }, i) => {
    const wasm = JSON.parse(module.answer(sheet, JSON.stringify(input)));
    assert.deepEqual(differences(wasm, native[i + 1]), [], `${sheet} ${JSON.stringify(input)}`);
  });
});

test('no number is missing or null in any answer, but for gaps in a chart', () => {
  const nulls = (value) =>
    value === null || (typeof value === 'object' && value.kind !== 'chart' && Object.values(value).some(nulls));
  native.forEach((answer, i) => assert.ok(!nulls(answer), JSON.stringify(asked[i - 1])));
});

test('every source that an answer names is in the description, word for word', () => {
  const { sources } = native[0];
  for (const answer of native.slice(1))
    for (const [id, source] of Object.entries(answer.sources)) assert.deepEqual(source, sources[id], `${answer.sheet}: ${id}`);
});
