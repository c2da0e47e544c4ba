// What a table can do once this has loaded: a long one is shown in part, searched, sorted and
// filtered; any can be saved for a spreadsheet.
import { forSpreadsheet } from '../../list/csv';
import type { Table, TableParts } from './table-parts';

const SHOWN = 50;
const FEW = 12; // different words to pick by

class TableMore extends HTMLElement {
  declare parts: TableParts;
  #table: Table | undefined;
  #host = document.createElement('div');
  #all = false;
  #sought = '';
  #picked = '';
  #by = -1; // the column that it is sorted by
  #down = false;

  set table(table: Table) {
    if (this.#table?.id !== table.id) {
      this.#all = false;
      this.#sought = this.#picked = '';
      this.#by = -1;
    }
    this.#table = table;
    if (this.isConnected) this.#draw();
  }

  connectedCallback(): void {
    // The page may have set them before this class was here to take them.
    for (const key of ['parts', 'table'] as const) {
      if (!Object.hasOwn(this, key)) continue;
      const own = this[key as 'parts'];
      delete (this as Partial<TableMore>)[key];
      this[key as 'parts'] = own;
    }
    this.append(this.#host);
    this.#draw();
  }

  // The rows wanted, in the order wanted.
  #rows(): string[][] {
    const { rows } = this.#table!;
    const place = this.#place();
    const sought = this.#sought.trim().toLowerCase();
    const found = rows.filter((row) =>
      (!this.#picked || row[place] === this.#picked) && (!sought || row.some((cell) => cell.toLowerCase().includes(sought))));
    if (this.#by < 0) return found;
    const order = new Intl.Collator(this.parts.language(), { numeric: true });
    const sign = this.#down ? -1 : 1;
    return [...found].sort((one, other) => sign * order.compare(one[this.#by] ?? '', other[this.#by] ?? ''));
  }

  #place(): number {
    const { columns, picked_by } = this.#table!;
    return picked_by ? columns.indexOf(picked_by) : -1;
  }

  #sort(column: number): void {
    this.#down = this.#by === column && !this.#down;
    this.#by = column;
    this.#draw();
  }

  #draw(): void {
    if (!this.#table || !this.parts) return;
    const { html, render, copyButton, say } = this.parts;
    const { columns } = this.#table;
    const long = this.#table.rows.length > SHOWN;
    const plain = [...this.children].find((child) => child !== this.#host);
    if (plain) (plain as HTMLElement).hidden = long;
    render(html`
      ${long ? this.#long() : ''}
      <div class="actions taking">
        ${copyButton(say('Copy table'), () => forSpreadsheet(columns, this.#rows()))}
        <button type="button" @click=${() => this.#save()}>${say('Save as CSV')}<span class="unseen">: ${this.#table.title}</span></button>
      </div>`, this.#host);
  }

  #long() {
    const { html, nothing, folding, live, say } = this.parts;
    const { id, title, columns, rows, picked_by } = this.#table!;
    const place = this.#place();
    const words = place < 0 ? [] : [...new Set(rows.map((row) => row[place] ?? ''))];
    const found = this.#rows();
    const shown = this.#all ? found : found.slice(0, SHOWN);
    return html`
      <div class="picking">
        <div class="field">
          <label for="seek-${id}">${say('Only rows with')}</label>
          <input id="seek-${id}" type="search" autocomplete="off" spellcheck="false" @input=${(event: Event) => { this.#sought = (event.target as HTMLInputElement).value; this.#draw(); }}>
        </div>
        ${words.length > 1 && words.length <= FEW ? html`
          <div class="field">
            <label for="pick-${id}">${picked_by}</label>
            <select id="pick-${id}" @change=${(event: Event) => { this.#picked = (event.target as HTMLSelectElement).value; this.#draw(); }}>
              <option value="">${say('all')}</option>
              ${words.map((word) => html`<option value=${word} .selected=${live(word === this.#picked)}>${word} (${rows.filter((row) => row[place] === word).length})</option>`)}
            </select>
          </div>` : nothing}
        <div class="field">
          <label for="sort-${id}">${say('Order')}</label>
          <select id="sort-${id}" @change=${(event: Event) => { this.#by = Number((event.target as HTMLSelectElement).value); this.#down = false; this.#draw(); }}>
            <option value="-1">${say('as it comes')}</option>
            ${columns.map((column, i) => html`<option value=${i} .selected=${live(i === this.#by)}>${say('by #', column)}</option>`)}
          </select>
        </div>
        ${this.#by < 0 ? nothing : html`<button type="button" @click=${() => this.#sort(this.#by)}>${say('Turn round')}</button>`}
      </div>
      <p role="status">${shown.length < found.length ? say('The first # of # rows.', shown.length, found.length) : say('# of # rows.', found.length, rows.length)}</p>
      ${folding(title, columns, shown)}
      ${found.length > SHOWN ? html`<button type="button" @click=${() => { this.#all = !this.#all; this.#draw(); }}>${this.#all ? say('Show #', SHOWN) : say('Show all #', found.length)}</button>` : nothing}`;
  }

  #save(): void {
    const { columns, id } = this.#table!;
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob(['\uFEFF', forSpreadsheet(columns, this.#rows())], { type: 'text/csv' }));
    link.download = `${id}.csv`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10000);
  }
}

customElements.define('table-more', TableMore);
