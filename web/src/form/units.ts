// The unit of each figure: the one typed with it, else the one picked, else the preferred one.
import type { Field } from '../core/contract';
import { leaves, plain, text } from './values';
import type { Form, Values } from './values';

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

// Does the typed text include its own unit? An exponent's e is not one.
export function carriesUnit(typed: string): boolean {
  return /[\p{L}"'″′”’°%]/u.test(typed.replace(/(\d)e(?=[+-]?\d)/i, '$1'));
}

// A unit such as "/32 in" completes a fraction; one already written is not repeated.
export function withUnit(typed: string, unit: string): string {
  if (!unit.startsWith('/')) return `${typed} ${unit}`;
  const [denominator = '', ...rest] = unit.split(' ');
  return typed.endsWith(denominator) ? [typed, ...rest].join(' ') : typed + unit;
}

// "430 kg" from an example becomes a number for the field and a unit for its picker.
export function splitUnit(given: string, units: string[]): [string, string?] {
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

// A number keeps the unit it was typed in, whatever unit system is chosen later.
export function pinUnit({ sheet, values }: Form, path: string): void {
  for (const [leaf, field] of leaves(sheet.fields, values)) {
    if (leaf === path && field.kind === 'quantity' && text(values, path).trim()) {
      values.set(`${path}.unit`, unitOf(values, path, field));
    }
  }
}
