// The choice of language, to be put wherever settings are.
import { html } from 'lit/html.js';
import type { App } from './app';
import { LANGUAGES, language, say } from './words';

export function languageChoice(app: App) {
  return html`
    <div class="field language">
      <label for="language">${say('Language')}</label>
      <select id="language" @change=${(event: Event) => app.speak((event.target as HTMLSelectElement).value)}>
        ${Object.entries(LANGUAGES).map(([tag, name]) => html`<option value=${tag} lang=${tag} ?selected=${tag === language()}>${name}</option>`)}
      </select>
    </div>`;
}
