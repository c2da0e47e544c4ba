// Compares the answers of two cores, byte for byte, and prints the differences that are not on the
// list of intended changes (tests/compare/intended.mjs):
//   node tests/compare.mjs OLD NEW [SHEET...]
// OLD and NEW are folders of SHEET.LANGUAGE.jsonl, one answer per line to the same inputs.
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

import { intended } from './compare/intended.mjs';

const [old, now, ...only] = process.argv.slice(2);

// Every place at which two values differ: [path, before, after].
function* differences(a, b, path = '') {
  if (a === b) return;
  const kind = (v) => (Array.isArray(v) ? 'list' : v === null ? 'null' : typeof v);
  if (kind(a) !== kind(b) || (kind(a) !== 'list' && kind(a) !== 'object')) return yield [path, a, b];
  if (kind(a) === 'list') {
    const named = (list) => list.length > 0 && list.every((v) => v && typeof v === 'object' && 'id' in v);
    if (named(a) || named(b)) {
      const ids = (list) => list.map(({ id }) => id).join();
      if (ids(a) !== ids(b)) return yield [`${path}[]`, ids(a), ids(b)];
      for (let i = 0; i < a.length; ++i) yield* differences(a[i], b[i], `${path}[${a[i].id}]`);
      return;
    }
    for (let i = 0; i < Math.max(a.length, b.length); ++i) yield* differences(a[i], b[i], `${path}[]`);
    return;
  }
  for (const key of new Set([...Object.keys(a), ...Object.keys(b)])) yield* differences(a[key], b[key], path ? `${path}.${key}` : key);
  if (path === 'sources' && Object.keys(a).join() !== Object.keys(b).join()) yield ['sources (order)', Object.keys(a).join(), Object.keys(b).join()];
}

let compared = 0, same = 0;
const listed = new Map(), found = new Map();
for (const file of readdirSync(now).filter((name) => name.endsWith('.jsonl'))) {
  const [sheet, language] = file.split('.');
  if (only.length && !only.includes(sheet)) continue;
  if (!existsSync(join(old, file))) continue;
  const before = readFileSync(join(old, file), 'utf8').trimEnd().split('\n');
  const after = readFileSync(join(now, file), 'utf8').trimEnd().split('\n');
  if (before.length !== after.length) found.set(`${file}: ${before.length} and ${after.length} answers`, { count: 1 });
  for (let i = 0; i < before.length; ++i) {
    ++compared;
    if (before[i] === after[i]) { ++same; continue; }
    if (after[i]?.includes('\uFFFD')) found.set(`${file}:${i + 1} holds U+FFFD`, { count: 1 });
    let any = false;
    for (const [path, a, b] of differences(JSON.parse(before[i]), JSON.parse(after[i]))) {
      any = true;
      const change = intended.find((one) => one.is({ sheet, language, path, before: a, after: b, answer: after[i] }));
      const key = change ? change.what : `${sheet} ${path}`;
      const where = change ? listed : found;
      const entry = where.get(key) ?? { count: 0, example: [] };
      ++entry.count;
      if (entry.example.length < (change ? 1 : Number(process.env.SHOW ?? 2))) entry.example.push(`${file}:${i + 1} ${path}\n      - ${JSON.stringify(a)?.slice(0, 600)}\n      + ${JSON.stringify(b)?.slice(0, 600)}`);
      where.set(key, entry);
    }
    if (!any) found.set(`${sheet}: the same but for the order of members`, { count: 1, example: [`${file}:${i + 1}`] });
  }
}
console.log(`${compared} answers compared, ${same} the same to the byte`);
for (const [what, { count, example }] of listed) console.log(`  intended (${count}): ${what}${process.env.EXAMPLES ? '\n    ' + example.join('\n    ') : ''}`);
for (const [what, { count, example = [] }] of [...found].slice(0, Number(process.env.KINDS ?? 40))) console.log(`NOT INTENDED (${count}): ${what}\n    ${example.join('\n    ')}`);
console.log(`${found.size} kinds of difference that are not intended`);
process.exitCode = found.size ? 1 : 0;
