// The page's one piece of moving state: the form, the answer to it, and what the person has seen.
import { render } from 'lit/html.js';
import { holdTo } from '../answer/view';
import type { Answer, Description, Field, Input, Problem, Sheet } from '../core/contract';
import type { Engine } from '../core/engine';
import { goTo } from './navigate';
import { kit } from './kit';
import type { Panel } from '../list/panel';
import { page } from './drawing';
import { recall, recallDraft, remember, rememberDraft } from '../core/remember';
import * as state from '../form/state';
import type { Cell, Form, Values } from '../form/state';
import { askedBy, language, linked, say, speak } from '../core/language';

export interface Working {
  share: number; // done, 0 to 1
  late: boolean; // it takes so long that it is said
}

const notLoaded = () => say('This part of the page did not load. Check the connection and try again.');
const RECOMPUTE = 120; // ms after a keystroke
const SETTLED = 900; // ms without one: say what is wrong, and announce the answer
const LONGEST = 60_000; // characters of a form that are kept in the address
const SAVED = 50; // ms after the answer to a keystroke: the address follows, once the words are on the screen
const LATE = 200; // ms without an answer: say that it is being worked out

export class App {
  description: Description;
  form!: Form;
  answer: Answer | undefined; // undefined: none yet, or the core itself failed
  working: Working | undefined; // a long answer is on its way, and the one here is the former
  summary: Problem[] = []; // what the Check button found, until it is put right
  notes: string[] = []; // about the link that was opened
  spoken = ''; // what a screen reader is told
  emptied: Form | undefined; // to bring back what was emptied, removed or written over
  unfolded = new Set<string>(); // rows of lists, by their paths
  panel: Panel | undefined; // where a table goes into a list
  taken = new Map<string, string>(); // what was said of the table that a list was taken from
  choosing = false; // on a phone: the list of sheets is open
  offer = ''; // when something was typed that may be gone on with
  readonly watchers = new Set<() => void>(); // told of each drawing
  formOnly = true; // at the very start the form is drawn first, and the answer a moment later

  private touched = new Set<string>();
  private checked = false;
  private recompute = 0;
  private settle = 0;
  private saving = 0;
  private late = 0;
  private asked = ''; // the last question whose answer is long
  private answered = () => {}; // what follows on that answer
  private beside: typeof import('../core/long-answer') | undefined;
  private waiting: (() => void) | undefined; // for a sheet that is still on its way
  private coming = true; // the whole core has come, or is on its way

  constructor(private engine: Engine, private readonly root: HTMLElement) {
    this.description = engine.description;
    addEventListener('hashchange', () => {
      const { choosing } = this;
      this.choosing = false;
      const asked = askedBy(location.hash);
      if (asked && asked !== language()) void this.speak(asked);
      this.open();
      if (choosing) goTo('form');
    });
    addEventListener('pagehide', () => this.save());
  }

  // ---- opening

