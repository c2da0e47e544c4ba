// The text on a sidewall, laid along an arc; a part shows its meaning when tapped or focused. The
// same is below as a list. If the text is too long to stay legible on a phone, there is only the
// list.
import { html, svg } from 'lit/html.js';
import { keyed } from 'lit/directives/keyed.js';
import type { Block } from '../../core/contract';
import { say } from '../../core/language';

interface Stretch {
  text: string;
  meaning: string; // empty: only between the parts
}

interface Marking extends Block {
  stretches: Stretch[];
}

interface Sign {
  sign: string;
  of: number; // the stretch
  apart: number; // from the sign before it
  wide: number;
  from: number; // where it begins along its row
}

// In units of the drawing, which are close to pixels on a phone.
const WIDTH = 320;
const ROW = 312; // the longest row of signs, along its arc
const SPACE = 12;
const PITCH = 50; // from row to row
const INNERMOST = 264; // radius of the last row's baseline
const ABOVE = 34; // from a baseline to the upper edge of its row
const BELOW = 15;
const LEAST = 23; // a part of one sign, however narrow
const MARGIN = 5; // by which a part is larger than its signs on either side, for the finger
const MOST_ROWS = 6;

export function marking({ title, stretches }: Marking) {
  const rows = layOut(stretches);
  const parts = stretches.filter(({ meaning }) => meaning);
  const list = html`<dl>${parts.map(({ text, meaning }) => html`<div><dt>${text}</dt><dd>${meaning}</dd></div>`)}</dl>`;
  return html`
    <h3>${title}</h3>
    <div class="marking">
      ${rows.length > MOST_ROWS ? list : html`
        ${keyed(JSON.stringify(stretches), picture(stretches, parts, rows))}
        <details><summary>${say('The same as a list')}</summary>${list}</details>`}
    </div>`;
}

// ---- layout

// Rows break at spaces, and inside a word only where it is longer than a row.
function layOut(stretches: Stretch[]): Sign[][] {
  const words: Sign[][] = [[]];
  let before = -1;
  stretches.forEach(({ text, meaning }, of) => {
    for (const sign of text) {
      const word = words.at(-1)!;
      if (!sign.trim()) {
        if (word.length) word.at(-1)!.sign += ' '; // invisible, but there for searching and screen readers
        words.push([]);
      } else {
        const apart = meaning && before !== of && stretches[before]?.meaning && word.length ? 2 * MARGIN : 0;
        word.push({ sign, of, apart, wide: meaning && text === sign ? LEAST : widthOf(sign), from: 0 });
        before = of;
      }
    }
  });

  const rows: Sign[][] = [];
  let end = ROW;
  for (const word of words.filter(({ length }) => length)) {
    const long = word.reduce((sum, { apart, wide }) => sum + apart + wide, SPACE);
    let fresh = end + long > ROW;
    end += SPACE;
    for (const one of word) {
      if (fresh || end + one.apart + one.wide > ROW) {
        rows.push([]);
        end = 0;
      }
      fresh = false;
      one.from = end ? end + one.apart : 0;
      end = one.from + one.wide;
      rows.at(-1)!.push(one);
    }
  }
  return rows;
}

function widthOf(sign: string): number {
  if (sign >= '\u2e80') return 27;
  return /[MWmw@%]/.test(sign) ? 23 : /[\p{L}+]/u.test(sign) ? 19 : /\d/.test(sign) ? 17 : 11;
}

// ---- picture

function picture(stretches: Stretch[], parts: Stretch[], rows: Sign[][]) {
  const outermost = INNERMOST + PITCH * (rows.length - 1);
  const hub = outermost + ABOVE + 28;
  const circle = (name: string, radius: number) => svg`<circle class=${name} cx=${WIDTH / 2} cy=${hub} r=${radius}></circle>`;
  const point = (radius: number, angle: number) =>
    `${(WIDTH / 2 + radius * Math.sin(angle)).toFixed(1)} ${(hub - radius * Math.cos(angle)).toFixed(1)}`;
  const arc = (radius: number, from: number, to: number) =>
    `${point(radius, from)}A${radius} ${radius} 0 0 ${to > from ? 1 : 0} ${point(radius, to)}`;

  const drawn = stretches.map((): unknown[] => []);
  rows.forEach((row, k) => {
    const radius = outermost - PITCH * k;
    const middle = row.at(-1)!.from + row.at(-1)!.wide;
    const angle = (along: number) => (along - middle / 2) / radius;
    for (const of of new Set(row.map((one) => one.of))) {
      const signs = row.filter((one) => one.of === of);
      const [from, to] = [signs[0]!.from, signs.at(-1)!.from + signs.at(-1)!.wide];
      const [start, stop] = [angle(from - MARGIN), angle(to + MARGIN)];
      if (stretches[of]!.meaning) drawn[of]!.push(svg`<path class="hit" d="M${arc(radius + ABOVE, start, stop)}L${arc(radius - BELOW, stop, start)}Z"></path><path class="under" d="M${arc(radius - 7, angle(from), angle(to))}"></path>`);
      drawn[of]!.push(signs.map(({ sign, from, wide }) => svg`<text x=${WIDTH / 2} y=${hub - radius} transform="rotate(${(angle(from + wide / 2) * 180 / Math.PI).toFixed(2)} ${WIDTH / 2} ${hub})">${sign}</text>`));
    }
  });

  return html`
    <figure @click=${choose} @focusin=${choose} @keydown=${press}>
      <svg viewBox="0 0 ${WIDTH} ${hub - INNERMOST + 76}" role="group" aria-label=${stretches.map(({ text }) => text).join('')}>
        ${circle('tread', hub - 9)} ${circle('rubber', hub - 14)} ${circle('line', hub - 21)}
        ${circle('line', INNERMOST - BELOW - 4)} ${circle('rim', INNERMOST - BELOW - 10)} ${circle('line', INNERMOST - BELOW - 17)}
        ${drawn.map((shapes, of) => {
          const { text, meaning } = stretches[of]!;
          if (!meaning) return svg`<g aria-hidden="true">${shapes}</g>`;
          return svg`<g role="button" tabindex="0" aria-label="${text}: ${meaning}">${shapes}</g>`;
        })}
      </svg>
      <figcaption>
        <p class="now">${say('Choose a part to see what it means.')}</p>
        ${parts.map(({ text, meaning }) => html`<p><strong>${text}</strong> ${meaning}</p>`)}
      </figcaption>
    </figure>`;
}

// The choice is kept in the drawing itself, which is made anew for another text. A screen reader
// gets the meaning from the part's name, so the line below need not be announced too. All the lines
// share one place, which is thus large enough for the longest.
function choose({ currentTarget, target }: Event): void {
  const part = (target as Element).closest('[role=button]');
  if (!part) return;
  const figure = currentTarget as Element;
  const lines = figure.querySelectorAll('p');
  lines[0]!.className = '';
  figure.querySelectorAll('[role=button]').forEach((one, i) => {
    if (one === part) one.setAttribute('aria-current', 'true');
    else one.removeAttribute('aria-current');
    lines[i + 1]!.className = one === part ? 'now' : '';
  });
}

function press(event: KeyboardEvent): void {
  if (event.key !== 'Enter' && event.key !== ' ') return;
  event.preventDefault();
  choose(event);
}
