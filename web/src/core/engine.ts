// The calculation core: loads a WebAssembly module and offers its functions with types, in the
// language of the page. The first module holds what a first visit needs; the other one, twice its
// size, holds every sheet.
import createFirst from '../generated/treadwater-first.mjs';
import firstUrl from '../generated/treadwater-first.wasm?url';
import wholeUrl from '../generated/treadwater.wasm?url';
import type { Answer, Description, Input } from './contract';
import { catalogueText, language, say } from './language';

export interface Engine {
  description: Description;
  answer(sheet: string, input: Input): Answer;
  speak(): void; // the page's language has changed
}

export function loadFirst(): Promise<Engine> {
  return load(firstUrl, createFirst);
}

export async function loadWhole(): Promise<Engine> {
  const { default: create } = await import('../generated/treadwater.mjs');
  return load(wholeUrl, create);
}

// Throws an Error whose message is a sentence for the person.
async function load(url: string, create: typeof createFirst): Promise<Engine> {
  if (typeof WebAssembly === 'undefined') {
    throw new Error(say('This browser has no WebAssembly, or it is switched off, so nothing can be calculated here. Open the page in a newer browser.'));
  }
  const wasmBinary = await fetchBytes(url);
  try {
    const core = await create({ wasmBinary });
    const engine = {
      description: {} as Description,
      answer: (sheet: string, input: Input) => JSON.parse(core.answer(sheet, JSON.stringify({ ...input, language: language() }))),
      speak() {
        if (catalogueText()) core.learn(language(), catalogueText());
        engine.description = JSON.parse(core.describeIn(language()));
      },
    };
    engine.speak();
    return engine;
  } catch (reason) {
    throw new Error(say('This browser refused to start the calculation, so there is no answer here. Open the page in a newer browser, or from another place.'), { cause: reason });
  }
}

// The bytes are taken as they come: a host that sends them under a wrong type does no harm.
async function fetchBytes(url: string): Promise<Uint8Array> {
  try {
    const response = await fetch(url);
    if (response.ok) return new Uint8Array(await response.arrayBuffer());
    throw new Error(`status ${response.status}`);
  } catch (reason) {
    throw new Error(say('The calculation did not load, so there is no answer here. Check the connection and load the page again.'), { cause: reason });
  }
}
