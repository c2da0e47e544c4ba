// The buttons at the top of the page and below the answer, and the one panel that they open. A
// panel's content loads when first opened.
import { say } from '../core/language';
import type { App } from './app';

const panels = {
  kept: () => import('../keep/panel'),
  settings: () => import('./settings'),
  share: () => import('./share'),
};

type Name = keyof typeof panels;

// A press before the page has started waits until it has.
export function offerPanels(started: Promise<App>): void {
  const root = document.getElementById('panel')!;
  let shown: Name | undefined;

  const button = (name: Name) => document.querySelector<HTMLElement>(`.tools [data-panel="${name}"], .actions [data-panel="${name}"]`);

  const mark = (name?: Name) => {
    shown = name;
    root.hidden = !name;
    for (const each of Object.keys(panels) as Name[]) button(each)?.setAttribute('aria-expanded', String(each === name));
  };

  const close = () => {
    const from = shown;
    mark();
    root.replaceChildren();
    if (from) button(from)?.focus();
  };

  const open = async (name: Name, focus: string) => {
    const place = document.createElement('div');
    root.replaceChildren(place);
    mark(name);
    try {
      const [{ show }, app] = await Promise.all([panels[name](), started]);
      await show(app, place, close);
    } catch {
      place.className = 'notice';
      place.textContent = say('This part of the page did not load. Check the connection and try again.');
    }
    document.getElementById(focus)?.focus();
  };

  document.addEventListener('click', (event) => {
    const pressed = (event.target as Element).closest<HTMLElement>('[data-panel]');
    const name = pressed?.dataset['panel'] as Name | undefined;
    if (!pressed || !name) return;
    if (shown === name && pressed === button(name)) close();
    else void open(name, pressed.dataset['focus'] ?? 'panel-heading');
  });
  root.addEventListener('keydown', (event) => { if (event.key === 'Escape') close(); });
}
