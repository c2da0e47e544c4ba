// A whole field of 5 000 tyres, no two alike, in one water: how long the answer takes in WebAssembly, and how
// large the module's memory has grown after it.
import assert from 'node:assert/strict';
import { test } from 'node:test';

import { loadMeasured } from '../support/core.mjs';
import { read } from '../support/paths.mjs';

const budget = JSON.parse(read('tests/budget/budget.json'));

export function field(count) {
  const sizes = ['205/55 R16 91V', '195/65R15 91T M+S', '225/45 R17 94W XL 3PMSF', '185/60 R14 82H', '165 SR 13', 'P215/65R15 95S'];
  const kinds = ['road', 'winter', 'gravel', 'cut-slick', 'road'];
  return Array.from({ length: count }, (_, i) => ({
    name: String(i + 1), size: sizes[i % sizes.length], load: `${280 + (i % 97)} kg`, pressure: `${(190 + (i % 611) * 0.1).toFixed(1)} kPa`,
    tread: `${(1 + (i % 1009) * 0.006).toFixed(3)} mm`, tyre_kind: kinds[i % kinds.length], date_code: `${10 + (i % 40)}${15 + (i % 10)}`,
  }));
}

test('5 000 different tyres in standing water: within a second and 64 MB of the module\'s memory', async () => {
  const { module, bytes } = await loadMeasured();
  const input = JSON.stringify({ water: '5 mm', today: '2026-11-25', rows: field(5000) });
  let least = Infinity;
  let text = '';
  for (let i = 0; i < 5; i++) {
    const start = performance.now();
    text = module.answer('field-list', input);
    least = Math.min(least, performance.now() - start);
  }
  const answer = JSON.parse(text);
  const megabytes = bytes() / 1e6;
  console.log(`5 000 tyres in wasm: ${least.toFixed(0)} ms, ${(input.length / 1e6).toFixed(2)} MB in, ${(text.length / 1e6).toFixed(2)} MB out, memory ${megabytes.toFixed(0)} MB`);
  assert.deepEqual(answer.problems, []);
  assert.equal(answer.blocks.find(({ id }) => id === 'field').rows.length, 5000);
  assert.ok(least <= budget.field_of_5000_ms, `${least} ms`);
  assert.ok(megabytes <= 64, `${megabytes} MB`);
});
