// One sentence fit for a radio.
import { html } from 'lit/html.js';
import type { Block } from '../../core/contract';
import { say } from '../../core/language';
import { copyButton } from '../copy-button';

export function spoken({ title, text }: Block) {
  return html`
    <h3>${title}</h3>
    <blockquote class="spoken"><p>${text}</p></blockquote>
    ${copyButton(say('Copy the sentence'), () => text)}`;
}
