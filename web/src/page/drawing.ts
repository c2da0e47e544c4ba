// The whole page, top to bottom.
import { html, nothing } from 'lit/html.js';
import { answerView, glance } from '../answer/view';
import { day, today } from '../core/dates';
import { say } from '../core/language';
import { embedded } from '../embed/embedded';
import { formView } from '../form/view';
import type { App } from './app';
import type { Keeping } from './offline';

export function pageView(app: App) {
  const { sheet, example } = app.form;
  return html`
    ${app.notes.map((note) => html`<p class="notice">${note}</p>`)}
    ${embedded ? nothing : [app.offer ? offer(app) : nothing, ways(app), sheets(app)]}
    <div class="sheet">
      <section class="asking" aria-labelledby="form">
        <h2 id="form" tabindex="-1">${sheet.title}</h2>
        <p class="purpose">${sheet.purpose}</p>
        ${example && sheet.example ? exampleMark(app, sheet.example.title) : glance(app)}
        <div id="paper-form" hidden></div>
        ${formView(app)}
      </section>
      <section class="answering" aria-labelledby="answer-heading" aria-busy=${app.asking.working ? 'true' : nothing}>${app.formOnly ? nothing : answerView(app)}</section>
    </div>
    <p class="unseen" role="status">${app.spoken}</p>
    <p class="version">${app.description.name} ${app.description.version}, ${today()}</p>
    ${embedded ? html`<p><a class="whole" href=${app.link()} target="_blank" rel="noopener">${say('Open the whole tool')}</a></p>` : nothing}`;
}

function ways(app: App) {
  return html`
    <nav class="ways" aria-label=${say('Where are you?')}>
      <ul>
        ${app.description.ways.map((way) => html`
          <li>
            <button type="button" aria-pressed=${way.id === app.form.way} @click=${() => app.takeWay(way.id)}>
              <strong>${way.title}</strong>
              <span>${way.text}</span>
            </button>
          </li>`)}
      </ul>
    </nav>`;
}

// On a phone the list is folded behind a button that names the sheet one is on.
function sheets(app: App) {
  const { description: { sheets: all }, form: { sheet: now }, choosing } = app;
  if (all.length < 2) return nothing;
  return html`
    <nav class="sheets" aria-label=${say('Sheets')}>
      <button type="button" aria-expanded=${choosing} aria-controls="sheets" @click=${() => app.chooseSheet(!choosing)}>
        <span>${say('Sheet:')} <strong>${now.title}</strong></span>
      </button>
      <ul id="sheets" class=${choosing ? 'choosing' : ''}>
        ${all.map(({ id, title }) => id === now.id
          ? html`<li><a href="#form" data-goto="form" aria-current="page" @click=${() => app.chooseSheet(false)}>${title}</a></li>`
          : html`<li><a href="#${id}">${title}</a></li>`)}
      </ul>
    </nav>`;
}

function offer(app: App) {
  return html`
    <div class="notice offer" role="group" aria-label=${say('Typed before')}>
      <p>${say('Go on with what you typed on #?', day(app.offer, true))}</p>
      <button type="button" class="primary" @click=${() => app.openDraft()}>${say('Go on')}</button>
      <button type="button" @click=${() => app.dropOffer()}>${say('Not now')}</button>
    </div>`;
}

function exampleMark(app: App, title: string) {
  return html`
    <div class="example">
      <p><strong>${say('Example.')}</strong> ${title}</p>
      ${glance(app)}
      <button type="button" class="primary" @click=${() => app.ownFigures()}>${say('Use my own figures')}</button>
    </div>`;
}

export function keeping({ kept, fresh }: Keeping) {
  return html`
    ${kept ? say('This page is now kept on this device and works without a connection.') : nothing}
    ${fresh ? html`${say('A newer version is here.')} <button type="button" @click=${fresh}>${say('Use it now')}</button>` : nothing}`;
}
