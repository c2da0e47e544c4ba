// A value over two axes: bands of shade between round values, each darker than the one below it, with
// lines between them and the value itself written here and there. A table behind it says the same.
import { html, nothing, svg } from 'lit/html.js';
import type { Block } from '../../core/contract';
import { here, marksKey, named, placed, plain, roundNumbers } from './axes';
import type { Axis, Mark } from './axes';
import { grid } from './table';
import { say } from '../../core/language';

type Row = (number | null)[];

interface Map extends Block {
  x: Axis;
  y: Axis;
  value: Axis;
  xs: number[];
  ys: number[];
  values: Row[]; // values[row][column]; null is a gap
  marks: Mark[];
}

type Point = [x: number, y: number];

// In units of the drawing, which are close to pixels on a phone.
const WIDTH = 320;
const HEIGHT = 240;
const LEFT = 34;
const BOTTOM = 22;
const TOP = 8;
const RIGHT = 10;

const BANDS = 6; // about

export function map(one: Map) {
  const { id, title, text, x, y, value, xs, ys, values, marks } = one;
  const known = values.flat().filter((each) => each !== null);
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const steps = roundNumbers(least, most, BANDS).filter((step) => step > least && step < most);
  const drawn = known.length > 0 && xs.length > 1 && ys.length > 1;
  return html`
    <h3 id="map-${id}">${title}</h3>
    ${text ? html`<p>${text}</p>` : nothing}
    ${drawn ? html`
      <figure class="map" aria-labelledby="map-${id}">
        <p class="axis">${named(y)}</p>
        ${picture(one, steps)}
        <p class="axis across">${named(x)}</p>
        <ul class="key">
          <li>${named(value)}:</li>
          ${[undefined, ...steps].map((from, band) => html`
            <li><svg class="swatch tone" viewBox="0 0 24 16" aria-hidden="true">${Array.from({ length: band + 1 }, () => svg`<rect width="24" height="16"></rect>`)}</svg>
              ${rangeText(from, steps[band])}</li>`)}
          ${marksKey(marks)}
        </ul>
      </figure>` : nothing}
    <details>
      <summary>${say('The same as a table')}</summary>
      <p>${say('#. Across: #.', named(value), named(x))}</p>
      ${listed(one)}
    </details>`;
}

function rangeText(from: number | undefined, to: number | undefined): string {
  if (from === undefined) return to === undefined ? say('all') : say('under #', plain(to));
  return to === undefined ? say('# and more', plain(from)) : say('# to #', plain(from), plain(to));
}

// ---- the picture

function picture({ id, xs, ys, values, marks }: Map, steps: number[]) {
  const places = placed(marks);
  const [left, right] = ends(xs);
  const [low, high] = ends(ys);
  const across = (x: number) => LEFT + (x - left) / (right - left) * (WIDTH - LEFT - RIGHT);
  const up = (y: number) => HEIGHT - BOTTOM - (y - low) / (high - low) * (HEIGHT - BOTTOM - TOP);
  const at = (column: number, row: number): Point => [across(xs[column]!), up(ys[row]!)];
  const ground = bandFrom(values, at, -Infinity);
  const far = ([x, y]: Point) => places.every((mark) => Math.hypot(across(mark.x) - x, up(mark.y) - y) > 20);
  return svg`
    <svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-labelledby="map-${id}">
      <g class="tone">
        <path d=${ground.area}></path>
        ${steps.map((step) => {
          const { area, edge } = bandFrom(values, at, step);
          return svg`<path d=${area}></path><path class="edge" d=${edge}></path>`;
        })}
      </g>
      <g class="ticks">
        ${roundNumbers(left, right, 5).map((x) => svg`<text x=${across(x)} y=${HEIGHT - 6} text-anchor="middle">${plain(x)}</text>`)}
        ${roundNumbers(low, high, 4).map((y) => svg`<text x=${LEFT - 6} y=${up(y) + 4} text-anchor="end">${plain(y)}</text>`)}
      </g>
      <g class="written">
        ${spread(ys.length, 4, 0.5).map((row) => spread(xs.length, 4, 0.5).map((column) => {
          const value = values[row]?.[column] ?? null;
          const point = at(column, row);
          return value === null || !far(point) ? nothing : svg`<text x=${point[0]} y=${point[1] + 4} text-anchor="middle">${plain(value)}</text>`;
        }))}
      </g>
      ${places.map((mark, i) => here(i, across(mark.x), up(mark.y)))}
    </svg>`;
}

