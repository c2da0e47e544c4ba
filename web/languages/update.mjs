// Brings the PO files up to date with the sources:
//   node web/languages/update.mjs           new sentences come in without a text; those that no source
//                                           says any more go to the end of the file (#~) with theirs
//   node web/languages/update.mjs --drop    and these are dropped
//   node web/languages/update.mjs sv        makes a file for another language
// Existing translations stay as they are, and a sentence that comes back gets its old one.
import { existsSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

import { extract, keyOf } from './extract.mjs';
import { fileOf, isTranslated, languages, readPo, references, written } from './po.mjs';

// A PO file, as parsed, with the phrases of the sources. `drop`: without what they say no more.
export function updated({ headers, entries: before, obsolete: gone = new Map() }, phrases, drop = false) {
  const entries = new Map();
  for (const [key, { files, ...phrase }] of phrases) {
    const known = before.get(key) ?? gone.get(key);
    const { reference, ...comments } = known?.comments ?? {};
    const other = phrase.msgid_plural && before.get(keyOf({ ...phrase, msgid: phrase.msgid_plural }));
    entries.set(key, { ...phrase, msgstr: textsOf(phrase, known, other), comments: { ...comments, reference: references(files) } });
  }
  const obsolete = new Map();
  if (!drop)
    for (const [key, { comments, ...entry }] of [...gone, ...before])
      if (!phrases.has(key) && entry.msgstr.some(Boolean)) obsolete.set(key, { ...entry, comments: { ...comments, reference: '' } });
  return { headers, entries, obsolete };
}

// Sentences that became the two forms of a plural, or no longer are, keep their texts.
function textsOf({ msgid_plural: plural }, known, other) {
  const [one = '', others = other?.msgstr[0] ?? ''] = known?.msgstr ?? [];
  return plural === undefined ? [one] : [one, others];
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const asked = process.argv.slice(2);
  const drop = asked.includes('--drop');
  const phrases = extract();
  for (const language of new Set([...languages, ...asked.filter((word) => /^[a-z]{2,3}$/.test(word))])) {
    const before = existsSync(fileOf(language)) ? readPo(language) : { entries: new Map() };
    const after = updated(before, phrases, drop);
    writeFileSync(fileOf(language), written(language, after));
    const missing = [...after.entries.values()].filter((entry) => !isTranslated(entry)).length;
    console.log(`${language}.po: ${after.entries.size} sentences, ${missing} without a text, ${after.obsolete.size} that are said no more`);
  }
}
