// What a first visit costs: every file of the built page up to the first answer, and those that come
// after it (their names begin with "later"), compressed as a good host would send them, against the
// limits in budget.json (1 kB = 1000 bytes). A raise is a reviewed line there.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { test } from 'node:test';
import { brotliCompressSync, constants } from 'node:zlib';

import { pageFolder, read } from '../support/paths.mjs';

const budget = JSON.parse(read('tests/budget/budget.json'));

const sizes = readdirSync(pageFolder, { recursive: true, withFileTypes: true })
  // The whole page in one file is handed on by itself; no page asks for it.
  .filter((entry) => entry.isFile() && !entry.name.endsWith('.map') && entry.name !== 'treadwater-one-file.html')
  .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
  .map((path) => {
    const bytes = readFileSync(path);
    return { file: relative(pageFolder, path), bytes: bytes.length, brotli: brotli(bytes) };
  })
  .sort((a, b) => b.brotli - a.brotli);

function brotli(bytes) {
  return brotliCompressSync(bytes, {
    params: { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length },
  }).length;
}

function sum(rows) {
  return rows.reduce((total, row) => total + row.brotli, 0);
}

function line(file, bytes, compressed) {
  return `${file.padEnd(44)} ${String(bytes).padStart(8)} ${String(compressed).padStart(8)}`;
}

const later = sizes.filter(({ file }) => /(^|[\\/])later-/.test(file));
const first = sizes.filter((row) => !later.includes(row));

for (const [name, rows] of [['file of the first visit', first], ['file that comes later', later]]) {
  console.log(line(name, 'bytes', 'brotli'));
  for (const row of rows) console.log(line(row.file, row.bytes, row.brotli));
  console.log(line('all', rows.reduce((total, row) => total + row.bytes, 0), sum(rows)));
}

function holds(what, rows, most) {
  test(`${what} is at most ${most} bytes in brotli`, () => {
    assert.ok(rows.length > 0, 'there is none');
    assert.ok(sum(rows) <= most, `it is ${sum(rows)} bytes`);
  });
}

const isModule = ({ file }) => file.endsWith('.wasm');
holds('a first visit', first, budget.first_visit_brotli_bytes);
holds('the WebAssembly module of the first visit', first.filter(isModule), budget.wasm_brotli_bytes);
holds('what comes after the first answer', later, budget.later_brotli_bytes);
