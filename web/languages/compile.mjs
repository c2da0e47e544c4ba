// Compiles the PO files for the page and the core: web/src/generated/languages/<language>.json, an
// object of English sentence -> translation. With a context the key is context, U+0004, sentence;
// the two forms of a plural have an entry each; the entry "" says which counts take the second. An
// empty or fuzzy translation is left out, so that sentence stays English.
//   node web/languages/compile.mjs
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { fileOf, isTranslated, languages, pluralRule, readPo } from './po.mjs';

const target = fileURLToPath(new URL('../src/generated/languages/', import.meta.url));

export function compact({ headers, entries }) {
  const texts = new Map([['', pluralRule(headers)]]);
  const put = (key, text) => {
    if ((texts.get(key) ?? text) !== text) throw new Error(`${JSON.stringify(key)} has two texts`);
    texts.set(key, text);
  };
  for (const [key, entry] of entries) {
    if (!isTranslated(entry)) continue;
    put(key, entry.msgstr[0]);
    if (entry.msgid_plural) put(entry.msgid_plural, entry.msgstr[1]);
  }
  return Object.fromEntries(texts);
}

// An unchanged file is left alone, so that the page is not rebuilt for nothing.
export function compile() {
  mkdirSync(target, { recursive: true });
  for (const language of languages) {
    const file = join(target, `${language}.json`);
    const text = JSON.stringify(compact(readPo(language)));
    if (!existsSync(file) || readFileSync(file, 'utf8') !== text) writeFileSync(file, text);
  }
}

// For Vite: before a build, and again when a PO file is saved.
export const catalogues = () => ({
  name: 'catalogues',
  buildStart() {
    compile();
    for (const language of languages) this.addWatchFile(fileOf(language));
  },
  watchChange: (file) => file.endsWith('.po') && compile(),
});

if (process.argv[1] === fileURLToPath(import.meta.url)) compile();
