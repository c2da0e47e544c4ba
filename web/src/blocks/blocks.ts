// One file for each kind of block. A kind that this page does not know is left out.
import { nothing } from 'lit/html.js';
import type { Block } from '../contract';
import { drawing } from './drawing';
import { marking } from './marking';
import { spoken } from './spoken';
import { table } from './table';

const KINDS: Record<string, (block: never) => unknown> = { drawing, marking, spoken, table };

export function block(one: Block): unknown {
  const draw = Object.hasOwn(KINDS, one.kind) ? KINDS[one.kind] : undefined;
  return draw ? draw(one as never) : nothing;
}
