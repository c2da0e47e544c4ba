// What happens in order: side by side if there is room, each step as wide as its share; one below
// the other on a phone.
import { html, nothing } from 'lit/html.js';
import type { Block, Level } from '../../core/contract';
import { mark, word } from '../level';

interface Step {
  label: string;
  text: string;
  share?: number;
  level: Level;
}

interface Timeline extends Block {
  steps: Step[];
}

export function timeline({ title, text, steps }: Timeline) {
  return html`
    <h3>${title}</h3>
    ${text ? html`<p>${text}</p>` : nothing}
    <ol class="timeline">
      ${steps.map(({ label, text, share = 1, level }) => html`
        <li class="step-${level}" .style=${`flex-grow: ${share}`}>
          <p>${level === 'note' ? nothing : mark(level)} <strong>${label}</strong></p>
          <p>${level === 'note' ? nothing : html`<strong>${word(level)}.</strong> `}${text}</p>
        </li>`)}
    </ol>`;
}
