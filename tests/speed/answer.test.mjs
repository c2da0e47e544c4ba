// How long one answer takes in WebAssembly. The budget is in tests/budget/budget.json.
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
