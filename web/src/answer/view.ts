// Draws any sheet's answer, like a short note: the verdict, the speed, why, the cautions, the limits;
// then the drawing and the figures for whoever wants them.
import { html, nothing } from 'lit/html.js';
import type { App, Working } from '../page/app';
import { block } from './blocks/blocks';
import type { Answer } from '../core/contract';
import { copyButton } from './copy-button';
import { idOf } from '../form/view';
import { mark, word } from './level';
import { refs, sourceList } from './sources';
import { leaves, longLists } from '../form/state';
import { say } from '../core/language';

export function answer(app: App) {
  const { answer: said, working } = app;
  if (working && (working.late || !said)) return workingOut(working, said);
  if (!said) {
    return html`
      <h2 id="answer-heading" tabindex="-1">${say('No answer')}</h2>
      <p class="verdict">${say('The calculation stopped on this input, which it should never do. What you typed is still in the form; load the page again to go on.')}</p>
      <p class="safety">${app.description.safety}</p>`;
  }
  const example = app.form.example ? app.form.sheet.example : undefined;
  return html`
    ${example ? html`<p class="kicker">${say('Worked example')}</p>` : nothing}
    ${said.verdict ? verdict(said) : notYet(app, said)}
    ${cautions(said)}
    <p class="safety">${said.safety}</p>
    ${limits(said)}
    ${said.blocks.map((one) => block(one))}
    <div class="actions">
      ${copyButton(say('Copy link'), () => app.link())}
      <button type="button" data-tool="share" aria-controls="panel">${say('Share')}</button>
      <button type="button" data-tool="kept" data-focus="keep-name">${say('Keep')}</button>
      <button type="button" @click=${() => print()}>${say('Print')}</button>
    </div>
    ${longLists(app.form).map(({ label }) => html`<p class="aside">${say('The list “#” is too long for a link: the link leaves it out. It is kept on this page; edited as text, it can be copied.', label)}</p>`)}
    ${figures(said)}
    ${sourceList(said)}
    <div id="paper-end"></div>`;
}

// A former answer stays to be looked at, marked as what it is, without what somebody might drive by.
function workingOut({ share, late }: Working, former: Answer | undefined) {
  return html`
    <h2 id="answer-heading" tabindex="-1">${say('Working it out')}</h2>
    ${late ? html`
      <div class="working">
        <label for="working">${say('Working it out')}${share ? `: ${Math.floor(100 * share)} %` : nothing}</label>
        <progress id="working" max="1" value=${share || nothing}></progress>
      </div>` : nothing}
    ${former ? html`
      <section class="former" aria-labelledby="former-heading">
        <h3 id="former-heading">${say('For what was typed before')}</h3>
        <p>${say('No longer the answer to what is in the form now.')}</p>
        ${cautions(former)}
        ${limits(former)}
        ${former.blocks.filter(({ kind }) => kind !== 'spoken').map((one) => block(one))}
        ${figures(former)}
        ${sourceList(former)}
      </section>` : nothing}`;
}

// At no speed at all the text is a sentence of its own.
export function holdTo({ kmh, text }: NonNullable<Answer['hold_to']>): string {
  return kmh > 0 ? say('Hold to #', text) : text;
}

// One line at the head of the form, for screens on which the answer lies below it.
export function glance(app: App) {
  const { verdict: found, hold_to } = (app.working?.late ? undefined : app.answer) ?? {};
  return html`
    <p class="glance">
      <a href="#answer-heading" data-goto="answer-heading">
        ${found ? html`${mark(found.level)} <span><strong>${word(found.level)}${hold_to ? `. ${holdTo(hold_to)}` : nothing}</strong></span>`
          : html`<span>${app.working ? say('Working it out') : say('No answer yet')}</span>`}
        <span class="more">${say('Read on')}</span>
      </a>
    </p>`;
}

function verdict(said: Answer) {
  const { level, text } = said.verdict!;
  const hold = said.hold_to;
  return html`
    <h2 id="answer-heading" tabindex="-1" class="level level-${level}">${mark(level)} ${word(level)}</h2>
    <p class="verdict">${text}</p>
    ${hold ? html`
      <p class="hold">
        <span class="hold-label">${hold.kmh > 0 ? say('Hold to') : nothing}</span>
        <span class="hold-speed ${hold.kmh > 0 ? '' : 'words'}">${hold.text}</span>
      </p>
      ${hold.why ? html`<p class="why">${hold.why}</p>` : nothing}` : nothing}`;
}

function notYet(app: App, said: Answer) {
  const names = new Map<string, string>();
  for (const [path, , name] of leaves(app.form.sheet.fields, app.form.values)) names.set(path, name);
  const missing = said.problems.filter((problem) => problem.code === 'missing' && names.has(problem.field));
  const wrong = said.problems.filter((problem) => !missing.includes(problem));
  const partial = said.limits.length || said.figures.length || said.cautions.length;
  return html`
    <h2 id="answer-heading" tabindex="-1">${say('No answer yet')}</h2>
    ${missing.length ? html`
      <p>${say('Still needed:')}</p>
      <ul class="plain">
        ${missing.map(({ field }) => html`<li><a href="#${idOf(field)}" data-goto=${idOf(field)}>${names.get(field)}</a></li>`)}
      </ul>` : nothing}
    ${wrong.length ? html`
      <p>${say('To put right:')}</p>
      <ul class="plain">
        ${wrong.map(({ field, text }) => html`<li>${names.has(field) ? html`<a href="#${idOf(field)}" data-goto=${idOf(field)}>${text}</a>` : text}</li>`)}
      </ul>` : nothing}
    ${partial ? html`<p class="partial">${say('What can be said so far is below. It is only part of the picture.')}</p>` : nothing}`;
}

function cautions(said: Answer) {
  if (!said.cautions.length) return nothing;
  return html`
    <h3>${say('Cautions')}</h3>
    <ul class="cautions">
      ${said.cautions.map(({ level, text, sources }) => html`
        <li class="level-${level}">${mark(level)} <div><strong>${word(level)}.</strong> ${text} ${refs(said, sources)}</div></li>`)}
    </ul>`;
}

function limits(said: Answer) {
  if (!said.limits.length) return nothing;
  return html`
    <h3>${said.ok ? say('What limits the speed') : say('Limits known so far')}</h3>
    <ol class="limits">
      ${said.limits.map(({ label, text, governs, why, sources }) => html`
        <li class=${governs ? 'governs' : ''}>
          <p class="limit"><span>${label}</span> <span class="limit-speed">${text}</span></p>
          <p>${governs && said.ok ? html`<strong>${say('Comes first.')}</strong> ` : nothing}${why === said.hold_to?.why ? nothing : why} ${refs(said, sources)}</p>
        </li>`)}
    </ol>`;
}

function figures(said: Answer) {
  if (!said.figures.length) return nothing;
  return html`
    <details>
      <summary>${say('The figures')}</summary>
      <table class="figures">
        <thead><tr><th scope="col">${say('Figure and source')}</th><th scope="col">${say('Value')}</th></tr></thead>
        <tbody>
          ${said.figures.map(({ label, text, note, sources }) => html`
            <tr>
              <th scope="row">${label} ${refs(said, sources)}${note ? html`<span class="note">${note}</span>` : nothing}</th>
              <td>${text}</td>
            </tr>`)}
        </tbody>
      </table>
    </details>`;
}
