// A form to a link's fragment, and back. A fragment is a stranger's text.
import type { Description, Field } from '../core/contract';
import { start } from './fill';
import { unitOf } from './units';
import { leaves, LONGEST, mostRows, offered, rows, text, wayOf } from './values';
import type { Form, Values } from './values';

const LONGEST_LIST = 8000; // characters of a link

// ---- to a link

// Each field under its full path, as it is saved.
export function toFields(form: Form): Record<string, string> {
  const fields = form.sheet.fields.flatMap((field) => [...spelled(form.values, field)]);
  return Object.fromEntries([...fields, ...marks(form)]);
}

// Short enough for a message: a number with its unit, a list column by column, and no list too long
// for a link. Every default and unit is in it, so that a later version with other defaults reads
// the same figures.
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

// A number and its unit in one, "430 kg", if the two can be separated again.
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

// Lists too long for a link.
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

// ---- and back

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

// A row's text in place of a choice is kept: removed, it would silently become the first choice.
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

// A short link in its long form. If a unit is by itself, its value is as typed, so that "430 kg"
// beside "lb" stays what it is.
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

function cellsOf(value: string): string[] {
  const cells = [''];
  for (const [sign, escaped] of value.matchAll(/\\([\\~])|[^]/gu)) {
    if (sign === '~') cells.push('');
    else cells.push(cells.pop() + (escaped ?? sign));
  }
  return cells;
}
