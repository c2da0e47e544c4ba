// What a form holds: text as it was typed, under a path ("load", or "tyres.0.load" in a list), and
// beside it the unit picked for it ("load.unit") or the number of rows ("tyres.rows"). From here it
// goes to the core as input, and into the link's fragment and back.
import type { Description, Field, Given, Input, Sheet, Way } from '../core/contract';

export type Values = Map<string, string>;

export interface Form {
  sheet: Sheet;
  values: Values;
  way: string; // the way in that was taken, or ''
  example: boolean; // still holds figures of the worked example
}

const LONGEST_LIST = 8000; // characters of a link
const LONGEST = 2000; // characters: more than the core takes in any field

export function text(values: Values, path: string): string {
  return values.get(path) ?? '';
}

// What was typed, as it may stand among other words: without marks that would turn those round (or
// half characters, which are no text), and set apart where it runs from right to left.
export function plain(typed: string): string {
  const kept = typed.slice(0, LONGEST).replace(/[\p{Cs}\u202a-\u202e\u2066-\u2069]/gu, '').trim();
  return /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/.test(kept) ? `\u2068${kept}\u2069` : kept;
}

// Every field that takes a value, with its path and what it is called; lists row by row.
export function* leaves(fields: Field[], values: Values, prefix = '', row = ''): Generator<[string, Field, string]> {
  for (const field of fields) {
    const path = prefix + field.id;
    if (field.kind !== 'list') yield [path, field, row ? `${row}: ${field.label}` : field.label];
    else {
      for (let row = 0; row < rows(values, path, field); row++) {
        yield* leaves(field.fields ?? [], values, `${path}.${row}.`, rowName(field, row));
      }
    }
  }
}

// ---- lists

export function rows(values: Values, list: string, field: Field): number {
  if (field.row_names) return field.row_names.length;
  const count = Number(values.get(`${list}.rows`) ?? 1);
  return Number.isInteger(count) ? Math.min(Math.max(count, 0), mostRows(field)) : 1;
}

export function mostRows({ row_names, most }: Field): number {
  return row_names?.length ?? most ?? 100;
}

export function rowName({ label, row_names }: Field, row: number): string {
  return row_names?.[row] ?? `${label} ${row + 1}`;
}

export function addRow(values: Values, list: string, field: Field): void {
  const count = rows(values, list, field);
  values.set(`${list}.rows`, String(count + 1));
  fillDefaults(values, field.fields ?? [], `${list}.${count}.`);
}

export function removeRow(values: Values, list: string, field: Field, row: number): void {
  const count = rows(values, list, field);
  takeRow(values, list, row);
  for (let below = row + 1; below < count; below++) putRow(values, list, below - 1, takeRow(values, list, below));
  values.set(`${list}.rows`, String(count - 1));
}

export function swapRows(values: Values, list: string, row: number, other: number): void {
  const [one, two] = [takeRow(values, list, row), takeRow(values, list, other)];
  putRow(values, list, row, two);
  putRow(values, list, other, one);
}

export function copyRow(values: Values, list: string, from: number, to: number): void {
  takeRow(values, list, to);
  const copied = takeRow(values, list, from);
  for (const row of [from, to]) putRow(values, list, row, copied);
}

// A whole table in place of the list. A bare number keeps the unit it was read in.
export function putTable(values: Values, list: string, field: Field, table: Map<string, Cell>[]): void {
  for (const key of [...values.keys()]) if (key.startsWith(`${list}.`)) values.delete(key);
  if (!field.row_names) values.set(`${list}.rows`, String(table.length));
  for (let row = 0; row < rows(values, list, field); row++) {
    fillDefaults(values, field.fields ?? [], `${list}.${row}.`);
    for (const part of field.fields ?? []) {
      const cell = table[row]?.get(part.id);
      if (!cell) continue;
      const path = `${list}.${row}.${part.id}`;
      const [typed, own] = split(cell.text, part.units ?? []);
      const bare = part.kind === 'quantity' && !carriesUnit(typed);
      const unit = own ?? cell.unit ?? preferredUnit(values, part);
      const known = !!part.units?.includes(unit);
      values.set(path, bare && !known ? `${typed} ${unit}` : typed);
      if (bare && known) values.set(`${path}.unit`, unit);
    }
  }
}

