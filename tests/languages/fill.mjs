// Prints, as a catalogue with empty texts, what the catalogue of a language lacks:
//   node tests/languages/fill.mjs fr
// and what it still has and needs no more, on stderr.
import { loadModule } from '../support/core.mjs';
import { read } from '../support/paths.mjs';
import { left } from './asked.mjs';
import { corePhrases, literals, pagePhrases } from './phrases.mjs';

const catalogue = JSON.parse(read(`web/languages/${process.argv[2] ?? 'fr'}.json`));
const { sources } = JSON.parse((await loadModule()).describe());
const phrases = new Map([...corePhrases(sources), ...pagePhrases()]);
const missing = [...phrases.keys(), ...(await left([...phrases.keys(), ...Object.keys(catalogue)])).keys()].filter((english) => !Object.hasOwn(catalogue, english));
console.log(JSON.stringify(Object.fromEntries(missing.map((english) => [english, ''])), null, 1));
const known = literals();
for (const english of Object.keys(catalogue))
  if (english !== '.' && !phrases.has(english) && !known.has(english)) console.error(`gone: ${JSON.stringify(english)}`);
