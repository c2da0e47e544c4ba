// Rows of the form's lists: which are unfolded, what is done to them, and the panel that reads a
// whole table into one.
import { html, nothing } from 'lit/html.js';
import { live } from 'lit/directives/live.js';
import { folding } from '../answer/blocks/table';
import type { Field } from '../core/contract';
import { plural, say } from '../core/language';
import { addRow, copyRow, putTable, removeRow, swapRows } from '../form/rows';
import type { Cell } from '../form/rows';
import { carriesUnit, preferredUnit, withItsUnit } from '../form/units';
import { mostRows, rowName, rows } from '../form/values';
import type { Form, Values } from '../form/values';
import type { RowsHost } from '../form/view';
import type { Panel, PanelHost } from '../list/panel';
import type { ListParts } from '../list/parts';

const parts: ListParts = { html, nothing, live, folding, say, plural, carriesUnit, preferredUnit, withItsUnit, mostRows, rowName, rows };

export interface RowsOwner {
  readonly form: Form;
  keepForUndo(): void;
  refresh(): void; // the values have changed
  draw(): void;
  tell(spoken: string): void; // draws too
}

export class Rows implements RowsHost, PanelHost {
  readonly unfolded = new Set<string>(); // rows, by their paths
  readonly taken = new Map<string, string>(); // what was said of the table that a list was taken from
  panel: Panel | undefined;

  readonly #owner: RowsOwner;

  constructor(owner: RowsOwner) {
    this.#owner = owner;
  }

  get values(): Values {
    return this.#owner.form.values;
  }

  // Another form is open: the first row of each list is unfolded.
  reset(): void {
    this.unfolded.clear();
    this.panel = undefined;
    this.taken.clear();
    for (const { kind, id } of this.#owner.form.sheet.fields) if (kind === 'list') this.unfolded.add(`${id}.0`);
  }

  unfold(row: string, open: boolean): void {
    if (open) this.unfolded.add(row);
    else this.unfolded.delete(row);
  }

  #fold(list: string): void {
    for (const row of this.unfolded) if (row.startsWith(`${list}.`)) this.unfolded.delete(row);
  }

  // The rows before a new one fold up, so that it is near.
  add(list: string, field: Field): void {
    this.#fold(list);
    this.unfolded.add(`${list}.${rows(this.values, list, field)}`);
    addRow(this.values, list, field);
    this.#owner.refresh();
  }

  remove(list: string, field: Field, row: number): void {
    const count = rows(this.values, list, field);
    this.#owner.keepForUndo();
    removeRow(this.values, list, field, row);
    for (let below = row; below < count; below++) this.unfold(`${list}.${below}`, this.unfolded.has(`${list}.${below + 1}`));
    this.#owner.refresh();
  }

  swap(list: string, row: number, other: number): void {
    swapRows(this.values, list, row, other);
    const [one, two] = [row, other].map((each) => this.unfolded.has(`${list}.${each}`));
    this.unfold(`${list}.${row}`, two!);
    this.unfold(`${list}.${other}`, one!);
    this.#owner.refresh();
  }

  copy(list: string, field: Field, row: number): void {
    this.#owner.keepForUndo();
    copyRow(this.values, list, row - 1, row);
    this.#owner.refresh();
    this.#owner.tell(say('# is now the same as #.', rowName(field, row), rowName(field, row - 1)));
  }

  // ---- a whole table for a list

  async openTable(list: string, field: Field, edit: boolean): Promise<void> {
    try {
      const { Panel: Made } = await import('../list/panel');
      this.panel = new Made(parts, this, list, field, edit);
    } catch {
      this.taken.set(list, say('What reads tables did not load. Check the connection and load the page again.'));
    }
    this.draw();
    document.getElementById(`table-${list}`)?.focus();
  }

  closeTable(): void {
    const list = this.panel?.list;
    this.panel = undefined;
    this.draw();
    if (list) document.getElementById(`open-${list}`)?.focus();
  }

  takeTable(list: string, field: Field, table: Map<string, Cell>[], remark: string): void {
    this.#owner.keepForUndo();
    putTable(this.values, list, field, table);
    this.#fold(list);
    this.taken.set(list, remark);
    this.#owner.refresh();
    this.closeTable();
  }

  draw(): void {
    this.#owner.draw();
  }
}
