// Asks the core about the open form, and holds its answer. A long one is calculated elsewhere and
// arrives later, unless something else is asked first.
import type { Working } from '../answer/view';
import type { Answer, Input, Problem } from '../core/contract';
import { today } from '../core/dates';
import type { Engine } from '../core/engine';
import { say } from '../core/language';
import { toInput } from '../form/fill';
import { leaves, text } from '../form/values';
import type { Form } from '../form/values';

const LATE = 200; // ms without an answer: say that it is being calculated

export interface AskingOwner {
  draw(): void;
  tell(spoken: string): void; // draws too
}

export class Asking {
  answer: Answer | undefined; // undefined: none yet, or the core itself failed
  working: Working | undefined; // a long answer is on its way, and the one here is the previous one
  summary: Problem[] = []; // what the Check button found, until it is put right

  #visited = new Set<string>(); // fields that the person has been at
  #checked = false; // all of them count as visited
  #question = ''; // the last one whose answer is long
  #then = () => {}; // what follows on that answer
  #late = 0;
  #longAnswer: typeof import('../core/long-answer') | undefined;

  readonly #engine: Engine;
  readonly #owner: AskingOwner;

  constructor(engine: Engine, owner: AskingOwner) {
    this.#engine = engine;
    this.#owner = owner;
  }

  // `then` follows on a long answer; a short one is here at once.
  ask(form: Form, then = () => {}): void {
    if (form.sheet.long) this.#askLong(form.sheet.id, inputOf(form), then);
    else this.#take(this.#answerTo(form));
  }

  // The core's first answer takes longest. A slow phone gets that over before the next keystroke.
  warm(form: Form): void {
    if (!form.sheet.long && !form.sheet.elsewhere) this.#answerTo(form);
  }

  // Typing into a sheet with long answers makes the one on its way worthless, before the next is
  // asked for.
  expect(): void {
    this.#drop();
    this.#wait();
  }

  // Another form takes the place of the one asked about.
  reset(): void {
    this.summary = [];
    this.answer = undefined;
    this.#visited.clear();
    this.#checked = false;
    this.#drop();
  }

  // A problem is shown beside its field once the person has been there.
  problem(path: string): string {
    if (!this.#checked && !this.#visited.has(path)) return '';
    return this.answer?.problems.find((problem) => problem.field === path)?.text ?? '';
  }

  visit(path: string): void {
    this.#visited.add(path);
  }

  visitAll(): void {
    this.#checked = true;
  }

  visitFilled({ sheet, values }: Form): void {
    for (const [path] of leaves(sheet.fields, values)) if (text(values, path)) this.visit(path);
  }

  #answerTo(form: Form): Answer | undefined {
    try {
      return this.#engine.answer(form.sheet.id, inputOf(form));
    } catch {
      return undefined;
    }
  }

  #askLong(sheet: string, input: Input, then: () => void): void {
    this.#then = then;
    const question = sheet + JSON.stringify(input);
    if (question === this.#question) return;
    this.#drop();
    this.#question = question;
    this.#wait();
    const current = () => question === this.#question;
    const answered = (answer: Answer | undefined) => {
      if (!current()) return;
      this.#take(answer);
      if (!answer) this.#question = '';
      this.#owner.draw();
      this.#then();
    };
    const progress = (share: number) => {
      if (!current() || !this.working) return;
      this.working.share = share;
      if (this.working.late) this.#owner.draw();
    };
    import('../core/long-answer').then((longAnswer) => {
      this.#longAnswer = longAnswer;
      if (current()) longAnswer.ask(this.#engine, sheet, input, { progress, answered });
    }, () => answered(undefined));
  }

  #wait(): void {
    if (this.working) this.working.share = 0;
    else {
      const working: Working = { share: 0, late: false };
      this.working = working;
      this.#late = window.setTimeout(() => {
        working.late = true;
        this.#owner.tell(say('Working it out.'));
      }, LATE);
    }
  }

  #drop(): void {
    this.#question = '';
    this.#longAnswer?.stop();
  }

  #take(answer: Answer | undefined): void {
    clearTimeout(this.#late);
    this.working = undefined;
    this.answer = answer;
    const left = new Set(answer?.problems.map((problem) => problem.field));
    this.summary = this.summary.filter((problem) => left.has(problem.field));
  }
}

function inputOf({ sheet, values }: Form): Input {
  return { ...toInput(sheet.fields, values), today: today() };
}
