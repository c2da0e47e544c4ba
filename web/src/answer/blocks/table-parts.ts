// What a table is, and what the element that loads later is passed: see chart-parts.ts.
import type { html, nothing, render } from 'lit/html.js';
import type { live } from 'lit/directives/live.js';
import type { Block } from '../../core/contract';
import type { language, say } from '../../core/language';
import type { copyButton } from '../copy-button';

export interface Table extends Block {
  columns: string[];
  rows: string[][];
  picked_by?: string; // a column of few different words, to pick rows by
}

export interface TableParts {
  html: typeof html;
  nothing: typeof nothing;
  render: typeof render;
  live: typeof live;
  folding(label: string, columns: string[], rows: string[][]): unknown;
  copyButton: typeof copyButton;
  say: typeof say;
  language: typeof language;
}
