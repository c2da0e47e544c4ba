// The progress of each language: the sentences in the sources against its PO file.
import { readFileSync } from 'node:fs';

import { extract } from '../../web/languages/extract.mjs';
import { fileOf, isTranslated, languages, readPo, written } from '../../web/languages/po.mjs';
import { updated } from '../../web/languages/update.mjs';

export const phrases = extract();

// The sentence, and the other form where it has one, as the core and the page look them up.
export function keysOf(phrases) {
  return [...phrases].flatMap(([key, { msgid_plural: plural }]) => (plural === undefined ? [key] : [key, plural]));
}

const named = new Intl.DisplayNames(['en'], { type: 'language' });

export const progress = new Map(languages.map((language) => {
  const po = readPo(language);
  const missing = new Map([...phrases].filter(([key]) => !po.entries.has(key) || !isTranslated(po.entries.get(key))));
  return [language, {
    po,
    missing,
    said: `${missing.size} of ${phrases.size} sentences have no ${named.of(language)} text`,
    inStep: written(language, updated(po, phrases)) === readFileSync(fileOf(language), 'utf8'),
  }];
}));

// Whether a text holds a sentence that has no text in the language yet, and so is English.
export function waiting(language) {
  const patterns = keysOf(progress.get(language).missing)
    .map((key) => key.replace(/^.*\u0004/s, ''))
    .filter((english) => /\p{L}{3}/u.test(english))
    .map((english) => new RegExp(english.split('#').map((part) => part.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&')).join('.*'), 'iu'));
  return (text) => patterns.some((pattern) => pattern.test(text));
}
