// Treadwater's core for Node and for browsers: describe(), answer() and learn(), text parsed into
// objects.
import create from './treadwater.mjs';

const wasm = new URL('./treadwater.wasm', import.meta.url);

async function bytes() {
  if (wasm.protocol === 'file:') {
    const { readFile } = await import('node:fs/promises');
    return readFile(wasm);
  }
  return new Uint8Array(await (await fetch(wasm)).arrayBuffer());
}

// A listener that throws must not interrupt the core: it is not called again, and its error is
// thrown once the core is done.
function answerWithListener(core, sheet, input, listener) {
  const faults = [];
  const text = core.answerTelling(sheet, JSON.stringify(input), (share) => {
    if (faults.length) return;
    try {
      listener(share);
    } catch (fault) {
      faults.push(fault);
    }
  });
  if (faults.length) throw faults[0];
  return text;
}

export async function load(wasmBinary) {
  const core = await create({ wasmBinary: wasmBinary ?? (await bytes()) });
  return {
    describe: (language = '') => JSON.parse(core.describeIn(language)),
    learn: (language, catalogue) => core.learn(language, JSON.stringify(catalogue)),
    answer: (sheet, input, listener) => JSON.parse(listener ? answerWithListener(core, sheet, input, listener) : core.answer(sheet, JSON.stringify(input))),
  };
}
