// A table of text. The rest of what it can do loads later.
import { html, nothing, render } from 'lit/html.js';
import { live } from 'lit/directives/live.js';
import { language, say } from '../../core/language';
import { copyButton } from '../copy-button';
import type { Table, TableParts } from './table-parts';

const FIRST = 50; // rows, until what shows more of them is here
const SHORT = 18, LONG = 60; // characters: a figure with its unit is shorter, a sentence longer
const WIDTHS = [12, 19, 30, 52]; // rem: a phone with the largest text, a phone, the half of a desk, a whole one

const parts: TableParts = { html, nothing, render, live, folding, copyButton, say, language };

export function table(one: Table) {
  const { title, text, columns, rows } = one;
  import('./table-more').catch(() => { /* no connection: the first rows are here anyway */ });
  return html`
    <h3>${title}</h3>
    ${text ? html`<p>${text}</p>` : nothing}
    <table-more .parts=${parts} .table=${one}>${folding(title, columns, rows.slice(0, FIRST))}</table-more>`;
}

// If it is too wide for the page, each row becomes a short list under its name (answer.css), so
// that nothing is off the screen.
export function folding(label: string, columns: string[], rows: string[][]) {
  const needed = columns.map((column, i) => rows.reduce((most, row) => Math.max(most, room(row[i])), word(column)) * 0.53 + 0.75)
    .reduce((sum, one) => sum + one, 0);
  return grid(label, columns, rows, WIDTHS.find((width) => needed <= width) ?? WIDTHS.at(-1));
}

// The first cell of a row names it. What is still wider than the page scrolls in a box of its own,
// which the keyboard reaches too. The roles are explicit because a table laid out as lists would
// lose them.
export function grid(label: string, columns: string[], rows: string[][], needs = WIDTHS[0]) {
  return html`
    <div class="scroll needs-${needs}" role="group" aria-label=${label} tabindex="0">
      <table role="table">
        <thead role="rowgroup"><tr role="row">${columns.map((column) => html`<th scope="col" role="columnheader">${column}</th>`)}</tr></thead>
        <tbody role="rowgroup">
          ${rows.map(([first, ...rest]) => html`<tr role="row"><th scope="row" role="rowheader" class=${look(first)} data-label=${columns[0]}>${first}</th>${rest.map((cell, i) => html`<td role="cell" class=${look(cell)} data-label=${columns[i + 1]}>${cell}</td>`)}</tr>`)}
        </tbody>
      </table>
    </div>`;
}

// A figure with its unit stays on one line; a sentence gets room.
function look(cell = ''): string {
  return cell.length < SHORT ? 'short' : cell.length > LONG ? 'long' : 'middle';
}

// The minimum characters a cell needs in one line.
function room(cell = ''): number {
  return cell.length < SHORT ? cell.length : cell.length > LONG ? 30 : Math.max(word(cell), 14);
}

function word(text: string): number {
  return Math.max(...text.split(' ').map(({ length }) => length));
}
