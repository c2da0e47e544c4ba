// What was last typed into a sheet, saved automatically, to be offered on return: a link can be too
// long for the address, and a phone forgets its tabs.
import { rememberDraft } from '../core/remember';
import type { FormHolder, Values } from '../form/values';
import { contentOf, linkOf, newId, textOf } from './record';
import { all, keepDraft } from './store';

const PAUSE = 700; // ms without a change

// Follows the open form. A form counts from its first change: one only opened is still where it
// came from.
export function watch(holder: FormHolder): void {
  let seen: Values | undefined;
  let known = '';
  let id = '';
  let timer = 0;

  const putAside = () => {
    clearTimeout(timer);
    timer = 0;
    const content = contentOf(holder.form);
    const now = textOf(content);
    if (holder.form.values !== seen || now === known) return;
    known = now;
    const changed = new Date().toISOString();
    keepDraft({ id, ...content, changed }).then(() => rememberDraft(content.sheet, changed), () => { /* no place to put it */ });
  };

  const look = () => {
    if (holder.form.values !== seen) {
      seen = holder.form.values;
      known = textOf(contentOf(holder.form));
      id = newId();
      clearTimeout(timer);
      timer = 0;
    } else {
      clearTimeout(timer);
      timer = window.setTimeout(putAside, PAUSE);
    }
  };

  look();
  holder.watchers.add(look);
  document.addEventListener('visibilitychange', () => { if (timer) putAside(); });
}

// The newest of a sheet, as a link; nothing where it is gone.
export async function newest(sheet: string): Promise<string | undefined> {
  const { drafts } = await all();
  const draft = drafts.find((one) => one.sheet === sheet);
  return draft && linkOf(draft);
}
