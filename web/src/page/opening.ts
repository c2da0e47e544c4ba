// The form that a link opens, or that a sheet begins with; and what to say about it.
import type { Description, Input, Sheet } from '../core/contract';
import { say } from '../core/language';
import { recall, recallDraft } from '../core/remember';
import { carryOver, start } from '../form/fill';
import { fromFragment } from '../form/link';
import { wayOf } from '../form/values';
import type { Form, Values } from '../form/values';

export interface Opening {
  form: Form;
  notes: string[]; // about the link
  offer: string; // when something that can be resumed was typed
}

// Nothing if the first visit's module knows the sheet by name only.
export function openingOf(link: string, description: Description): Opening | undefined {
  const { sheets } = description;
  const opened = fromFragment(link, description);
  const named = sheets.find((sheet) => sheet.id === /^#([^?]*)/.exec(link)?.[1]);
  if (opened?.form.sheet.elsewhere || named?.elsewhere) return undefined;
  const notes: string[] = [];
  if (opened?.without.length) notes.push(say('The list # was too long for this link, so it is not in it. The rest is filled in.', quoted(opened.without)));
  if (opened?.ignored.length) notes.push(say('This link also says #, which has no place here. The rest is filled in.', quoted(opened.ignored)));
  if (!opened && link.length > 1 && !named) notes.push(say('This link names a sheet that is not here, so the example is shown.'));
  const form = opened?.form ?? exampleOf(description, named);
  return { form, notes, offer: opened && !opened.without.length ? '' : recallDraft(form.sheet.id) };
}

export function exampleOf(description: Description, sheet = description.sheets[0]!): Form {
  return { sheet, values: untouched(description, sheet, '', true), way: '', example: !!sheet.example };
}

// The link to what was last typed into a sheet, if it is still on this device.
export async function draftOf(sheet: string): Promise<string | undefined> {
  const { newest } = await import('../keep/draft').catch(() => { throw new Error(say('This part of the page did not load. Check the connection and try again.')); });
  return newest(sheet);
}

// As the sheet begins, before anything is typed.
export function untouched(description: Description, sheet: Sheet, way: string, example: boolean): Values {
  const kept = recall();
  const presets: Input[] = [];
  if (example && sheet.example) presets.push(sheet.example.input);
  const preset = wayOf(description, sheet, way)?.input;
  if (preset) presets.push(preset);
  if (kept['units']) presets.push({ units: kept['units'] });
  return start(sheet, kept, ...presets);
}

// The same sheet and way in, without what was typed and without the example's figures.
export function emptied(form: Form, description: Description): Form {
  return { ...form, values: untouched(description, form.sheet, form.way, false), example: false };
}

// What the person typed into a form, laid over a fresh start.
export function withTheirs(form: Form, fresh: Values, description: Description): Values {
  return carryOver(form, untouched(description, form.sheet, form.way, form.example), fresh);
}

// A few of somebody else's words, short enough to be read.
function quoted(words: string[]): string {
  const short = words.slice(0, 4).map((word) => say('“#”', [...word].slice(0, 30).join('')));
  if (words.length > short.length) short.push(say('# more', words.length - short.length));
  return short.join(', ');
}
