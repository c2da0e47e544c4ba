// The page's one piece of changing state: the open form, and what the user does to it. Beside it
// are the core's answers (asking.ts), the rows of lists (rows.ts), how a form begins (opening.ts)
// and how it all looks (drawing.ts).
import { holdTo } from '../answer/view';
import type { AnswerHost } from '../answer/view';
import type { Description } from '../core/contract';
import type { Engine } from '../core/engine';
import { askedBy, language, say, speak } from '../core/language';
import { remember, rememberDraft } from '../core/remember';
import { freeEmptyPickers, pinUnit } from '../form/units';
import type { Form, FormHolder } from '../form/values';
import type { FormHost } from '../form/view';
import { leaveStep, linkTo, putInAddress } from './address';
import { Asking } from './asking';
import { navigateTo } from './navigate';
import { draftOf, emptied, exampleOf, openingOf, untouched, withTheirs } from './opening';
import { Rows } from './rows';

const RECOMPUTE = 120; // ms after a keystroke
const SETTLED = 900; // ms without one: show what is wrong, and announce the answer
const SAVED = 50; // ms after the answer to a keystroke: the address follows, once the words are on the screen

export class App implements FormHolder, FormHost, AnswerHost {
  form!: Form;
  notes: string[] = []; // about the link that was opened
  spoken = ''; // what a screen reader is told
  emptied: Form | undefined; // to undo emptying, removing or overwriting
  choosing = false; // on a phone: the list of sheets is open
  offer = ''; // when something that can be resumed was typed
  formOnly = true; // at the very start the form is drawn first, and the answer a moment later
  readonly watchers = new Set<() => void>(); // told of each drawing
  readonly asking: Asking;
  readonly rows = new Rows(this);

  #recompute = 0;
  #settle = 0;
  #saving = 0;
  #waiting: (() => void) | undefined; // for a sheet that is still on its way
  #coming = true; // every sheet is here, or on its way

  readonly #engine: Engine;
  readonly #view: (app: App) => void;

  constructor(engine: Engine, view: (app: App) => void) {
    this.#engine = engine;
    this.#view = view;
    this.asking = new Asking(engine, this);
    addEventListener('hashchange', () => {
      const { choosing } = this;
      this.choosing = false;
      const asked = askedBy(location.hash);
      if (asked && asked !== language()) void this.speak(asked);
      this.open();
      if (choosing) navigateTo('form');
    });
    addEventListener('pagehide', () => this.#save());
  }

  get description(): Description {
    return this.#engine.description;
  }

  // ---- opening

  open(link = location.hash): void {
    const opening = openingOf(link, this.description);
    if (!opening) {
      if (!this.form) this.#use(exampleOf(this.description));
      this.#waitFor(() => this.open(link));
      return;
    }
    this.notes = opening.notes;
    this.offer = opening.offer;
    this.#use(opening.form);
    this.asking.visitFilled(this.form);
    this.draw();
    setTimeout(() => {
      this.formOnly = false;
      this.draw();
    });
  }

  // A saved form. Back returns to the previous one.
  openKept(link: string): void {
    this.#flush();
    leaveStep();
    this.emptied = undefined;
    this.open(link);
    this.#save();
    navigateTo('form');
  }

  // What was typed before, saved automatically.
  async openDraft(): Promise<void> {
    const { id } = this.form.sheet;
    try {
      const link = await draftOf(id);
      if (link) return this.openKept(link);
      this.notes = [say('What was typed then is no longer on this device.')];
      this.dropOffer();
    } catch (reason) {
      this.notes = [(reason as Error).message];
      this.draw();
    }
  }

  dropOffer(): void {
    this.offer = '';
    rememberDraft(this.form.sheet.id, '');
    this.draw();
    navigateTo('form');
  }

  // Every sheet loads; the same form stays open.
  widen(): Promise<void> {
    return this.#engine.widen().then(() => {
      setTimeout(() => this.asking.warm(this.form));
      this.#redescribed();
    }, () => {
      this.#coming = false;
      if (this.#waiting) this.#waitFor(this.#waiting);
    });
  }

