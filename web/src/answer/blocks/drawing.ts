// Shapes to scale, in the block's own unit, with their names below. If one of them is a thing that
// everybody carries, holding a real one to the screen brings the drawing to true size.
import { html, nothing, svg } from 'lit/html.js';
import type { Block } from '../../core/contract';
import { recallScale, rememberScale } from '../../core/remember';
import { say } from '../../core/language';

interface Shape {
  shape: string;
  x: number;
  y: number;
  width: number;
  height: number;
  radius?: number;
  role: 'subject' | 'reference' | 'detail' | 'scale';
  label?: string;
}

interface Drawing extends Block {
  width: number;
  height: number;
  shapes: Shape[];
}

const MARGIN = 2; // round the shapes, in the block's unit
const USUAL = 3.8; // pixels a millimetre: 96 dots an inch, as browsers suppose

export function drawing({ id, title, text, width, height, shapes }: Drawing) {
  const boxes = shapes.filter((shape) => shape.shape === 'box');
  const known = boxes.find(({ role }) => role === 'scale');
  const across = width + 2 * MARGIN;
  return html`
    <h3>${title}</h3>
    <figure class="drawing">
      <div class="picture">
        <svg viewBox="${-MARGIN} ${-MARGIN} ${across} ${height + 2 * MARGIN}" role="img" aria-labelledby="drawing-${id}">
          ${boxes.map(({ x, y, width, height, radius = 0, role }) => svg`
            <rect class=${role} x=${x} y=${y} width=${width} height=${height} rx=${radius}></rect>`)}
        </svg>
      </div>
      <figcaption>
        <p id="drawing-${id}">${text}</p>
        <ul>
          ${boxes.map(({ role, label }) => label ? html`
            <li><svg class="swatch" viewBox="0 0 24 16" aria-hidden="true"><rect class=${role} x="2" y="2" width="20" height="12" rx="2"></rect></svg> ${label}</li>` : nothing)}
        </ul>
        ${known?.label ? html`
          <details class="true-size" @toggle=${(event: Event) => toTrueSize(event, across)}>
            <summary>${say('In true size')}</summary>
            <label>${say('Hold a real one to the screen and slide until the drawn one is as large: #', known.label)}
              <input type="range" min="1" max="16" step="0.02" .value=${String(recallScale() ?? USUAL)}
                @input=${(event: Event) => toTrueSize(event, across)}>
            </label>
          </details>` : nothing}
      </figcaption>
    </figure>`;
}

// While it is open the slider sets the picture's width; what does not fit can be scrolled to.
function toTrueSize(event: Event, across: number): void {
  const details = (event.target as Element).closest('details')!;
  const picture = details.closest('figure')?.querySelector<HTMLElement>('.picture');
  if (!picture) return; // drawn anew since
  const slide = details.querySelector('input')!;
  if (event.type === 'input') rememberScale(Number(slide.value));
  picture.classList.toggle('true', details.open);
  picture.tabIndex = details.open ? 0 : -1;
  picture.querySelector('svg')!.style.width = details.open ? `${across * Number(slide.value)}px` : '';
}
