// Every sheet of the core, as it opens with its example: drawn whole, without errors, no wider than
// the screen, on one page of paper, and clean for axe.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { after, test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { desk, field, house, own, phone, visit } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const { site, browser } = await house(after);
const sheets = JSON.parse((await loadModule()).describe()).sheets;

async function open(sheet, options) {
  const { context, page, seen } = await visit(browser, `${site.url}#${sheet.id}`, options);
  await page.getByRole('heading', { name: sheet.title, level: 2 }).waitFor();
  await page.waitForLoadState('networkidle');
  return { context, page, seen };
}

async function flaws(page) {
  await page.evaluate(axe);
  const found = await page.evaluate(() => globalThis.axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }));
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 120)).join(' | ')}`);
}

for (const sheet of sheets) {
  for (const [name, options] of [
    ['on a phone, light', { viewport: phone, colorScheme: 'light' }],
    ['on a desk, dark', { viewport: desk, colorScheme: 'dark' }],
  ]) {
    test(`${sheet.id}: the example is answered, whole and clean, ${name}`, async () => {
      const { context, page, seen } = await open(sheet, options);
      assert.match(await page.locator('.verdict').innerText(), /\w/);
      for (const details of await page.locator('.answering details').all()) await details.evaluate((one) => { one.open = true; });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      assert.ok(wide <= 0, `${wide} px too wide`);
      assert.deepEqual(await flaws(page), []);
      assert.deepEqual(seen.complaints, []);
      assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
      await context.close();
    });
  }

  test(`${sheet.id}: from the example to one's own figures, and what is missing is named`, async () => {
    const { context, page, seen } = await open(sheet, { viewport: phone });
    await own(page).click();
    await page.getByRole('button', { name: 'Check', exact: true }).click();
    const required = sheet.fields.filter((one) => one.required);
    for (const one of required) assert.ok(await field(page, one.id).getAttribute('aria-invalid'), one.id);
    assert.deepEqual(await flaws(page), []);
    assert.deepEqual(seen.complaints, []);
    await context.close();
  });
}

test('without the whole core the first sheet works on, and another says why it is not there', async () => {
  const context = await browser.newContext({ viewport: phone, serviceWorkers: 'block' });
  await context.route(/later-treadwater/, (route) => route.abort());
  const page = await context.newPage();
  await page.goto(`${site.url}#puncture`);
  await page.getByText('The other sheets did not load.').waitFor();
  assert.match(await page.locator('.verdict').innerText(), /\w/);
  await context.close();
});
