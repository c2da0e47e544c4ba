// The rooms of the core, and which may include which: arrows point one way. Read from the includes.
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { test } from 'node:test';

import { read, root } from '../support/paths.mjs';

// Each room may use the rooms of the lines above its own, and of its own line only itself.
const ROOMS = [
  ['quantity'],
  ['words'],
  ['standard'],
  ['sidewall'],
  ['patch'],
  ['water', 'grip', 'air', 'wear', 'car'],
  ['stage'],
  ['judge'],
  ['sheets'],
  ['json'],
];
const floorOf = (room) => ROOMS.findIndex((line) => line.includes(room));

// "a/b.cpp" -> the files it includes, of those in the list of sources.
function includes(sources) {
  return new Map([...sources].map(([file, text]) =>
    [file, [...text.matchAll(/^#include "core\/([^"]+)"/gm)].map(([, other]) => other)]));
}

export function wrongArrows(sources) {
  const wrong = [];
  for (const [file, others] of includes(sources)) {
    const room = file.split('/')[0];
    if (floorOf(room) < 0) wrong.push(`${file}: ${room} is no room`);
    for (const other of others) {
      const there = other.split('/')[0];
      if (there !== room && !(floorOf(there) >= 0 && floorOf(there) < floorOf(room))) wrong.push(`${file} -> ${other}`);
    }
  }
  return wrong;
}

// Sheets stand side by side: none looks into another's folder.
export function sheetsInSheets(sources) {
  const wrong = [];
  for (const [file, others] of includes(sources)) {
    const own = /^sheets\/(\w+)\//.exec(file)?.[1];
    for (const other of others) {
      const there = /^sheets\/(\w+)\//.exec(other)?.[1];
      if (there && there !== own) wrong.push(`${file} -> ${other}`);
    }
  }
  return wrong;
}

// A circle of headers, as the files in it; nothing where there is none.
export function circle(sources) {
  const arrows = includes(sources);
  const done = new Set();
  const walk = (file, path) => {
    if (path.includes(file)) return [...path.slice(path.indexOf(file)), file];
    if (done.has(file)) return undefined;
    done.add(file);
    for (const other of arrows.get(file) ?? []) {
      const found = walk(other, [...path, file]);
      if (found) return found;
    }
    return undefined;
  };
  for (const file of arrows.keys()) {
    const found = walk(file, []);
    if (found) return found;
  }
  return undefined;
}

const files = readdirSync(`${root}/core`, { recursive: true }).map(String).filter((file) => /\.(cpp|hpp|inc)$/.test(file)).sort();
const core = new Map(files.map((file) => [file.replaceAll('\\', '/'), read(`core/${file}`)]));

test('no room of the core reaches up or sideways', () => assert.deepEqual(wrongArrows(core), []));
test('no sheet looks into another', () => assert.deepEqual(sheetsInSheets(core), []));
test('no circle of includes', () => assert.equal(circle(core), undefined));

test('only json knows JSON, and only the rooms above the words say anything', () => {
  const knows = [...core].filter(([, text]) => text.includes('nlohmann')).map(([file]) => file.split('/')[0]);
  assert.deepEqual([...new Set(knows)], ['json']);
});

test('a judge gives findings, not sentences', () => {
  for (const [file, text] of core)
    if (/^judge\/.*\.[ch]pp$/.test(file)) assert.doesNotMatch(text, /\b(?:say|Phrase|plural)\(\s*"[^"#]*[a-z] [^"]*"/, file);
});

test('a file of code is no longer than a person reads', () => {
  // Tables may be longer, as tables.
  const tables = new Set(['judge/findings.inc', 'sidewall/marks.cpp', 'sidewall/mark_table.cpp', 'sidewall/families.cpp']);
  const long = [...core].filter(([file, text]) => !tables.has(file) && text.split('\n').length > 430).map(([file, text]) => `${file}: ${text.split('\n').length}`);
  assert.deepEqual(long, []);
});

test('these tests see what is wrong', () => {
  const invented = (entries) => new Map(Object.entries(entries));
  assert.equal(wrongArrows(invented({ 'standard/a.hpp': '#include "core/patch/b.hpp"' })).length, 1);
  assert.equal(wrongArrows(invented({ 'air/a.hpp': '#include "core/water/b.hpp"' })).length, 1);
  assert.equal(wrongArrows(invented({ 'quantity/a.hpp': '#include "core/words/say.hpp"' })).length, 1);
  assert.equal(wrongArrows(invented({ 'loft/a.hpp': '' })).length, 1);
  assert.deepEqual(wrongArrows(invented({ 'stage/a.hpp': '#include "core/water/b.hpp"\n#include "core/stage/c.hpp"' })), []);
  assert.equal(sheetsInSheets(invented({ 'sheets/one/a.cpp': '#include "core/sheets/two/b.hpp"' })).length, 1);
  assert.deepEqual(circle(invented({ 'air/a.hpp': '#include "core/air/b.hpp"', 'air/b.hpp': '#include "core/air/a.hpp"' })), ['air/a.hpp', 'air/b.hpp', 'air/a.hpp']);
});
