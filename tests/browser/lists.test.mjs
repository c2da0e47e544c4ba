// Lists in forms: rows with fixed names, or any number; filled by copying, folded to a line.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { after, test } from 'node:test';

import { CORNERS, invented, STAGES } from './invented.mjs';
import { check, desk, field, focused, house, own, phone, typed } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const { site, browser } = await house(after);

async function form(sheet, options, fragment = `#${sheet.id}`) {
  const opened = await invented(browser, site.url + fragment, { sheets: [CORNERS, STAGES] }, options);
  await opened.page.locator('.row').first().waitFor();
  return opened;
}

const row = (page, i) => page.locator('.row').nth(i);
const head = (page, i) => row(page, i).locator('summary');
const unfolded = (page) => page.locator('.row > details').evaluateAll((rows) => rows.map(({ open }) => open));
const asked = (page) => page.evaluate(() => globalThis.asked);
const button = (page, name) => page.getByRole('button', { name, exact: true });
const hashNames = (page, text) => page.waitForFunction((part) => location.hash.includes(part), text);

async function threeStages(page) {
  for (const [i, name] of ['Long Forest', 'Old Quarry', 'Town'].entries()) {
    if (i) await button(page, 'Add one more').click();
    await field(page, `stages.${i}.name`).fill(name);
    await field(page, `stages.${i}.length`).fill(String(10 + i));
  }
}

test('rows of fixed names are there from the start, and are neither added nor removed', async () => {
  const { context, page, complaints } = await form(CORNERS);
  const names = CORNERS.fields[0].row_names;
  assert.equal(await page.locator('.row').count(), 4);
  for (const [i, name] of names.entries()) assert.match(await head(page, i).innerText(), new RegExp(`^${name}`));
  for (const gone of ['Add one more', /^Remove/, /^Move/]) assert.equal(await page.getByRole('button', { name: gone }).count(), 0);
  assert.deepEqual((await asked(page)).corners, CORNERS.example.input.corners.map((corner) => ({ ...corner, kind: 'road' })), 'the example fills every row');
  assert.match(await head(page, 2).innerText(), /205\/55 R16 91V, 380.kg, 3.mm/, 'a folded row says what is in it');
  assert.deepEqual(await unfolded(page), [true, false, false, false]);
  await own(page).click();
  assert.deepEqual((await asked(page)).corners, Array(4).fill({ kind: 'road' }), 'and its own figures leave with it');
  assert.match(await head(page, 2).innerText(), /Empty/);
  assert.deepEqual(complaints, []);
  await context.close();
});

test('one tap copies every field of the row above, with its unit, and it can be brought back', async () => {
  const { context, page } = await form(CORNERS);
  await own(page).click();
  await field(page, 'corners.0.size').fill('185/65 R15 88T');
  await field(page, 'corners.0.load').fill('900');
  await page.locator('[data-path="corners.0.load.unit"]').selectOption('lb');
  await field(page, 'corners.0.kind').selectOption('gravel');
  await button(page, 'Copy from the row above Front right').click();
  await button(page, 'Copy from the row above Rear left').click();
  const said = { size: '185/65 R15 88T', load: '900 lb', kind: 'gravel' };
  assert.deepEqual((await asked(page)).corners, [said, said, said, { kind: 'road' }]);
  assert.match(await page.locator('p[role=status].unseen').innerText(), /Rear left is now the same as Front right/);
  assert.equal(await page.getByRole('button', { name: /^Copy from the row above/ }).count(), 3, 'there is nothing above the first');
  await button(page, 'Bring it back').click();
  assert.deepEqual((await asked(page)).corners, [said, said, { kind: 'road' }, { kind: 'road' }]);
  await context.close();
});

test('a row that is missing something says so by its name, and opens when it is gone to', async () => {
  const { context, page } = await form(CORNERS);
  await page.evaluate(() => {
    globalThis.problems = ({ corners }) => corners.flatMap(({ load }, i) => (load ? [] : [{ field: `corners.${i}.load`, code: 'missing', text: `The load of corner ${i + 1} is missing.` }]));
  });
  await own(page).click();
  await field(page, 'corners.0.load').fill('430');
  await page.waitForFunction(() => document.querySelectorAll('.plain a').length === 3);
  assert.deepEqual(await page.locator('.plain a').allInnerTexts(), ['Front right', 'Rear left', 'Rear right'].map((name) => `${name}: Load on this wheel`));
  await check(page).click();
  assert.match(await head(page, 1).innerText(), /To put right/);
  await page.locator('.summary a').nth(1).click();
  assert.equal(await focused(page), 'field-corners.2.load');
  assert.ok(await field(page, 'corners.2.load').isVisible());
  assert.equal(await page.getByRole('group', { name: 'Rear left' }).getByLabel('Load on this wheel (kg)').count(), 1, 'a screen reader hears the row too');
  await context.close();
});

