// A long event for the planner of the stages, in WebAssembly: 20 stages, 8 sets, 5 kinds of weather, 6
// halts where tyres may be changed.
import assert from 'node:assert/strict';
import { test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { read } from '../support/paths.mjs';

const budget = JSON.parse(read('tests/budget/budget.json'));
const halts = [2, 5, 8, 11, 14, 17];
const longEvent = {
  today: '2026-11-25',
  stages: Array.from({ length: 20 }, (_, i) => ({
    length: '8 km', dry: '40', damp: '20', wet: '25', standing: '10', snow: '5', air: '8 °C', halt: halts.includes(i) ? 'service' : 'none',
  })),
  sets: ['soft', 'club', 'cut-slick', 'wet', 'all-weather', 'winter', 'race', 'slick'].map((kind) => ({ kind, count: '1' })),
};

for (const attitude of ['average', 'steady', 'safe']) {
  test(`a long event, ${attitude}, is planned within its budget of time and memory`, async () => {
    const module = await loadModule();
    // The safe fits nothing that any weather deemed possible forbids: its event has no snow, and more sets.
    const input = attitude === 'safe'
      ? { ...longEvent, attitude, stages: longEvent.stages.map((stage) => ({ ...stage, snow: '0', dry: '45' })), sets: longEvent.sets.map((set) => ({ ...set, count: set.kind === 'all-weather' ? '4' : '1' })) }
      : { ...longEvent, attitude };
    const once = () => {
      const start = performance.now();
      const answer = JSON.parse(module.answer('stage-tyres', JSON.stringify(input)));
      assert.deepEqual(answer.problems, []);
      assert.ok(answer.verdict);
      return performance.now() - start;
    };
    const times = [once(), once(), once()].sort((a, b) => a - b);
    const bytes = (module.HEAP8 ?? module.HEAPU8)?.buffer.byteLength;
    console.log(`20 stages, ${input.sets.length} entries of sets, ${attitude}: median ${times[1].toFixed(0)} ms, heap ${(bytes / 2 ** 20).toFixed(0)} MB`);
    assert.ok(times[1] <= budget.long_event_ms, `${times[1]} ms`);
    assert.ok(bytes <= budget.long_event_bytes, `${bytes} bytes`);
  });
}
