// Fills a form with defaults, an example or earlier choices; and reads it for the core.
import type { Field, Input, Sheet } from '../core/contract';
import { splitUnit, withItsUnit } from './units';
import { offered, rows, text } from './values';
import type { Form, Values } from './values';

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
    } else if (given !== undefined && offered(field, String(given))) {
      const [typed, unit] = splitUnit(String(given), field.units ?? []);
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

// An untouched form: the sheet's defaults, what the person chose last time, then the presets.
export function start(sheet: Sheet, kept: Input, ...presets: Input[]): Values {
  const values: Values = new Map();
  fillDefaults(values, sheet.fields);
  for (const input of [kept, ...presets]) fill(values, sheet.fields, input);
  return values;
}

// Puts what the user typed over a fresh start: whatever differs from the untouched form is theirs.
export function carryOver(form: Form, untouched: Values, fresh: Values): Values {
  for (const [key, value] of form.values) {
    const path = key.replace(/\.unit$/, '');
    const theirs = ['', '.unit'].some((end) => form.values.get(path + end) !== untouched.get(path + end));
    if (theirs && text(form.values, path)) fresh.set(key, value);
    if (key.endsWith('.rows') && value !== untouched.get(key)) fresh.set(key, value);
  }
  return fresh;
}

export function toInput(fields: Field[], values: Values, prefix = ''): Input {
  const input: Input = Object.create(null);
  for (const field of fields) {
    const path = prefix + field.id;
    if (field.kind === 'list') {
      const list: Input[] = [];
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
