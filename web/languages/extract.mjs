// Collects the sentences in the sources: every one after a marker, and nothing else.
//   C++    say("…")   Phrase("…")   Phrase("context\x04" "…")   plural("# stage", "# stages")
//          Phrase takes braces as well, and a name before them: Phrase kWet{"…"}
//   page   say('…')   plural('# row', '# rows')   and in index.html the elements with data-say
// A marker without a literal is a declaration, or passes on what was marked elsewhere.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

// ---- a source as tokens: { kind: 'text' | 'name' | 'sign', value }. Numbers and all that a phrase
// cannot be in are names; blanks and comments are left out.

const ESCAPES = { n: '\n', t: '\t', r: '\r', v: '\v', f: '\f', b: '\b', a: '\x07', 0: '\0', '\n': '', '\r\n': '' };

// Hexadecimal escapes are bytes of UTF-8 in C++, and characters in the page.
function unescaped(text, bytes) {
  const parts = text.matchAll(/\\u\{([\da-f]+)\}|\\u([\da-f]{4})|\\U([\da-f]{8})|\\x([\da-f]{1,2})|\\(\r\n|[^])|[^\\]+/gi);
  return Buffer.concat([...parts].map(([whole, braced, short, long, hex, plain]) => {
    const code = braced ?? short ?? long;
    if (code) return Buffer.from(String.fromCodePoint(parseInt(code, 16)));
    if (hex) return bytes ? Buffer.from([parseInt(hex, 16)]) : Buffer.from(String.fromCodePoint(parseInt(hex, 16)));
    return Buffer.from(plain === undefined ? whole : (ESCAPES[plain] ?? plain));
  })).toString();
}

const C_TOKEN = new RegExp([
  /\s+|\/\/(?:\\\r?\n|[^\n])*|\/\*[^]*?\*\//, // nothing
  /(?:u8|[uUL])?R"(?<fence>[^()\\\s"]{0,16})\((?<raw>[^]*?)\)\k<fence>"(?:[a-z_]\w*)?/,
  /(?:u8|[uUL])?"(?<text>(?:[^"\\\n]|\\[^])*)"(?:[a-z_]\w*)?/,
  /(?:u8|[uUL])?'(?:[^'\\\n]|\\.)+'/, // a character
  /(?<name>\.?\d(?:[eEpP][+-]|'?[\w.])*|[A-Za-z_]\w*)/,
  /(?<sign>[^])/,
].map(({ source }) => source).join('|'), 'gy');

export function cTokens(source) {
  const tokens = [];
  for (const { groups: { raw, text, name, sign } } of source.matchAll(C_TOKEN)) {
    if (raw !== undefined) tokens.push({ kind: 'text', value: raw });
    else if (text !== undefined) tokens.push({ kind: 'text', value: unescaped(text, true) });
    else if (name !== undefined) tokens.push({ kind: 'name', value: name });
    else if (sign !== undefined) tokens.push({ kind: 'sign', value: sign });
  }
  return tokens;
}

const PAGE_TOKEN = new RegExp([
  /\s+|\/\/[^\n]*|\/\*[^]*?\*\//, // nothing
  /'(?<single>(?:[^'\\\n]|\\[^])*)'/,
  /"(?<double>(?:[^"\\\n]|\\[^])*)"/,
  /(?<name>[\w$\u0080-\uffff]+)/,
  /(?<sign>[^])/,
].map(({ source }) => source).join('|'), 'y');

const PATTERN = /\/(?:[^/\\\n[]|\\.|\[(?:[^\]\\\n]|\\.)*\])+\/[a-z]*/y;
const BEFORE_PATTERN = /^(?:return|typeof|case|in|of|do|else|void|delete|throw|yield|await|new)$/;

