// Tables as text, by papaparse: read with any separator, and written.
import Papa from 'papaparse';
import type { Say } from '../core/language';

export interface Lines {
  lines: string[][]; // without the empty ones
  remarks: string[];
  separator: string;
  skipped: number; // lines before them that only say the separator
}

// The comma comes last: it may be a decimal one.
const PARTED_BY = ['\t', ';', '|', ','];
// The names of the columns stand in one of the first lines: a title may come before them.
export const HEAD_WITHIN = 5;
// What a spreadsheet writes, and reads, above a table: "sep=;".
const SAYS_SEPARATOR = /^"?sep=(.)"?[ \t;,|]*(?:\r\n?|\n|$)/i;

// `known` says how many of a line's cells are column names: the surest sign of the separator.
export function read(text: string, known: (cells: string[]) => number, say: Say): Lines {
  const whole = text.replace(/^\uFEFF/, '');
  const separator = SAYS_SEPARATOR.exec(whole);
  const plain = separator ? whole.slice(separator[0].length) : whole;
  let best = separator?.[1] ?? ',';
  let most = 0;
  for (const delimiter of separator ? [] : PARTED_BY) {
    const { data } = parse(plain, delimiter, '"', 40);
    const counts = data.filter(said).map((cells) => cells.length).sort((a, b) => a - b);
    const wide = (counts[counts.length >> 1] ?? 0) > 1;
    const names = Math.max(0, ...data.slice(0, HEAD_WITHIN).map(known));
    const score = wide || names > 1 ? 1 + names : 0;
    if (score > most) [best, most] = [delimiter, score];
  }
  const quoted = parse(plain, best, '"');
  const wrong = quoted.errors.some(({ type }) => type === 'Quotes');
  const skipped = separator ? 1 : 0;
  const { line, swallowed } = openQuote(quoted.data, best, wrong);
  const broken = wrong || swallowed > 0;
  const { data } = broken ? parse(plain, best, '\0') : quoted;
  const remarks: string[] = [];
  if (swallowed) remarks.push(say('A quotation mark in line # does not close there. Lines it would swallow: #.', line + skipped, swallowed));
  if (broken) remarks.push(say('A quotation mark in it does not close on its line, so all of them were taken as part of the text.'));
  return {
    lines: data.filter(said).map((cells) => cells.map((cell) => cell.replace(/\s+/g, ' ').trim())),
    remarks,
    separator: best,
    skipped,
  };
}

// A mark that closes on a later line, or never, has swallowed the lines between: in which line the
// first of them opens, and how many lines are in the cells of all.
function openQuote(data: string[][], separator: string, wrong: boolean): { line: number; swallowed: number } {
  let [at, line, swallowed] = [1, 0, 0];
  data.forEach((cells, i) => {
    const breaks = (cell: string) => cell.match(/\r\n?|\n/g)?.length ?? 0;
    const within = cells.reduce((sum, cell) => sum + breaks(cell), 0);
    const open = cells.some((cell) => breaks(cell) && cell.includes(separator)) || (wrong && i === data.length - 1);
    if (within && open) {
      line ||= at;
      swallowed += within;
    }
    at += 1 + within;
  });
  return { line, swallowed };
}

function parse(text: string, delimiter: string, quoteChar: string, preview = 0) {
  return Papa.parse<string[]>(text, { delimiter, quoteChar, preview });
}

const said = (cells: string[]) => cells.some((cell) => cell.trim());

export function write(columns: string[], rows: string[][]): string {
  return Papa.unparse({ fields: columns, data: rows }, { delimiter: ';', newline: '\n' });
}

// For a spreadsheet: anything it would take for a formula is defused.
export function forSpreadsheet(columns: string[], rows: string[][]): string {
  return Papa.unparse({ fields: columns, data: rows }, { escapeFormulae: true });
}