function ends(values: number[]): [number, number] {
  return [Math.min(...values), Math.max(...values)];
}

// The cells, or parts of cells, in which the value is `from` or more, and the line round them. Within
// a cell the value runs straight from corner to corner; a cell with a gap at a corner is left out.
function bandFrom(values: Row[], at: (column: number, row: number) => Point, from: number) {
  let area = '';
  let edge = '';
  for (let row = 0; row + 1 < values.length; row++) {
    const columns = values[row]!.length;
    let run = -1; // whole cells side by side are one rectangle
    const held = (c: number, r: number) => values[r]![c] ?? NaN;
    for (let column = 0; column < columns; column++) {
      const [a, b, c, d] = [held(column, row), held(column + 1, row), held(column + 1, row + 1), held(column, row + 1)];
      const whole = a >= from && b >= from && c >= from && d >= from;
      if (whole && run < 0) run = column;
      if (!whole && run >= 0) {
        const [[left, bottom], [right, top]] = [at(run, row), at(column, row + 1)];
        area += `M${spell([left, bottom])}H${right.toFixed(1)}V${top.toFixed(1)}H${left.toFixed(1)}Z`;
        run = -1;
      }
      if (whole || Number.isNaN(a + b + c + d) || !(a >= from || b >= from || c >= from || d >= from)) continue;
      const corners = [at(column, row), at(column + 1, row), at(column + 1, row + 1), at(column, row + 1)];
      const { outline, line } = partOf(corners, [a, b, c, d], from);
      area += `M${outline.map(spell).join('L')}Z`;
      edge += line.map(([start, stop]) => `M${spell(start)}L${spell(stop)}`).join('');
    }
  }
  return { area, edge };
}

// Round the corners of a cell: those inside, and the places where its sides are crossed. A line joins
// each way out to the next way in.
function partOf(corners: Point[], held: number[], from: number) {
  const outline: Point[] = [];
  const ways: { place: Point; out: boolean }[] = [];
  corners.forEach((corner, i) => {
    const next = (i + 1) % corners.length;
    const [here, there] = [held[i]!, held[next]!];
    if (here >= from) outline.push(corner);
    if (here >= from === there >= from) return;
    const share = (from - here) / (there - here);
    const place: Point = [corner[0] + share * (corners[next]![0] - corner[0]), corner[1] + share * (corners[next]![1] - corner[1])];
    outline.push(place);
    ways.push({ place, out: here >= from });
  });
  const line = ways.flatMap(({ place, out }, i) => (out ? [[place, ways[(i + 1) % ways.length]!.place] as const] : []));
  return { outline, line };
}

function spell([x, y]: Point): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}

// ---- the table

function listed({ title, y, xs, ys, values }: Map) {
  const [rows, columns] = [spread(ys.length, 8, 0), spread(xs.length, 6, 0)];
  return grid(title, [named(y), ...columns.map((column) => plain(xs[column]!))], rows.map((row) => [
    plain(ys[row]!),
    ...columns.map((column) => {
      const value = values[row]?.[column] ?? null;
      return value === null ? '\u2013' : plain(value);
    }),
  ]));
}

// Which to take, at most a given number, evenly spaced: from end to end, or a share of a step
// inside the ends.
function spread(count: number, most: number, within: number): number[] {
  const taken = Math.min(count, most);
  const step = (count - 1) / Math.max(taken - 1 + 2 * within, 1);
  return [...new Set(Array.from({ length: taken }, (_, i) => Math.round((i + within) * step)))];
}
