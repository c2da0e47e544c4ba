// The buttons at the head of the page and below the answer, and the one panel that they open. What is in a panel
// comes when it is first asked for.
import type { App } from './app';
import { say } from '../core/language';

const panels = {
  kept: () => import('../keep/panel'),
  settings: () => import('./settings'),
  share: () => import('./share'),
};

type Tool = keyof typeof panels;

// A press before the page has started waits until it has.
export function offerTools(started: Promise<App>): void {
  const root = document.getElementById('panel')!;
  let shown: Tool | undefined;

  const button = (tool: Tool) => document.querySelector<HTMLElement>(`.tools [data-tool="${tool}"], .actions [data-tool="${tool}"]`);

  const mark = (tool?: Tool) => {
    shown = tool;
    root.hidden = !tool;
    for (const each of Object.keys(panels) as Tool[]) button(each)?.setAttribute('aria-expanded', String(each === tool));
  };

  const close = () => {
    const from = shown;
    mark();
    root.replaceChildren();
    if (from) button(from)?.focus();
  };

  const open = async (tool: Tool, focus: string) => {
    const place = document.createElement('div');
    root.replaceChildren(place);
    mark(tool);
    try {
      const [{ show }, app] = await Promise.all([panels[tool](), started]);
      await show(app, place, close);
    } catch {
      place.className = 'notice';
      place.textContent = say('This part of the page did not load. Check the connection and try again.');
    }
    document.getElementById(focus)?.focus();
  };

  document.addEventListener('click', (event) => {
    const pressed = (event.target as Element).closest<HTMLElement>('[data-tool]');
    const tool = pressed?.dataset['tool'] as Tool | undefined;
    if (!pressed || !tool) return;
    if (shown === tool && pressed === button(tool)) close();
    else void open(tool, pressed.dataset['focus'] ?? 'panel-heading');
  });
  root.addEventListener('keydown', (event) => { if (event.key === 'Escape') close(); });
}
