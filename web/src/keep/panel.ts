// The panel "Kept on this device": what is saved, under which name, and import and export by file.
import { html, nothing, render } from 'lit/html.js';
import { live } from 'lit/directives/live.js';
import type { Description } from '../core/contract';
import { day } from '../core/dates';
import { plural, say } from '../core/language';
import { rememberDraft } from '../core/remember';
import type { FormHolder } from '../form/values';
import { fromFile, LONGEST_NAME, offerFile, toText } from './file';
import { contentOf, linkOf, newId, textOf } from './record';
import type { Draft, Kept } from './record';
import { all, keep, onChange, remove } from './store';

// What the panel needs of its host.
export interface KeepHost extends FormHolder {
  readonly description: Description;
  openKept(link: string): void;
}

const MOST_TEXT = 4_000_000; // characters of one form: a field's list of thousands, and less than one file holds

class Panel {
  private root: HTMLElement | undefined;
  private kept: Kept[] = [];
  private drafts: Draft[] = [];
  private looked = false; // into the store
  private said = '';
  private undo: (() => Promise<string>) | undefined;
  private renaming = ''; // the one whose name is being changed
  private name = ''; // typed for the form that is open
  private sheet = ''; // which that name was meant for

  constructor(private readonly host: KeepHost, private readonly close: () => void) {
    onChange((elsewhere) => {
      if (elsewhere) this.quiet(); // what was said of it may no longer be true
      this.read();
    });
    host.watchers.add(() => { if (this.shown() && this.sheet !== host.form.sheet.id) this.draw(); });
  }

  show(root: HTMLElement): Promise<void> {
    this.root = root;
    this.quiet();
    this.renaming = '';
    this.draw();
    return this.read();
  }

  private quiet(): void {
    this.said = '';
    this.undo = undefined;
  }

  private shown(): boolean {
    return !!this.root?.isConnected;
  }

  private async read(): Promise<void> {
    try {
      Object.assign(this, await all());
    } catch (reason) {
      this.said = (reason as Error).message;
    }
    this.looked = true;
    if (this.shown()) this.draw();
  }

  // Does it, and reports the result. A failure is a sentence too.
  private async act(work: () => Promise<string> | string, undo?: () => Promise<string>): Promise<void> {
    this.undo = undefined;
    try {
      this.said = await work();
      this.undo = undo;
    } catch (reason) {
      this.said = (reason as Error).message;
    }
    this.draw();
  }

  private typedName(): string {
    return this.name.trim().replace(/\s+/g, ' ');
  }

  private formNow(): Kept {
    const now = new Date().toISOString();
    return { id: newId(), name: this.typedName() || this.host.form.sheet.title, ...contentOf(this.host.form), made: now, changed: now };
  }

  private keepForm(): void {
    const form = this.formNow();
    if (!this.typedName()) {
      this.said = say('Give it a name first, so that you will know it again.');
      this.draw();
      this.focus('keep-name');
      return;
    }
    if (JSON.stringify(form.fields).length > MOST_TEXT) {
      this.said = say('This form holds more text than can be kept. Take some of it out.');
      this.draw();
      return;
    }
    const former = this.kept.find(({ name, sheet }) => name === form.name && sheet === form.sheet);
    const undo = former && (() => keep(former).then(() => say('“#” is again as it was before.', former.name)));
    this.act(async () => {
      await keep(former ? { ...form, id: former.id, made: former.made } : form);
      navigator.storage?.persist?.().catch(() => false);
      this.name = '';
      return former ? say('“#” was here before, and now holds the form that is open.', form.name) : say('“#” is kept.', form.name);
    }, undo);
  }

  private open(record: Draft): void {
    this.close();
    this.host.openKept(linkOf(record));
  }

  private drop(shelf: 'kept' | 'drafts', record: Draft, name: string): void {
    const back = shelf === 'kept' ? () => keep(record as Kept).then(() => say('# is back.', name)) : undefined;
    this.act(async () => {
      await remove(shelf, record.id);
      if (!back && this.drafts.filter(({ sheet, id }) => sheet === record.sheet && id !== record.id).length === 0) rememberDraft(record.sheet, '');
      return say('# is deleted.', name);
    }, back).then(() => this.focus('kept-said'));
  }

  private rename(record: Kept, name: string): void {
    const given = name.trim().replace(/\s+/g, ' ');
    if (!given) {
      this.said = say('A name cannot be empty.');
      this.draw();
      return;
    }
    this.renaming = '';
    this.act(async () => {
      if (given !== record.name) await keep({ ...record, name: given });
      return say('It is called “#” now.', given);
    }, () => keep(record).then(() => say('It is called “#” again.', record.name))).then(() => this.focus('kept-said'));
  }

  private take({ currentTarget }: Event): void {
    const input = currentTarget as HTMLInputElement;
    const file = input.files?.[0];
    if (!file) return;
    this.act(async () => {
      const found = await fromFile(file, this.host.description);
      const { kept } = await all();
      const here = new Set(kept.map(sameness));
      const fresh = found.filter((record) => !here.has(sameness(record)));
      if (fresh.length) await keep(...fresh);
      const left = found.length - fresh.length;
      return `${takenIn(fresh.length)}${left ? `; ${alreadyHere(left)}` : ''}.`;
    }).then(() => {
      input.value = '';
      this.focus('kept-said');
    });
  }

  private focus(id: string): void {
    document.getElementById(id)?.focus();
  }

  // ---- drawing

