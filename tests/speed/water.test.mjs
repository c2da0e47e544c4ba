// How long the band of the aquaplaning onset and its map take in WebAssembly, compared with a plain
// JavaScript version of the same work: the same draws, the same models, each power calculated where
// it is needed, then sorted. The two must agree, or it would not be the same work.
import assert from 'node:assert/strict';
import { test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { read } from '../support/paths.mjs';
import { best, errors, plainBand, plainMap } from './plain.mjs';

const budget = JSON.parse(read('tests/budget/budget.json'));
const usual = { kpa: 220, tread: 3, film: 5, texture: 0.7, width: 205 };
const others = [
  { ...usual, tread: 8, film: 8 }, { ...usual, tread: 1.6, film: 8 }, { ...usual, tread: 1.1, film: 2 },
  { ...usual, kpa: 150, film: 30 }, { ...usual, kpa: 300, tread: 0.5, film: 1 }, { ...usual, tread: 8, film: 0.4 },
  { ...usual, tread: 12, film: 2.2 },
];

const near = (a, b, what) => assert.ok(a === b || Math.abs(a / b - 1) < 1e-6, `${what}: ${a} and ${b}`);

test('the band: within its budget, and at least 5 times as fast as plain JavaScript', async () => {
  const bench = await loadModule('bench');
  const draws = errors();
  for (const tyre of [usual, ...others]) {
    const plain = plainBand(tyre, draws);
    for (const side of ['low', 'central', 'high'])
      near(bench.onsetBand(tyre.kpa, tyre.tread, tyre.film, side), plain[side], `${side} of ${JSON.stringify(tyre)}`);
  }
  const wasm = best(200, () => bench.onsetBand(usual.kpa, usual.tread, usual.film, 'low'));
  const curve = best(200, () => bench.onsetCurve(usual.kpa, usual.tread, usual.film));
  const plain = best(60, () => plainBand(usual, draws));
  console.log(`${draws.length} draws of the onset: wasm ${wasm.toFixed(2)} ms (with a curve ${curve.toFixed(2)} ms), ` +
    `plain JavaScript ${plain.toFixed(2)} ms, ${(plain / wasm).toFixed(1)} times`);
  assert.ok(curve <= budget.answer_with_band_ms, `${curve} ms`);
  assert.ok(plain >= 5 * wasm, `only ${plain / wasm} times`);
});

test('many tyres in one water: each at least 40 times as fast as plain JavaScript', async () => {
  const bench = await loadModule('bench');
  const draws = errors();
  for (const film of [0.5, 1, 2, 5, 30]) {
    const many = best(60, () => bench.onsetsInWater(50, film)) / 50;
    const alone = best(50, () => bench.onsetBand(usual.kpa, usual.tread, film, 'low'));
    const plain = best(20, () => plainBand({ ...usual, film }, draws));
    console.log(`low end in ${film} mm of water: ${(1000 * many).toFixed(0)} µs a tyre in a list, ${(1000 * alone).toFixed(0)} µs alone, ${(1000 * plain).toFixed(0)} µs in plain JavaScript`);
    assert.ok(plain >= 40 * many, `only ${plain / many} times`);
  }
});

test('the map of 200 treads and 200 films: within its budget', async () => {
  const bench = await loadModule('bench');
  near(bench.onsetMap(200), plainMap(usual, 200), 'the sum of the map');
  const wasm = best(100, () => bench.onsetMap(200));
  const plain = best(20, () => plainMap(usual, 200));
  console.log(`onset map 200 x 200: wasm ${wasm.toFixed(2)} ms, plain JavaScript ${plain.toFixed(2)} ms, ` +
    `${(plain / wasm).toFixed(1)} times`);
  assert.ok(wasm <= budget.onset_map_ms, `${wasm} ms`);
});

// The same fingerprints are in tests/unit/onset_draws_test.cpp.
test('the draws are the native ones to the last bit', async () => {
  const bench = await loadModule('bench');
  assert.equal(bench.onsetFingerprint(usual.kpa, usual.tread, usual.film), 'c2ab03e7f0681422');
  assert.equal(bench.onsetFingerprint(usual.kpa, usual.tread, 1), 'f16b51820b7eed40');
});
