// What a first visit costs: every file of the built page up to the first answer, and those that
// come after it (their names begin with "later"); and the files for clubs, their own pages and
// memory sticks. Compressed as a good host would send them, and compared with the limits in
// budget.json (1 kB = 1000 bytes). Raising one is a reviewed change there. For comparison, the
// smallest module made with the same tools, which only reads and writes JSON: the rest of the first
// module is its sheets.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { test } from 'node:test';
import { pathToFileURL } from 'node:url';
import { brotliCompressSync, constants } from 'node:zlib';

import { moduleFolder, pageFolder, read } from '../support/paths.mjs';

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

const languages = sizes.filter(({ file }) => /(^|[\\/])later-(de|fi|fr)-/.test(file)); // the first visit of who speaks it has it too
const later = sizes.filter((row) => /(^|[\\/])later-/.test(row.file) && !languages.includes(row));
const clubs = sizes.filter(({ file }) => ['embed.js', 'treadwater-one-file.html'].includes(file));
const first = sizes.filter((row) => !later.includes(row) && !languages.includes(row) && !clubs.includes(row));

for (const [name, rows] of [['file of the first visit', first], ['file that comes later', later], ['language', languages], ['file for clubs', clubs]]) {
  console.log(line(name, 'bytes', 'brotli'));
  for (const row of rows) console.log(line(row.file, row.bytes, row.brotli));
  console.log(line('all', rows.reduce((total, row) => total + row.bytes, 0), sum(rows)));
}

const ofModule = (name) => ['mjs', 'wasm'].map((kind) => {
  const bytes = readFileSync(join(moduleFolder, `${name}.${kind}`));
  return { file: `${name}.${kind}`, bytes: bytes.length, brotli: brotli(bytes) };
});
const smallest = ofModule('smallest');
const [least, most] = [sum(smallest), sum(ofModule('treadwater-first'))];
console.log(line('the smallest module there could be', 'bytes', 'brotli'));
for (const row of smallest) console.log(line(row.file, row.bytes, row.brotli));
console.log(line('all', smallest.reduce((total, row) => total + row.bytes, 0), least));
console.log(`the first module with its script is ${most} bytes, ${(most / least).toFixed(1)} times the smallest; the whole first visit ${sum(first)}, ${(sum(first) / least).toFixed(1)} times`);

test('the smallest module answers, so that it is a fair one', async () => {
  const { default: create } = await import(pathToFileURL(join(moduleFolder, 'smallest.mjs')));
  const { answer } = await create({ wasmBinary: readFileSync(join(moduleFolder, 'smallest.wasm')) });
  assert.deepEqual(JSON.parse(answer('{"load":"430 kg"}')), { ok: true, input: { load: '430 kg' } });
});

function holds(what, rows, most) {
  test(`${what} is at most ${most} bytes in brotli`, () => {
    assert.ok(rows.length > 0, 'there is none');
    assert.ok(sum(rows) <= most, `it is ${sum(rows)} bytes`);
  });
}

test('nothing that the page names for the first visit is counted as coming later', () => {
  const named = [...read('web/dist/index.html').matchAll(/(?:src|href)="\.\/([^"]+)"/g)].map(([, file]) => file);
  assert.ok(named.some((file) => /index-.*\.js$/.test(file)));
  assert.deepEqual(named.filter((file) => !first.some((row) => row.file === file)), []);
});

const isModule = ({ file }) => file.endsWith('.wasm');
holds('a first visit', first, budget.first_visit_brotli_bytes);
holds('the WebAssembly module of the first visit', first.filter(isModule), budget.wasm_brotli_bytes);
holds('what comes after the first answer', later, budget.later_brotli_bytes);
for (const row of languages) holds(`a first visit in ${/later-(..)/.exec(row.file)[1]}`, [...first, row], budget.first_visit_in_another_language_brotli_bytes);
holds('the script for other people\'s pages', clubs.filter(({ file }) => file === 'embed.js'), budget.embed_brotli_bytes);
holds('the one file', clubs.filter(({ file }) => file !== 'embed.js'), budget.one_file_brotli_bytes);
