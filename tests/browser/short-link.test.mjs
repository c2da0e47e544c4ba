// A link is short enough for a message, means the same as the long one, and links of earlier
// versions open.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { read } from '../support/paths.mjs';
import { pageModules } from '../support/page-modules.mjs';
import { house, typed, visit } from './support.mjs';

const { fromFragment, rows, start, toFields, toInput, toLink } = await pageModules('form/values.ts', 'form/fill.ts', 'form/link.ts');
const description = JSON.parse((await loadModule()).describe());
const old = JSON.parse(read('tests/browser/old-links.json'));

const opened = (link) => {
  const { form, ignored, without } = fromFragment(link, description);
  assert.deepEqual([ignored, without], [[], []], link);
  return form;
};
const fields = (form) => Object.fromEntries(form.values);
// Each field under its own path: how a form is kept, and how links were once written.
const spelledOut = (form) => `#${form.sheet.id}?${new URLSearchParams(toFields(form))}`;
const input = (form) => JSON.stringify(toInput(form.sheet.fields, form.values));

test('there is an old link for every sheet', () => {
  assert.deepEqual([...new Set(old.map(({ link }) => /^#([^?]*)/.exec(link)[1]))].sort(), description.sheets.map(({ id }) => id).sort());
});

// A field that the form did not have then stands as in a form not filled in.
const newer = ['wetness', 'road', 'old_or_hard'];
function withNewer({ sheet, values }, then) {
  const initial = new Map(start(sheet, {}, {}));
  return { ...Object.fromEntries(newer.filter((id) => !(id in then) && values.has(id)).map((id) => [id, initial.get(id)])), ...then };
}

for (const { link, fields: then } of old) {
  test(`an old link opens as it did, and the short one made of it too: ${link.slice(0, 60)}`, () => {
    const form = opened(link);
    const expected = withNewer(form, then);
    assert.deepEqual(fields(form), expected);
    const short = toLink(form);
    assert.ok(short.length <= link.length, `${short.length} of ${link.length}`);
    const again = opened(short);
    assert.deepEqual(fields(again), expected, short);
    assert.equal(input(again), input(form));
    assert.equal(toLink(again), short);
    assert.deepEqual(toFields(again), toFields(form));
  });
}

test('the example of every sheet is a link of at most 800 characters', () => {
  for (const sheet of description.sheets) {
    const form = { sheet, values: start(sheet, {}, sheet.example.input), way: '', example: true };
    const [short, long] = [toLink(form), spelledOut(form)];
    console.log(`${sheet.id.padEnd(16)} ${String(long.length).padStart(5)} ${String(short.length).padStart(5)}`);
    assert.ok(short.length <= 800, `${sheet.id}: ${short.length}`);
  }
});

test('whatever is typed, in whatever unit and row, survives a short link: 2000 forms, the same in each run', () => {
  let drawn = 7;
  const below = (n) => {
    drawn = (Math.imul(drawn, 1664525) + 1013904223) >>> 0;
    return Math.floor(drawn / 2 ** 32 * n);
  };
  const pick = (list) => list[below(list.length)];
  const odd = ['', ' ', '~', '~~', '\\', '\\~', 'a~b\\', '5 kg', '430', '2,3', '2.3', '.5', '1e3', '+2.2', ' 5 ', '7/32', '5 /32 in', '5/32 in', '33psi', '-3', '100%25&x=1#?+', '<b>', 'ü🛞', '__proto__', '3 mm ~ 4 mm', '0'];
  const fillWith = (values, list, prefix) => {
    for (const field of list) {
      const path = prefix + field.id;
      if (field.kind === 'list') {
        if (!field.row_names) values.set(`${path}.rows`, String(below(5)));
        for (let row = 0; row < rows(values, path, field); row++) fillWith(values, field.fields, `${path}.${row}.`);
      } else if (below(3)) {
        values.set(path, field.choices ? pick(field.choices).value : pick(odd));
        if (field.units && below(2)) values.set(`${path}.unit`, pick(field.units));
      }
    }
  };
  for (let i = 0; i < 2000; i++) {
    const sheet = pick(description.sheets);
    const values = start(sheet, {});
    fillWith(values, sheet.fields, '');
    const form = { sheet, values, way: '', example: false };
    const [long, short] = [opened(spelledOut(form)), opened(toLink(form))];
    assert.deepEqual(fields(short), fields(long), toLink(form));
    assert.equal(input(short), input(long), toLink(form));
  }
});

test('a unit in the text is never another one\'s for the unit beside it', () => {
  const form = opened('#tyre-check?load=430+kg&load.unit=lb');
  assert.equal(form.values.get('load'), '430 kg');
  assert.equal(JSON.parse(input(form)).load, '430 kg');
  assert.equal(JSON.parse(input(opened('#tyre-check?load=430+kg'))).load, '430 kg');
  assert.equal(JSON.parse(input(opened('#tyre-check?load=430+stone'))).load, '430 stone', 'what is no unit stays text, for the core to refuse');
});

test('columns that are too long, or of no list, are named and left out', () => {
  const { form, ignored } = fromFragment(`#stage-tyres?stages.rows=2&stages.dry=${'5~'.repeat(100000)}&stages.nonsense=1~2&nonsense.dry=1~2&stages.__proto__=1`, description);
  assert.deepEqual([...new Set(ignored)], ['stages.30.dry', 'stages.nonsense', 'nonsense.dry', 'stages.__proto__']);
  assert.equal(rows(form.values, 'stages', form.sheet.fields.find(({ id }) => id === 'stages')), 2);
});

const { site, browser } = await house(after);

test('on the page an old link fills the form, and its address becomes the short one, which does the same', async () => {
  for (const { link } of old.filter(({ link: one }) => /^#(tyre-check|stage-tyres|car-check)\?/.test(one))) {
    const { title } = description.sheets.find(({ id }) => link.startsWith(`#${id}?`));
    const there = (page) => page.getByRole('heading', { name: title, level: 2 }).waitFor();
    const first = await visit(browser, site.url + link);
    await there(first.page);
    const before = await typed(first.page);
    await first.page.locator('form').evaluate((form) => form.requestSubmit());
    await first.page.waitForFunction((long) => location.hash !== long, link);
    const second = await visit(browser, first.page.url());
    await there(second.page);
    assert.deepEqual(await typed(second.page), before);
    await first.context.close();
    await second.context.close();
  }
});
