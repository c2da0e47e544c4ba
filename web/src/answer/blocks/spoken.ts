// One sentence fit for a radio.
import { html } from 'lit/html.js';
import type { Block } from '../../core/contract';
import { copyButton } from '../copy-button';
import { say } from '../../core/language';

interface Spoken extends Block {
  text: string;
}

export function spoken({ title, text }: Spoken) {
  return html`
    <h3>${title}</h3>
    <blockquote class="spoken"><p>${text}</p></blockquote>
    ${copyButton(say('Copy the sentence'), () => text)}`;
}
