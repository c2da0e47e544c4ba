// After one visit the page works without a server or a signal.
import assert from 'node:assert/strict';
import { appendFileSync, cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';

import { pageFolder } from '../support/paths.mjs';
import { answered, field, fillIn, holdTo, house, KERB, own, ready, typed, visit } from './support.mjs';

const kept = (page) => page.getByText('kept on this device').waitFor();

test('with the server stopped, a reload still gives the form, what was typed, and answers', async (t) => {
  const { site, browser } = await house(t.after.bind(t));
  const { page, seen } = await visit(browser, site.url);
  await kept(page);
  await own(page).click();
  await fillIn(page, KERB);
  await answered(page);
  const before = { form: await typed(page), hold: await holdTo(page) };

  await site.stop();
  await assert.rejects(fetch(site.url), 'the server is gone');
  await page.reload();
  await ready(page);
  assert.deepEqual({ form: await typed(page), hold: await holdTo(page) }, before);

  await page.getByRole('button', { name: 'Empty the form' }).click();
  await fillIn(page, { ...KERB, tread: '7', water: '1' });
  await answered(page);
  assert.notEqual(await holdTo(page), '');
  assert.equal(await field(page, 'tread').inputValue(), '7');

  await page.goto(`${site.url}index.html?from=message#tyre-check?size=${encodeURIComponent(KERB.size)}`);
  await ready(page);
  assert.equal(await field(page, 'size').inputValue(), KERB.size, 'a link opens without a server too');
  assert.deepEqual(seen.complaints, []);
});

test('with no connection at all, the page opens in a new tab', async (t) => {
  const { site, browser } = await house(t.after.bind(t));
  const { context, page } = await visit(browser, site.url);
  await kept(page);
  await context.setOffline(true);
  const tab = await context.newPage();
  await tab.goto(site.url);
  await ready(tab);
  assert.notEqual(await holdTo(tab), '');
});

test('a new version waits until it is asked for, and then takes over with the form as it was', async (t) => {
  const folder = mkdtempSync(join(tmpdir(), 'treadwater-'));
  t.after(() => rmSync(folder, { recursive: true }));
  cpSync(pageFolder, folder, { recursive: true });
  const { site, browser } = await house(t.after.bind(t), { folder });
  const { page } = await visit(browser, site.url);
  await kept(page);
  await own(page).click();
  await fillIn(page, KERB);
  await answered(page);
  const before = await typed(page);

  appendFileSync(join(folder, 'sw.js'), '\n// a later version\n');
  await page.reload();
  const use = page.getByRole('button', { name: 'Use it now' });
  await use.waitFor();
  await page.evaluate(() => { globalThis.old = true; });
  assert.ok(await page.evaluate(async () => !!(await navigator.serviceWorker.getRegistration()).waiting), 'it waits');
  await use.click();
  await page.waitForFunction(() => !globalThis.old);
  await ready(page);
  assert.deepEqual(await typed(page), before);
  assert.equal(await page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).waiting), null);
});
