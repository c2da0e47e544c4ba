// The settings: the user's choices for every sheet and visit, and how the page looks.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { after, test } from 'node:test';

import { answered, desk, fillIn, focused, house, KERB, own, phone, ready, typed, visit } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const { site, browser } = await house(after);

const opened = (options = {}) => visit(browser, site.url, { serviceWorkers: 'block', ...options });
const settings = (page) => page.getByRole('button', { name: 'Settings', exact: true });
const look = (page) => page.evaluate(() => [document.documentElement.dataset.look, getComputedStyle(document.body).backgroundColor, getComputedStyle(document.body).color]);
const size = (page) => page.evaluate(() => parseFloat(getComputedStyle(document.documentElement).fontSize));

async function openPanel(page) {
  await settings(page).click();
  await page.getByRole('heading', { name: 'Settings' }).waitFor();
}

test('units and law are set for the form that is open, for other sheets and for the next visit', async () => {
  const { context, page, seen } = await opened();
  await page.waitForLoadState('networkidle');
  await openPanel(page);
  await page.getByLabel('Units of the answer').last().selectOption('us');
  const law = page.locator('#set-place');
  const other = await law.evaluate((select) => [...select.options].find((option) => !option.selected).value);
  await law.selectOption(other);
  assert.equal((await typed(page)).units, 'us');
  assert.equal((await typed(page)).place, other);
  await page.locator('[data-path=units][value=uk]').check();
  assert.equal(await page.locator('#set-units').inputValue(), 'uk', 'what is chosen in the form shows here too');
  await page.goto(`${site.url}#standing-water`);
  await page.getByRole('heading', { name: 'Standing water', level: 2 }).waitFor();
  assert.equal((await typed(page)).units, 'uk');
  await page.goto('about:blank');
  await page.goto(site.url);
  await ready(page);
  assert.equal((await typed(page)).place, other);
  assert.deepEqual(seen.complaints, []);
  assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
  await context.close();
});

test('the look is chosen, holds against the device, and comes back before the first paint', async () => {
  const { context, page, seen } = await opened({ colorScheme: 'light' });
  const [, paper] = await look(page);
  await openPanel(page);
  await page.getByLabel('Look').selectOption('dark');
  const dark = await look(page);
  assert.equal(dark[0], 'dark');
  assert.notEqual(dark[1], paper);
  assert.equal(await page.locator('meta[name=theme-color]').first().getAttribute('content'), '#12171a');

  // At the first frame that can be seen the page is dark already, long before its module has come.
  await page.addInitScript(() => {
    globalThis.frames = [];
    const note = () => {
      if (document.body) globalThis.frames.push(getComputedStyle(document.body).backgroundColor);
      if (globalThis.frames.length < 5) requestAnimationFrame(note);
    };
    requestAnimationFrame(note);
  });
  await page.route('**/index-*.js', async (route) => { await new Promise((next) => setTimeout(next, 300)); await route.continue(); });
  await page.reload();
  await ready(page);
  const frames = await page.evaluate(() => globalThis.frames);
  assert.deepEqual([...new Set(frames)], [dark[1]]);

  await openPanel(page);
  await page.getByLabel('Look').selectOption('');
  assert.equal((await look(page))[1], paper);
  await page.emulateMedia({ colorScheme: 'dark' });
  assert.equal((await look(page))[1], dark[1], 'as the device');
  await page.getByLabel('Look').selectOption('light');
  assert.equal((await look(page))[1], paper, 'light on a dark device');
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  assert.equal((await look(page))[1], 'rgb(255, 255, 255)', 'paper is white');
  assert.deepEqual(seen.complaints, []);
  assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
  await context.close();
});

test('high contrast is black and white, and another tab follows', async () => {
  for (const [colorScheme, paper, ink] of [['light', 'rgb(255, 255, 255)', 'rgb(0, 0, 0)'], ['dark', 'rgb(0, 0, 0)', 'rgb(255, 255, 255)']]) {
    const { context, page } = await opened({ colorScheme });
    const tab = await context.newPage();
    await tab.goto(site.url);
    await ready(tab);
    await tab.emulateMedia({ colorScheme });
    await openPanel(page);
    await page.getByLabel('Look').selectOption('contrast');
    assert.deepEqual(await look(page), ['contrast', paper, ink]);
    await tab.waitForFunction(() => document.documentElement.dataset.look === 'contrast');
    assert.deepEqual(await look(tab), ['contrast', paper, ink]);
    await context.close();
  }
});

test('the text grows, stays so, and nothing runs out of the narrowest phone', async () => {
  const { context, page } = await opened({ viewport: { width: 320, height: 640 } });
  const usual = await size(page);
  await openPanel(page);
  await page.getByLabel('Size of the text').selectOption('largest');
  const largest = await size(page);
  assert.ok(largest >= usual * 1.4, `${usual} ${largest}`);
  await page.reload();
  await ready(page);
  assert.equal(await size(page), largest);
  await own(page).click();
  await fillIn(page, KERB);
  await answered(page);
  for (const summary of await page.locator('summary').all()) await summary.click();
  await openPanel(page);
  assert.equal(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0);
  await page.emulateMedia({ media: 'print' });
  assert.ok(await size(page) < usual, 'paper keeps its own size');
  await context.close();
});