// Up to the next gap of a template or its end; text between gaps is not a phrase.
const TEMPLATE = /(?:[^`\\$]|\\[^]|\$(?!\{))*(?:\$\{|`)/y;

export function pageTokens(source) {
  const tokens = [];
  const open = []; // for each template that is open, how many braces are in its gap
  let at = 0;
  const take = (pattern) => {
    pattern.lastIndex = at;
    const match = pattern.exec(source);
    if (match) at = pattern.lastIndex;
    return match;
  };
  const goOnInTemplate = () => {
    const end = take(TEMPLATE);
    if (!end) throw new Error('a template does not end');
    const gap = end[0].endsWith('{');
    if (gap) open.push(0);
    tokens.push({ kind: 'sign', value: gap ? '{' : '`' });
  };
  while (at < source.length) {
    const last = tokens.at(-1);
    const mayBePattern = !last || (last.kind === 'sign' ? !')]`'.includes(last.value) : last.kind === 'name' && BEFORE_PATTERN.test(last.value));
    if (source[at] === '/' && !/[/*]/.test(source[at + 1]) && mayBePattern && take(PATTERN)) {
      tokens.push({ kind: 'name', value: '/' });
      continue;
    }
    const { groups: { single, double, name, sign } } = take(PAGE_TOKEN);
    const text = single ?? double;
    if (text !== undefined) tokens.push({ kind: 'text', value: unescaped(text, false) });
    else if (name !== undefined) tokens.push({ kind: 'name', value: name });
    else if (sign === '`') goOnInTemplate();
    else if (sign === '}' && open.at(-1) === 0) open.pop(), goOnInTemplate();
    else if (sign !== undefined) {
      if (open.length && sign === '{') open[open.length - 1]++;
      if (open.length && sign === '}') open[open.length - 1]--;
      tokens.push({ kind: 'sign', value: sign });
    }
  }
  return tokens;
}

// ---- the phrases among the tokens: { msgid, msgid_plural?, msgctxt? }

// The literal at `at`, of all its parts, and what stands behind it.
function literal(tokens, at, glue) {
  let value = '';
  let end = at;
  while (tokens[end]?.kind === 'text') {
    value += tokens[end++].value;
    if (glue && tokens[end]?.value === glue && tokens[end + 1]?.kind === 'text') end++;
  }
  return { there: end > at, value, end };
}

function phrasesAmong(tokens, markers, glue) {
  const phrases = [];
  const is = (at, values) => tokens[at]?.kind === 'sign' && values.includes(tokens[at].value);
  tokens.forEach(({ kind, value: marker }, i) => {
    if (kind !== 'name' || !markers.includes(marker)) return;
    let at = i + 1;
    if (marker === 'Phrase' && tokens[at]?.kind === 'name') at++;
    if (!is(at, marker === 'Phrase' ? '({' : '(')) return;
    const first = literal(tokens, at + 1, glue);
    if (!first.there) return;
    const whole = (end) => {
      if (!is(end, ',)}')) throw new Error(`${marker}(${JSON.stringify(first.value)} is not the whole sentence`);
    };
    whole(first.end);
    const second = is(first.end, ',') ? literal(tokens, first.end + 1, glue) : { there: false };
    const [msgid, msgctxt] = first.value.split('\u0004').reverse();
    const phrase = { msgid };
    if (msgctxt !== undefined) phrase.msgctxt = msgctxt;
    if (marker === 'plural') {
      if (!second.there) throw new Error(`plural(${JSON.stringify(first.value)} has no second form`);
      whole(second.end);
      phrase.msgid_plural = second.value;
    }
    phrases.push(phrase);
  });
  return phrases;
}

export const inCpp = (source) => phrasesAmong(cTokens(source), ['say', 'Phrase', 'plural'], '');
export const inPage = (source) => phrasesAmong(pageTokens(source), ['say', 'plural'], '+');

const ENTITIES = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: '\u00a0' };

export function inHtml(source) {
  const elements = source.replace(/<!--[^]*?-->/g, '').matchAll(/<[a-z][^<>]*\sdata-say(?:\s[^<>]*)?>([^<]*)</gi);
  return [...elements].map(([, text]) => ({
    msgid: text.replace(/&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi, (whole, hex, ten, name) =>
      hex || ten ? String.fromCodePoint(parseInt(hex ?? ten, hex ? 16 : 10)) : (ENTITIES[name] ?? whole)),
  }));
}

// ---- all sources

const filesIn = (folder, kinds) => readdirSync(join(root, folder), { recursive: true })
  .map((file) => `${folder}/${file}`.replaceAll('\\', '/'))
  .filter((file) => kinds.test(file) && !file.includes('/generated/'));

// A phrase's key, as the built catalogues have it.
export const keyOf = ({ msgctxt, msgid }) => (msgctxt ? `${msgctxt}\u0004${msgid}` : msgid);

// Every phrase by its key, with the files that use it.
export function extract() {
  const found = new Map();
  const sources = [
    ...filesIn('core', /\.(?:[ch]pp|inc)$/).map((file) => [file, inCpp]),
    ...filesIn('web/src', /(?<!\.d)\.ts$/).map((file) => [file, inPage]),
    ['web/index.html', inHtml],
  ];
  for (const [file, inIt] of sources.sort(([a], [b]) => (a < b ? -1 : 1))) {
    let phrases;
    try {
      phrases = inIt(readFileSync(join(root, file), 'utf8'));
    } catch (reason) {
      throw new Error(`${file}: ${reason.message}`, { cause: reason });
    }
    for (const phrase of phrases) add(found, phrase, file);
  }
  return found;
}

// A sentence that is also the first form of a plural is one with it, as in gettext.
export function add(found, phrase, file) {
  const key = keyOf(phrase);
  const known = found.get(key);
  if (!known) return void found.set(key, { ...phrase, files: [file] });
  if (phrase.msgid_plural !== undefined) {
    if (known.msgid_plural !== undefined && known.msgid_plural !== phrase.msgid_plural)
      throw new Error(`${file}: the plural of ${JSON.stringify(key)} is both ${JSON.stringify(known.msgid_plural)} and ${JSON.stringify(phrase.msgid_plural)}`);
    known.msgid_plural = phrase.msgid_plural;
  }
  if (!known.files.includes(file)) known.files.push(file);
}
