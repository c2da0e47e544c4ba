// PO files: read, written, brought up to date, and made into what the core and the page look up.
import assert from 'node:assert/strict';
import { test } from 'node:test';

import { compact } from '../../web/languages/compile.mjs';
import { parsed, pluralRule, written } from '../../web/languages/po.mjs';
import { updated } from '../../web/languages/update.mjs';

const HEAD = String.raw`msgid ""
msgstr ""
"Language: fr\n"
"Content-Type: text/plain; charset=UTF-8\n"
"Plural-Forms: nplurals=2; plural=(n > 1);\n"
"Last-Translator: Somebody\n"

`;

const PO = `${HEAD}#: core/old.cpp
msgid "# set"
msgid_plural "# sets"
msgstr[0] "# train"
msgstr[1] "# trains"

# a note
#: core/old.cpp
msgctxt "of a road"
msgid "wet"
msgstr "mouillée"

msgid "Load"
msgstr "Charge"

#, fuzzy
msgid "Unsure"
msgstr "Incertain"

msgid "Loads"
msgstr "Charges"

msgid "Waiting"
msgstr ""

msgid "Half"
msgid_plural "Halves"
msgstr[0] "Moitié"
msgstr[1] ""

#~ msgid "Former"
#~ msgstr "Ancien"
`;

test('what is built has what is translated and sure, a context before its sentence, and both forms', () => {
  assert.deepEqual(compact(parsed(PO)), { '': 'n > 1', '# set': '# train', '# sets': '# trains', 'of a road\u0004wet': 'mouillée', Load: 'Charge', Loads: 'Charges' });
});

test('a sentence with two texts is refused, whether twice in the file or as another\'s second form', () => {
  assert.throws(() => parsed(`${PO}\nmsgid "Load"\nmsgstr "Poids"\n`), /Duplicate/i);
  assert.throws(() => compact(parsed(`${PO}\nmsgid "# sets"\nmsgstr "Trains : #"\n`)), /two texts/);
});

test('only languages of two forms are spoken', () => {
  const rule = (forms) => pluralRule({ 'Plural-Forms': forms });
  assert.equal(rule('nplurals=2; plural=(n > 1);'), 'n > 1');
  assert.equal(rule('nplurals = 2; plural = n!=1'), 'n != 1');
  for (const forms of ['nplurals=1; plural=0;', 'nplurals=2; plural=(n > 2);', 'nplurals=3; plural=(n != 1);', undefined]) assert.throws(() => rule(forms), /Plural-Forms/);
});

const phrase = (msgid, more = {}) => [more.msgctxt ? `${more.msgctxt}\u0004${msgid}` : msgid, { msgid, ...more, files: ['core/new.cpp'] }];

test('an update keeps texts and notes, brings in what is new, and puts aside what is gone', () => {
  const phrases = new Map([phrase('wet', { msgctxt: 'of a road' }), phrase('# set', { msgid_plural: '# sets' }), phrase('Former'), phrase('New'), phrase('Load', { msgid_plural: 'Loads' })]);
  const after = updated(parsed(PO), phrases);
  const text = written('fr', after);
  assert.deepEqual(text.slice(text.indexOf('\n\n') + 2), `#: core/new.cpp
msgid "# set"
msgid_plural "# sets"
msgstr[0] "# train"
msgstr[1] "# trains"

#: core/new.cpp
msgid "Former"
msgstr "Ancien"

#: core/new.cpp
msgid "Load"
msgid_plural "Loads"
msgstr[0] "Charge"
msgstr[1] "Charges"

#: core/new.cpp
msgid "New"
msgstr ""

# a note
#: core/new.cpp
msgctxt "of a road"
msgid "wet"
msgstr "mouillée"

#~ msgid "Half"
#~ msgid_plural "Halves"
#~ msgstr[0] "Moitié"
#~ msgstr[1] ""

#~ msgid "Loads"
#~ msgstr "Charges"

#, fuzzy
#~ msgid "Unsure"
#~ msgstr "Incertain"
`);
  assert.match(text, /Last-Translator: Somebody/);
  assert.equal(written('fr', updated(parsed(text), phrases)), text, 'a second update changes nothing');
  assert.doesNotMatch(written('fr', updated(parsed(text), phrases, true)), /#~/);
});
