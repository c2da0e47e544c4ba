// The same module that the page loads, in Node: describe() and answer(sheet, input) as plain
// values.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

import { moduleFolder } from './paths.mjs';

// The glue is made for browsers: it is handed the bytes, since it would otherwise fetch them.
export async function loadModule(name = 'treadwater') {
  const { default: create } = await import(pathToFileURL(join(moduleFolder, `${name}.mjs`)));
  return create({ wasmBinary: readFileSync(join(moduleFolder, `${name}.wasm`)) });
}

// One of its own, and how many bytes its memory has grown to.
export async function loadMeasured() {
  let memory;
  const { instantiate } = WebAssembly;
  WebAssembly.instantiate = async (...given) => {
    const made = await instantiate(...given);
    memory = Object.values(made.instance.exports).find((one) => one instanceof WebAssembly.Memory);
    return made;
  };
  const module = await loadModule();
  WebAssembly.instantiate = instantiate;
  return { module, bytes: () => memory.buffer.byteLength };
}

export async function loadCore() {
  const module = await loadModule();
  return {
    describe: () => JSON.parse(module.describe()),
    answer: (sheet, input) => JSON.parse(module.answer(sheet, JSON.stringify(input))),
    answerText: (sheet, text) => module.answer(sheet, text),
  };
}
