// The same inputs through three builds of the core: by g++, by clang++, and the WebAssembly that
// the page loads. Every answer is the same text in all three, and meets the rules in
// invariants.mjs.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { after, test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { clangFolder, nativeFolder } from '../support/paths.mjs';
import { inputs } from './inputs.mjs';
import { faults } from './invariants.mjs';

const atOnce = 400;
const shown = Number(process.env.PARITY_SHOW ?? 10);

const module = await loadModule();
const description = JSON.parse(module.describe());
const asked = inputs(description);

// glibc has two of each of pow, exp and log, and takes the one that its processor can do: with a fused
// multiply-add, their last digit is not musl's. Without it, they are the same routines.
const environment = { ...process.env, GLIBC_TUNABLES: 'glibc.cpu.hwcaps=-FMA,-FMA4,-AVX2,-AVX2_Usable,-FMA_Usable,-FMA4_Usable' };

async function answersOf(folder, lines) {
  const child = spawn(join(folder, 'parity_native'), { stdio: ['pipe', 'pipe', 'inherit'], env: environment });
  const chunks = [];
  child.stdout.on('data', (chunk) => chunks.push(chunk));
  const done = new Promise((resolve, reject) => {
    child.on('close', (code, signal) => (code === 0 ? resolve() : reject(new Error(`${folder}/parity_native: ${signal ?? code}`))));
  });
  child.stdin.on('error', () => {}); // told by its exit
  child.stdin.end(lines.map((line) => line + '\n').join(''));
  await done;
  return Buffer.concat(chunks).toString().trimEnd().split('\n');
}

const counts = {};
const different = [];
const wrong = [];

test('the sheets describe themselves alike', async () => {
  for (const folder of [nativeFolder, clangFolder])
    assert.equal((await answersOf(folder, []))[0], module.describe(), folder);
});

test(`${asked.length} inputs, at least 10 000 of them, are answered alike by g++, clang++ and WebAssembly`, async () => {
  assert.ok(asked.length >= 10000);
  for (let from = 0; from < asked.length; from += atOnce) {
    const some = asked.slice(from, from + atOnce);
    const lines = some.map((one) => JSON.stringify(one));
    const both = Promise.all([nativeFolder, clangFolder].map((folder) => answersOf(folder, lines)));
    const wasm = some.map(({ sheet, input }) => module.answer(sheet, JSON.stringify(input)));
    const [gcc, clang] = await both;
    for (const [i, text] of wasm.entries()) {
      const { sheet } = some[i];
      counts[sheet] = (counts[sheet] ?? 0) + 1;
      if (gcc[i + 1] !== text) different.push(`g++ and wasm: ${lines[i]}: ${firstDifference(gcc[i + 1], text)}`);
      if (clang[i + 1] !== text) different.push(`clang++ and wasm: ${lines[i]}: ${firstDifference(clang[i + 1], text)}`);
      for (const what of faults(JSON.parse(text), description.sources)) wrong.push(`${what}: ${lines[i].slice(0, 1500)}`);
    }
    assert.equal(gcc.length, lines.length + 1);
    assert.equal(clang.length, lines.length + 1);
  }
  assert.equal(different.length, 0, `${different.length} differ\n${different.slice(0, shown).join('\n')}`);
});

test('of every answer hold the facts that must hold of any', () => {
  assert.equal(wrong.length, 0, `${wrong.length} faults\n${wrong.slice(0, shown).join('\n')}`);
});

test('every sheet is asked', () => {
  for (const { id } of description.sheets) assert.ok(counts[id] >= 100, `${id}: ${counts[id]}`);
});

function firstDifference(a = '', b = '') {
  let at = 0;
  while (at < a.length && a[at] === b[at]) ++at;
  return `…${a.slice(Math.max(0, at - 60), at + 30)}… and …${b.slice(at, at + 30)}…`;
}

after(() => console.log(Object.entries(counts).map(([sheet, count]) => `${sheet} ${count}`).join(', ')));
