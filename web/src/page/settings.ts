// The panel "Settings": the user's choices for every sheet and visit. The page's look is set on its
// root element here and, before it is first drawn, by public/look.js.
import { html, nothing, render } from 'lit/html.js';
import { live } from 'lit/directives/live.js';
import type { Choice, Field } from '../core/contract';
import { choose, LANGUAGES, language, say } from '../core/language';
import { recallOne, rememberOne } from '../core/remember';
import type { App } from './app';

const looks = (): Choice[] => [
  { value: '', label: say('As the device') },
  { value: 'light', label: say('Light') },
  { value: 'dark', label: say('Dark') },
  { value: 'contrast', label: say('High contrast') },
];

const sizes = (): Choice[] => [
  { value: '', label: say('Usual') },
  { value: 'larger', label: say('Larger') },
  { value: 'largest', label: say('Largest') },
];

let remembered = true;
let draw = () => {};
const follow = () => draw(); // the form may change what is shown here

export async function show(app: App, root: HTMLElement, close: () => void): Promise<void> {
  app.watchers.add(follow);
  draw = () => { if (root.isConnected) render(panel(app, close), root); };
  draw();
}

function panel(app: App, close: () => void) {
  return html`
    <section class="panel" aria-labelledby="panel-heading">
      <h2 id="panel-heading" tabindex="-1">${say('Settings')}</h2>
      <p class="hint">${remembered ? say('They stay on this device, for every sheet.') : say('This browser does not let the page remember them: they hold until it is closed.')}</p>
      ${['units', 'place'].map((id) => asked(app, id))}
      ${select('language', say('Language'), languages(), language(), (value) => {
        void app.speak(value).then((spoken) => { if (spoken) choose(value); });
      })}
      ${select('look', say('Look'), looks(), document.documentElement.dataset['look'] ?? '', (value) => dress('look', value))}
      ${select('text', say('Size of the text'), sizes(), document.documentElement.dataset['text'] ?? '', (value) => dress('text', value))}
      <div class="actions"><button type="button" @click=${close}>${say('Close')}</button></div>
    </section>`;
}

// Each in its own language, for those who cannot read the others.
const languages = (): Choice[] => Object.entries(LANGUAGES).map(([value, label]) => ({ value, label }));

// A field that the sheets share: what is chosen here is in the form that is open, and in later ones.
function asked(app: App, id: string) {
  const { sheet, values } = app.form;
  const has = ({ fields }: { fields: Field[] }) => fields.find((field) => field.id === id && field.choices);
  const here = has(sheet);
  const field = here ?? app.description.sheets.map(has).find(Boolean);
  if (!field) return nothing;
  const chosen = (here && values.get(id)) || recallOne(id) || field.default || '';
  return select(id, field.label, field.choices ?? [], chosen, (value) => {
    keep(id, value);
    if (here) app.chosen(id, value);
  });
}

function select(id: string, label: string, choices: Choice[], chosen: string, then: (value: string) => void) {
  return html`
    <div class="field">
      <label for="set-${id}">${label}</label>
      <select id="set-${id}" @change=${(event: Event) => { then((event.target as HTMLSelectElement).value); draw(); }}>
        ${choices.some(({ value }) => value === chosen) ? nothing : html`<option value="" selected>${say('Choose')}</option>`}
        ${choices.map(({ value, label: words }) => html`<option value=${value} lang=${id === 'language' ? value : nothing} .selected=${live(value === chosen)}>${words}</option>`)}
      </select>
    </div>`;
}

function keep(id: string, value: string): void {
  remembered = rememberOne(id, value);
}

function dress(id: 'look' | 'text', value: string): void {
  keep(id, value);
  document.dispatchEvent(new CustomEvent('dress', { detail: { [id]: value } }));
}
