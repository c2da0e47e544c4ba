// What is only on paper: the input, in a few lines and a table for each list, in place of the form;
// and the link as a QR code. Made for the printer, and removed afterwards. Everything goes on one
// page of A4 if that is legible.
import { html, nothing, render } from 'lit/html.js';
import type { Field } from '../core/contract';
import { say } from '../core/language';
import { withItsUnit } from '../form/units';
import { rowName, rows, text } from '../form/values';
import type { Values } from '../form/values';
import type { App } from './app';
import { codeOf } from './qr-code';

const MOST_ROWS = 40; // of a list

export function onPaper(app: App): void {
  const put = (id: string, content: unknown) => {
    const place = document.getElementById(id);
    if (!place) return;
    render(content, place);
    place.hidden = content === nothing;
  };
  const link = document.createElement('div');
  link.className = 'paper-link';
  addEventListener('beforeprint', () => {
    put('paper-form', typed(app));
    link.remove();
    const code = location.protocol === 'file:' ? undefined : codeOf(app.link());
    if (code) link.replaceChildren(code, say('This sheet, filled in, for a phone\'s camera.'));
    fit(code ? link : undefined);
  });
  addEventListener('afterprint', () => {
    put('paper-form', nothing);
    link.remove();
  });
}

function typed(app: App) {
  const { sheet: { fields }, values } = app.form;
  const single = fields.filter(({ kind, id }) => kind !== 'list' && text(values, id).trim());
  return html`
    <dl>${single.map((field) => html`<div><dt>${field.label}</dt> <dd>${shown(values, field.id, field)}</dd></div> `)}</dl>
    ${fields.filter(({ kind }) => kind === 'list').map((field) => table(values, field))}`;
}

// ---- one page

const PAGE = { width: 194, height: 276 }; // mm: A4 within the margins that the style sheet asks for, and a little to spare
const SIZES = Array.from({ length: 15 }, (_, step) => 9.5 - step / 4); // pt

const SECOND_PAGE = 8; // pt, where one page is not enough

// As large as fits on one page, or on several in an easily read size. A browser cannot be asked for
// the layout on paper, so for a moment the screen has the paper's styles. The code stands beside
// what was typed, or at the end, wherever it leaves the text larger.
function fit(link: HTMLElement | undefined): void {
  const root = document.documentElement;
  const px = 96 / 25.4;
  const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]).filter((rule) => rule instanceof CSSMediaRule);
  const before = rules.map(({ media }) => media.mediaText);
  const scroll = root.scrollTop;
  for (const { media } of rules) {
    const least = /min-width:\s*([\d.]+)(rem|em)/.exec(media.mediaText);
    const applies = least ? Number(least[1]) * 16 <= PAGE.width * px : /\bprint\b/.test(media.mediaText);
    if (!/forced/.test(media.mediaText)) media.mediaText = applies ? 'all' : 'not all';
  }
  root.style.width = `${PAGE.width}mm`;
  const places = link ? ['paper-form', 'paper-end'].flatMap((id) => document.getElementById(id) ?? []) : [];
  const moves = places.length ? places.map((place) => () => place.prepend(link!)) : [() => {}];
  const fits = SIZES.some((size) => moves.some((move) => {
    move();
    root.style.setProperty('--paper-text', `${size}pt`);
    return document.body.getBoundingClientRect().height <= PAGE.height * px;
  }));
  if (!fits) root.style.setProperty('--paper-text', `${SECOND_PAGE}pt`);
  rules.forEach(({ media }, i) => { media.mediaText = before[i]!; });
  root.style.width = '';
  root.scrollTop = scroll;
}

// ---- what was typed

// A choice by its words, a number with its unit.
function shown(values: Values, path: string, field: Field): string {
  const typed = text(values, path);
  return field.choices?.find(({ value }) => value === typed)?.label ?? withItsUnit(values, path, field);
}

// Only the columns that say something.
function table(values: Values, list: Field) {
  const count = rows(values, list.id, list);
  const all = Array.from({ length: Math.min(count, MOST_ROWS) }, (_, row) => row);
  const path = (row: number, { id }: Field) => `${list.id}.${row}.${id}`;
  const columns = (list.fields ?? []).filter((field) => all.some((row) => text(values, path(row, field)).trim()));
  if (!columns.length) return nothing;
  return html`
    <table>
      <thead><tr><th scope="col"></th>${columns.map(({ label }) => html`<th scope="col">${label}</th>`)}</tr></thead>
      <tbody>
        ${all.map((row) => html`<tr><th scope="row">${rowName(list, row)}</th>${columns.map((field) => html`<td>${shown(values, path(row, field), field)}</td>`)}</tr>`)}
      </tbody>
    </table>
    ${count > MOST_ROWS ? html`<p>${say('And # more.', count - MOST_ROWS)}</p>` : nothing}`;
}
