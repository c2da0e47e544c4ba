// Asks for a long answer in a worker, so that the page stays free. Where no worker can be made (an
// old browser, a page from a memory stick), the page works it out itself and stands still meanwhile.
import type { Answer, Input } from './contract';
import type { Engine } from './engine';
import { catalogueText, language } from './language';
import type { Reply } from './worker';

export interface Hearing {
  share(share: number): void;
  said(answer: Answer | undefined): void; // undefined: the core failed
}

let worker: Worker | undefined;
let refused = false;
let ready = false;
let busy: (() => void) | undefined; // what was asked and is not answered yet
let taught = ''; // the language that the worker was given last

// Only the newest question is answered: one that is still being worked out is dropped.
export function ask(engine: Engine, sheet: string, input: Input, hearing: Hearing): void {
  stop();
  const onPage = () => {
    busy = undefined;
    hearing.said(answerOf(() => engine.answer(sheet, input)));
  };
  const now = refused ? undefined : hired();
  if (!now) {
    later(onPage);
    return;
  }
  const put = () => {
    const catalogue = taught === language() ? '' : catalogueText();
    taught = language();
    now.postMessage({ sheet, input: JSON.stringify({ ...input, language: taught }), language: taught, catalogue });
  };
  busy = put;
  if (ready) put();
  now.onmessage = ({ data }: MessageEvent<Reply>) => {
    if (now !== worker) return;
    if (data.kind === 'ready') {
      ready = true;
      if (busy === put) put();
    } else if (data.kind === 'share') hearing.share(data.share);
    else if (data.kind === 'said') {
      busy = undefined;
      hearing.said(answerOf(() => JSON.parse(data.text)));
    } else fail();
  };
  now.onerror = (event) => {
    event.preventDefault();
    if (now === worker) fail();
  };
  // One that never got ready is no loss; one that broke off at work has met a fault of the core.
  function fail(): void {
    refused = !ready;
    dismiss();
    if (refused) later(onPage);
    else hearing.said(undefined);
  }
}

export function stop(): void {
  if (busy && ready) dismiss();
  busy = undefined;
}

function later(work: () => void): void {
  busy = work;
  setTimeout(() => { if (busy === work) work(); }, 50); // once the words that it is under way are on the screen
}

function answerOf(work: () => Answer): Answer | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}

function dismiss(): void {
  worker?.terminate();
  worker = undefined;
  ready = false;
  busy = undefined;
  taught = '';
}

function hired(): Worker | undefined {
  try {
    worker ??= new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  } catch {
    refused = true;
  }
  return worker;
}
