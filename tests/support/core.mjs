// The very module that the page loads, in Node: describe() and answer(sheet, input) as plain values.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

import { moduleFolder } from './paths.mjs';

// The glue is made for browsers: it is handed the bytes, since it would otherwise fetch them.
export async function loadModule(name = 'treadwater') {
  const { default: create } = await import(pathToFileURL(join(moduleFolder, `${name}.mjs`)));
  return create({ wasmBinary: readFileSync(join(moduleFolder, `${name}.wasm`)) });
}

export async function loadCore() {
  const module = await loadModule();
  return {
    describe: () => JSON.parse(module.describe()),
    answer: (sheet, input) => JSON.parse(module.answer(sheet, JSON.stringify(input))),
    answerText: (sheet, text) => module.answer(sheet, text),
  };
}
