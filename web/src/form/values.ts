// What a form holds: text as it was typed, under a path ("load", or "tyres.0.load" in a list), and
// beside it the unit picked for it ("load.unit") or the number of rows ("tyres.rows").
import type { Description, Field, Sheet, Way } from '../core/contract';

export type Values = Map<string, string>;

export interface Form {
  sheet: Sheet;
  values: Values;
  way: string; // the way in that was taken, or ''
  example: boolean; // still holds figures of the worked example
}

// The owner of the open form; the watchers are called after each drawing.
export interface FormHolder {
  readonly form: Form;
  readonly watchers: Set<() => void>;
}

export const LONGEST = 2000; // characters: more than the core takes in any field

export function text(values: Values, path: string): string {
  return values.get(path) ?? '';
}

// What was typed, made safe among other words: without marks that would reverse those (or half
// characters), and isolated if it runs from right to left.
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

export function wayOf(description: Description, sheet: Sheet, id: string): Way | undefined {
  return description.ways.find((way) => way.id === id && way.sheet === sheet.id);
}

// A choice that the field has; a field of another kind takes any text.
export function offered(field: Field, value: string): boolean {
  return field.kind !== 'choice' || !!field.choices?.some((choice) => choice.value === value);
}
