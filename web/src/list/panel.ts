// A whole table pasted into a list, opened from a file, or the list itself edited as text.
import type { Field } from '../core/contract';
import type { Cell } from '../form/rows';
import type { Values } from '../form/values';
import { named, rowsOf } from './columns';
import type { Read } from './columns';
import { read, write } from './csv';
import { textOf } from './file';
import type { ListParts } from './parts';

// What the panel needs of its host.
export interface PanelHost {
  readonly values: Values; // of the form that is open
  draw(): void;
  takeTable(list: string, field: Field, table: Map<string, Cell>[], remark: string): void;
  closeTable(): void;
}

const LARGEST = 8e6; // characters
const LONG = 20000;
const SHOWN = 3;

// The content of the text area, and what it reads as.
export class Panel {
  text = '';
  said = ''; // about a file
  private found: Read | undefined;
  private later = 0;

  constructor(private readonly parts: ListParts, private readonly host: PanelHost, readonly list: string, private readonly field: Field, edit: boolean) {
    if (edit) this.text = this.asText();
    this.look();
  }

  private get most(): number {
    return this.parts.mostRows(this.field);
  }

  private look(): void {
    this.found = undefined;
    if (!this.text.trim() || this.text.length > LARGEST) return;
    this.found = rowsOf(read(this.text, (cells) => named(cells, this.field), this.parts.say), this.field, this.most, this.parts);
  }

  private typed(text: string): void {
    this.text = text;
    this.said = '';
    clearTimeout(this.later);
    this.later = window.setTimeout(() => { this.look(); this.host.draw(); }, text.length > LONG ? 300 : 0);
  }

  // Chromium takes 40 seconds to paste 5000 lines into a text area, and none to be given them.
  private pasted(event: ClipboardEvent): void {
    const pasted = event.clipboardData?.getData('text/plain') ?? '';
    if (pasted.length < LONG) return;
    event.preventDefault();
    const { value, selectionStart, selectionEnd } = event.target as HTMLTextAreaElement;
    this.typed(value.slice(0, selectionStart) + pasted + value.slice(selectionEnd));
    this.host.draw();
  }

  private async open({ target }: Event): Promise<void> {
    const input = target as HTMLInputElement;
    const file = input.files?.[0];
    if (!file) return;
    try {
      if (file.size > LARGEST) throw new Error();
      const found = textOf(new Uint8Array(await file.arrayBuffer()));
      if ('is' in found && found.is === 'no-text') throw new Error();
      this.text = 'text' in found ? found.text : '';
      this.said = 'text' in found ? `${file.name}:` : this.parts.say('This is a spreadsheet file, whatever its name. Open it in the spreadsheet, save it as CSV, and open that here.');
    } catch {
      this.text = '';
      this.said = this.parts.say('This file could not be read here. A table saved as CSV, of at most 8 MB, would do.');
    }
    input.value = '';
    this.look();
    this.host.draw();
  }

  // The current list, one line per row.
  private asText(): string {
    const { rows, rowName, withItsUnit } = this.parts;
    const { values } = this.host;
    const columns = this.field.fields ?? [];
    const lines: string[][] = [];
    for (let row = 0; row < rows(values, this.list, this.field); row++) {
      const cells = columns.map((column) => withItsUnit(values, `${this.list}.${row}.${column.id}`, column));
      lines.push(this.field.row_names ? [rowName(this.field, row), ...cells] : cells);
    }
    const heads = columns.map(({ label }) => label);
    return write(this.field.row_names ? [this.field.label, ...heads] : heads, lines);
  }

  private take(): void {
    clearTimeout(this.later);
    this.look();
    if (!this.found?.count) return;
    const { rows, count, doubts, remarks } = this.found;
    this.host.takeTable(this.list, this.field, rows, [this.parts.plural('# row taken into the form; “Bring it back” at its end undoes that.', '# rows taken into the form; “Bring it back” at its end undoes that.', count), ...doubts, ...remarks].join(' '));
  }

  draw() {
    const { html, live, say, plural } = this.parts;
    const { list, host } = this;
    const id = `table-${list}`;
    return html`
      <div class="table-in">
        <label for=${id}>${say('The table as text')}</label>
        <p class="hint" id="${id}-hint">${this.hint()}</p>
        <textarea id=${id} rows="8" wrap="off" spellcheck="false" autocapitalize="off" autocomplete="off" aria-describedby="${id}-hint"
          .value=${live(this.text)} @paste=${(event: ClipboardEvent) => this.pasted(event)} @input=${(event: Event) => this.typed((event.target as HTMLTextAreaElement).value)}></textarea>
        <label for="${id}-file">${say('Or open a file')}</label>
        <input type="file" id="${id}-file" accept=".csv,.tsv,.tab,.txt,text/csv,text/plain,text/tab-separated-values" @change=${(event: Event) => this.open(event)}>
        <div role="status">${this.report()}</div>
        ${this.preview()}
        <div class="actions">
          ${this.found?.count ? html`<button type="button" @click=${() => this.take()}>${this.found.doubts.length
            ? plural('Use # row all the same', 'Use # rows all the same', this.found.count)
            : plural('Use # row in place of the list', 'Use # rows in place of the list', this.found.count)}</button>` : ''}
          <button type="button" @click=${() => host.closeTable()}>${say('Close without a change')}</button>
        </div>
      </div>`;
  }

  private hint(): string {
    const { preferredUnit, say } = this.parts;
    const parts = this.field.fields ?? [];
    const units = parts.filter(({ kind }) => kind === 'quantity')
      .map((part) => say('# in #', part.label, preferredUnit(this.host.values, part)));
    return [
      say('Copy it from a spreadsheet, or type it: a line for each row, the columns parted by commas, semicolons or tabs. The first line may name them, in any order:'),
      say('#. Without it they stand in this order.', parts.map(({ label }) => label).join(', ')),
      units.length ? say('A bare number is read as #, if its column names no other unit.', units.join(', ')) : '',
    ].join(' ');
  }

  private report() {
    const { html, say, plural } = this.parts;
    if (this.text.length > LARGEST) return html`<p>${say('That is more text than can be read here.')}</p>`;
    if (!this.found) return this.said;
    const { count, columns, doubts, remarks } = this.found;
    return html`
      <p>${this.said} ${!count ? say('No line of it could be taken.') : plural('# row. Columns: #.', '# rows. Columns: #.', count, count, columns.join(', '))}</p>
      ${[...doubts, ...remarks].map((remark) => html`<p>${remark}</p>`)}`;
  }

  private preview() {
    const { html, nothing, folding, say } = this.parts;
    if (!this.found?.count) return nothing;
    const parts = (this.field.fields ?? []).filter(({ id }) => this.found!.rows.some((row) => row?.has(id)));
    const some = Object.entries(this.found.rows).slice(0, SHOWN);
    return html`
      <p class="aside">${this.found.count > SHOWN ? say('The first # of them:', SHOWN) : say('As it was read:')}</p>
      ${folding(say('As it was read'), [this.field.label, ...parts.map(({ label }) => label)], some.map(([at, row]) => [
        this.parts.rowName(this.field, Number(at)),
        ...parts.map(({ id }) => { const cell = row.get(id); return cell?.unit && !this.parts.carriesUnit(cell.text) ? `${cell.text} ${cell.unit}` : cell?.text ?? ''; }),
      ]))}`;
  }
}
