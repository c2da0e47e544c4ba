// The core's answers with every phrase of a catalogue in characters that no English word has: any
// English letters left were not looked up, or are in no catalogue.
import { chosen } from '../parity/inputs.mjs';
import { loadModule } from '../support/core.mjs';

// The members of an answer or of a description that a person reads.
const READ = new Set(['label', 'hint', 'title', 'purpose', 'text', 'own_text', 'why', 'note', 'meaning', 'safety', 'columns', 'rows', 'row_names', 'standing', 'unit']);

export function* read(value, key = '', skip = new Set()) {
  if (typeof value === 'string') {
    if (READ.has(key)) yield value;
  } else if (Array.isArray(value)) {
    for (const one of value) yield* read(one, key, skip);
  } else if (value && typeof value === 'object') {
    // A source's title stays in its language, a stretch of a sidewall is what was typed, and a
    // figure's own unit is for programs: its text has the person's.
    const own = new Set(['meaning' in value ? 'text' : '', 'standing' in value ? 'title' : '', 'value' in value ? 'unit' : '']);
    for (const [name, member] of Object.entries(value)) if (!own.has(name) && name !== 'input' && !skip.has(name)) yield* read(member, name, skip);
  }
}

// "Set # cold." becomes "Ѕеt"-like signs: each letter one that only this pretended language has.
export function pretend(english) {
  if (english === '.') return '·';
  return english.replace(/[A-Za-z]/g, (letter) => String.fromCodePoint(0x1d5a0 + (letter < 'a' ? letter.charCodeAt(0) - 65 : letter.charCodeAt(0) - 71)))
    .replace(/(\d)\.(\d)/g, '$1·$2');
}

// `keys`: of a catalogue as the core learns it, so with a context before the sentence where it has one.
export async function pretending(keys) {
  const module = await loadModule();
  const catalogue = Object.fromEntries([...keys].map((key) => [key, pretend(key.replace(/^.*\u0004/s, ''))]));
  module.learn('xx', JSON.stringify({ ...catalogue, '': 'n != 1' }));
  return module;
}

const UNITS = /^(?:km|h|kmh|mm|cm|m|s|min|kg|lb|psi|bar|kPa|mph|in|ft|°C|°F|N|cm²|sq|g|K)$/;

// A figure with its unit is the same in every language.
function onlyUnits(text) {
  return text.split(/[^\p{L}°²]+/u).filter(Boolean).every((word) => UNITS.test(word));
}

// What is left of English in a text, once what was typed, sizes, marks and units are taken out.
function leftIn(text, typed) {
  const runs = text.replace(/“[^”]*”|"[^"]*"/g, ' ').match(/[A-Za-z][\w'’-]*(?: [A-Za-z][\w'’-]*)*/g) ?? [];
  return runs.filter((run) => /[a-z]{2}/.test(run) && !onlyUnits(run) && !run.split(' ').every((word) => typed.has(word)));
}

function* typedIn(input) {
  for (const value of Object.values(input ?? {})) {
    if (typeof value === 'string') yield* value.match(/[A-Za-z][A-Za-z'’-]*/g) ?? [];
    else if (Array.isArray(value)) for (const row of value) if (row && typeof row === 'object') yield* typedIn(row);
  }
}

function idsOf({ id, choices = [], fields = [] }) {
  return [id, ...choices.map(({ value }) => value), ...fields.flatMap(idsOf)];
}

// English words left, each with a text in which it stands.
export async function left(keys) {
  const module = await pretending(keys);
  const description = JSON.parse(module.describe());
  const found = new Map();
  const look = (value, typed) => {
    for (const text of read(value)) for (const word of leftIn(text, typed)) if (!found.has(word)) found.set(word, text);
  };
  const pretended = JSON.parse(module.describeIn('xx'));
  look(pretended, new Set());
  // The ids of fields and choices stand in problems that only a program meets.
  const ids = description.sheets.flatMap(({ id, fields }) => [id, ...fields.flatMap(idsOf)]);
  for (const { sheet, input } of chosen(description)) {
    const typed = new Set([...typedIn(input), ...ids]);
    look(JSON.parse(module.answer(sheet, JSON.stringify({ ...input, language: 'xx' }))), typed);
  }
  return found;
}
