// How many sidewall texts a second the page's own code can read, in WebAssembly.
import assert from 'node:assert/strict';
import { test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { read } from '../support/paths.mjs';

const budget = JSON.parse(read('tests/budget/budget.json'));

test('sidewall texts are read faster than the budget asks, in wasm (best of 30)', async () => {
  const bench = await loadModule('bench');
  bench.readSidewalls(200);
  let best = 0;
  for (let i = 0; i < 30; ++i) {
    const start = performance.now();
    const readings = bench.readSidewalls(200);
    best = Math.max(best, (1000 * readings) / (performance.now() - start));
  }
  console.log(`sidewall texts in wasm: ${Math.round(best)} a second`);
  assert.ok(best >= budget.sidewall_readings_per_second, `${Math.round(best)} a second`);
});
