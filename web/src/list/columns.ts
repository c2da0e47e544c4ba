// Turns the lines of a table into the rows of a list: which column is which field, by the core's
// names, and what had to be left out. Nothing is guessed: a cell goes to its field unchanged, and
// the core says what it cannot read. What could change the answer and was not used is a doubt: the
// person is asked before the rows are used.
import type { Field } from '../core/contract';
import type { Plural, Say } from '../core/language';
import type { Cell } from '../form/rows';
import { HEAD_WITHIN } from './csv';
import type { Lines } from './csv';

export interface Read {
  rows: Map<string, Cell>[]; // under the fields' ids; for a list of fixed rows, in their places
  count: number; // lines that were taken
  columns: string[]; // labels of the fields that were found, in the table's order
  doubts: string[];
  remarks: string[];
}

// Without case, accents, spaces and signs.
export function fold(text: string): string {
  return text.normalize('NFD').toLowerCase().replaceAll('ß', 'ss').replace(/[^\p{L}\p{N}%]/gu, '');
}

interface Head {
  field: Field;
  unit?: string;
}

const LONGEST_NAME = 80;
const MOST_COLUMNS = 100; // are looked at

// "Pressure", "pressure (psi)", "Pression psi".
function headOf(said: string, fields: Field[], names: (field: Field) => string[]): Head | undefined {
  if (said.length > LONGEST_NAME) return undefined;
  const [, name = said, bracket] = /^(.*?)\s*[([]([^()[\]]*)[)\]]\s*$/s.exec(said) ?? [];
  if (!fold(said)) return undefined;
  for (const field of fields) {
    for (const known of names(field).map(fold)) {
      if (fold(said) === known) return { field };
      if (fold(name) === known && bracket !== undefined) return { field, unit: bracket.trim() };
      const unit = field.units?.find((one) => fold(said) === known + fold(one));
      if (unit) return { field, unit };
    }
  }
  return undefined;
}

const own = ({ id, label }: Field) => [id, label];
const others = ({ also }: Field) => also ?? [];

export function headsOf(cells: string[], list: Field): (Head | undefined)[] {
  const left = new Set(list.fields ?? []);
  const heads: (Head | undefined)[] = cells.map(() => undefined);
  for (const names of [own, others]) {
    cells.slice(0, MOST_COLUMNS).forEach((said, i) => {
      const head = heads[i] ? undefined : headOf(said, [...left], names);
      if (!head) return;
      heads[i] = head;
      left.delete(head.field);
    });
  }
  return heads;
}

// A first line that names columns: two of them, or one and no figures.
export function named(cells: string[], list: Field): number {
  const found = headsOf(cells, list).filter(Boolean).length + (rowColumn(cells, list) < 0 ? 0 : 1);
  return found > 1 || (found && !cells.some((cell) => /\d/.test(cell))) ? found : 0;
}

// In a list of fixed rows, the column that says which row a line is.
function rowColumn(cells: string[], { label, also, row_names }: Field): number {
  const names = row_names ? [label, ...(also ?? [])].map(fold) : [];
  return cells.slice(0, names.length ? MOST_COLUMNS : 0).findIndex((cell) => names.includes(fold(cell)));
}

// The line that names the columns: the first, or one below a title. -1 if there is none.
function headAt(lines: string[][], list: Field): number {
  return lines.slice(0, HEAD_WITHIN).findIndex((cells, i) => named(cells, list) > (i ? 1 : 0));
}

