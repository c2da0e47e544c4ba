// Every phrase that a person may read, as the source code says it: the ids of the catalogues.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';

import { read, root } from '../support/paths.mjs';

const filesOf = (folder, kinds) =>
  readdirSync(join(root, folder), { recursive: true })
    .map((file) => `${folder}/${file}`.replaceAll('\\', '/'))
    .filter((file) => kinds.test(file) && !file.includes('/generated/'))
    .sort();

const plain = (literal) => JSON.parse(`"${literal.replaceAll("\\'", "'")}"`);

// ---- the core: string literals of more than one word, or with a gap, or with a capital. A lone small
// word could be an id as well: those that are read are found by asking (left.mjs).

const C_LITERAL = /"(?:[^"\\\n]|\\.)*"(?:\s*"(?:[^"\\\n]|\\.)*")*/g;

function cLiterals(source) {
  const code = source
    .replace(/\/\/.*$/gm, '')
    .replace(/^#include.*$/gm, '')
    .replace(/static_assert\([^;]*;/g, '')
    .replace(/\bSource(\s+\w+)?\s*\{[^;]*?Standing::\w+\s*\}/gs, '') // titles stay in their own language
    .replace(/\bSource(\s+\w+)?\s*\{[^;{}]*\}/gs, '');
  return [...code.matchAll(C_LITERAL)].map(([whole]) =>
    plain([...whole.matchAll(/"((?:[^"\\\n]|\\.)*)"/g)].map(([, part]) => part).join('')));
}

const UNITS = /^(?:km|h|kmh|mm|cm|m|s|min|kg|lb|psi|bar|kPa|mph|in|ft|°C|°F|N|cm²|sq|g|K)$/;

// The marks and sizes that a sidewall bears, patterns of them, and names of a table's columns.
function isMark(text) {
  return !/\p{Ll}/u.test(text) || /\||\{[a-z_]+\??\}/.test(text) || /^[A-Z ]+ # (kg|lb)$/.test(text) || /^[T/ ]?\d+\/?\d*[^a-z]* [BDR]\d+/.test(text);
}

// A figure with its unit is the same in every language.
export function onlyUnits(text) {
  return text.split(/[^\p{L}°²]+/u).filter(Boolean).every((word) => UNITS.test(word));
}

// `sources`: those of describe(), whose words stay as they are printed.
export function corePhrases(sources) {
  const printed = Object.values(sources).flatMap(({ title, clause, year }) => [title, clause, year]);
  const not = new Set(printed);
  for (const line of read('tests/languages/not-said.txt').split('\n')) not.add(line.replace(/^"|"$/g, ''));
  const phrases = new Map();
  for (const file of filesOf('core', /\.(cpp|hpp)$/))
    for (const text of cLiterals(read(file)))
      if (/[ #]|^\p{Lu}\p{Ll}/u.test(text) && /\p{L}/u.test(text) && !onlyUnits(text) && !isMark(text) && !not.has(text) && !phrases.has(text)) phrases.set(text, file);
  return phrases;
}

// Every literal of the core: a lone small word is a phrase where a catalogue has it.
export function literals() {
  return new Set(filesOf('core', /\.(cpp|hpp)$/).flatMap((file) => cLiterals(read(file))));
}

// ---- the page: what stands in say('...'), and in the elements marked data-say

export function pagePhrases() {
  const phrases = new Map();
  for (const file of filesOf('web/src', /\.ts$/))
    for (const [, single, double] of read(file).replace(/^\s*\/\/.*$/gm, '').matchAll(/\bsay\(\s*(?:'((?:[^'\\\n]|\\.)*)'|"((?:[^"\\\n]|\\.)*)")/g))
      phrases.set(single !== undefined ? plain(single.replaceAll('"', '\\"')) : plain(double), file);
  for (const [, text] of read('web/index.html').matchAll(/ data-say>([^<]*)</g)) phrases.set(text, 'web/index.html');
  return phrases;
}

// ---- what escapes it: words that stand in a template as they are, to be read in English in any language

// The html`...` and svg`...` of a source, each gap as one sign.
export function templates(source) {
  const code = source.replace(/^\s*\/\/.*$/gm, '').replace(/'(?:[^'\\\n]|\\.)*'/g, '\0');
  const found = [];
  const readTemplate = (start) => {
    let [at, text] = [start + 1, ''];
    while (code[at] !== '`') {
      const gap = code.startsWith('${', at);
      text += gap ? '\0' : code[at];
      at = gap ? readCode(at + 2) : at + 1;
    }
    if (/\b(html|svg)$/.test(code.slice(0, start))) found.push(text);
    return at + 1;
  };
  // To behind the brace that closes it.
  const readCode = (at) => {
    for (let open = 1; open && at < code.length;) {
      if (code[at] === '`') at = readTemplate(at);
      else open += { '{': 1, '}': -1 }[code[at++]] ?? 0;
    }
    return at;
  };
  readCode(0);
  return found;
}

// Between its tags, and in an attribute that is read out.
export function wordsIn(template) {
  const heard = [...template.matchAll(/\b(?:aria-label|title|placeholder|alt)="([^"]*)"/g)].map(([, text]) => text);
  const seen = template.replace(/<[^>]*>/g, '\0').split('\0');
  return [...heard, ...seen].map((text) => text.trim()).filter((text) => /\p{L}{2}/u.test(text));
}

export function pageEscapes() {
  const found = filesOf('web/src', /\.ts$/).flatMap((file) => templates(read(file)).flatMap(wordsIn).map((text) => [text, file]));
  const frame = read('web/index.html').replace(/<(head|noscript)>.*?<\/\1>/gs, '').replace(/<(\w+)[^>]* data-say>[^<]*<\/\1>/g, '');
  return [...found, ...wordsIn(frame).map((text) => [text, 'web/index.html'])];
}
