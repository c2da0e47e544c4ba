// What was last typed into a sheet, put aside without being asked, to be offered on return: a link
// can be too long for the address, and a phone forgets its tabs.
import type { App } from '../page/app';
import { rememberDraft } from '../core/remember';
import type { Values } from '../form/state';
import { contentOf, linkOf, newId, textOf } from './record';
import { all, keepDraft } from './store';

const PAUSE = 700; // ms without a change

// Follows the form that is open. A form counts from its first change on: one that was only opened is
// still where it came from.
export function watch(app: App): void {
  let seen: Values | undefined;
  let known = '';
  let id = '';
  let timer = 0;

  const putAside = () => {
    clearTimeout(timer);
    timer = 0;
    const content = contentOf(app.form);
    const now = textOf(content);
    if (app.form.values !== seen || now === known) return;
    known = now;
    const changed = new Date().toISOString();
    keepDraft({ id, ...content, changed }).then(() => rememberDraft(content.sheet, changed), () => { /* no place to put it */ });
  };

  const look = () => {
    if (app.form.values !== seen) {
      seen = app.form.values;
      known = textOf(contentOf(app.form));
      id = newId();
      clearTimeout(timer);
      timer = 0;
    } else {
      clearTimeout(timer);
      timer = window.setTimeout(putAside, PAUSE);
    }
  };

  look();
  app.watchers.add(look);
  document.addEventListener('visibilitychange', () => { if (timer) putAside(); });
}

// The newest of a sheet, as a link; nothing where it is gone.
export async function newest(sheet: string): Promise<string | undefined> {
  const { drafts } = await all();
  const draft = drafts.find((one) => one.sheet === sheet);
  return draft && linkOf(draft);
}
