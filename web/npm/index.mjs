// Treadwater's core for Node and for browsers: describe() and answer(), text parsed into objects.
import create from './treadwater.mjs';

const wasm = new URL('./treadwater.wasm', import.meta.url);

async function bytes() {
  if (wasm.protocol === 'file:') {
    const { readFile } = await import('node:fs/promises');
    return readFile(wasm);
  }
  return new Uint8Array(await (await fetch(wasm)).arrayBuffer());
}

export async function load(wasmBinary) {
  const core = await create({ wasmBinary: wasmBinary ?? (await bytes()) });
  return {
    describe: () => JSON.parse(core.describe()),
    answer: (sheet, input) => JSON.parse(core.answer(sheet, JSON.stringify(input))),
  };
}
