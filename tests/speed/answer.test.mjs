// How long one answer takes in WebAssembly: a tyre check, and the example of every other sheet, with
// its charts. The budgets are in tests/budget/budget.json.
import assert from 'node:assert/strict';
import { test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { read } from '../support/paths.mjs';

const budget = JSON.parse(read('tests/budget/budget.json'));

test('a tyre check takes less than its budget in wasm (median)', async () => {
  const module = await loadModule();
  const input = JSON.stringify({
    size: '205/55 R16 91V', load: '430 kg', pressure: '220 kPa', tread: '3 mm', water: '5 mm', today: '2026-11-25',
  });
  const once = () => {
    const start = performance.now();
    module.answer('tyre-check', input);
    return performance.now() - start;
  };
  const first = once();
  for (let i = 0; i < 200; ++i) once();
  const times = Array.from({ length: 2000 }, once).sort((a, b) => a - b);
  const median = times[1000];
  console.log(`tyre-check in wasm: first ${first.toFixed(2)} ms, median ${median.toFixed(3)} ms, ` +
    `99 % under ${times[1980].toFixed(3)} ms`);
  assert.ok(median <= budget.answer_ms, `${median} ms`);
});

test('the example of every sheet takes less than its budget in wasm (median)', async () => {
  const module = await loadModule();
  for (const { id, example } of JSON.parse(module.describe()).sheets) {
    const input = JSON.stringify({ ...example.input, today: '2026-11-25' });
    const once = () => {
      const start = performance.now();
      module.answer(id, input);
      return performance.now() - start;
    };
    for (let i = 0; i < 20; ++i) once();
    const median = Array.from({ length: 101 }, once).sort((a, b) => a - b)[50];
    console.log(`${id} in wasm: median ${median.toFixed(2)} ms`);
    assert.ok(median <= budget.answer_with_band_ms, `${id}: ${median} ms`);
  }
});
