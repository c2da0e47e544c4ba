// Shared by the chart and the map: axes, and "you are here" marks.
import { html, svg } from 'lit/html.js';
import { decimals } from '../../core/language';

export interface Axis {
  label: string;
  unit: string;
}

export interface Mark {
  x?: number;
  y?: number;
  label: string;
}

// A mark without a number has no place.
export function placed(marks: Mark[]): Required<Mark>[] {
  return marks.filter(({ x, y }) => x !== undefined && y !== undefined) as Required<Mark>[];
}

// Marks differ by shape. The paths are centred on 0 0, and the canvas uses them too.
const SHAPES = [
  'M0 -6.5A6.5 6.5 0 0 1 0 6.5A6.5 6.5 0 0 1 0 -6.5Z',
  'M-6 -6H6V6H-6Z',
  'M0 -8.5L8.5 0L0 8.5L-8.5 0Z',
  'M0 -8L8 6.5H-8Z',
];

export function shapeOf(mark: number): string {
  return SHAPES[mark % SHAPES.length]!;
}

export function named({ label, unit }: Axis): string {
  return unit ? `${label} (${unit})` : label;
}

// The marks' lines of the key.
export function marksKey(marks: Mark[]) {
  return placed(marks).map(({ label }, i) => html`
    <li><svg class="swatch here" viewBox="-12 -10 24 20" aria-hidden="true">${here(i)}</svg> ${label}</li>`);
}

export function here(mark: number, x = 0, y = 0) {
  return svg`<g class="here" transform="translate(${x} ${y})"><path d=${shapeOf(mark)}></path><circle r="2"></circle></g>`;
}

// Few enough figures to read, and a proper minus sign.
export function plain(value: number, digits = 3): string {
  return decimals(String(Number(value.toPrecision(digits)))).replace('-', '\u2212');
}

// The round numbers from one to the other, about as many as asked for.
export function roundNumbers(from: number, to: number, about: number): number[] {
  const rough = (to - from) / about;
  if (!(rough > 0)) return [];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((times) => times * power).find((one) => one >= 0.75 * rough)!;
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}
