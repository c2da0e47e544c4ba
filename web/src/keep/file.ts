// Saved forms as one file, for another device or as a copy. A file is a stranger's text: all of it
// is checked before any of it is saved.
import type { Description } from '../core/contract';
import { say } from '../core/language';
import { newId, strangers, upgraded } from './record';
import type { Kept, KeptAsLink } from './record';
import { Refusal } from './store';

const VERSION = 2;
const MARK = 'kept forms';
const MOST_BYTES = 10_000_000;
const MOST_FORMS = 1000;
export const LONGEST_NAME = 100;

export function toText(kept: Kept[]): string {
  const forms = kept.map(({ name, sheet, made, changed, fields }) => ({ name, sheet, made, changed, fields }));
  const text = JSON.stringify({ treadwater: MARK, version: VERSION, forms }, null, 1);
  if (text.length > MOST_BYTES / 2) throw new Refusal(say('All together is too much for one file. Save the forms one by one.'));
  return text;
}

export function offerFile(name: string, text: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = `${name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '').slice(0, 60) || 'form'}.treadwater.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

// A sentence, and what to do about it.
const refusal = (said: string, cause?: unknown) =>
  new Refusal(`${said} ${say('Choose a file that was saved from this page, or save it once more. Nothing was changed.')}`, { cause });
const later = (said: string, cause?: unknown) => new Refusal(`${said} ${say('Nothing was changed.')}`, { cause });

export async function fromFile(file: File, description: Description): Promise<Kept[]> {
  if (file.size > MOST_BYTES) {
    throw refusal(say('This file holds # MB, and a file of kept forms at most # MB.', Math.round(file.size / 1e6), MOST_BYTES / 1e6));
  }
  const whole = object(parsed(await text(file)));
  if (!whole || whole['treadwater'] !== MARK) throw refusal(say('This file does not say that it holds kept forms.'));
  const version = whole['version'];
  if (typeof version === 'number' && version > VERSION) {
    throw later(say('This file was saved by a newer version of this page. Load the page again while there is a connection, then take the file in.'));
  }
  const forms = whole['forms'];
  if ((version !== 1 && version !== VERSION) || !Array.isArray(forms) || !forms.length || unknown(whole, ['treadwater', 'version', 'forms'])) {
    throw refusal(say('This file says that it holds kept forms, but it is not laid out like one.'));
  }
  if (forms.length > MOST_FORMS) throw refusal(say('This file holds # forms, and at most # can be taken in at once.', forms.length, MOST_FORMS));
  return forms.map((form, i) => checked(version === 1 ? fromLink(form) : form, say('Form # in this file', i + 1), description));
}

async function text(file: File): Promise<string> {
  try {
    return await file.text();
  } catch (reason) {
    throw later(say('This file could not be read. Copy it to this device and try again.'), reason);
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (reason) {
    throw refusal(say('This file is damaged, or is something else than kept forms.'), reason);
  }
}

function fromLink(form: unknown): unknown {
  const { link } = object(form) ?? {};
  return typeof link === 'string' ? upgraded(form as KeptAsLink) : form;
}

// Anything not exactly as this page would have saved it is refused, with its place and what it is.
function checked(form: unknown, place: string, description: Description): Kept {
  const found = object(form);
  if (!found) throw refusal(say('# is not a form.', place));
  const odd = unknown(found, ['name', 'sheet', 'made', 'changed', 'fields']);
  if (odd !== undefined) throw refusal(say('# says #, which has no place there.', place, quoted(odd)));
  const { name, sheet, made, changed } = found;
  if (typeof name !== 'string' || !name.trim() || name.length > LONGEST_NAME || /\p{Cc}/u.test(name)) {
    throw refusal(say('# has no name, or one that is no line of at most # characters.', place, LONGEST_NAME));
  }
  const which = `${place}, ${quoted(name)},`;
  if (typeof sheet !== 'string') throw refusal(say('# does not say of which sheet it is.', which));
  if (!isTime(made) || !isTime(changed)) throw refusal(say('# does not say when it was kept.', which));
  const fields = object(found['fields']);
  if (!fields || !Object.values(fields).every((value) => typeof value === 'string')) {
    throw refusal(say('# holds something else than the texts of its fields.', which));
  }
  const content = { sheet, fields: fields as Record<string, string> };
  const left = strangers(content, description);
  if (!left) {
    throw later(say('# is of a sheet that this version of the page does not have, #, or is empty. Load the page again while there is a connection, then take the file in.', which, quoted(content.sheet)));
  }
  if (left.length) throw refusal(say('# says #, which has no place on its sheet.', which, quoted(left[0]!)));
  return { id: newId(), name, ...content, made, changed };
}

function object(value: unknown): Record<string, unknown> | undefined {
  return typeof value === 'object' && value && !Array.isArray(value) ? value as Record<string, unknown> : undefined;
}

function unknown(found: Record<string, unknown>, known: string[]): string | undefined {
  return Object.keys(found).find((key) => !known.includes(key));
}

function isTime(value: unknown): value is string {
  return typeof value === 'string' && /^\d{4}-\d\d-\d\dT[\d:.]+Z$/.test(value) && !Number.isNaN(Date.parse(value));
}

function quoted(words: string): string {
  return say('“#”', [...words].slice(0, 30).join(''));
}
