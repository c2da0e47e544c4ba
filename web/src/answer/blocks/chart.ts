// Curves with their bands, and the user's own point. The picture is only for the eye: the sentence
// above it and the table behind it say the same. The code that draws it loads after the first
// answer; its place is reserved.
import { html, nothing, svg } from 'lit/html.js';
import { say } from '../../core/language';
import { marksKey, named, placed, plain, shapeOf } from './axes';
import type { Chart, Look } from './chart-parts';
import { grid } from './table';

// Lines differ by their dashes, in the picture and in its key.
const DASHES = [[], [9, 5], [2, 4], [9, 4, 2, 4], [16, 5]];

const look: Look = {
  dashOf: (line) => DASHES[line % DASHES.length]!,
  widthOf: ({ role }) => (role === 'subject' ? 3 : 2),
  shapeOf,
  placed,
  plain,
};

export function chart(one: Chart) {
  const { id, title, text, x, y, series, marks, columns, rows } = one;
  import('./plot').catch(() => { /* no connection: the sentence and the table are here anyway */ });
  return html`
    <h3 id="chart-${id}">${title}</h3>
    ${text ? html`<p>${text}</p>` : nothing}
    ${series.length ? html`
      <figure class="chart" aria-labelledby="chart-${id}">
        <p class="axis">${named(y)}</p>
        <line-plot aria-hidden="true" .look=${look} .chart=${one}></line-plot>
        <p class="axis across">${named(x)}</p>
        <ul class="key">
          ${series.map((line, i) => html`
            <li>
              <svg class="swatch line ${line.role}" viewBox="0 0 40 16" aria-hidden="true">
                ${line.low ? svg`<rect width="40" height="16"></rect>` : nothing}
                <path d="M0 8H40" stroke-width=${look.widthOf(line)} stroke-dasharray=${look.dashOf(i).join(' ')}></path>
              </svg>
              ${line.low ? say('#, with its band', line.label) : line.label}
            </li>`)}
          ${marksKey(marks)}
        </ul>
      </figure>` : nothing}
    <details>
      <summary>${say('The same as a table')}</summary>
      ${grid(title, columns, rows)}
    </details>`;
}
