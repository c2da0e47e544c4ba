// Draws any sheet's form from its fields. Each field is label, hint, error, input, in that order.
import { html, nothing } from 'lit/html.js';
import { live } from 'lit/directives/live.js';
import type { App } from '../page/app';
import type { Choice, Field } from '../core/contract';
import { carriesUnit, leaves, plain, rowName, rows, text, unitOf, withUnit } from './state';
import { say } from '../core/language';

export function form(app: App) {
  const { fields } = app.form.sheet;
  const units = fields.filter((field) => field.id === 'units');
  const others = fields.filter((field) => field.id !== 'units');
  return html`
    <form novalidate autocomplete="off"
      @submit=${(event: Event) => { event.preventDefault(); app.check(); }}
      @input=${(event: Event) => onInput(app, event)}
      @focusout=${(event: Event) => onLeave(app, event)}>
      ${summary(app)}
      ${units.map((field) => radios(app, field, field.id, 'switch'))}
      ${others.map((field) => draw(app, field, field.id))}
      <div class="actions">
        <button class="primary">${say('Check')}</button>
        <button type="button" @click=${() => app.empty()}>${say('Empty the form')}</button>
        ${app.emptied ? html`<button type="button" @click=${() => app.bringBack()}>${say('Bring it back')}</button>` : nothing}
      </div>
    </form>`;
}

function onInput(app: App, event: Event): void {
  const { dataset, type, value } = event.target as HTMLInputElement;
  if (!dataset['path']) return;
  if (type === 'text') app.typed(dataset['path'], value);
  else app.chosen(dataset['path'], value);
}

function onLeave(app: App, event: Event): void {
  const { path } = (event.target as HTMLElement).dataset;
  if (path) app.left(path);
}

// ---- the summary of what is wrong

function summary(app: App) {
  if (!app.summary.length) return nothing;
  return html`
    <div class="summary" id="problems" tabindex="-1" aria-labelledby="problems-heading">
      <div role="alert">
        <h3 id="problems-heading">${say('Before there is an answer')}</h3>
        <ul>
          ${app.summary.map(({ field, text: said }) => html`
            <li>${document.getElementById(idOf(field)) ? html`<a href="#${idOf(field)}" data-goto=${idOf(field)}>${said}</a>` : said}</li>`)}
        </ul>
      </div>
    </div>`;
}

// ---- fields

export function idOf(path: string): string {
  return `field-${path}`;
}

function draw(app: App, field: Field, path: string): unknown {
  switch (field.kind) {
    case 'list': return list(app, field, path);
    case 'choice': return (field.choices?.length ?? 0) > 3 ? select(app, field, path) : radios(app, field, path);
    case 'yes-no': return radios(app, { ...field, choices: yesNo() }, path, 'switch');
    default: return entry(app, field, path);
  }
}

const yesNo = (): Choice[] => [{ value: 'yes', label: say('Yes') }, { value: 'no', label: say('No') }];

function entry(app: App, field: Field, path: string) {
  const typed = text(app.form.values, path);
  const unit = field.kind === 'quantity' ? unitShown(app, field, path, typed) : '';
  const error = app.problem(path);
  const capitals = field.example !== undefined && field.example === field.example.toUpperCase();
  return html`
    <div class="field ${field.kind === 'number' ? 'short' : ''}">
      <label for=${idOf(path)}>${field.label}${aside(field, spell(unit))}</label>
      ${help(field, path, unit)}
      ${fault(path, error)}
      <div class="entry">
        <input id=${idOf(path)} data-path=${path} type=${field.kind === 'date' ? 'date' : 'text'}
          inputmode=${unit || field.kind === 'number' ? 'decimal' : /^\d+$/.test(field.example ?? '') ? 'numeric' : 'text'}
          autocapitalize=${capitals ? 'characters' : 'off'} autocomplete="off" autocorrect="off" spellcheck="false"
          aria-required=${field.required ? 'true' : nothing} aria-invalid=${error ? 'true' : nothing}
          aria-describedby=${describedBy(field, path, error, unit)}
          .value=${live(typed)}>
        ${unit && field.units ? picker(field, path, unit) : nothing}
      </div>
      ${unit && carriesUnit(typed) ? html`<p class="aside">${say('The unit you typed counts.')}</p>` : nothing}
    </div>`;
}

