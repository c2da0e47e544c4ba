// Rows of a list: added, removed, moved, copied, and all entered at once from a table.
import type { Field } from '../core/contract';
import { fillDefaults } from './fill';
import { carriesUnit, preferredUnit, splitUnit } from './units';
import { rows } from './values';
import type { Values } from './values';

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

// A cell as read, with its column's unit.
export interface Cell {
  text: string;
  unit?: string;
}

// Replaces the list with a whole table. A bare number keeps the unit it was read in.
export function putTable(values: Values, list: string, field: Field, table: Map<string, Cell>[]): void {
  for (const key of [...values.keys()]) if (key.startsWith(`${list}.`)) values.delete(key);
  if (!field.row_names) values.set(`${list}.rows`, String(table.length));
  for (let row = 0; row < rows(values, list, field); row++) {
    fillDefaults(values, field.fields ?? [], `${list}.${row}.`);
    for (const part of field.fields ?? []) {
      const cell = table[row]?.get(part.id);
      if (!cell) continue;
      const path = `${list}.${row}.${part.id}`;
      const [typed, own] = splitUnit(cell.text, part.units ?? []);
      const bare = part.kind === 'quantity' && !carriesUnit(typed);
      const unit = own ?? cell.unit ?? preferredUnit(values, part);
      const known = !!part.units?.includes(unit);
      values.set(path, bare && !known ? `${typed} ${unit}` : typed);
      if (bare && known) values.set(`${path}.unit`, unit);
    }
  }
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
