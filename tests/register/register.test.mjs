// Every outside check of the register, in the native core and in WebAssembly: each agrees with the
// printed figure, and the two builds agree to the last bit. The counts by standing are at the end
// of the report.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { nativeFolder, read, root } from '../support/paths.mjs';

const folder = 'tests/register';
const files = readdirSync(join(root, folder)).filter((name) => name.endsWith('.json'));
const standings = ['published', 'secondary', 'memory', 'common practice'];

// What a row is, for whoever has to mend it.
const told = (row) =>
  `${row.entry} (${row.inputs}): ${row.check} printed ${row.printed} ${row.unit}, ours ${JSON.stringify(row.ours)}` +
  (row.tolerance === null ? '' : `, within ${row.tolerance}`) +
  (row.error ? `; ${row.error}` : '');

const module = await loadModule('register');
const rooms = files.map((file) => ({ file, wasm: JSON.parse(module.judged(read(join(folder, file)))) }));
let checks;

before(() => {
  const run = spawnSync(join(nativeFolder, 'register_native'), files.map((file) => join(root, folder, file)), {
    maxBuffer: 1 << 28,
    encoding: 'utf8',
  });
  assert.equal(run.status, 0, run.stderr);
  const lines = run.stdout.trimEnd().split('\n').map((line) => JSON.parse(line));
  checks = lines.pop();
  assert.equal(lines.length, files.length);
  rooms.forEach((room, i) => (room.native = lines[i]));
});

for (const room of rooms) {
  for (const [build, where] of [['native', 'natively'], ['wasm', 'in WebAssembly']])
    test(`${room.file}: ${room.wasm.rows.length} checks agree ${where}`, () => {
      assert.equal(`${room[build].room}.json`, room.file);
      assert.ok(room[build].rows.length > 0);
      assert.deepEqual(room[build].rows.filter((row) => !row.agrees || row.error).map(told), []);
    });

  test(`${room.file}: both builds give the same bits`, () => {
    assert.equal(room.wasm.rows.length, room.native.rows.length);
    const apart = room.native.rows.filter((row, i) => JSON.stringify(row) !== JSON.stringify(room.wasm.rows[i]));
    assert.deepEqual(apart.map(told), []);
  });
}

test('every check that the core can be asked is asked', () => {
  const asked = new Set(rooms.flatMap(({ native }) => native.rows.map((row) => row.check)));
  assert.deepEqual(checks.filter((name) => !asked.has(name)), []);
});

// A register that could not fail would prove nothing.
const faulty = (entry) => {
  const whole = { name: 'n', source: 'load-index', check: 'load of index', inputs: { index: 91 }, unit: 'kg', ...entry };
  return JSON.parse(module.judged(JSON.stringify({ room: 'r', checks: [whole] }))).rows[0];
};
const print = { printed: '615' };

test('a figure, a band or a word that is not as printed does not agree', () => {
  assert.ok(faulty(print).agrees);
  assert.ok(!faulty({ printed: '616' }).agrees);
  assert.ok(!faulty({ printed: '615.6' }).agrees);
  assert.ok(faulty({ printed: '615.6', tolerance: 0.7, why: 'w' }).agrees);
  assert.ok(!faulty({ printed: 'none' }).agrees);
  assert.ok(!faulty({ printed: '615', compare: 'inside' }).agrees);
  assert.ok(!faulty({ printed: '616', compare: 'at least' }).agrees);
  assert.ok(!faulty({ printed: '614', compare: 'at most' }).agrees);
  assert.ok(!faulty({ printed: '600', compare: 'at least', tolerance: 5, why: 'w' }).agrees);
  const band = { check: 'turns a mile', inputs: { size: '185/70-13' }, unit: undefined, compare: 'inside' };
  assert.ok(faulty({ ...band, printed: '881' }).agrees);
  assert.ok(!faulty({ ...band, printed: '800' }).agrees);
  assert.ok(!faulty({ ...band, printed: '960' }).agrees);
});

test('a mistake in the register is an error, whatever the figure', () => {
  for (const entry of [
    { ...print, check: 'load of indx' },
    { ...print, source: 'no such source' },
    { ...print, source: { title: 't' } },
    { ...print, standing: 'published' }, // better than its source's
    { ...print, standing: 'hearsay' },
    { ...print, inputs: { index: 91, speed: 3 } }, // which nobody reads
    { ...print, inputs: {} },
    { ...print, unit: 'psi' },
    { ...print, tolerance: 1 }, // without a reason
    { ...print, why: 'w' }, // for no tolerance
    { ...print, tolerence: 1 },
    { printed: 615 }, // not the digits as printed
    {},
    { columns: ['index', {}], rows: [[91]], inputs: {} },
  ]) {
    const row = faulty(entry);
    assert.ok(row.error && !row.agrees, JSON.stringify(entry));
  }
  assert.ok(JSON.parse(module.judged('{')).rows[0].error);
});

after(() => {
  const rows = rooms.flatMap(({ wasm }) => wasm.rows);
  const line = (name, some) =>
    `  ${name.padEnd(16)} ${String(some.length).padStart(5)}` +
    `  (${some.filter((row) => row.worked_out).length} worked out by hand from what is printed)`;
  console.log(`register: ${rows.length} checks, ${rows.filter((row) => !row.agrees).length} of them not met`);
  for (const standing of standings)
    console.log(line(standing, rows.filter((row) => row.standing === standing)));
});
