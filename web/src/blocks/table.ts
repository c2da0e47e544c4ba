import { html, nothing } from 'lit/html.js';
import type { Block } from '../contract';
import { kit } from '../kit';

export interface Table extends Block {
  text?: string;
  columns: string[];
  rows: string[][];
  picked_by?: string; // a column of few different words, to pick rows by
}

const FIRST = 50; // rows, until what shows more of them is here

export function table(one: Table) {
  const { title, text, columns, rows } = one;
  import('./table-more').catch(() => { /* no connection: the first rows are here all the same */ });
  return html`
    <h3>${title}</h3>
    ${text ? html`<p>${text}</p>` : nothing}
    <table-more .kit=${kit} .table=${one}>${grid(title, columns, rows.slice(0, FIRST))}</table-more>`;
}

// The first cell of a row names it. A table wider than the page scrolls in a box of its own, which
// the keyboard reaches too.
export function grid(label: string, columns: string[], rows: string[][]) {
  return html`
    <div class="scroll" role="group" aria-label=${label} tabindex="0">
      <table>
        <thead><tr>${columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
        <tbody>
          ${rows.map(([first, ...rest]) => html`<tr><th scope="row" class=${look(first)}>${first}</th>${rest.map((cell) => html`<td class=${look(cell)}>${cell}</td>`)}</tr>`)}
        </tbody>
      </table>
    </div>`;
}

// A figure with its unit stays on one line; a sentence gets room.
function look(cell = ''): string {
  return cell.length < 18 ? 'short' : cell.length > 60 ? 'long' : '';
}
