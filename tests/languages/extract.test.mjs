// Which sentences are found in a source, and which are not.
import assert from 'node:assert/strict';
import { test } from 'node:test';

import { add, inCpp, inHtml, inPage } from '../../web/languages/extract.mjs';

const ids = (phrases) => phrases.map(({ msgid }) => msgid);

test('C++: say, Phrase and plural, with parts that stand side by side as one', () => {
  assert.deepEqual(inCpp(String.raw`
    tell(say("Set it to # cold.", pressure));
    say("On # the tyre "  // why
        /* and */ "carries #.",
        speed, load);
    constexpr Phrase kWet{"of a road\x04" "wet"};
    field.label = Phrase("Tread depth");
    Phrase{"Load"};
    say(worn ? Phrase("Replace it.") : Phrase("It may stay on."), depth);
    plural("# stage", "# sta" "ges", count);
    say(plural("# set", "# sets", n));`), [
    { msgid: 'Set it to # cold.' },
    { msgid: 'On # the tyre carries #.' },
    { msgid: 'wet', msgctxt: 'of a road' },
    { msgid: 'Tread depth' },
    { msgid: 'Load' },
    { msgid: 'Replace it.' },
    { msgid: 'It may stay on.' },
    { msgid: '# stage', msgid_plural: '# stages' },
    { msgid: '# set', msgid_plural: '# sets' },
  ]);
});

test('C++: a declaration, a value, an id and a comment are no phrases', () => {
  assert.deepEqual(inCpp(String.raw`
    #include "core/words/say.hpp"
    std::string say(Phrase sentence, Values values);
    explicit Phrase(const char* english);
    class Phrase { public: Phrase(std::string_view english, std::string_view context = "none"); };
    std::string plural(Phrase one, Phrase other, int n);
    // say("in a comment")  Phrase("here too")
    /* plural("a", "b") */
    const char* text = "say(\"within a literal\")";
    say(sentence, "a value");
    unsay("another name"); essay("and one more");
    const auto raw = R"(Phrase("in a raw literal"))";`), []);
});

test('C++: escapes, raw literals, characters and long numbers', () => {
  assert.deepEqual(ids(inCpp(String.raw`
    if (c == '"' || c == '\'') n = 1'000'000;
    say("the “#” of \"it\" \\ it\'s");
    say(u8"\u00a0#\xC2\xA0x" "\n");
    say(R"(raw "quotes" \n)" " and more");
    say(R"--(with )" in it)--");
    x = 0x1'ffp-3 + .5e+3; say("after numbers");`)), [
    'the “#” of "it" \\ it\'s', '\u00a0#\u00a0x\n', 'raw "quotes" \\n and more', 'with )" in it', 'after numbers',
  ]);
});

test('C++: half a sentence is refused', () => {
  assert.throws(() => inCpp('say("Hold to " + speed)'), /not the whole sentence/);
  assert.throws(() => inCpp('say("On " UNIT)'), /not the whole sentence/);
  assert.throws(() => inCpp('plural("# stage", others, n)'), /no second form/);
});

test('page: say and plural, within templates too', () => {
  assert.deepEqual(inPage(String.raw`
    const one = say('Hold to #', speed);
    return html${'`'}<p title="it's ${'$'}{say('In a template')}">${'$'}{found ? html${'`'}<b>${'$'}{plural('# row', '# rows', n)}</b>${'`'} : { a: "}" }[say("Nested")]}</p> say('as text') ${'`'};
    this.kit.say('Long ' + // in parts
      'sentence.');
    say('it\'s', 1);
    say(` + '`It is ${n}`' + String.raw`); say(english, ...values); function say(english: string) {}
    // say('in a comment')
    const pattern = /['"${'`'}]/.test(text) && a / b / say('after a pattern') / c;
    const other = text.replace(/[/']/g, say('another'));`), [
    { msgid: 'Hold to #' },
    { msgid: 'In a template' },
    { msgid: '# row', msgid_plural: '# rows' },
    { msgid: 'Nested' },
    { msgid: 'Long sentence.' },
    { msgid: "it's" },
    { msgid: 'after a pattern' },
    { msgid: 'another' },
  ]);
  assert.throws(() => inPage("say('Hold to ' + speed)"), /not the whole sentence/);
});

test('index.html: the elements with data-say', () => {
  assert.deepEqual(ids(inHtml('<title data-say>Is it &amp; was</title><p>Not it</p><button type="button" data-say class="a">Kept</button><!-- <p data-say>No</p> -->')), ['Is it & was', 'Kept']);
});

test('a sentence is one phrase, wherever it is said; with another context it is another', () => {
  const found = new Map();
  add(found, { msgid: '# set' }, 'a.cpp');
  add(found, { msgid: '# set', msgid_plural: '# sets' }, 'b.cpp');
  add(found, { msgid: '# set' }, 'b.cpp');
  add(found, { msgid: '# set', msgctxt: 'verb' }, 'c.cpp');
  assert.deepEqual([...found], [
    ['# set', { msgid: '# set', msgid_plural: '# sets', files: ['a.cpp', 'b.cpp'] }],
    ['verb\u0004# set', { msgid: '# set', msgctxt: 'verb', files: ['c.cpp'] }],
  ]);
  assert.throws(() => add(found, { msgid: '# set', msgid_plural: '# pairs' }, 'd.cpp'), /is both/);
});
