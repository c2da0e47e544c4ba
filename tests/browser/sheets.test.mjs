// From one sheet to another: on a phone behind one button, on a desktop side by side.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { after, test } from 'node:test';

import { CORNERS, invented, STAGES } from './invented.mjs';
import { check, desk, field, focused, house, own, phone } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const { site, browser } = await house(after);

const more = ['How deep is it', 'Cold pressure', 'Stopping', 'Will it fit', 'A puncture', 'Tyres for a whole field', 'Keep a log']
  .map((title, i) => ({ ...STAGES, id: `more-${i}`, title }));
const ten = [CORNERS, STAGES, ...more];

const open = (options, before) => invented(browser, site.url, { sheets: ten, before }, options);
const nav = (page) => page.getByRole('navigation', { name: 'Sheets' });
const folder = (page) => nav(page).getByRole('button');

test('on a phone the sheets take one line, and it does not move when the whole core comes', async () => {
  let let_go;
  const held = new Promise((resolve) => { let_go = resolve; });
  const { context, page } = await open({ viewport: phone }, async (page) => {
    await page.addInitScript(() => {
      globalThis.shift = 0;
      new PerformanceObserver((list) => list.getEntries().forEach((entry) => { globalThis.shift += entry.value; })).observe({ type: 'layout-shift', buffered: true });
    });
    await page.route(/later-treadwater.*\.js/, async (route) => { await held; await route.continue(); });
  });
  const before = await nav(page).boundingBox();
  assert.ok(before.height < 60 && before.y + before.height < 500, JSON.stringify(before));
  assert.equal(await folder(page).innerText(), 'Sheet: Check one tyre');
  await folder(page).click();
  await page.getByRole('link', { name: 'Check a whole car' }).click();
  await page.getByText('This sheet is on its way.').waitFor();
  let_go();
  await page.getByRole('heading', { name: 'Check a whole car' }).waitFor();
  assert.equal((await nav(page).boundingBox()).height, before.height);
  assert.equal(await folder(page).innerText(), 'Sheet: Check a whole car');
  await context.close();

  const quiet = await open({ viewport: phone }, (page) => page.addInitScript(() => {
    globalThis.shift = 0;
    new PerformanceObserver((list) => list.getEntries().forEach((entry) => { globalThis.shift += entry.value; })).observe({ type: 'layout-shift', buffered: true });
  }));
  await quiet.page.waitForLoadState('networkidle');
  assert.equal(await quiet.page.evaluate(() => globalThis.shift), 0);
  await quiet.context.close();
});

test('a sheet that is chosen on a phone folds the list and takes the focus', async () => {
  const { context, page } = await open({ viewport: phone });
  await page.waitForLoadState('networkidle');
  assert.equal(await folder(page).getAttribute('aria-expanded'), 'false');
  await page.getByRole('link', { name: 'Stopping' }).waitFor({ state: 'hidden' });
  await folder(page).click();
  assert.equal(await folder(page).getAttribute('aria-expanded'), 'true');
  assert.equal(await nav(page).getByRole('link').count(), 10);
  assert.equal(await nav(page).locator('[aria-current=page]').innerText(), 'Check one tyre');
  const small = await nav(page).locator('a, button').evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 44).length);
  assert.equal(small, 0);
  await page.getByRole('link', { name: 'Stopping' }).click();
  await page.getByRole('heading', { name: 'Stopping' }).waitFor();
  assert.equal(await focused(page), 'form');
  assert.equal(await folder(page).getAttribute('aria-expanded'), 'false');
  assert.equal(await folder(page).innerText(), 'Sheet: Stopping');
  await context.close();
});

test('the sheet one is on costs nothing when it is chosen again', async () => {
  const { context, page } = await open({ viewport: phone });
  await own(page).click();
  await field(page, 'size').fill('185/65 R15 88T');
  await folder(page).click();
  await nav(page).locator('[aria-current=page]').click();
  assert.equal(await focused(page), 'form');
  assert.equal(await folder(page).getAttribute('aria-expanded'), 'false');
  assert.equal(await field(page, 'size').inputValue(), '185/65 R15 88T');
  await context.close();
});

test('on a desk the sheets are side by side, with no button before them', async () => {
  const { context, page } = await open({ viewport: desk });
  await page.waitForLoadState('networkidle');
  assert.equal(await folder(page).count(), 0);
  assert.equal(await nav(page).getByRole('link').count(), 10);
  assert.ok((await nav(page).boundingBox()).height < 140);
  await page.getByRole('link', { name: 'Check a whole car' }).click();
  await page.getByRole('heading', { name: 'Check a whole car' }).waitFor();
  await check(page).click();
  assert.equal(await nav(page).locator('[aria-current=page]').innerText(), 'Check a whole car');
  await context.close();
});

for (const [colorScheme, viewport] of [['light', { width: 320, height: 640 }], ['dark', phone], ['dark', desk]]) {
  test(`axe finds nothing in the open list of sheets: ${colorScheme}, ${viewport.width} px`, async () => {
    const { context, page } = await open({ viewport, colorScheme, bypassCSP: true });
    await page.waitForLoadState('networkidle');
    if (viewport !== desk) await folder(page).click();
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0);
    await page.evaluate(axe);
    const { violations } = await page.evaluate(() => globalThis.axe.run());
    assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`), []);
    await context.close();
  });
}