test('rows are added, moved and removed, and the focus goes along', async () => {
  const { context, page } = await form(STAGES);
  await threeStages(page);
  assert.deepEqual(await unfolded(page), [false, false, true], 'the rows before a new one fold up');
  assert.match(await head(page, 0).innerText(), /Long Forest, 10.km/);
  const names = async () => (await asked(page)).stages.map(({ name }) => name);

  await button(page, 'Move up Stage 3').click();
  assert.deepEqual(await names(), ['Long Forest', 'Town', 'Old Quarry']);
  assert.deepEqual(await unfolded(page), [false, true, false], 'an unfolded row stays so where it goes');
  assert.equal(await page.evaluate(() => document.activeElement.textContent), 'Move up Stage 2');
  await page.keyboard.press('Enter');
  assert.deepEqual(await names(), ['Town', 'Long Forest', 'Old Quarry']);
  assert.equal(await page.evaluate(() => document.activeElement.textContent), 'Move down Stage 1', 'it cannot go further up');
  await page.keyboard.press('Enter');
  assert.deepEqual(await names(), ['Long Forest', 'Town', 'Old Quarry']);

  await button(page, 'Remove Stage 2').click();
  assert.deepEqual(await names(), ['Long Forest', 'Old Quarry']);
  assert.equal(await page.evaluate(() => document.activeElement.tagName), 'SUMMARY');
  await button(page, 'Bring it back').click();
  assert.deepEqual(await names(), ['Long Forest', 'Town', 'Old Quarry']);

  await button(page, 'Add one more').click();
  assert.equal(await focused(page), 'field-stages.3.name');
  for (let left = 4; left; left--) {
    if (!(await unfolded(page))[0]) await head(page, 0).click();
    await button(page, 'Remove Stage 1').click();
  }
  assert.deepEqual((await asked(page)).stages, []);
  assert.equal(await page.evaluate(() => document.activeElement.innerText), 'Add one more');
  await context.close();
});

test('what a person folds or unfolds stays so while they type, and starts anew with another form', async () => {
  const { context, page } = await form(STAGES);
  await threeStages(page);
  await head(page, 0).click();
  await head(page, 2).click();
  await field(page, 'stages.0.runs').fill('2');
  await hashNames(page, 'stages.runs=2');
  assert.deepEqual(await unfolded(page), [true, false, false]);
  await head(page, 0).click();
  await head(page, 1).click();
  await button(page, 'Empty the form').click();
  assert.deepEqual(await unfolded(page), [true]);
  await context.close();
});

test('every kind of field works in a row', async () => {
  const { context, page } = await form(STAGES);
  await field(page, 'stages.0.name').fill('Long Forest');
  await field(page, 'stages.0.runs').fill('3');
  await field(page, 'stages.0.wet').check();
  await field(page, 'stages.0.day').fill('2026-05-06');
  await hashNames(page, 'stages.day=2026-05-06');
  await check(page).click();
  assert.deepEqual((await asked(page)).stages, [{ name: 'Long Forest', runs: '3', wet: 'yes', day: '2026-05-06' }]);
  assert.match(await head(page, 0).innerText(), /Long Forest, Runs 3, Wet yes, Day 2026-05-06/);
  await context.close();
});

test('a list goes into the link and comes back; a link cannot add to rows of fixed names', async () => {
  const { context, page } = await form(STAGES);
  await threeStages(page);
  await hashNames(page, '~12+km');
  const before = await typed(page);
  const link = page.url();
  await context.close();
  const second = await form(STAGES, {}, new URL(link).hash);
  assert.deepEqual(await typed(second.page), before);
  await second.context.close();

  const hostile = await form(CORNERS, {}, '#corners?corners.rows=9&corners.3.load=390&corners.4.load=400&corners.x.load=1');
  assert.equal(await row(hostile.page, 4).count(), 0);
  assert.match(await head(hostile.page, 3).innerText(), /390.kg/);
  assert.match(await hostile.page.locator('.notice').innerText(), /“corners.rows”, “corners.4.load”, “corners.x.load”/);
  await hostile.context.close();
});

for (const sheet of [CORNERS, STAGES]) {
  for (const [colorScheme, viewport] of [['light', { width: 320, height: 640 }], ['dark', phone], ['light', desk]]) {
    test(`axe finds nothing in a list, nothing runs out, and all is large enough: ${sheet.id}, ${colorScheme}, ${viewport.width} px`, async () => {
      const { context, page } = await form(sheet, { viewport, colorScheme, bypassCSP: true });
      if (sheet === STAGES) await threeStages(page);
      for (const [i, open] of (await unfolded(page)).entries()) if (!open) await head(page, i).click();
      const small = await page.locator('.list button, .list summary').evaluateAll((all) => all
        .filter((one) => one.getBoundingClientRect().height < 44 || one.getBoundingClientRect().width < 44).map((one) => one.innerText));
      assert.deepEqual(small, []);
      assert.equal(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0);
      await page.evaluate(axe);
      const { violations } = await page.evaluate(() => globalThis.axe.run());
      assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`), []);
      await context.close();
    });
  }
}
