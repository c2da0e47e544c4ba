// What a chart is, and what its picture is passed. The picture does not import it: what two chunks
// import becomes a third, which the first answer would wait for.
import type { Block } from '../../core/contract';
import type { Axis, Mark } from './axes';

export interface Series {
  role: 'subject' | 'reference';
  label: string;
  x: (number | null)[];
  y: (number | null)[]; // null is a gap
  low?: (number | null)[];
  high?: (number | null)[];
}

export interface Chart extends Block {
  x: Axis;
  y: Axis;
  series: Series[];
  marks: Mark[];
  columns: string[];
  rows: string[][];
}

export interface Look {
  dashOf(line: number): number[];
  widthOf(line: Series): number;
  shapeOf(mark: number): string;
  placed(marks: Mark[]): Required<Mark>[];
  plain(value: number, digits?: number): string;
}