  private draw(): void {
    const { sheet } = this.host.form;
    this.sheet = sheet.id;
    const named = new Set(this.kept.map(textOf));
    const drafts = this.drafts.filter((draft) => !named.has(textOf(draft)));
    render(html`
      <section class="panel" aria-labelledby="panel-heading">
        <h2 id="panel-heading" tabindex="-1">${say('Kept on this device')}</h2>
        <p class="hint">${say('In this browser only. A browser may clear it when it runs out of room, so save what matters as a file too.')}</p>
        <form novalidate autocomplete="off" @submit=${(event: Event) => { event.preventDefault(); this.keepForm(); }}>
          <div class="field">
            <label for="keep-name">${say('Name for the form that is open')} <span class="unit">(${sheet.title})</span></label>
            <div class="entry">
              <input id="keep-name" type="text" maxlength=${LONGEST_NAME} .value=${live(this.name)}
                @input=${(event: Event) => { this.name = (event.target as HTMLInputElement).value; }}>
            </div>
          </div>
          <div class="actions">
            <button class="primary">${say('Keep it')}</button>
            <button type="button" @click=${() => this.act(() => this.saved(this.formNow()))}>${say('Save it as a file')}</button>
          </div>
        </form>
        <div class="said ${this.said ? 'notice' : ''}">
          <p id="kept-said" role="status" tabindex="-1">${this.said}</p>
          ${this.undo ? html`<button type="button" @click=${() => this.act(this.undo!).then(() => this.focus('kept-said'))}>${say('Bring it back')}</button>` : nothing}
        </div>
        ${this.kept.length ? html`<ul class="records" aria-label=${say('What is kept')}>${this.kept.map((record) => this.record(record))}</ul>` : html`<p>${this.looked ? say('Nothing is kept yet.') : say('Looking.')}</p>`}
        ${drafts.length ? html`
          <h3>${say('Typed and not kept under a name')}</h3>
          <ul class="records">${drafts.map((draft) => this.draft(draft))}</ul>` : nothing}
        <div class="field">
          <label for="keep-file">${say('Take in a file that was saved from this page')}</label>
          <div class="entry"><input id="keep-file" type="file" accept=".json,application/json" @change=${(event: Event) => this.take(event)}></div>
        </div>
        <div class="actions">
          ${this.kept.length > 1 ? html`<button type="button" @click=${() => this.act(() => this.saved(...this.kept))}>${say('Save all as a file')}</button>` : nothing}
          <button type="button" @click=${() => this.close()}>${say('Close')}</button>
        </div>
      </section>`, this.root!);
  }

  private saved(...kept: Kept[]): string {
    const name = kept.length > 1 ? `treadwater ${day(new Date().toISOString())}` : kept[0]!.name;
    offerFile(name, toText(kept));
    return say('The file is with your downloads.');
  }

  private titleOf(id: string): string | undefined {
    return this.host.description.sheets.find((sheet) => sheet.id === id)?.title;
  }

  private record(record: Kept) {
    const { id, name, sheet, changed } = record;
    const title = this.titleOf(sheet);
    if (this.renaming === id) return this.newName(record);
    const about = html`<span class="unseen"> ${name}</span>`;
    return html`
      <li>
        <p><strong>${name}</strong> <span class="hint">${title ?? say('A sheet that this version does not have')}, ${day(changed)}</span></p>
        <div class="row-actions">
          ${title ? html`<button type="button" @click=${() => this.open(record)}>${say('Open')}${about}</button>`
            : html`<p class="hint">${say('Kept, but it cannot be opened here. A newer version of the page may have its sheet.')}</p>`}
          <button type="button" id="rename-${id}" @click=${() => { this.renaming = id; this.draw(); this.focus('new-name'); }}>${say('Rename')}${about}</button>
          <button type="button" @click=${() => this.act(() => this.saved(record))}>${say('Save as a file')}${about}</button>
          <button type="button" @click=${() => this.drop('kept', record, say('“#”', name))}>${say('Delete')}${about}</button>
        </div>
      </li>`;
  }

  private newName(record: Kept) {
    const done = () => { this.renaming = ''; this.draw(); this.focus(`rename-${record.id}`); };
    return html`
      <li>
        <form novalidate autocomplete="off" @submit=${(event: Event) => { event.preventDefault(); this.rename(record, (document.getElementById('new-name') as HTMLInputElement).value); }}>
          <label for="new-name">${say('New name for “#”', record.name)}</label>
          <div class="entry"><input id="new-name" type="text" maxlength=${LONGEST_NAME} value=${record.name}></div>
          <div class="row-actions">
            <button class="primary">${say('Rename it')}</button>
            <button type="button" @click=${done}>${say('Leave it')}</button>
          </div>
        </form>
      </li>`;
  }

  private draft(draft: Draft) {
    const title = this.titleOf(draft.sheet);
    const when = day(draft.changed, true);
    const about = html`<span class="unseen"> ${title}, ${when}</span>`;
    return html`
      <li>
        <p>${title ?? say('A sheet that this version does not have')} <span class="hint">${when}</span></p>
        <div class="row-actions">
          ${title ? html`<button type="button" @click=${() => this.open(draft)}>${say('Go on')}${about}</button>` : nothing}
          <button type="button" @click=${() => this.drop('drafts', draft, say('What was typed on #', when))}>${say('Delete')}${about}</button>
        </div>
      </li>`;
  }
}

function sameness({ name, sheet, fields }: Kept): string {
  return JSON.stringify([name, sheet, Object.entries(fields).sort()]);
}

function takenIn(forms: number): string {
  return forms ? plural('# form is taken in', '# forms are taken in', forms) : say('No forms are taken in');
}

function alreadyHere(forms: number): string {
  return plural('# form is already here', '# forms are already here', forms);
}

let panel: Panel | undefined;

export function show(host: KeepHost, root: HTMLElement, close: () => void): Promise<void> {
  panel ??= new Panel(host, close);
  return panel.show(root);
}