  open(link = location.hash): void {
    const opened = state.fromFragment(link, this.description);
    const first = this.description.sheets[0]!;
    const named = this.description.sheets.find((sheet) => sheet.id === /^#([^?]*)/.exec(link)?.[1]);
    if (opened?.form.sheet.elsewhere || named?.elsewhere) {
      if (!this.form) this.use(this.exampleOf(first));
      this.waitFor(() => this.open(link));
      return;
    }
    this.notes = [];
    this.offer = opened && !opened.without.length ? '' : recallDraft((opened?.form.sheet ?? named ?? first).id);
    if (opened) {
      this.use(opened.form);
      if (opened.without.length) this.notes.push(say('The list # was too long for this link, so it is not in it. The rest is filled in.', quoted(opened.without)));
      if (opened.ignored.length) this.notes.push(say('This link also says #, which has no place here. The rest is filled in.', quoted(opened.ignored)));
    } else {
      this.use(this.exampleOf(named ?? first));
      if (link.length > 1 && !named) this.notes.push(say('This link names a sheet that is not here, so the example is shown.'));
    }
    for (const [path] of state.leaves(this.form.sheet.fields, this.form.values)) {
      if (state.text(this.form.values, path)) this.touched.add(path);
    }
    this.draw();
    setTimeout(() => {
      this.formOnly = false;
      this.draw();
    });
  }

  // A form that was kept. Back returns to the one that was left.
  openKept(link: string): void {
    this.flush();
    leaveStep();
    this.emptied = undefined;
    this.open(link);
    this.save();
    goTo('form');
  }

  async goOn(): Promise<void> {
    const { id } = this.form.sheet;
    try {
      const { newest } = await import('../keep/draft').catch(() => { throw new Error(notLoaded()); });
      const link = await newest(id);
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
    goTo('form');
  }

  // The whole core has come: the same form goes on, with every sheet beside it.
  widen(engine: Engine): void {
    if (engine !== this.engine) setTimeout(() => this.warm());
    this.engine = engine;
    this.description = engine.description;
    const sheet = this.description.sheets.find(({ id }) => id === this.form.sheet.id);
    if (sheet) this.form = { ...this.form, sheet };
    const wanted = this.waiting;
    this.waiting = undefined;
    if (wanted) wanted();
    else this.draw();
  }

  // The same form goes on in another language, which a person chose or a link asks for.
  async speak(wanted: string): Promise<boolean> {
    const spoken = await speak(wanted);
    if (spoken) {
      this.engine.speak();
      this.widen(this.engine);
      this.ask();
      this.notes = [];
    } else {
      this.notes = [say('That language did not load. Check the connection and choose it again.')];
    }
    this.draw();
    return spoken;
  }

  // A core takes longest for what it is asked first. A slow phone has that behind it before the next
  // keystroke.
  private warm(): void {
    const { sheet } = this.form;
    if (!sheet.long && !sheet.elsewhere) this.answerTo(sheet);
  }

  stayNarrow(): void {
    this.coming = false;
    if (this.waiting) this.waitFor(this.waiting);
  }

  private waitFor(then: () => void): void {
    this.waiting = then;
    this.notes = [this.coming ? say('This sheet is on its way.') : say('The other sheets did not load. Check the connection and load the page again.')];
    this.formOnly = false;
    this.draw();
  }

  private exampleOf(sheet: Sheet): Form {
    return { sheet, values: this.untouched(sheet, '', true), way: '', example: !!sheet.example };
  }

  private untouched(sheet: Sheet, way: string, example: boolean): Values {
    const kept = recall();
    const presets: Input[] = [];
    if (example && sheet.example) presets.push(sheet.example.input);
    const preset = state.wayOf(this.description, sheet, way)?.input;
    if (preset) presets.push(preset);
    if (kept['units']) presets.push({ units: kept['units'] });
    return state.start(sheet, kept, ...presets);
  }

  private use(form: Form): void {
    this.form = form;
    this.touched.clear();
    this.unfolded.clear();
    this.panel = undefined;
    this.taken.clear();
    for (const { kind, id } of form.sheet.fields) if (kind === 'list') this.unfolded.add(`${id}.0`);
    this.checked = false;
    this.summary = [];
    this.answer = undefined;
    clearTimeout(this.saving);
    this.drop();
    this.ask();
    this.spoken = '';
  }

  // ---- what a person does

  typed(path: string, value: string): void {
    this.form.values.set(path, value);
    this.emptied = undefined;
    this.pinUnit(path);
    if (this.form.sheet.long) {
      this.drop();
      this.wait();
    }
    clearTimeout(this.recompute);
    clearTimeout(this.settle);
    this.recompute = window.setTimeout(() => {
      this.workOut();
      this.saving = window.setTimeout(() => this.save(), SAVED);
    }, RECOMPUTE);
    this.settle = window.setTimeout(() => this.settled(path), SETTLED);
  }

  chosen(path: string, value: string): void {
    this.form.values.set(path, value);
    this.emptied = undefined;
    if (path === 'units') state.freeEmptyPickers(this.form);
    remember(path, value);
    this.settled(path);
  }

  // A number keeps the unit it was typed in, whatever unit system is chosen later.
  private pinUnit(path: string): void {
    const { sheet, values } = this.form;
    for (const [leaf, field] of state.leaves(sheet.fields, values)) {
      if (leaf === path && field.kind === 'quantity' && state.text(values, path).trim()) {
        values.set(`${path}.unit`, state.unitOf(values, path, field));
      }
    }
  }

  left(path: string): void {
    if (this.settle) this.settled(path);
  }

  private settled(path: string): void {
    clearTimeout(this.settle);
    this.settle = 0;
    this.touched.add(path);
    this.refresh(() => this.announce());
  }

  check(): void {
    clearTimeout(this.settle);
    this.settle = 0;
    this.checked = true;
    this.refresh(() => {
      this.summary = this.answer?.problems ?? [];
      this.draw();
      goTo(this.summary.length ? 'problems' : 'answer-heading');
    });
    if (this.working) goTo('answer-heading');
  }

  takeWay(id: string): void {
    const way = this.description.ways.find((one) => one.id === id);
    const sheet = this.description.sheets.find((one) => one.id === way?.sheet);
    if (!way || !sheet) return;
    if (sheet.elsewhere) return this.waitFor(() => this.takeWay(id));
    this.flush();
    const fresh = this.untouched(sheet, id, false);
    const same = sheet === this.form.sheet;
    if (!same) leaveStep();
    this.begin({ sheet, values: same ? this.withTheirs(fresh) : fresh, way: id, example: false });
    goTo('form');
  }

  // Takes the example's figures out and leaves the person's own.
  ownFigures(): void {
    this.flush();
    const { sheet, way } = this.form;
    this.begin({ sheet, values: this.withTheirs(this.untouched(sheet, way, false)), way, example: false });
    this.focusFirst();
  }

  private withTheirs(fresh: Values): Values {
    const { sheet, way, example } = this.form;
    return state.carryOver(this.form, this.untouched(sheet, way, example), fresh);
  }

  empty(): void {
    this.flush();
    const { sheet, way } = this.form;
    const before = this.form;
    this.begin({ sheet, values: this.untouched(sheet, way, false), way, example: false });
    this.emptied = before;
    this.draw();
    this.focusFirst();
  }

  bringBack(): void {
    if (!this.emptied) return;
    this.begin(this.emptied);
    this.focusFirst();
  }

  // ---- rows of a list

  // The rows before a new one fold up, so that it is not far to go.
  addRow(list: string, field: Field): void {
    for (const row of this.unfolded) if (row.startsWith(`${list}.`)) this.unfolded.delete(row);
    this.unfolded.add(`${list}.${state.rows(this.form.values, list, field)}`);
    state.addRow(this.form.values, list, field);
    this.refresh();
  }

  removeRow(list: string, field: Field, row: number): void {
    const count = state.rows(this.form.values, list, field);
    this.keepForNow();
    state.removeRow(this.form.values, list, field, row);
    for (let below = row; below < count; below++) this.unfold(`${list}.${below}`, this.unfolded.has(`${list}.${below + 1}`));
    this.refresh();
  }

  swapRows(list: string, row: number, other: number): void {
    state.swapRows(this.form.values, list, row, other);
    const [one, two] = [row, other].map((each) => this.unfolded.has(`${list}.${each}`));
    this.unfold(`${list}.${row}`, two!);
    this.unfold(`${list}.${other}`, one!);
    this.refresh();
  }

  copyRow(list: string, field: Field, row: number): void {
    this.keepForNow();
    state.copyRow(this.form.values, list, row - 1, row);
    this.refresh();
    this.spoken = say('# is now the same as #.', state.rowName(field, row), state.rowName(field, row - 1));
    this.draw();
  }

  // ---- a whole table for a list

  async openTable(list: string, field: Field, edit: boolean): Promise<void> {
    try {
      const { Panel: Made } = await import('../list/panel');
      this.panel = new Made(kit, this, list, field, edit);
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

  takeTable(list: string, field: Field, table: Map<string, Cell>[], said: string): void {
    this.keepForNow();
    state.putTable(this.form.values, list, field, table);
    for (const row of [...this.unfolded]) if (row.startsWith(`${list}.`)) this.unfolded.delete(row);
    this.taken.set(list, said);
    this.refresh();
    this.closeTable();
  }

  private keepForNow(): void {
    this.emptied = { ...this.form, values: new Map(this.form.values) };
  }

  unfold(row: string, open: boolean): void {
    if (open) this.unfolded.add(row);
    else this.unfolded.delete(row);
  }

  chooseSheet(open: boolean): void {
    this.choosing = open;
    this.draw();
  }

  private begin(form: Form): void {
    this.use(form);
    this.emptied = undefined;
    this.notes = [];
    this.offer = '';
    this.save();
    this.draw();
  }

  private focusFirst(): void {
    this.root.querySelector<HTMLElement>('form input:not([type=radio])')?.focus();
  }

  // ---- asking the core

  private ask(then = () => {}): void {
    const { sheet } = this.form;
    if (sheet.long) this.askBeside(sheet, this.input(), then);
    else this.take(this.answerTo(sheet));
  }

  private input(): Input {
    const { sheet, values } = this.form;
    return { ...state.toInput(sheet.fields, values), today: state.today() };
  }

  private answerTo({ id }: Sheet): Answer | undefined {
    try {
      return this.engine.answer(id, this.input());
    } catch {
      return undefined;
    }
  }

  // A long answer comes when it comes, unless something else is asked before.
  private askBeside(sheet: Sheet, input: Input, then: () => void): void {
    this.answered = then;
    const question = sheet.id + JSON.stringify(input);
    if (question === this.asked) return;
    this.drop();
    this.asked = question;
    this.wait();
    const current = () => question === this.asked;
    const said = (answer: Answer | undefined) => {
      if (!current()) return;
      this.take(answer);
      if (!answer) this.asked = '';
      this.draw();
      this.answered();
    };
    const share = (done: number) => {
      if (!current() || !this.working) return;
      this.working.share = done;
      if (this.working.late) this.draw();
    };
    import('../core/long-answer').then((beside) => {
      this.beside = beside;
      if (current()) beside.ask(this.engine, sheet.id, input, { share, said });
    }, () => said(undefined));
  }

  private wait(): void {
    if (this.working) this.working.share = 0;
    else {
      const working: Working = { share: 0, late: false };
      this.working = working;
      this.late = window.setTimeout(() => {
        working.late = true;
        this.spoken = say('Working it out.');
        this.draw();
      }, LATE);
    }
  }

  // Whatever is still being worked out is of no use any more.
  private drop(): void {
    this.asked = '';
    this.beside?.stop();
  }

  private take(answer: Answer | undefined): void {
    clearTimeout(this.late);
    this.working = undefined;
    this.answer = answer;
    const left = new Set(answer?.problems.map((problem) => problem.field));
    this.summary = this.summary.filter((problem) => left.has(problem.field));
  }

  private refresh(then = () => {}): void {
    clearTimeout(this.recompute);
    this.save();
    this.workOut(then);
  }

  private workOut(then = () => {}): void {
    this.ask(then);
    this.draw();
    if (!this.working) then();
  }

  // Before another form takes the place of this one: what was just typed is in the address.
  private flush(): void {
    clearTimeout(this.recompute);
    clearTimeout(this.settle);
    this.settle = 0;
    this.save();
  }

  // A problem is shown beside its field once the person has been there.
  problem(path: string): string {
    if (!this.checked && !this.touched.has(path)) return '';
    return this.answer?.problems.find((problem) => problem.field === path)?.text ?? '';
  }

  // ---- telling and keeping

  private announce(): void {
    const { verdict, hold_to } = this.answer ?? {};
    const now = verdict ? `${verdict.text} ${hold_to ? `${holdTo(hold_to)}.` : ''}` : '';
    if (now || this.spoken) this.spoken = now || say('No answer yet.');
    this.draw();
  }

  // The untouched example needs no more than its sheet's name; anything else is kept in the address as
  // it is typed.
  private save(): void {
    clearTimeout(this.saving);
    const untouched = this.form.example && !this.form.way && same(this.form.values, this.untouched(this.form.sheet, '', true));
    const link = untouched ? '' : state.toLink(this.form, linked());
    const { id } = this.form.sheet;
    const bare = linked() ? `#${id}?page.language=${linked()}` : id === this.description.sheets[0]!.id ? location.pathname + location.search : `#${id}`;
    const to = untouched ? bare : link.length > LONGEST ? `#${id}` : link;
    try {
      if (to !== location.hash) history.replaceState(null, '', to);
    } catch { /* some browsers allow only so many changes in a while; the next one catches up */ }
  }

  link(): string {
    return location.href.replace(/#.*$/s, '') + state.toLink(this.form, linked());
  }

  draw(): void {
    render(page(this), this.root);
    for (const tell of this.watchers) tell();
  }
}

// Back returns to the form that is left.
function leaveStep(): void {
  try {
    history.pushState(null, '', location.href);
  } catch { /* without a way back, then */ }
}

function same(one: Values, other: Values): boolean {
  return one.size === other.size && [...one].every(([key, value]) => other.get(key) === value);
}

// A few of somebody else's words, short enough to be read.
function quoted(words: string[]): string {
  const short = words.slice(0, 4).map((word) => say('“#”', [...word].slice(0, 30).join('')));
  if (words.length > short.length) short.push(say('# more', words.length - short.length));
  return short.join(', ');
}
