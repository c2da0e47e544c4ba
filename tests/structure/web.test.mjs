// The rooms of web/src: which may import which. Every import counts: static, type-only, dynamic,
// and a worker's. No import cycles of any length; no room imports one above or beside it.
import assert from 'node:assert/strict';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join, posix } from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';

const SOURCE = fileURLToPath(new URL('../../web/src', import.meta.url));

// A room, and the rooms it may import from. What lies in web/src itself may import from all.
const ROOMS = {
  core: [],
  form: ['core'],
  list: ['core', 'form'],
  answer: ['core', 'form', 'list'],
  keep: ['core', 'form'],
  embed: ['core'],
  page: ['core', 'form', 'list', 'answer', 'keep', 'embed'],
};

const MOST_LINES = 400;
const MOST_LINES_OF_A_CLASS = 300;

const files = new Map(readdirSync(SOURCE, { recursive: true })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => /\.ts$/.test(file) && !/^generated\/|\.d\.ts$/.test(file))
  .map((file) => [file, readFileSync(join(SOURCE, file), 'utf8')]));

// What is built elsewhere: the modules of the core, and the catalogues.
const BUILT = /^generated\/|^\.\.\/languages\//;

const IMPORT = /(?:\bfrom|\bimport|\bimport\(|\bnew URL\()\s*['"](\.{1,2}\/[^'"]+)['"]/g;

// Each file with the files it imports.
function importsOf(sources) {
  return new Map([...sources].map(([file, text]) => {
    const code = text.replace(/^\s*\/\/.*$/gm, '').replace(/\/\*.*?\*\//gs, '');
    const imported = [...code.matchAll(IMPORT)]
      .map(([, path]) => posix.join(posix.dirname(file), path))
      .filter((path) => !BUILT.test(path))
      .map((path) => (path.endsWith('.ts') ? path : `${path}.ts`));
    return [file, [...new Set(imported)]];
  }));
}

// One circle of imports, as the files along it; empty where there is none.
function circleIn(imports) {
  const done = new Set();
  const along = [];
  const walk = (file) => {
    const before = along.indexOf(file);
    if (before >= 0) return [...along.slice(before), file];
    if (done.has(file)) return [];
    along.push(file);
    for (const next of imports.get(file) ?? []) {
      const circle = walk(next);
      if (circle.length) return circle;
    }
    along.pop();
    done.add(file);
    return [];
  };
  for (const file of imports.keys()) {
    const circle = walk(file);
    if (circle.length) return circle;
  }
  return [];
}

const roomOf = (file) => (file.includes('/') ? file.split('/')[0] : '');

function forbiddenIn(imports) {
  return [...imports].flatMap(([file, imported]) => {
    const from = roomOf(file);
    if (!from) return [];
    return imported
      .filter((other) => roomOf(other) !== from && !ROOMS[from]?.includes(roomOf(other)))
      .map((other) => `${file} imports ${other}`);
  });
}

// The lines of each class at the left margin.
function classesOf(text) {
  return [...text.matchAll(/^(?:export )?class (\w+)[^]*?^\}/gm)].map(([whole, name]) => [name, whole.split('\n').length]);
}

const imports = importsOf(files);

test('every room is declared, and every import leads to a file', () => {
  assert.deepEqual([...new Set([...files.keys()].map(roomOf).filter(Boolean))].sort(), Object.keys(ROOMS).sort());
  for (const [file, imported] of imports)
    for (const other of imported) assert.ok(existsSync(join(SOURCE, other)), `${file} imports ${other}`);
});

test('no circle of imports', () => {
  assert.deepEqual(circleIn(imports), []);
});

test('the arrows between the rooms point one way', () => {
  assert.deepEqual(forbiddenIn(imports), []);
  assert.deepEqual(circleIn(new Map(Object.entries(ROOMS))), [], 'the order itself');
});

test(`no file is longer than ${MOST_LINES} lines, no class than ${MOST_LINES_OF_A_CLASS}`, () => {
  for (const [file, text] of files) {
    assert.ok(text.split('\n').length <= MOST_LINES, file);
    for (const [name, lines] of classesOf(text)) assert.ok(lines <= MOST_LINES_OF_A_CLASS, `${file}: ${name} has ${lines}`);
  }
});

test('an import is seen, however it is written', () => {
  const seen = (...lines) => importsOf(new Map([['form/one.ts', lines.join('\n')]])).get('form/one.ts');
  assert.deepEqual(seen("import { a } from './a';"), ['form/a.ts']);
  assert.deepEqual(seen('import {', '  a,', "} from '../page/b';"), ['page/b.ts']);
  assert.deepEqual(seen("import type { C } from '../core/c';", "export * from '../core/d';"), ['core/c.ts', 'core/d.ts']);
  assert.deepEqual(seen("const e = () => import('../page/e');", "let f: typeof import('./f');"), ['page/e.ts', 'form/f.ts']);
  assert.deepEqual(seen("new Worker(new URL('./g.ts', import.meta.url));", "import './h';"), ['form/g.ts', 'form/h.ts']);
  assert.deepEqual(seen("// import './i';", "import k from '../generated/treadwater.mjs';", "import { html } from 'lit/html.js';"), []);
});

test('an import that is added against the order, or that closes a circle, is found', () => {
  const added = (file, line) => importsOf(new Map([...files, [file, `${line}\n${files.get(file)}`]]));
  assert.deepEqual(forbiddenIn(added('form/values.ts', "import type { App } from '../page/app';")), ['form/values.ts imports page/app.ts']);
  assert.deepEqual(forbiddenIn(added('answer/view.ts', "const late = () => import('../keep/store');")), ['answer/view.ts imports keep/store.ts']);
  assert.deepEqual(circleIn(added('form/values.ts', "import type { FormHost } from './view';")), ['form/units.ts', 'form/values.ts', 'form/view.ts', 'form/units.ts']);
  assert.deepEqual(circleIn(added('core/contract.ts', "import './contract';")), ['core/contract.ts', 'core/contract.ts']);
});
