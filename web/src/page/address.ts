// The form in the page's own address, so that it survives a reload and can be passed on.
import type { Description } from '../core/contract';
import { linked } from '../core/language';
import { toLink } from '../form/link';
import type { Form, Values } from '../form/values';
import { untouched } from './opening';

const LONGEST = 60_000; // characters of a form that are kept in the address

export function linkTo(form: Form): string {
  return location.href.replace(/#.*$/s, '') + toLink(form, linked());
}

// The untouched example needs no more than its sheet's name; anything else is kept as it is typed.
export function putInAddress(form: Form, description: Description): void {
  const { id } = form.sheet;
  const example = form.example && !form.way && same(form.values, untouched(description, form.sheet, '', true));
  const link = example ? '' : toLink(form, linked());
  const bare = linked() ? `#${id}?page.language=${linked()}` : id === description.sheets[0]!.id ? location.pathname + location.search : `#${id}`;
  const to = example ? bare : link.length > LONGEST ? `#${id}` : link;
  try {
    if (to !== location.hash) history.replaceState(null, '', to);
  } catch { /* some browsers limit the rate of changes; the next one catches up */ }
}

// Back returns to the form that is left.
export function leaveStep(): void {
  try {
    history.pushState(null, '', location.href);
  } catch { /* without a way back, then */ }
}

function same(one: Values, other: Values): boolean {
  return one.size === other.size && [...one].every(([key, value]) => other.get(key) === value);
}
