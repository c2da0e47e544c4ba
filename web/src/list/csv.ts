// Tables as text, by papaparse: read with any separator, and written.
import Papa from 'papaparse';
import type { Say } from '../core/language';

export interface Lines {
  lines: string[][]; // without the empty ones
  remarks: string[];
}

// The comma comes last: it may be a decimal one.
const PARTED_BY = ['\t', ';', '|', ','];

// `known` says how many of a line's cells are column names: the surest sign of the separator.
export function read(text: string, known: (cells: string[]) => number, say: Say): Lines {
  const plain = text.replace(/^\uFEFF/, '');
  let best = ',';
  let most = 0;
  for (const delimiter of PARTED_BY) {
    const { data } = parse(plain, delimiter, '"', 40);
    const counts = data.filter(said).map((cells) => cells.length).sort((a, b) => a - b);
    const wide = (counts[counts.length >> 1] ?? 0) > 1;
    const names = data[0] ? known(data[0]) : 0;
    const score = wide || names > 1 ? 1 + names : 0;
    if (score > most) [best, most] = [delimiter, score];
  }
  const quoted = parse(plain, best, '"');
  // A mark that closes on a later line has swallowed the lines between.
  const broken = quoted.errors.some(({ type }) => type === 'Quotes') ||
    quoted.data.some((cells) => cells.some((cell) => /[\r\n]/.test(cell) && cell.includes(best)));
  const { data } = broken ? parse(plain, best, '\0') : quoted;
  return {
    lines: data.filter(said).map((cells) => cells.map((cell) => cell.replace(/\s+/g, ' ').trim())),
    remarks: broken ? [say('A quotation mark in it does not close on its line, so all of them were taken as part of the text.')] : [],
  };
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
