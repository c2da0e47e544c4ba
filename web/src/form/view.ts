// Draws any sheet's form from its fields. Each field is label, hint, error, input, in that order.
import { html, nothing } from 'lit/html.js';
import { live } from 'lit/directives/live.js';
import type { Answer, Choice, Field, Problem } from '../core/contract';
import { say } from '../core/language';
import { carriesUnit, unitOf, withUnit } from './units';
import { leaves, plain, rowName, rows, text } from './values';
import type { Form } from './values';

// What the form needs of its host.
export interface FormHost {
  readonly form: Form;
  readonly emptied: Form | undefined; // to undo emptying, removing or overwriting
  readonly asking: { readonly answer: Answer | undefined; readonly summary: Problem[]; problem(path: string): string };
  readonly rows: RowsHost;
  typed(path: string, value: string): void;
  chosen(path: string, value: string): void;
  left(path: string): void;
  check(): void;
  empty(): void;
  bringBack(): void;
  draw(): void;
}

// Lists: their rows, and the panel that reads a whole table into one.
export interface RowsHost {
  readonly unfolded: Set<string>; // rows, by their paths
  readonly panel: { readonly list: string; draw(): unknown } | undefined;
  readonly taken: Map<string, string>; // what was said of the table that a list was taken from
  unfold(row: string, open: boolean): void;
  add(list: string, field: Field): void;
  remove(list: string, field: Field, row: number): void;
  swap(list: string, row: number, other: number): void;
  copy(list: string, field: Field, row: number): void;
  openTable(list: string, field: Field, edit: boolean): void;
}

export function formView(host: FormHost) {
  const { fields } = host.form.sheet;
  const units = fields.filter((field) => field.id === 'units');
  const others = fields.filter((field) => field.id !== 'units');
  return html`
    <form novalidate autocomplete="off"
      @submit=${(event: Event) => { event.preventDefault(); host.check(); }}
      @input=${(event: Event) => onInput(host, event)}
      @focusout=${(event: Event) => onLeave(host, event)}>
      ${summary(host)}
      ${units.map((field) => radios(host, field, field.id, 'switch'))}
      ${others.map((field) => draw(host, field, field.id))}
      <div class="actions">
        <button class="primary">${say('Check')}</button>
        <button type="button" @click=${() => host.empty()}>${say('Empty the form')}</button>
        ${host.emptied ? html`<button type="button" @click=${() => host.bringBack()}>${say('Bring it back')}</button>` : nothing}
      </div>
    </form>`;
}

function onInput(host: FormHost, event: Event): void {
  const { dataset, type, value } = event.target as HTMLInputElement;
  if (!dataset['path']) return;
  if (type === 'text') host.typed(dataset['path'], value);
  else host.chosen(dataset['path'], value);
}

function onLeave(host: FormHost, event: Event): void {
  const { path } = (event.target as HTMLElement).dataset;
  if (path) host.left(path);
}

// ---- the summary of what is wrong

function summary(host: FormHost) {
  if (!host.asking.summary.length) return nothing;
  return html`
    <div class="summary" id="problems" tabindex="-1" aria-labelledby="problems-heading">
      <div role="alert">
        <h3 id="problems-heading">${say('Before there is an answer')}</h3>
        <ul>
          ${host.asking.summary.map(({ field, text: said }) => html`
            <li>${document.getElementById(idOf(field)) ? html`<a href="#${idOf(field)}" data-goto=${idOf(field)}>${said}</a>` : said}</li>`)}
        </ul>
      </div>
    </div>`;
}

// ---- fields

export function idOf(path: string): string {
  return `field-${path}`;
}

function draw(host: FormHost, field: Field, path: string): unknown {
  switch (field.kind) {
    case 'list': return list(host, field, path);
    case 'choice': return (field.choices?.length ?? 0) > 3 ? select(host, field, path) : radios(host, field, path);
    case 'yes-no': return radios(host, { ...field, choices: yesNo() }, path, 'switch');
    default: return entry(host, field, path);
  }
}

const yesNo = (): Choice[] => [{ value: 'yes', label: say('Yes') }, { value: 'no', label: say('No') }];

