// A button that copies a text. If the clipboard is refused, the text itself appears, selected, to
// copy by hand.
import { html } from 'lit/html.js';
import { say } from '../core/language';

export function copyButton(label: string, textNow: () => string, act = copy) {
  return html`
    <div class="copy">
      <button type="button" @click=${(event: Event) => act(event.currentTarget as HTMLElement, textNow())}>${label}</button>
      <span class="copied" role="status"></span>
      <textarea readonly hidden rows="3" aria-label=${say('Text to copy by hand')}></textarea>
    </div>`;
}

export async function copy(button: HTMLElement, text: string): Promise<void> {
  const box = button.parentElement!;
  const status = box.querySelector('.copied')!;
  const byHand = box.querySelector('textarea')!;
  try {
    await navigator.clipboard.writeText(text);
    byHand.hidden = true;
    status.textContent = say('Copied.');
    setTimeout(() => { status.textContent = ''; }, 5000);
  } catch {
    byHand.value = text;
    byHand.hidden = false;
    byHand.focus();
    byHand.select();
    status.textContent = say('This browser keeps its clipboard shut: copy the text below.');
  }
}
