// Shapes to scale, in the block's own unit, with what each one is written under them.
import { html, nothing, svg } from 'lit/html.js';
import type { Block } from '../contract';

interface Shape {
  shape: string;
  x: number;
  y: number;
  width: number;
  height: number;
  radius?: number;
  role: 'subject' | 'reference' | 'detail';
  label?: string;
}

interface Drawing extends Block {
  text: string;
  width: number;
  height: number;
  shapes: Shape[];
}

export function drawing({ id, title, text, width, height, shapes }: Drawing) {
  const boxes = shapes.filter((shape) => shape.shape === 'box');
  return html`
    <h3>${title}</h3>
    <figure class="drawing">
      <svg viewBox="-2 -2 ${width + 4} ${height + 4}" role="img" aria-labelledby="drawing-${id}">
        ${boxes.map(({ x, y, width, height, radius = 0, role }) => svg`
          <rect class=${role} x=${x} y=${y} width=${width} height=${height} rx=${radius}></rect>`)}
      </svg>
      <figcaption>
        <p id="drawing-${id}">${text}</p>
        <ul>
          ${boxes.map(({ role, label }) => label ? html`
            <li><svg class="swatch" viewBox="0 0 24 16" aria-hidden="true"><rect class=${role} x="2" y="2" width="20" height="12" rx="2"></rect></svg> ${label}</li>` : nothing)}
        </ul>
      </figcaption>
    </figure>`;
}
