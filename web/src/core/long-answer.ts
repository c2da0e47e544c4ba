// Asks for a long answer in a worker, so that the page stays responsive. If no worker can be made
// (an old browser, a page from a memory stick), the page calculates it itself and freezes until
// done.
import type { Answer, Input } from './contract';
import type { Engine } from './engine';
import { catalogueText, language } from './language';
import type { Question, Reply } from './worker-messages';

export interface Listener {
  progress(share: number): void;
  answered(answer: Answer | undefined): void; // undefined: the core failed
}

let worker: Worker | undefined;
let refused = false;
let ready = false;
let pending: (() => void) | undefined; // asked and not yet answered
let learnt = ''; // the language that the worker was given last

// Only the newest question is answered: one still being calculated is dropped.
export function ask(engine: Engine, sheet: string, input: Input, listener: Listener): void {
  stop();
  const onPage = () => {
    pending = undefined;
    listener.answered(answerOf(() => engine.answer(sheet, input)));
  };
  const asked = refused ? undefined : start();
  if (!asked) {
    soon(onPage);
    return;
  }
  const send = () => {
    const catalogue = learnt === language() ? '' : catalogueText();
    learnt = language();
    const question: Question = { sheet, input: JSON.stringify({ ...input, language: learnt }), language: learnt, catalogue };
    asked.postMessage(question);
  };
  pending = send;
  if (ready) send();
  asked.onmessage = ({ data }: MessageEvent<Reply>) => {
    if (asked !== worker) return;
    if (data.kind === 'ready') {
      ready = true;
      if (pending === send) send();
    } else if (data.kind === 'progress') listener.progress(data.share);
    else if (data.kind === 'answer') {
      pending = undefined;
      listener.answered(answerOf(() => JSON.parse(data.text)));
    } else fail();
  };
  asked.onerror = (event) => {
    event.preventDefault();
    if (asked === worker) fail();
  };
  // One that never got ready is no loss; one that died at work met a fault in the core.
  function fail(): void {
    refused = !ready;
    end();
    if (refused) soon(onPage);
    else listener.answered(undefined);
  }
}

export function stop(): void {
  if (pending && ready) end();
  pending = undefined;
}

function soon(work: () => void): void {
  pending = work;
  setTimeout(() => { if (pending === work) work(); }, 50); // once the screen says that it is under way
}

function answerOf(work: () => Answer): Answer | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}

function end(): void {
  worker?.terminate();
  worker = undefined;
  ready = false;
  pending = undefined;
  learnt = '';
}

function start(): Worker | undefined {
  try {
    worker ??= new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  } catch {
    refused = true;
  }
  return worker;
}