// A cell as it was read, with the unit that its column names.
export interface Cell {
  text: string;
  unit?: string;
}

// What a row holds, under the fields' own ids.
type Row = [string, string][];

function takeRow(values: Values, list: string, row: number): Row {
  const start = `${list}.${row}.`;
  const held = [...values].filter(([key]) => key.startsWith(start));
  for (const [key] of held) values.delete(key);
  return held.map(([key, value]) => [key.slice(start.length), value]);
}

function putRow(values: Values, list: string, row: number, held: Row): void {
  for (const [id, value] of held) values.set(`${list}.${row}.${id}`, value);
}

// ---- units

// The unit that a picker shows: the one picked, else the one the unit system prefers.
export function unitOf(values: Values, path: string, field: Field): string {
  return values.get(`${path}.unit`) ?? preferredUnit(values, field);
}

export function preferredUnit(values: Values, field: Field): string {
  return field.preferred?.[text(values, 'units')] ?? field.units?.[0] ?? '';
}

// What was typed, and for a bare number its unit.
export function withItsUnit(values: Values, path: string, field: Field): string {
  const typed = plain(text(values, path));
  const bare = typed && field.kind === 'quantity' && !carriesUnit(typed);
  return bare ? withUnit(typed, unitOf(values, path, field)) : typed;
}