function entry(host: FormHost, field: Field, path: string) {
  const typed = text(host.form.values, path);
  const unit = field.kind === 'quantity' ? unitShown(host, field, path, typed) : '';
  const error = host.asking.problem(path);
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

// A typed unit overrides the picked one, so the picker shows it if it has it.
function unitShown(host: FormHost, field: Field, path: string, typed: string): string {
  if (carriesUnit(typed)) {
    const known = [...(field.units ?? [])].sort((a, b) => b.length - a.length)
      .find((unit) => typed.trim().toLowerCase().endsWith(unit.toLowerCase()));
    if (known) return known;
  }
  return unitOf(host.form.values, path, field);
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

function select(host: FormHost, field: Field, path: string) {
  const chosen = text(host.form.values, path);
  const error = host.asking.problem(path);
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

function radios(host: FormHost, field: Field, path: string, look = '') {
  const chosen = text(host.form.values, path);
  const error = host.asking.problem(path);
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

function list(host: FormHost, field: Field, path: string) {
  const count = rows(host.form.values, path, field);
  return html`
    <fieldset class="field list" id=${idOf(path)} tabindex="-1">
      <legend>${field.label}</legend>
      ${help(field, path)}
      ${fault(path, host.asking.problem(path))}
      ${count > MANY ? manyRows(host, path, count)
        : Array.from({ length: count }, (_, row) => listRow(host, field, path, row, count))}
      ${field.row_names || count > MANY ? nothing : html`
        <button type="button" @click=${() => { host.rows.add(path, field); focusRow(path, count, 'input, select'); }}>${say('Add one more')}</button>`}
      ${host.rows.panel?.list === path ? host.rows.panel.draw() : html`
        <button type="button" id="open-${path}" @click=${() => host.rows.openTable(path, field, false)}>${say('Paste or open a table')}<span class="unseen"> ${field.label}</span></button>
        <button type="button" @click=${() => host.rows.openTable(path, field, true)}>${say('Edit as text')}<span class="unseen"> ${field.label}</span></button>`}
      <p class="taken" role="status">${host.rows.taken.get(path) ?? nothing}</p>
    </fieldset>`;
}

const MANY = 30; // rows, and no more are drawn one by one

// This many rows are edited as text; faults in one are shown here.
function manyRows(host: FormHost, path: string, count: number) {
  const wrong = host.asking.answer?.problems.filter((problem) => problem.field.startsWith(`${path}.`)) ?? [];
  return html`
    <p><strong>${say('# rows.', count)}</strong> ${say('So many are not drawn one by one: edit them as text.')}</p>
    ${wrong.slice(0, 10).map(({ field, text: said }) => html`<p class="error">${say('Row #: #', Number(field.split('.')[1]) + 1, said)}</p>`)}
    ${wrong.length > 10 ? html`<p class="error">${say('And # more.', wrong.length - 10)}</p>` : nothing}`;
}

// Folded, a row shows its content in one line.
function listRow(host: FormHost, field: Field, path: string, row: number, count: number) {
  const name = rowName(field, row);
  const here = `${path}.${row}`;
  const parts = field.fields ?? [];
  return html`
    <div class="row" id=${idOf(here)}>
      ${row ? html`<button type="button" class="copy-row" @click=${() => host.rows.copy(path, field, row)}>${say('Copy from the row above')}<span class="unseen"> ${name}</span></button>` : nothing}
      <details ?open=${host.rows.unfolded.has(here)} @toggle=${(event: Event) => onFold(host, here, event)}>
        <summary><span>${name} <span class="digest">${digest(host, parts, `${here}.`)}</span></span></summary>
        <fieldset>
          <legend class="unseen">${name}</legend>
          ${parts.map((part) => draw(host, part, `${here}.${part.id}`))}
        </fieldset>
        ${field.row_names ? nothing : html`
          <div class="row-actions">
            ${[-1, 1].map((step) => row + step < 0 || row + step >= count ? nothing : html`
              <button type="button" data-step=${step} @click=${() => move(host, path, row, step)}>${step < 0 ? say('Move up') : say('Move down')}<span class="unseen"> ${name}</span></button>`)}
            <button type="button" @click=${() => remove(host, field, path, row)}>${say('Remove')}<span class="unseen"> ${name}</span></button>
          </div>`}
      </details>
    </div>`;
}

function digest(host: FormHost, parts: Field[], prefix: string): string {
  const { values } = host.form;
  const said: string[] = [];
  for (const [path, field, name] of leaves(parts, values, prefix)) {
    if (host.asking.problem(path)) return say('To put right');
    const typed = plain(text(values, path));
    if (!typed || typed === field.default) continue;
    if (field.kind === 'quantity') said.push((carriesUnit(typed) ? typed : withUnit(typed, unitOf(values, path, field))).replaceAll(' ', '\u00a0'));
    else if (field.kind === 'choice') said.push(field.choices?.find(({ value }) => value === typed)?.label ?? typed);
    else said.push(field.kind === 'text' ? typed : `${name} ${typed}`);
  }
  return said.join(', ') || say('Empty');
}

function onFold(host: FormHost, row: string, { currentTarget }: Event): void {
  const { open } = currentTarget as HTMLDetailsElement;
  if (host.rows.unfolded.has(row) === open) return;
  host.rows.unfold(row, open);
  host.draw();
}

// What was pressed has moved or gone: the focus goes where the user would look for it.
function focusRow(path: string, row: number, what: string): void {
  document.getElementById(idOf(`${path}.${row}`))?.querySelector<HTMLElement>(what)?.focus();
}

function move(host: FormHost, path: string, row: number, step: number): void {
  host.rows.swap(path, row, row + step);
  focusRow(path, row + step, '.row-actions button');
  focusRow(path, row + step, `[data-step="${step}"]`);
}

function remove(host: FormHost, field: Field, path: string, row: number): void {
  host.rows.remove(path, field, row);
  const left = rows(host.form.values, path, field);
  if (left) focusRow(path, Math.min(row, left - 1), 'summary');
  else document.getElementById(idOf(path))?.querySelector('button')?.focus();
}

// ---- parts of a field

// What a label says besides its name: the unit, and whether the field may stay empty.
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
