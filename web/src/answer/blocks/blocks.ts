// One file for each kind of block. Unknown kinds are left out.
import { nothing } from 'lit/html.js';
import type { Block } from '../../core/contract';
import { chart } from './chart';
import { drawing } from './drawing';
import { afterWords } from './after-words';
import { map } from './map';
import { marking } from './marking';
import { spoken } from './spoken';
import { table } from './table';
import { timeline } from './timeline';

const KINDS: Record<string, (block: never) => unknown> = { chart, drawing, map, marking, spoken, table, timeline };

const PICTURES = [chart, drawing, map] as unknown[];

export function block(one: Block): unknown {
  const draw = Object.hasOwn(KINDS, one.kind) ? KINDS[one.kind] : undefined;
  if (!draw) return nothing;
  return PICTURES.includes(draw) ? afterWords(() => draw(one as never)) : draw(one as never);
}
