// The core says, the page draws: a sheet, a kind of field and a kind of block unknown to the page.
// The core's text is changed on its way into the page; everything else is the page as built.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';

import { check, desk, field, focused, house, ready, typed, visit } from './support.mjs';

const { site, browser } = await house(after);

// Runs in the page before it starts: describe() gains a sheet, and answers to that sheet are ours.
function inventSheet() {
  const sheet = {
    id: 'barrel-check', title: 'Check the barrels', purpose: 'Says whether the barrels will hold.',
    fields: [
      { id: 'mark', label: 'Mark', hint: '', kind: 'text', required: true, default: '', example: 'oak' },
      { id: 'barrels', label: 'Barrel', hint: 'One row for each.', kind: 'list', fields: [
        { id: 'depth', label: 'Depth', hint: '', kind: 'quantity', units: ['m', 'ft'], preferred: { metric: 'm' }, required: true, default: '' },
        { id: 'full', label: 'Full', hint: '', kind: 'yes-no', default: 'no' }] },
      { id: 'made', label: 'Made on', hint: '', kind: 'date', default: '' },
      { id: 'count', label: 'How many', hint: '', kind: 'number', default: '' },
      { id: 'size', label: 'Shape', hint: '', kind: 'choice', default: '', choices: ['a', 'b', 'c', 'd'].map((value) => ({ value, label: value.toUpperCase() })) },
    ],
  };
  const answer = {
    sheet: sheet.id, ok: true, problems: [], verdict: { level: 'fit', text: 'The barrels will hold.' }, limits: [], figures: [], cautions: [],
    blocks: [{ kind: 'hologram', id: 'h', title: 'Never drawn' }, { kind: 'table', id: 't', title: 'Barrels', columns: ['No.', 'Depth'], rows: [['1', '<b>2 m</b>']] }],
    sources: {}, safety: 'Mind the barrels.',
  };
  const parse = JSON.parse;
  const write = JSON.stringify;
  JSON.stringify = (value, ...rest) => {
    if (value && 'barrels' in value) globalThis.asked = parse(write(value));
    return write(value, ...rest);
  };
  JSON.parse = (text, ...rest) => {
    const value = parse(text, ...rest);
    if (value.sheets && value.ways) value.sheets.push(sheet);
    if (value.problems?.[0]?.code === 'unknown_sheet') {
      const wrong = globalThis.asked.mark ? [] : [{ field: 'mark', code: 'missing', text: 'The mark is missing.' }];
      if (globalThis.asked.barrels[1] && !globalThis.asked.barrels[1].depth) wrong.push({ field: 'barrels.1.depth', code: 'missing', text: 'The second depth is missing.' });
      const { verdict, ...rest } = answer;
      return wrong.length ? { ...rest, ok: false, problems: wrong } : answer;
    }
    return value;
  };
}

async function barrels(fragment) {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.addInitScript(inventSheet);
  await page.goto(site.url + fragment);
  await ready(page);
  return { context, page };
}

test('a sheet that only the core knows gets its form, its answer and its link', async () => {
  const { context, page } = await barrels('');
  await page.getByRole('button', { name: 'Sheet: Check one tyre' }).click();
  await page.getByRole('link', { name: 'Check the barrels' }).click();
  await field(page, 'mark').fill('X');
  await field(page, 'barrels.0.depth').fill('2');
  await page.getByRole('button', { name: 'Add one more' }).click();
  await field(page, 'barrels.1.depth').waitFor();
  await check(page).click();
  assert.equal(await focused(page), 'problems');
  await page.locator('.summary a').click();
  assert.equal(await focused(page), 'field-barrels.1.depth');
  await page.keyboard.type('3 ft');
  await page.locator('[id="field-barrels.1.full"]').check();
  await field(page, 'made').fill('2024-05-06');
  await field(page, 'count').fill('2');
  await field(page, 'size').selectOption('c');
  await check(page).click();
  assert.equal(await focused(page), 'answer-heading');
  const { today, language, ...asked } = await page.evaluate(() => globalThis.asked);
  assert.match(today, /^\d{4}-\d\d-\d\d$/);
  assert.equal(language, 'en');
  assert.deepEqual(asked, { mark: 'X', barrels: [{ depth: '2 m', full: 'no' }, { depth: '3 ft', full: 'yes' }], made: '2024-05-06', count: '2', size: 'c' });

  const answer = await page.locator('.answering').innerText();
  assert.match(answer, /The barrels will hold/);
  assert.match(answer, /<b>2 m<\/b>/, 'text is only ever text');
  assert.doesNotMatch(answer, /Never drawn|Hold to/);

  const before = await typed(page);
  await page.getByRole('button', { name: 'Sheet: Check the barrels' }).click();
  await page.getByRole('link', { name: 'Check one tyre' }).click();
  await field(page, 'tread').waitFor();
  await page.goBack();
  await field(page, 'mark').waitFor();
  assert.deepEqual(await typed(page), before, 'another sheet does not cost what was typed');
  await page.reload();
  await ready(page);
  assert.deepEqual(await typed(page), before);
  await page.getByRole('button', { name: 'Remove Barrel 1' }).click();
  assert.equal(await field(page, 'barrels.0.depth').inputValue(), '3 ft');
  assert.equal(await field(page, 'barrels.1.depth').count(), 0);
  await context.close();
});

test('every field, choice and way that the core describes is drawn, with its own words', async () => {
  const { context, page } = await visit(browser, site.url);
  const { loadCore } = await import('../support/core.mjs');
  const { ways, sheets: [sheet] } = (await loadCore()).describe();
  const shown = await page.locator('main').innerText();
  for (const { title, text } of ways) assert.ok(shown.includes(title) && shown.includes(text));
  for (const { id, label, hint, choices = [] } of sheet.fields) {
    assert.ok(shown.includes(label) && shown.includes(hint), id);
    assert.equal(await field(page, id).count(), 1, id);
    for (const { value } of choices) assert.equal(await page.locator(`[data-path="${id}"][value="${value}"], [data-path="${id}"] option[value="${value}"]`).count(), 1, value);
  }
  await context.close();
});

test('a drawing comes to true size by a real card, and stays so on the next visit', async () => {
  const { context, page } = await visit(browser, site.url, { viewport: desk });
  const card = page.locator('.drawing rect.scale').first();
  const small = (await card.boundingBox()).width;
  await page.locator('.true-size summary').click();
  const slide = page.locator('.true-size input');
  await slide.fill('5');
  assert.ok(Math.abs((await card.boundingBox()).width - 85.6 * 5) < 3);
  await page.locator('.true-size summary').click();
  assert.ok(Math.abs((await card.boundingBox()).width - small) < 1);
  await page.reload();
  await page.locator('.true-size summary').click();
  assert.ok(Math.abs((await card.boundingBox()).width - 85.6 * 5) < 3);
  assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
  await context.close();
});
