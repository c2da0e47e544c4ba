// What a first visit costs: every file of the built page, compressed as a good host would send it,
// against the limits in budget.json (1 kB = 1000 bytes). A raise is a reviewed line there.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { test } from 'node:test';
import { brotliCompressSync, constants } from 'node:zlib';

import { pageFolder, read } from '../support/paths.mjs';

const budget = JSON.parse(read('tests/budget/budget.json'));

const sizes = readdirSync(pageFolder, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && !entry.name.endsWith('.map'))
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

console.log(line('file of the first visit', 'bytes', 'brotli'));
for (const row of sizes) console.log(line(row.file, row.bytes, row.brotli));
console.log(line('all', sizes.reduce((total, row) => total + row.bytes, 0), sum(sizes)));

test(`a first visit is at most ${budget.first_visit_brotli_bytes} bytes in brotli`, () => {
  assert.ok(sizes.length > 0, 'web/dist is empty');
  assert.ok(sum(sizes) <= budget.first_visit_brotli_bytes, `it is ${sum(sizes)} bytes`);
});

test(`the WebAssembly module is at most ${budget.wasm_brotli_bytes} bytes in brotli`, () => {
  const modules = sizes.filter((row) => row.file.endsWith('.wasm'));
  assert.equal(modules.length, 1, 'there is one module in the page, once');
  assert.ok(sum(modules) <= budget.wasm_brotli_bytes, `it is ${sum(modules)} bytes`);
});
