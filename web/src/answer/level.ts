// A level is a word and a shape, never a colour alone.
import { html, svg } from 'lit/html.js';
import type { Level } from '../core/contract';
import { say } from '../core/language';

const words = (): Record<Level, string> => ({ fit: say('Fit'), care: say('Take care'), unfit: say('Not fit'), note: say('Note') });

const STROKES: Record<Level, string> = {
  fit: 'M3 13 L9.5 19 L21 5',
  care: 'M12 2 V14.5 M12 18.5 V22.5',
  unfit: 'M5 5 L19 19 M19 5 L5 19',
  note: 'M5 12 H19',
};

export function word(level: Level): string {
  return words()[level] ?? '';
}

export function mark(level: Level) {
  return html`<svg class="mark" viewBox="0 0 24 24" aria-hidden="true">${svg`<path d=${STROKES[level] ?? STROKES.note}></path>`}</svg>`;
}