  #redescribed(): void {
    const sheet = this.description.sheets.find(({ id }) => id === this.form.sheet.id);
    if (sheet) this.form = { ...this.form, sheet };
    const wanted = this.#waiting;
    this.#waiting = undefined;
    if (wanted) wanted();
    else this.draw();
  }

  // The same form in another language, chosen by the user or by a link.
  async speak(wanted: string): Promise<boolean> {
    const spoken = await speak(wanted);
    if (spoken) {
      this.#engine.speak();
      this.#redescribed();
      this.asking.ask(this.form);
      this.notes = [];
    } else {
      this.notes = [say('That language did not load. Check the connection and choose it again.')];
    }
    this.draw();
    return spoken;
  }

  #waitFor(then: () => void): void {
    this.#waiting = then;
    this.notes = [this.#coming ? say('This sheet is on its way.') : say('The other sheets did not load. Check the connection and load the page again.')];
    this.formOnly = false;
    this.draw();
  }

  #use(form: Form): void {
    this.form = form;
    this.rows.reset();
    clearTimeout(this.#saving);
    this.asking.reset();
    this.asking.ask(form);
    this.spoken = '';
  }

  // ---- what a person does

  typed(path: string, value: string): void {
    this.form.values.set(path, value);
    this.emptied = undefined;
    pinUnit(this.form, path);
    if (this.form.sheet.long) this.asking.expect();
    clearTimeout(this.#recompute);
    clearTimeout(this.#settle);
    this.#recompute = window.setTimeout(() => {
      this.#workOut();
      this.#saving = window.setTimeout(() => this.#save(), SAVED);
    }, RECOMPUTE);
    this.#settle = window.setTimeout(() => this.#settled(path), SETTLED);
  }

  chosen(path: string, value: string): void {
    this.form.values.set(path, value);
    this.emptied = undefined;
    if (path === 'units') freeEmptyPickers(this.form);
    remember(path, value);
    this.#settled(path);
  }

  left(path: string): void {
    if (this.#settle) this.#settled(path);
  }

  #settled(path: string): void {
    clearTimeout(this.#settle);
    this.#settle = 0;
    this.asking.visit(path);
    this.refresh(() => this.#announce());
  }

  check(): void {
    clearTimeout(this.#settle);
    this.#settle = 0;
    const { asking } = this;
    asking.visitAll();
    this.refresh(() => {
      asking.summary = asking.answer?.problems ?? [];
      this.draw();
      navigateTo(asking.summary.length ? 'problems' : 'answer-heading');
    });
    if (asking.working) navigateTo('answer-heading');
  }

  takeWay(id: string): void {
    const way = this.description.ways.find((one) => one.id === id);
    const sheet = this.description.sheets.find((one) => one.id === way?.sheet);
    if (!way || !sheet) return;
    if (sheet.elsewhere) return this.#waitFor(() => this.takeWay(id));
    this.#flush();
    const fresh = untouched(this.description, sheet, id, false);
    const same = sheet === this.form.sheet;
    if (!same) leaveStep();
    const values = same ? withTheirs(this.form, fresh, this.description) : fresh;
    this.#begin({ sheet, values, way: id, example: false });
    navigateTo('form');
  }

  // Removes the example's figures and leaves the user's own.
  ownFigures(): void {
    this.#flush();
    const fresh = emptied(this.form, this.description);
    this.#begin({ ...fresh, values: withTheirs(this.form, fresh.values, this.description) });
    focusFirst();
  }

  empty(): void {
    this.#flush();
    const before = this.form;
    this.#begin(emptied(before, this.description));
    this.emptied = before;
    this.draw();
    focusFirst();
  }

  keepForUndo(): void {
    this.emptied = { ...this.form, values: new Map(this.form.values) };
  }

  bringBack(): void {
    if (!this.emptied) return;
    this.#begin(this.emptied);
    focusFirst();
  }

  chooseSheet(open: boolean): void {
    this.choosing = open;
    this.draw();
  }

  #begin(form: Form): void {
    this.#use(form);
    this.emptied = undefined;
    this.notes = [];
    this.offer = '';
    this.#save();
    this.draw();
  }

  // ---- asking, telling and keeping

  // The values have changed. `then` follows on their answer.
  refresh(then = () => {}): void {
    clearTimeout(this.#recompute);
    this.#save();
    this.#workOut(then);
  }

  #workOut(then = () => {}): void {
    this.asking.ask(this.form, then);
    this.draw();
    if (!this.asking.working) then();
  }

  // Before another form takes the place of this one: what was just typed is in the address.
  #flush(): void {
    clearTimeout(this.#recompute);
    clearTimeout(this.#settle);
    this.#settle = 0;
    this.#save();
  }

  #announce(): void {
    const { verdict, hold_to } = this.asking.answer ?? {};
    const now = verdict ? `${verdict.text} ${hold_to ? `${holdTo(hold_to)}.` : ''}` : '';
    this.tell(now || (this.spoken && say('No answer yet.')));
  }

  tell(spoken: string): void {
    this.spoken = spoken;
    this.draw();
  }

  #save(): void {
    clearTimeout(this.#saving);
    putInAddress(this.form, this.description);
  }

  link(): string {
    return linkTo(this.form);
  }

  draw(): void {
    this.#view(this);
    for (const watcher of this.watchers) watcher();
  }
}

function focusFirst(): void {
  document.querySelector<HTMLElement>('#page form input:not([type=radio])')?.focus();
}
