// How many leak-down curves per second the core calculates in WebAssembly.
import assert from 'node:assert/strict';
import { test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { read } from '../support/paths.mjs';

const budget = JSON.parse(read('tests/budget/budget.json'));

test('leak-down curves come faster than the budget asks, in wasm (best of 9)', async () => {
  const bench = await loadModule('bench');
  let best = 0;
  for (let i = 0; i < 9; ++i) {
    const start = performance.now();
    const sum = bench.leakCurves(2000);
    best = Math.max(best, 2_000_000 / (performance.now() - start));
    assert.ok(sum > 0);
  }
  console.log(`leak-down curves in wasm: ${Math.round(best)} a second`);
  assert.ok(best >= budget.leak_curves_per_second, `${Math.round(best)} a second`);
});
