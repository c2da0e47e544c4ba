// How many sidewall texts per second the page's own code can read, in WebAssembly.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { read, root } from '../support/paths.mjs';

const budget = JSON.parse(read('tests/budget/budget.json'));

test('sidewall texts are read faster than the budget asks, in wasm (best of 300)', async () => {
  const bench = await loadModule('bench');
  bench.readSidewalls(200);
  let best = 0;
  for (let i = 0; i < 300; ++i) {
    const start = performance.now();
    const readings = bench.readSidewalls(200);
    best = Math.max(best, (1000 * readings) / (performance.now() - start));
  }
  console.log(`sidewall texts in wasm: ${Math.round(best)} a second`);
  assert.ok(best >= budget.sidewall_readings_per_second, `${Math.round(best)} a second`);
});

// The longest a text may be, filled with what the reader has most to do with, and all the texts that
// ever were hard for it.
test('no sidewall text takes longer than a millisecond, in wasm (best of 5 each)', async () => {
  const bench = await loadModule('bench');
  const folder = join(root, 'tests/fuzz/corpus/sidewall');
  const texts = readdirSync(folder).map((name) => readFileSync(join(folder, name)));
  for (const piece of ['205/', '31x10.50 ', '8.25-20 10PR ', '9', 'R16 91V ', '3 1/2-', 'DOT AB12 CD34 ', 'E4 02 '])
    texts.push(piece.repeat(400).slice(0, 400));
  bench.readSidewalls(200);
  const cost = (text) => {
    let best = Infinity;
    for (let i = 0; i < 5; ++i) {
      const start = performance.now();
      bench.readSidewall(text);
      best = Math.min(best, performance.now() - start);
    }
    return best;
  };
  const worst = texts.map((text) => ({ text, ms: cost(text) })).sort((a, b) => b.ms - a.ms)[0];
  console.log(`the slowest of ${texts.length} sidewall texts: ${worst.ms.toFixed(3)} ms`);
  assert.ok(worst.ms < 1, `${worst.ms} ms for ${worst.text}`);
});
