// Draws any sheet's answer, like a short note: the verdict, the speed, why, the cautions, the limits;
// then the drawing and the figures for whoever wants them.
import { html, nothing } from 'lit/html.js';
import type { Answer, Description, HoldTo } from '../core/contract';
import { say } from '../core/language';
import { longLists } from '../form/link';
import { leaves } from '../form/values';
import type { Form } from '../form/values';
import { idOf } from '../form/view';
import { block } from './blocks/blocks';
import { copyButton } from './copy-button';
import { mark, word } from './level';
import { refs, sourceList } from './sources';

// A long answer is on its way; the one shown is the previous one.
export interface Working {
  share: number; // done, 0 to 1
  late: boolean; // it takes long enough to say so
}

// What the answer's view needs of its host.
export interface AnswerHost {
  readonly description: Description;
  readonly form: Form;
  readonly asking: {
    readonly answer: Answer | undefined; // undefined: none yet, or the core itself failed
    readonly working: Working | undefined;
  };
  link(): string;
}

export function answerView(host: AnswerHost) {
  const { answer, working } = host.asking;
  if (working && (working.late || !answer)) return workingOut(working, answer);
  if (!answer) {
    return html`
      <h2 id="answer-heading" tabindex="-1">${say('No answer')}</h2>
      <p class="verdict">${say('The calculation stopped on this input, which it should never do. What you typed is still in the form; load the page again to go on.')}</p>
      <p class="safety">${host.description.safety}</p>`;
  }
  const example = host.form.example ? host.form.sheet.example : undefined;
  return html`
    ${example ? html`<p class="kicker">${say('Worked example')}</p>` : nothing}
    ${answer.verdict ? verdict(answer) : notYet(host, answer)}
    ${cautions(answer)}
    <p class="safety">${answer.safety}</p>
    ${limits(answer)}
    ${answer.blocks.map((one) => block(one))}
    <div class="actions">
      ${copyButton(say('Copy link'), () => host.link())}
      <button type="button" data-panel="share" aria-controls="panel">${say('Share')}</button>
      <button type="button" data-panel="kept" data-focus="keep-name">${say('Keep')}</button>
      <button type="button" @click=${() => print()}>${say('Print')}</button>
    </div>
    ${longLists(host.form).map(({ label }) => html`<p class="aside">${say('The list “#” is too long for a link: the link leaves it out. It is kept on this page; edited as text, it can be copied.', label)}</p>`)}
    ${figures(answer)}
    ${sourceList(answer)}
    <div id="paper-end"></div>`;
}

// A previous answer stays visible, marked as such, without the figures somebody might drive by.
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

// At speed zero the text is a sentence of its own.
export function holdTo({ kmh, text }: HoldTo): string {
  return kmh > 0 ? say('Hold to #', text) : text;
}

// One line at the top of the form, for screens with the answer below it.
export function glance(host: AnswerHost) {
  const { verdict: found, hold_to } = (host.asking.working?.late ? undefined : host.asking.answer) ?? {};
  return html`
    <p class="glance">
      <a href="#answer-heading" data-goto="answer-heading">
        ${found ? html`${mark(found.level)} <span><strong>${word(found.level)}${hold_to ? `. ${holdTo(hold_to)}` : nothing}</strong></span>`
          : html`<span>${host.asking.working ? say('Working it out') : say('No answer yet')}</span>`}
        <span class="more">${say('Read on')}</span>
      </a>
    </p>`;
}

function verdict(answer: Answer) {
  const { level, text } = answer.verdict!;
  const { hold_to: hold, no_limit: none } = answer;
  return html`
    <h2 id="answer-heading" tabindex="-1" class="level level-${level}">${mark(level)} ${word(level)}</h2>
    <p class="verdict">${text}</p>
    ${hold ? html`
      <p class="hold">
        <span class="hold-label">${hold.kmh > 0 ? say('Hold to') : nothing}</span>
        <span class="hold-speed ${hold.kmh > 0 ? '' : 'words'}">${hold.text}</span>
      </p>
      ${hold.why ? html`<p class="why">${hold.why}</p>` : nothing}` : nothing}
    ${none ? html`
      <p class="no-limit"><strong>${none.text}</strong>${none.own_text ? html` ${none.own_text}` : nothing}</p>` : nothing}`;
}

function notYet(host: AnswerHost, answer: Answer) {
  const names = new Map<string, string>();
  for (const [path, , name] of leaves(host.form.sheet.fields, host.form.values)) names.set(path, name);
  const missing = answer.problems.filter((problem) => problem.code === 'missing' && names.has(problem.field));
  const wrong = answer.problems.filter((problem) => !missing.includes(problem));
  const partial = answer.limits.length || answer.figures.length || answer.cautions.length;
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

function cautions(answer: Answer) {
  if (!answer.cautions.length) return nothing;
  return html`
    <h3>${say('Cautions')}</h3>
    <ul class="cautions">
      ${answer.cautions.map(({ level, text, sources }) => html`
        <li class="level-${level}">${mark(level)} <div><strong>${word(level)}.</strong> ${text} ${refs(answer, sources)}</div></li>`)}
    </ul>`;
}

function limits(answer: Answer) {
  if (!answer.limits.length) return nothing;
  return html`
    <h3>${answer.ok ? say('What limits the speed') : say('Limits known so far')}</h3>
    <ol class="limits">
      ${answer.limits.map(({ label, text, governs, why, sources }) => html`
        <li class=${governs ? 'governs' : ''}>
          <p class="limit"><span>${label}</span> <span class="limit-speed">${text}</span></p>
          <p>${governs && answer.ok ? html`<strong>${say('Comes first.')}</strong> ` : nothing}${why === answer.hold_to?.why ? nothing : why} ${refs(answer, sources)}</p>
        </li>`)}
    </ol>`;
}

function figures(answer: Answer) {
  if (!answer.figures.length) return nothing;
  return html`
    <details>
      <summary>${say('The figures')}</summary>
      <table class="figures">
        <thead><tr><th scope="col">${say('Figure and source')}</th><th scope="col">${say('Value')}</th></tr></thead>
        <tbody>
          ${answer.figures.map(({ label, text, note, sources }) => html`
            <tr>
              <th scope="row">${label} ${refs(answer, sources)}${note ? html`<span class="note">${note}</span>` : nothing}</th>
              <td>${text}</td>
            </tr>`)}
        </tbody>
      </table>
    </details>`;
}
