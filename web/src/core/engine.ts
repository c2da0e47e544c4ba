// The calculation core: its functions with types, in the language of the page. There are two
// WebAssembly modules of it: the first has what a first visit needs; the other, twice its size, has
// every sheet. Callers of Engine need not know which of them answers.
import createFirst from '../generated/treadwater-first.mjs';
import firstUrl from '../generated/treadwater-first.wasm?url';
import wholeUrl from '../generated/treadwater.wasm?url';
import type { Answer, Description, Input } from './contract';
import { catalogueText, language, say } from './language';

export interface Engine {
  description: Description;
  answer(sheet: string, input: Input): Answer;
  speak(): void; // the page's language has changed
  widen(): Promise<void>; // to every sheet
}

// With the first module. Throws an Error whose message is a sentence for the person.
export async function loadEngine(): Promise<Engine> {
  let core: Awaited<ReturnType<typeof createFirst>>;

  const use = async (url: string, create: typeof createFirst) => {
    if (typeof WebAssembly === 'undefined') {
      throw new Error(say('This browser has no WebAssembly, or it is switched off, so nothing can be calculated here. Open the page in a newer browser.'));
    }
    const wasmBinary = await fetchBytes(url);
    try {
      const started = await create({ wasmBinary });
      engine.description = describe(started);
      core = started;
    } catch (reason) {
      throw new Error(say('This browser refused to start the calculation, so there is no answer here. Open the page in a newer browser, or from another place.'), { cause: reason });
    }
  };

  const engine: Engine = {
    description: {} as Description,
    answer: (sheet, input) => JSON.parse(core.answer(sheet, JSON.stringify({ ...input, language: language() }))),
    speak() {
      engine.description = describe(core);
    },
    async widen() {
      const { default: create } = await import('../generated/treadwater.mjs');
      await use(wholeUrl, create);
    },
  };

  await use(firstUrl, createFirst);
  return engine;
}

function describe(core: Awaited<ReturnType<typeof createFirst>>): Description {
  if (catalogueText()) core.learn(language(), catalogueText());
  return JSON.parse(core.describeIn(language()));
}

// The bytes are used as they come: a wrong MIME type does no harm.
async function fetchBytes(url: string): Promise<Uint8Array> {
  try {
    const response = await fetch(url);
    if (response.ok) return new Uint8Array(await response.arrayBuffer());
    throw new Error(`status ${response.status}`);
  } catch (reason) {
    throw new Error(say('The calculation did not load, so there is no answer here. Check the connection and load the page again.'), { cause: reason });
  }
}
