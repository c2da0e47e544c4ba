import { html } from 'lit/html.js';
import type { Block } from '../contract';

interface Table extends Block {
  columns: string[];
  rows: string[][];
}

export function table({ title, columns, rows }: Table) {
  return html`
    <h3>${title}</h3>
    <table>
      <thead><tr>${columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
      <tbody>
        ${rows.map(([first, ...rest]) => html`<tr><th scope="row">${first}</th>${rest.map((cell) => html`<td>${cell}</td>`)}</tr>`)}
      </tbody>
    </table>`;
}
