// PO files read and written, always in the same shape: sorted, and wrapped as gettext's own tools do.
import { readFileSync, readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';

import gettext from 'gettext-parser';

import { keyOf } from './extract.mjs';

export const folder = fileURLToPath(new URL('.', import.meta.url));

export const languages = readdirSync(folder).filter((file) => file.endsWith('.po')).map((file) => basename(file, '.po')).sort();

export const fileOf = (language) => join(folder, `${language}.po`);

// The entries by their keys (msgid, msgid_plural, msgctxt, msgstr, comments), and those no longer
// in the sources.
export function parsed(text) {
  const { headers, translations, obsolete = {} } = gettext.po.parse(text, { validation: true });
  const byKey = (table) => new Map(Object.values(table).flatMap(Object.values).filter(({ msgid }) => msgid).map((entry) => [keyOf(entry), entry]));
  return { headers, entries: byKey(translations), obsolete: byKey(obsolete) };
}

export const readPo = (language) => parsed(readFileSync(fileOf(language), 'utf8'));

const HEAD = `What Treadwater says. A # is a gap that a value fills: a figure with its unit, or a name.
Where a language puts the values in another order, number all gaps: #1 to #9.`;

// "#: " and the files that use a sentence, in lines no longer than the texts'.
export function references(files) {
  const lines = [];
  for (const file of files) {
    if (lines.length && `#: ${lines.at(-1)} ${file}`.length < 80) lines[lines.length - 1] += ` ${file}`;
    else lines.push(file);
  }
  return lines.join('\n');
}

const inOrder = (a, b) => (a.msgid === b.msgid ? (a.msgctxt ?? '') < (b.msgctxt ?? '') : a.msgid < b.msgid) ? -1 : 1;

function table(entries) {
  const byContext = {};
  for (const entry of entries.values()) (byContext[entry.msgctxt ?? ''] ??= {})[entry.msgid] = entry;
  return byContext;
}

export function written(language, { headers = {}, entries, obsolete = new Map() }) {
  const ours = {
    'Project-Id-Version': 'Treadwater',
    Language: language,
    'MIME-Version': '1.0',
    'Content-Type': 'text/plain; charset=UTF-8',
    'Content-Transfer-Encoding': '8bit',
    'Plural-Forms': headers['Plural-Forms'] ?? `nplurals=2; plural=(${language === 'fr' ? 'n > 1' : 'n != 1'});`,
  };
  const translations = table(entries);
  (translations[''] ??= {})[''] = { msgid: '', msgstr: [''], comments: { translator: HEAD } };
  return gettext.po.compile({ charset: 'utf-8', headers: { ...ours, ...headers, ...ours }, translations, obsolete: table(obsolete) }, { sort: inOrder }).toString();
}

// Which counts take the plural: "n > 1" or "n != 1". Only languages with these two forms work here.
export function pluralRule(headers) {
  const [, count, rule = ''] = /nplurals\s*=\s*(\d+)\s*;\s*plural\s*=\s*([^;]*)/.exec(headers['Plural-Forms'] ?? '') ?? [];
  const plain = rule.replace(/[\s()]/g, '').replace(/(>|!=)/, ' $1 ');
  if (count !== '2' || !['n > 1', 'n != 1'].includes(plain)) throw new Error(`Plural-Forms is ${headers['Plural-Forms']}: two forms, by n > 1 or n != 1, are what is known here`);
  return plain;
}

export const isTranslated = ({ msgstr, comments }) => msgstr.every(Boolean) && !/\bfuzzy\b/.test(comments?.flag ?? '');