test('where storage is refused, settings hold for the visit, and the page says that they will not stay', async () => {
  const context = await browser.newContext({ viewport: phone, locale: 'en-GB', serviceWorkers: 'block' });
  const page = await context.newPage();
  const complaints = [];
  page.on('pageerror', (error) => complaints.push(String(error)));
  await page.addInitScript(() => Object.defineProperty(globalThis, 'localStorage', { get() { throw new DOMException('no', 'SecurityError'); } }));
  await page.goto(site.url);
  await ready(page);
  await openPanel(page);
  await page.getByLabel('Look').selectOption('dark');
  await page.locator('#set-units').selectOption('uk');
  assert.equal((await look(page))[0], 'dark');
  assert.equal((await typed(page)).units, 'uk');
  await page.getByText('they hold until it is closed').waitFor();
  assert.deepEqual(complaints, []);
  await context.close();
});

for (const value of ['<img src=x>', '__proto__', 'x'.repeat(10_000)]) {
  test(`a kept look that is none (${value.slice(0, 12)}) is left alone`, async () => {
    const { context, page, seen } = await opened();
    await page.evaluate((kept) => ['look', 'text', 'units', 'language'].forEach((id) => localStorage.setItem(`treadwater.${id}`, kept)), value);
    await page.reload();
    await ready(page);
    assert.equal((await look(page))[0], undefined);
    await openPanel(page);
    assert.deepEqual(seen.complaints, []);
    await context.close();
  });
}

test('a press before the page has started is kept, and a panel that does not load says so', async () => {
  const context = await browser.newContext({ viewport: phone, locale: 'en-GB', serviceWorkers: 'block' });
  const page = await context.newPage();
  let letGo;
  const held = new Promise((next) => { letGo = next; });
  await page.route('**/treadwater-first*.wasm', async (route) => { await held; await route.continue(); });
  await page.route(/later-panel/, (route) => route.abort());
  await page.goto(site.url, { waitUntil: 'commit' });
  await page.waitForFunction(() => document.readyState === 'complete' || document.readyState === 'interactive');
  await page.waitForTimeout(300);
  await settings(page).click();
  letGo();
  await page.getByRole('heading', { name: 'Settings' }).waitFor();
  await page.getByRole('button', { name: 'Kept', exact: true }).click();
  await page.getByText('This part of the page did not load').waitFor();
  await context.close();
});

test('by keyboard alone: to the panel, through it in the order it is read, and back', async () => {
  const { context, page } = await opened();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  assert.equal(await page.evaluate(() => document.activeElement.innerText), 'Settings');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement.id === 'panel-heading');
  assert.equal(await settings(page).getAttribute('aria-expanded'), 'true');
  const order = [];
  for (let i = 0; i < 6; i++) {
    await page.keyboard.press('Tab');
    order.push(await focused(page));
  }
  assert.deepEqual(order, ['set-units', 'set-place', 'set-language', 'set-look', 'set-text', '']);
  assert.equal(await page.evaluate(() => document.activeElement.innerText), 'Close');
  await page.keyboard.press('Enter');
  assert.equal(await page.evaluate(() => document.activeElement.innerText), 'Settings');
  assert.equal(await settings(page).getAttribute('aria-expanded'), 'false');
  await context.close();
});

for (const [chosen, colorScheme, viewport, forcedColors] of [
  ['', 'light', { width: 320, height: 640 }], ['light', 'dark', phone], ['dark', 'light', desk], ['contrast', 'light', phone],
  ['contrast', 'dark', desk], ['contrast', 'dark', phone, 'active'],
]) {
  test(`axe finds nothing in the settings and in an answer: ${chosen || 'as the device'}, ${colorScheme}, ${viewport.width} px${forcedColors ? ', forced colours' : ''}`, async () => {
    const { context, page } = await opened({ bypassCSP: true, colorScheme, viewport, ...(forcedColors && { forcedColors }) });
    await own(page).click();
    await fillIn(page, KERB);
    await answered(page);
    for (const summary of await page.locator('summary').all()) await summary.click();
    await openPanel(page);
    await page.getByLabel('Look').selectOption(chosen);
    await page.getByLabel('Size of the text').selectOption('larger');
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0);
    await page.evaluate(axe);
    const { violations } = await page.evaluate(() => globalThis.axe.run());
    assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`), []);
    const small = await page.evaluate(() => [...document.querySelectorAll('.tools button, #panel button, #panel select')]
      .filter((one) => one.getBoundingClientRect().height < 44 || one.getBoundingClientRect().width < 44).map((one) => one.outerHTML.slice(0, 80)));
    assert.deepEqual(small, []);
    await context.close();
  });
}

test('a chart is drawn anew in the colours that were chosen', async () => {
  const { context, page } = await opened();
  await page.goto(`${site.url}#standing-water`);
  await page.getByRole('heading', { name: 'Standing water', level: 2 }).waitFor();
  await page.locator('line-plot canvas').first().waitFor();
  const dots = () => page.locator('line-plot canvas').first().evaluate((canvas) => canvas.toDataURL());
  const before = await dots();
  await openPanel(page);
  await page.getByLabel('Look').selectOption('dark');
  const end = Date.now() + 5000;
  while (await dots() === before && Date.now() < end) await page.waitForTimeout(50);
  assert.notEqual(await dots(), before);
  await context.close();
});
