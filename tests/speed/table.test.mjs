// One table of what everything costs: each sheet's example in WebAssembly and, where tests/speed.sh
// has built it, natively; the parts written for speed against the same formulas in plain
// JavaScript; and the module's memory after each. Times are the lowest of many; ratios say more
// than times, which are this machine's.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';

import { loadMeasured, loadModule } from '../support/core.mjs';
import { root } from '../support/paths.mjs';
import { best, errors, plainBand, plainMap } from './plain.mjs';

const megabytes = ({ bytes }) => bytes() / 2 ** 20;
const today = '2026-11-25';
const sizes = ['205/55 R16 91V', '195/65R15 91T M+S', '225/45 R17 94W XL 3PMSF', '185/60 R14 82H'];
const field = Array.from({ length: 5000 }, (_, i) => ({
  name: String(i + 1), size: sizes[i % 4], load: `${280 + (i % 97)} kg`, pressure: `${190 + (i % 61)} kPa`, tread: `${(1 + (i % 100) * 0.06).toFixed(2)} mm`, tyre_kind: 'road',
}));
const stages = Array.from({ length: 20 }, (_, i) => ({ length: `${6 + (i % 7)} km`, dry: '40', damp: '20', wet: '30', standing: '10', halt: i % 4 === 3 ? 'service' : 'none' }));
const sets = ['slick', 'race', 'soft', 'club', 'cut-slick', 'wet', 'all-weather', 'gravel-hard'].map((kind) => ({ kind }));
const largest = [
  ['field-list, 5 000 tyres', 'field-list', { water: '5 mm', rows: field }],
  ['stage-tyres, 20 stages', 'stage-tyres', { stages, sets, drive: 'rear', persistence: '60', attitude: 'average' }],
  ['64 kB of opening brackets', 'tyre-check', undefined, '['.repeat(65_536)],
];

function native(lines) {
  const bench = join(root, 'build/speed/bin/speed_native');
  if (!existsSync(bench)) return undefined;
  const { stdout, status } = spawnSync(bench, { input: `${lines.map(([sheet, input]) => JSON.stringify({ sheet, input })).join('\n')}\n`, encoding: 'utf8' });
  assert.equal(status, 0);
  return stdout.trim().split('\n').map(Number);
}

const columns = (...cells) => console.log(cells.map((cell, i) => (i ? String(cell).padStart(12) : cell.padEnd(34))).join(''));
const ms = (time) => (time === undefined ? '–' : time.toFixed(time < 1 ? 3 : time < 100 ? 2 : 0));
const times = (one, other) => (one === undefined || other === undefined ? '–' : `${(one / other).toFixed(2)} x`);

test('what everything costs', async () => {
  const { module } = await loadMeasured();
  const { sheets } = JSON.parse(module.describe());
  const asked = sheets.map(({ id, example }) => [id, { ...example.input, today }]);
  const natives = native(asked);
  columns('answer, ms', 'wasm', 'native', 'wasm/native', 'memory, MB');
  for (const [i, [id, input]] of asked.entries()) {
    const one = await loadMeasured();
    const text = JSON.stringify(input);
    const rounds = id === 'stage-tyres' ? 15 : 150;
    const wasm = best(rounds, () => one.module.answer(id, text));
    columns(id, ms(wasm), ms(natives?.[i]), times(wasm, natives?.[i]), megabytes(one).toFixed(1));
    assert.ok(megabytes(one) <= 64, id);
  }
  if (!natives) console.log('(native: sh tests/speed.sh)');

  console.log();
  columns('the largest, ms', 'wasm', 'native', 'wasm/native', 'memory, MB');
  const large = native(largest.filter(([, , input]) => input).map(([, sheet, input]) => [sheet, { ...input, today }]));
  for (const [i, [name, sheet, input, text = JSON.stringify({ ...input, today })]] of largest.entries()) {
    const one = await loadMeasured();
    const wasm = best(3, () => one.module.answer(sheet, text));
    const beside = input ? large?.[i] : undefined;
    columns(name, ms(wasm), ms(beside), times(wasm, beside), megabytes(one).toFixed(1));
    assert.ok(megabytes(one) <= 64, name);
  }

  console.log();
  const bench = await loadModule('bench');
  const draws = errors();
  const tyre = { kpa: 220, tread: 3, film: 5, texture: 0.7, width: 205 };
  columns('the same in plain JavaScript, ms', 'wasm', 'plain', 'plain/wasm');
  for (const [name, wasm, plain] of [
    [`${draws.length} draws of the onset`, best(150, () => bench.onsetBand(220, 3, 5, 'low')), best(40, () => plainBand(tyre, draws))],
    ['map of 200 x 200 onsets', best(60, () => bench.onsetMap(200)), best(20, () => plainMap(tyre, 200))],
  ]) {
    columns(name, ms(wasm), ms(plain), times(plain, wasm));
    assert.ok(plain > wasm, name);
  }
});
