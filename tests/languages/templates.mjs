// The words in the page's templates outside say('…'): they would not be translated.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';

import { read, root } from '../support/paths.mjs';

const filesOf = (folder, kinds) =>
  readdirSync(join(root, folder), { recursive: true })
    .map((file) => `${folder}/${file}`.replaceAll('\\', '/'))
    .filter((file) => kinds.test(file) && !file.includes('/generated/'))
    .sort();

// ---- what escapes it: words that stand in a template as they are, to be read in English in any language

// The html`...` and svg`...` of a source, each gap as one sign.
export function templates(source) {
  const code = source.replace(/^\s*\/\/.*$/gm, '').replace(/'(?:[^'\\\n]|\\.)*'/g, '\0');
  const found = [];
  const readTemplate = (start) => {
    let [at, text] = [start + 1, ''];
    while (code[at] !== '`') {
      const gap = code.startsWith('${', at);
      text += gap ? '\0' : code[at];
      at = gap ? readCode(at + 2) : at + 1;
    }
    if (/\b(html|svg)$/.test(code.slice(0, start))) found.push(text);
    return at + 1;
  };
  // To behind the brace that closes it.
  const readCode = (at) => {
    for (let open = 1; open && at < code.length;) {
      if (code[at] === '`') at = readTemplate(at);
      else open += { '{': 1, '}': -1 }[code[at++]] ?? 0;
    }
    return at;
  };
  readCode(0);
  return found;
}

// Between its tags, and in an attribute that is read out.
export function wordsIn(template) {
  const heard = [...template.matchAll(/\b(?:aria-label|title|placeholder|alt)="([^"]*)"/g)].map(([, text]) => text);
  const seen = template.replace(/<[^>]*>/g, '\0').split('\0');
  return [...heard, ...seen].map((text) => text.trim()).filter((text) => /\p{L}{2}/u.test(text));
}

export function pageEscapes() {
  const found = filesOf('web/src', /\.ts$/).flatMap((file) => templates(read(file)).flatMap(wordsIn).map((text) => [text, file]));
  const frame = read('web/index.html').replace(/<(head|noscript)>.*?<\/\1>/gs, '').replace(/<(\w+)[^>]* data-say>[^<]*<\/\1>/g, '');
  return [...found, ...wordsIn(frame).map((text) => [text, 'web/index.html'])];
}