// A typed unit counts before the picked one, so the picker shows it where it knows it.
function unitShown(app: App, field: Field, path: string, typed: string): string {
  if (carriesUnit(typed)) {
    const known = [...(field.units ?? [])].sort((a, b) => b.length - a.length)
      .find((unit) => typed.trim().toLowerCase().endsWith(unit.toLowerCase()));
    if (known) return known;
  }
  return unitOf(app.form.values, path, field);
}

function picker(field: Field, path: string, shown: string) {
  return html`
    <select data-path="${path}.unit" aria-label=${say('Unit of #. The number stays as typed.', field.label)}>
      ${field.units?.map((unit) => html`<option value=${unit} .selected=${live(unit === shown)}>${spell(unit)}</option>`)}
    </select>`;
}

// "/32 in" is what follows a number; alone it reads better as a fraction.
function spell(unit: string): string {
  return unit.startsWith('/') ? `1${unit}` : unit;
}

function select(app: App, field: Field, path: string) {
  const chosen = text(app.form.values, path);
  const error = app.problem(path);
  return html`
    <div class="field">
      <label for=${idOf(path)}>${field.label}${aside(field)}</label>
      ${help(field, path)}
      ${fault(path, error)}
      <select id=${idOf(path)} data-path=${path} aria-invalid=${error ? 'true' : nothing} aria-describedby=${describedBy(field, path, error)}>
        ${field.default ? nothing : html`<option value="" .selected=${live(!chosen)}>${field.required ? say('Choose') : say('Not said')}</option>`}
        ${field.choices?.map(({ value, label }) => html`<option value=${value} .selected=${live(value === chosen)}>${label}</option>`)}
        ${chosen && !field.choices?.some(({ value }) => value === chosen) ? html`<option value=${chosen} selected>${chosen}</option>` : nothing}
      </select>
    </div>`;
}

function radios(app: App, field: Field, path: string, look = '') {
  const chosen = text(app.form.values, path);
  const error = app.problem(path);
  return html`
    <fieldset class="field ${look}" aria-describedby=${describedBy(field, path, error)}>
      <legend>${field.label}${aside(field)}</legend>
      ${help(field, path)}
      ${fault(path, error)}
      <div class="choices">
        ${field.choices?.map(({ value, label }, i) => html`
          <label>
            <input type="radio" id=${i ? `${idOf(path)}-${value}` : idOf(path)} name=${path} data-path=${path} value=${value} .checked=${live(value === chosen)}>
            <span>${label}</span>
          </label>`)}
      </div>
    </fieldset>`;
}

// ---- lists

function list(app: App, field: Field, path: string) {
  const count = rows(app.form.values, path, field);
  return html`
    <fieldset class="field list" id=${idOf(path)} tabindex="-1">
      <legend>${field.label}</legend>
      ${help(field, path)}
      ${fault(path, app.problem(path))}
      ${count > MANY ? manyRows(app, path, count)
        : Array.from({ length: count }, (_, row) => listRow(app, field, path, row, count))}
      ${field.row_names || count > MANY ? nothing : html`
        <button type="button" @click=${() => { app.addRow(path, field); focusRow(path, count, 'input, select'); }}>${say('Add one more')}</button>`}
      ${app.panel?.list === path ? app.panel.draw() : html`
        <button type="button" id="open-${path}" @click=${() => app.openTable(path, field, false)}>${say('Paste or open a table')}<span class="unseen"> ${field.label}</span></button>
        <button type="button" @click=${() => app.openTable(path, field, true)}>${say('Edit as text')}<span class="unseen"> ${field.label}</span></button>`}
      <p class="taken" role="status">${app.taken.get(path) ?? nothing}</p>
    </fieldset>`;
}

const MANY = 30; // rows, and no more are drawn one by one

// So many rows are edited as text; what is wrong with one is said here.
function manyRows(app: App, path: string, count: number) {
  const wrong = app.answer?.problems.filter((problem) => problem.field.startsWith(`${path}.`)) ?? [];
  return html`
    <p><strong>${count} rows.</strong> So many are not drawn one by one: edit them as text.</p>
    ${wrong.slice(0, 10).map(({ field, text: said }) => html`<p class="error">${say('Row #: #', Number(field.split('.')[1]) + 1, said)}</p>`)}
    ${wrong.length > 10 ? html`<p class="error">${say('And # more.', wrong.length - 10)}</p>` : nothing}`;
}

