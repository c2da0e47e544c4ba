// Where each figure comes from: a number beside the figure, and the list the numbers point to.
import { html, nothing } from 'lit/html.js';
import type { Answer } from '../core/contract';
import { say } from '../core/language';

// Numbered in reading order.
function numbered({ cautions, limits, figures, sources }: Answer): string[] {
  const met = [...cautions, ...limits, ...figures].flatMap((one) => one.sources);
  return [...new Set([...met, ...Object.keys(sources)])].filter((id) => Object.hasOwn(sources, id));
}

export function refs(answer: Answer, sources: string[]) {
  const known = numbered(answer);
  return sources.filter((id) => known.includes(id)).map((id) => html`
    <a class="ref" href="#source-${id}" data-goto="source-${id}" aria-label=${say('Source #', known.indexOf(id) + 1)}>[${known.indexOf(id) + 1}]</a>`);
}

export function sourceList(answer: Answer) {
  const all = numbered(answer).map((id) => [id, answer.sources[id]!] as const);
  if (!all.length) return nothing;
  return html`
    <details>
      <summary>${say('The sources, and how each is known')}</summary>
      <ol class="sources">
        ${all.map(([id, { title, clause, year, standing }]) => html`
          <li id="source-${id}" tabindex="-1">
            <span lang="en">${title}${clause ? `, ${clause}` : nothing}${year ? ` (${year})` : nothing}.</span> <em>${standing.charAt(0).toUpperCase() + standing.slice(1)}.</em>
          </li>`)}
      </ol>
      <p class="hint">${say('Published: read in print. Secondary: quoted by another work. Memory: not yet checked against print, so provisional. Common practice: what the trade does.')}</p>
    </details>`;
}
