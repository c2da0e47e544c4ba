// A saved form: the text of each field under its path, as in a link, so that the same code checks
// it when it is opened.
import type { Description } from '../core/contract';
import { fromFragment, toFields } from '../form/link';
import type { Form } from '../form/values';

export interface Draft {
  id: string;
  sheet: string;
  fields: Record<string, string>;
  changed: string; // as 2026-11-25T14:30:00.000Z
}

export interface Kept extends Draft {
  name: string;
  made: string;
}

// What the first version saved, in its store and in its files: the link as one text.
export interface KeptAsLink {
  id: string;
  name: string;
  link: string;
  made: string;
  changed: string;
}

export function upgraded({ link, ...rest }: KeptAsLink): Kept {
  const [, sheet = '', query = ''] = /^#?([^?]*)\??(.*)$/s.exec(link) ?? [];
  return { ...rest, sheet, fields: Object.fromEntries(new URLSearchParams(query)) };
}

export function contentOf(form: Form): Pick<Kept, 'sheet' | 'fields'> {
  return { sheet: form.sheet.id, fields: toFields(form) };
}

// To see whether two are the same.
export function textOf({ sheet, fields }: Pick<Kept, 'sheet' | 'fields'>): string {
  return JSON.stringify([sheet, fields]);
}

export function linkOf({ sheet, fields }: Pick<Kept, 'sheet' | 'fields'>): string {
  return `#${sheet}?${new URLSearchParams(Object.entries(fields))}`;
}

// What the sheet has no place for; undefined if there is no such sheet here.
export function strangers(record: Pick<Kept, 'sheet' | 'fields'>, description: Description): string[] | undefined {
  const opened = fromFragment(linkOf(record), description);
  return opened?.form.sheet.elsewhere ? undefined : opened?.ignored;
}

export function newId(): string {
  return `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;
}