// Folded, a row says in a line what is in it.
function listRow(app: App, field: Field, path: string, row: number, count: number) {
  const name = rowName(field, row);
  const here = `${path}.${row}`;
  const parts = field.fields ?? [];
  return html`
    <div class="row" id=${idOf(here)}>
      ${row ? html`<button type="button" class="copy-row" @click=${() => app.copyRow(path, field, row)}>${say('Copy from the row above')}<span class="unseen"> ${name}</span></button>` : nothing}
      <details ?open=${app.unfolded.has(here)} @toggle=${(event: Event) => onFold(app, here, event)}>
        <summary><span>${name} <span class="digest">${digest(app, parts, `${here}.`)}</span></span></summary>
        <fieldset>
          <legend class="unseen">${name}</legend>
          ${parts.map((part) => draw(app, part, `${here}.${part.id}`))}
        </fieldset>
        ${field.row_names ? nothing : html`
          <div class="row-actions">
            ${[-1, 1].map((step) => row + step < 0 || row + step >= count ? nothing : html`
              <button type="button" data-step=${step} @click=${() => move(app, path, row, step)}>${step < 0 ? say('Move up') : say('Move down')}<span class="unseen"> ${name}</span></button>`)}
            <button type="button" @click=${() => remove(app, field, path, row)}>${say('Remove')}<span class="unseen"> ${name}</span></button>
          </div>`}
      </details>
    </div>`;
}

function digest(app: App, parts: Field[], prefix: string): string {
  const { values } = app.form;
  const said: string[] = [];
  for (const [path, field, name] of leaves(parts, values, prefix)) {
    if (app.problem(path)) return say('To put right');
    const typed = plain(text(values, path));
    if (!typed || typed === field.default) continue;
    if (field.kind === 'quantity') said.push((carriesUnit(typed) ? typed : withUnit(typed, unitOf(values, path, field))).replaceAll(' ', '\u00a0'));
    else if (field.kind === 'choice') said.push(field.choices?.find(({ value }) => value === typed)?.label ?? typed);
    else said.push(field.kind === 'text' ? typed : `${name} ${typed}`);
  }
  return said.join(', ') || say('Empty');
}

function onFold(app: App, row: string, { currentTarget }: Event): void {
  const { open } = currentTarget as HTMLDetailsElement;
  if (app.unfolded.has(row) === open) return;
  app.unfold(row, open);
  app.draw();
}

// What was pressed has moved or gone: the focus goes where it would be looked for.
function focusRow(path: string, row: number, what: string): void {
  document.getElementById(idOf(`${path}.${row}`))?.querySelector<HTMLElement>(what)?.focus();
}

function move(app: App, path: string, row: number, step: number): void {
  app.swapRows(path, row, row + step);
  focusRow(path, row + step, '.row-actions button');
  focusRow(path, row + step, `[data-step="${step}"]`);
}

function remove(app: App, field: Field, path: string, row: number): void {
  app.removeRow(path, field, row);
  const left = rows(app.form.values, path, field);
  if (left) focusRow(path, Math.min(row, left - 1), 'summary');
  else document.getElementById(idOf(path))?.querySelector('button')?.focus();
}

// ---- parts of a field

// What a label says beside its name: the unit, and whether the field may stay empty.
function aside(field: Field, unit = '') {
  const said = [unit, field.required || field.default ? '' : say('optional')].filter(Boolean);
  return said.length ? html` <span class="unit">(${said.join(', ')})</span>` : nothing;
}

function help(field: Field, path: string, unit = '') {
  const said = helpText(field, unit);
  return said ? html`<p class="hint" id="${idOf(path)}-hint">${said}</p>` : nothing;
}

// The example is worth showing where the hint has none, and in the unit that is picked.
function helpText({ kind, hint = '', example = '' }: Field, unit = ''): string {
  return kind !== 'choice' && example && !hint.includes(example) && example.endsWith(unit) ? `${hint} ${say('For example #.', example)}`.trim() : hint;
}

function fault(path: string, error: string) {
  return error ? html`<p class="error" id="${idOf(path)}-error"><span class="unseen">${say('Error:')} </span>${error}</p>` : nothing;
}

function describedBy(field: Field, path: string, error: string, unit = '') {
  const ids = [helpText(field, unit) && `${idOf(path)}-hint`, error && `${idOf(path)}-error`].filter(Boolean);
  return ids.length ? ids.join(' ') : nothing;
}