export function rowsOf({ lines, remarks: before, separator, skipped }: Lines, list: Field, most: number, { say, plural }: { say: Say; plural: Plural }): Read {
  const fields = list.fields ?? [];
  const remarks = [...before];
  const doubts: string[] = [];
  const head = headAt(lines, list);
  const hasHead = head >= 0;
  const first = lines[Math.max(head, 0)] ?? [];
  const body = lines.slice(head + 1);
  const number = (row: number) => skipped + head + row + 2; // of a line of the table, as the person counts
  const above = lines.slice(0, Math.max(head, 0));
  if (above.length) {
    const title = above.every((cells) => cells.filter(Boolean).length < 2);
    (title ? remarks : doubts).push(say('Above the names of the columns, and left out: #.', quoted(above.map((cells) => cells.filter(Boolean).join(' ')), say)));
  }
  let which = hasHead ? rowColumn(first, list) : -1;
  const places = (list.row_names ?? []).map(fold);
  if (which < 0 && places.length && body.length && body.every(([cell = '']) => places.includes(fold(cell)))) which = 0;
  const heads = hasHead ? headsOf(first, list) : headless(fields, which);
  const width = hasHead ? first.length : heads.length;

  const unknown = hasHead ? [...first.keys()].filter((i) => !heads[i] && i !== which) : [];
  const filled = unknown.filter((i) => body.some((cells) => cells[i]));
  const empty = unknown.filter((i) => first[i] && !filled.includes(i));
  const called = (columns: number[]) => quoted(columns.map((i) => first[i] || say('column #', i + 1)), say);
  if (filled.length) doubts.push(say('No such column here, and left out: #.', called(filled)));
  if (empty.length) remarks.push(say('No such column here, and left out: #.', called(empty)));
  const torn = separator === ',' ? tornFigure(body, heads) : undefined;
  if (torn) doubts.push(say('Line #: “#” and “#” are two cells. Is that comma a decimal one? Then part the cells by semicolons.', number(torn.row), torn.one, torn.other));

  const rows: Map<string, Cell>[] = [];
  const odd: number[] = [];
  const strange: string[] = [];
  let over = 0;
  let count = 0;
  body.forEach((cells, i) => {
    const place = which < 0 ? rows.length : places.indexOf(fold(cells[which] ?? ''));
    if (place < 0) return void strange.push(cells[which] || say('line #', i + 1));
    if (place >= most) return void over++;
    const row = new Map<string, Cell>();
    if (cells.slice(width).some(Boolean)) {
      // It is no longer clear which cell is which: the row is kept by its name alone, to be seen.
      odd.push(number(i));
      const name = fields.find(({ kind }) => kind === 'text');
      if (name) row.set(name.id, { text: cells.find(Boolean) ?? '' });
    } else {
      heads.forEach((head, column) => {
        const text = cells[column];
        if (head && text) row.set(head.field.id, cellOf(head, text));
      });
    }
    rows[place] = row;
    count++;
  });
  if (odd.length) {
    remarks.push(plural(
      'More cells than columns in line #: is a decimal comma taken for the end of a cell? Only the name was taken from it.',
      'More cells than columns in lines #: is a decimal comma taken for the end of a cell? Only the name was taken from them.',
      odd.length, some(odd.map(String), say)));
  }
  if (strange.length) doubts.push(say('No such row here, and left out: #.', quoted(strange, say)));
  if (over) doubts.push(plural('The list takes # rows: # more line was left out.', 'The list takes # rows: # more lines were left out.', over, most, over));
  return { rows, count, columns: heads.flatMap((head) => (head ? [head.unit ? `${head.field.label} (${head.unit})` : head.field.label] : [])), doubts, remarks };
}

// A decimal comma among commas that part the cells tears a figure in two, and the halves may fill
// two columns: two short whole numbers side by side, in a table without any decimal.
function tornFigure(body: string[][], heads: (Head | undefined)[]): { row: number; one: string; other: string } | undefined {
  const isFigure = (i: number) => heads[i]?.field.kind === 'quantity';
  if (body.some((cells) => cells.some((cell, i) => isFigure(i) && /\d[.,]\d/.test(cell)))) return undefined;
  const short = (cell: string | undefined): cell is string => /^\d{1,2}$/.test(cell ?? '');
  for (const [row, cells] of body.entries()) {
    for (let i = 0; i + 1 < cells.length; i++) {
      const [one, other] = [cells[i], cells[i + 1]];
      if (isFigure(i) && isFigure(i + 1) && short(one) && short(other)) return { row, one, other };
    }
  }
  return undefined;
}

// Without a first line of names the columns are in the form's order.
function headless(fields: Field[], which: number): (Head | undefined)[] {
  const heads: (Head | undefined)[] = fields.map((field) => ({ field }));
  if (which === 0) heads.unshift(undefined);
  return heads;
}

function cellOf({ field, unit }: Head, text: string): Cell {
  const choice = field.choices?.find(({ value, label }) => [value, label].some((one) => fold(one) === fold(text)));
  if (choice) return { text: choice.value };
  const yesNo = field.kind === 'yes-no' ? ['yes', 'no'].find((one) => one === fold(text)) : undefined;
  if (yesNo) return { text: yesNo };
  const [, day = '', month = '', year = ''] = (field.kind === 'date' && /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/.exec(text)) || [];
  if (year) return { text: `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}` };
  return unit ? { text, unit } : { text };
}

// A stranger's words, short and few enough to be read.
function quoted(words: string[], say: Say): string {
  return some(words.map((word) => say('“#”', [...word].slice(0, 30).join(''))), say);
}

function some(words: string[], say: Say): string {
  const few = words.slice(0, 6);
  if (words.length > few.length) few.push(say('# more', words.length - few.length));
  return few.join(', ');
}
