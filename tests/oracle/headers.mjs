// The functions that the headers of the core's rooms declare: at namespace level, and as members of their structs.
import { readdirSync } from 'node:fs';

import { read } from '../support/paths.mjs';

export const withoutComments = (text) =>
  text.replace(/\/\/.*|\/\*[^]*?\*\//g, '').replace(/"(\\.|[^"\\])*"/g, '""').replace(/^\s*#(.*\\\n)*.*/gm, '');

// Statements are cut at ; { and }. Inside a function's own body nothing is declared; a namespace, a struct and a
// class are looked into, a class only where it is public.
function declared(text) {
  const names = new Set();
  const within = []; // of each open brace: what it opened
  let hidden = [];
  let statement = '';
  for (const c of withoutComments(text)) {
    if (c !== ';' && c !== '{' && c !== '}') {
      statement += c;
      continue;
    }
    const said = statement.replace(/\b(public|private|protected)\s*:/g, (_, word) => ((hidden[hidden.length - 1] = word !== 'public'), ' ')).trim();
    statement = '';
    const kind = /^(template\s*<[^{]*>\s*)?(namespace|struct|class|enum)\b/.exec(said)?.[2];
    const looked = within.every((w) => w === 'namespace' || w === 'struct' || w === 'class') && !hidden.at(-1);
    const [, name] = /\b([a-z_]\w*)\s*\(/.exec(said) ?? [];
    if (looked && c !== '}' && kind === undefined && name && !name.endsWith('_') && !/\boperator\b|\bfriend\b|^using\b|=/.test(said.split('(')[0])) names.add(name);
    if (c === '{') {
      within.push(kind ?? 'body');
      hidden.push(kind === 'class');
    } else if (c === '}') {
      within.pop();
      hidden.pop();
    }
  }
  return names;
}

// Of each of these rooms, "file.hpp: name" for every function.
export function functionsOf(rooms) {
  return rooms.flatMap((room) =>
    readdirSync(new URL(`../../core/${room}/`, import.meta.url)).filter((file) => file.endsWith('.hpp')).flatMap((file) =>
      [...declared(read(`core/${room}/${file}`))].map((name) => ({ place: `${room}/${file}`, name }))));
}