// Does the typed text bring its own unit? An exponent's e is not one.
export function carriesUnit(typed: string): boolean {
  return /[\p{L}"'″′”’°%]/u.test(typed.replace(/(\d)e(?=[+-]?\d)/i, '$1'));
}

// A unit such as "/32 in" finishes a fraction; one that is already written is not written twice.
export function withUnit(typed: string, unit: string): string {
  if (!unit.startsWith('/')) return `${typed} ${unit}`;
  const [denominator = '', ...rest] = unit.split(' ');
  return typed.endsWith(denominator) ? [typed, ...rest].join(' ') : typed + unit;
}

// "430 kg" from an example becomes a number for the field and a unit for its picker.
function split(given: string, units: string[]): [string, string?] {
  for (const unit of [...units].sort((a, b) => b.length - a.length)) {
    const number = given.slice(0, -unit.length).trim();
    if (given.endsWith(unit) && number && !carriesUnit(number)) return [number, unit];
  }
  return [given];
}

// A new unit system moves the pickers of empty fields only: typed numbers keep their unit.
export function freeEmptyPickers(form: Form): void {
  for (const [path] of leaves(form.sheet.fields, form.values)) {
    if (!text(form.values, path).trim()) form.values.delete(`${path}.unit`);
  }
}

// ---- filling

export function fill(values: Values, fields: Field[], input: Input, prefix = ''): void {
  for (const field of fields) {
    const path = prefix + field.id;
    const given = Object.hasOwn(input, field.id) ? input[field.id] : undefined;
    if (Array.isArray(given)) {
      if (!field.row_names) values.set(`${path}.rows`, String(given.length));
      given.forEach((row, i) => {
        fillDefaults(values, field.fields ?? [], `${path}.${i}.`);
        fill(values, field.fields ?? [], row, `${path}.${i}.`);
      });
    } else if (given !== undefined && offered(field, given)) {
      const [typed, unit] = split(String(given), field.units ?? []);
      values.set(path, typed);
      if (unit) values.set(`${path}.unit`, unit);
    }
  }
}

export function fillDefaults(values: Values, fields: Field[], prefix = ''): void {
  for (const field of fields) {
    const path = prefix + field.id;
    if (field.kind === 'list') {
      for (let row = 0; row < rows(values, path, field); row++) fillDefaults(values, field.fields ?? [], `${path}.${row}.`);
    } else if (field.default) fill(values, [field], { [field.id]: field.default }, prefix);
  }
}

function offered(field: Field, value: string): boolean {
  return field.kind !== 'choice' || !!field.choices?.some((choice) => choice.value === value);
}

// An untouched form: the sheet's defaults, what the person chose last time, then the presets.
export function start(sheet: Sheet, kept: Input, ...presets: Input[]): Values {
  const values: Values = new Map();
  fillDefaults(values, sheet.fields);
  for (const input of [kept, ...presets]) fill(values, sheet.fields, input);
  return values;
}

// Lays what the person typed over a fresh start: whatever differs from the untouched form is theirs.
export function carryOver(form: Form, untouched: Values, fresh: Values): Values {
  for (const [key, value] of form.values) {
    const path = key.replace(/\.unit$/, '');
    const theirs = ['', '.unit'].some((end) => form.values.get(path + end) !== untouched.get(path + end));
    if (theirs && text(form.values, path)) fresh.set(key, value);
    if (key.endsWith('.rows') && value !== untouched.get(key)) fresh.set(key, value);
  }
  return fresh;
}

// ---- to the core

export function toInput(fields: Field[], values: Values, prefix = ''): Input {
  const input: Input = Object.create(null);
  for (const field of fields) {
    const path = prefix + field.id;
    if (field.kind === 'list') {
      const list: Given = [];
      for (let row = 0; row < rows(values, path, field); row++) {
        list.push(toInput(field.fields ?? [], values, `${path}.${row}.`));
      }
      input[field.id] = list;
      continue;
    }
    const typed = withItsUnit(values, path, field);
    if (typed) input[field.id] = typed;
  }
  return input;
}

// The phone's own date, for whatever depends on age.
export function today(now = new Date()): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

// A day in words, as "25 Nov 2026", or with its time, as "25 Nov, 14:30".
export function day(when: string, time = false): string {
  const language = document.documentElement.lang;
  const form: Intl.DateTimeFormatOptions = time ? { hour: '2-digit', minute: '2-digit' } : { year: 'numeric' };
  return new Date(when).toLocaleString(language === 'en' ? 'en-GB' : language, { day: 'numeric', month: 'short', ...form });
}

// ---- to a link and back

// Each field under its own path, whole, as it is kept.
export function toFields(form: Form): Record<string, string> {
  const fields = form.sheet.fields.flatMap((field) => [...spelled(form.values, field)]);
  return Object.fromEntries([...fields, ...marks(form)]);
}

// Short enough for a message: a number with its unit, a list column by column, and no list that is
// more than a link can carry. Every default and unit is in it, so that a later version with other
// defaults reads the same figures.
export function toLink(form: Form, language = ''): string {
  const long = longLists(form);
  const query = new URLSearchParams();
  for (const field of form.sheet.fields) {
    if (long.includes(field)) query.append('page.without', field.id);
    else for (const [key, value] of inShort(form.values, field)) query.append(key, value);
  }
  for (const [key, value] of marks(form)) query.append(key, value);
  if (language) query.append('page.language', language);
  return `#${form.sheet.id}?${query.toString().replaceAll('%2F', '/').replaceAll('%7E', '~')}`;
}

function marks({ way, example }: Form): [string, string][] {
  return [...(way ? [['page.way', way]] : []), ...(example ? [['page.example', '1']] : [])] as [string, string][];
}

function* spelled(values: Values, field: Field): Generator<[string, string]> {
  const count = values.get(`${field.id}.rows`);
  if (field.kind === 'list' && count !== undefined) yield [`${field.id}.rows`, count];
  for (const [path, leaf] of leaves([field], values)) {
    const typed = text(values, path);
    if (!typed) continue;
    yield [path, typed];
    if (leaf.kind === 'quantity') yield [`${path}.unit`, unitOf(values, path, leaf)];
  }
}

const FIGURES = /^[\d.,]+$/;

function* inShort(values: Values, field: Field): Generator<[string, string]> {
  if (field.kind !== 'list') {
    yield* inColumn(values, field, field.id, [field.id], ([cell = '']) => cell);
    return;
  }
  const count = values.get(`${field.id}.rows`);
  if (count !== undefined) yield [`${field.id}.rows`, count];
  for (const column of field.fields ?? []) {
    const paths = Array.from({ length: rows(values, field.id, field) }, (_, row) => `${field.id}.${row}.${column.id}`);
    yield* inColumn(values, column, `${field.id}.${column.id}`, paths, joined);
  }
}

// A number and its unit in one, "430 kg", where all there is can be told apart again.
function* inColumn(values: Values, field: Field, key: string, paths: string[], put: (cells: string[]) => string): Generator<[string, string]> {
  const typed = paths.map((path) => text(values, path));
  if (!typed.some(Boolean)) return;
  const units = paths.map((path, i) => (typed[i] && field.kind === 'quantity' ? unitOf(values, path, field) : ''));
  const plain = typed.every((cell, i) => !cell || (FIGURES.test(cell) && units[i]));
  yield [key, put(plain ? typed.map((cell, i) => `${cell} ${units[i]}`.trim()) : typed)];
  if (!plain && field.kind === 'quantity') yield [`${key}.unit`, put(units)];
}

// Cells of a column between tildes.
function joined(cells: string[]): string {
  return cells.map((cell) => cell.replace(/[\\~]/g, '\\$&')).join('~');
}

function cellsOf(value: string): string[] {
  const cells = [''];
  for (const [sign, escaped] of value.matchAll(/\\([\\~])|[^]/gu)) {
    if (sign === '~') cells.push('');
    else cells.push(cells.pop() + (escaped ?? sign));
  }
  return cells;
}

// A short link as a long one says it. Where a unit stands by itself, what it belongs to is as it was
// typed, so that "430 kg" beside "lb" stays what it is.
function* spelledOut(said: [string, string][], fields: Field[]): Generator<[string, string]> {
  const keys = new Set(said.map(([key]) => key));
  for (const [key, value] of said) {
    const [id = '', own = '', ...end] = key.split('.');
    const field = fields.find((one) => one.id === id);
    const column = field?.fields?.find((one) => one.id === own);
    const cells = field && column ? cellsOf(value).slice(0, mostRows(field) + 1) : [value];
    for (const [row, cell] of cells.entries()) {
      if (column && !cell) continue;
      const path = column ? [id, row, own, ...end].join('.') : key;
      const [, figure, unit = ''] = /^([\d.,]+) (.+)$/.exec(cell) ?? [];
      if (figure && (column ?? field)?.units?.includes(unit) && !keys.has(`${key}.unit`)) yield* [[path, figure], [`${path}.unit`, unit]] as [string, string][];
      else yield [path, cell];
    }
  }
}

// Lists that are more than a link can carry.
export function longLists({ sheet, values }: Form): Field[] {
  return sheet.fields.filter((field) => {
    if (field.kind !== 'list') return false;
    let length = 0;
    for (const [key, value] of spelled(values, field)) {
      length += key.length + value.length + 2;
      if (length > LONGEST_LIST) return true;
    }
    return false;
  });
}

export interface Opened {
  form: Form;
  ignored: string[]; // what the link said that this version cannot use
  without: string[]; // lists that were too long for it
}

// A fragment is a stranger's text: only keys that the sheet itself names are taken from it.
export function fromFragment(fragment: string, description: Description): Opened | undefined {
  const [, id = '', query = ''] = /^#?([^?]*)\??(.*)$/s.exec(fragment) ?? [];
  const sheet = description.sheets.find((one) => one.id === id);
  const said = [...new URLSearchParams(query)].filter(([key]) => key !== 'page.language'); // that is read when the page starts
  if (!sheet || !said.length) return undefined;
  const form: Form = { sheet, values: start(sheet, {}), way: '', example: false };
  const ignored: string[] = [];
  const without: string[] = [];
  for (const [key, value] of spelledOut(said, sheet.fields)) {
    if (key === 'page.way' && wayOf(description, sheet, value)) form.way = value;
    else if (key === 'page.without') without.push(sheet.fields.find((field) => field.id === value)?.label ?? value);
    else if (key === 'page.example') form.example = value === '1' && !!sheet.example;
    else if (accepts(sheet.fields, key, value)) form.values.set(key, value.slice(0, LONGEST));
    else ignored.push(key);
  }
  return { form, ignored, without };
}

export function wayOf(description: Description, sheet: Sheet, id: string): Way | undefined {
  return description.ways.find((way) => way.id === id && way.sheet === sheet.id);
}

// What a row says in place of a choice is kept: taken out, it would become the first choice unseen.
function accepts(fields: Field[], key: string, value: string, inRow = false): boolean {
  const [id = '', ...rest] = key.split('.');
  const field = fields.find((one) => one.id === id);
  if (!field) return false;
  const end = rest.join('.');
  if (field.kind === 'list') {
    if (end === 'rows') return !field.row_names && /^\d{1,4}$/.test(value);
    return /^\d{1,4}$/.test(rest[0] ?? '') && Number(rest[0]) < mostRows(field) && accepts(field.fields ?? [], rest.slice(1).join('.'), value, true);
  }
  if (end === 'unit') return !!field.units?.includes(value);
  return !end && (inRow || offered(field, value));
}
