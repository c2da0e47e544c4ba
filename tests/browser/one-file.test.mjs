// The page in one file, opened from a disk, and the zip that a club's webmaster unpacks.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { after, before, test } from 'node:test';
import { pathToFileURL } from 'node:url';

import { unzipSync } from 'fflate';

import { launch } from '../support/browser.mjs';
import { loadModule } from '../support/core.mjs';
import { root } from '../support/paths.mjs';
import { serve } from '../support/server.mjs';
import { answered, desk, fillIn, holdTo, KERB, own, phone, ready, visit } from './support.mjs';

const file = pathToFileURL(join(root, 'web/dist/treadwater-one-file.html')).href;
const unpacked = mkdtempSync(join(tmpdir(), 'treadwater-'));
let browser;

before(async () => {
  browser = await launch();
  for (const [name, bytes] of Object.entries(unzipSync(readFileSync(join(root, 'build/treadwater-page.zip'))))) {
    mkdirSync(dirname(join(unpacked, name)), { recursive: true });
    writeFileSync(join(unpacked, name), bytes);
  }
});
after(async () => {
  await browser.close();
  rmSync(unpacked, { recursive: true });
});

for (const [name, viewport] of Object.entries({ phone, desk })) {
  test(`the one file answers from a disk, offline, on a ${name}, and asks for nothing`, async () => {
    const { context, page, seen } = await visit(browser, file, { viewport, offline: true });
    await own(page).click();
    await fillIn(page, KERB);
    await answered(page);
    assert.equal(await holdTo(page), '50 km/h');
    assert.deepEqual(seen.requests.filter((url) => !url.startsWith('file:') && !url.startsWith('data:')), []);
    assert.deepEqual(seen.requests.filter((url) => url.startsWith('file:')), [file]);
    assert.deepEqual(seen.complaints, []);
    assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
    await context.close();
  });
}

test('the one file opens every sheet by its link, and draws its charts', async () => {
  const { context, page, seen } = await visit(browser, file, { viewport: desk, offline: true });
  const sheets = await page.locator('nav a[href^="#"]').evaluateAll((links) => links.map((link) => link.getAttribute('href')));
  assert.ok(sheets.length > 5);
  for (const sheet of sheets) {
    await page.goto(file + sheet);
    await page.reload();
    await ready(page);
    await page.waitForSelector('.verdict');
  }
  await page.goto(`${file}#stopping`);
  await page.reload();
  await page.waitForSelector('.uplot');
  assert.deepEqual(seen.complaints, []);
  await context.close();
});

test('the one file keeps forms, remembers the look before the first paint, and works out long answers', async () => {
  const { context, page, seen } = await visit(browser, `${file}#stage-tyres`, { viewport: phone, offline: true });
  await page.waitForSelector('.verdict');
  await page.getByRole('button', { name: 'Kept', exact: true }).click();
  await page.getByLabel(/^Name for the form/).fill('On a stick');
  await page.keyboard.press('Enter');
  await page.getByText('“On a stick” is kept.').waitFor();
  await page.getByRole('button', { name: 'Settings', exact: true }).click();
  await page.getByLabel('Look').selectOption('dark');
  await page.reload();
  await ready(page);
  assert.equal(await page.evaluate(() => document.documentElement.dataset.look), 'dark');
  await page.getByRole('button', { name: 'Kept', exact: true }).click();
  await page.getByText('On a stick').first().waitFor();
  assert.deepEqual(seen.requests.filter((url) => url.startsWith('file:') && !url.startsWith(file)), []);
  assert.deepEqual(seen.complaints, []);
  assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
  await context.close();
});

test('the unpacked zip works under a sub-path, and tells the web-master how', async () => {
  const site = await serve(join(unpacked, 'treadwater'), { base: '/club/tyres/' });
  const { context, page, seen } = await visit(browser, site.url);
  await own(page).click();
  await fillIn(page, KERB);
  await answered(page);
  assert.equal(await holdTo(page), '50 km/h');
  assert.deepEqual(seen.complaints, []);
  await context.close();
  await site.stop();
  const note = readFileSync(join(unpacked, 'READ-ME.txt'), 'utf8');
  for (const word of ['application/wasm', 'Cache-Control', 'Content-Security-Policy', 'frame-ancestors', '<treadwater-sheet ']) assert.match(note, new RegExp(word));
  const guide = readFileSync(join(root, 'docs/hosting.md'), 'utf8');
  for (const { id } of JSON.parse((await loadModule()).describe()).sheets) {
    assert.match(note, new RegExp(`\\b${id}\\b`));
    assert.ok(guide.includes(`\`${id}\``), id);
  }
  const policy = /content="(default-src[^"]*)"/.exec(readFileSync(join(unpacked, 'treadwater/index.html'), 'utf8'))[1];
  assert.ok(note.replaceAll(/\s+/g, ' ').includes(policy), 'the note names the policy that the page has');
});

test('the page built again, at another time, is the same zip to the byte', () => {
  const again = mkdtempSync(join(tmpdir(), 'treadwater-'));
  const dist = join(root, 'web/dist');
  execFileSync(process.execPath, [join(root, 'web/node_modules/vite/bin/vite.js'), 'build', '--outDir', again, '--emptyOutDir', '--logLevel', 'error'], { cwd: join(root, 'web') });
  const files = (folder) => readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name !== 'treadwater-one-file.html').map((entry) => relative(folder, join(entry.parentPath ?? entry.path, entry.name))).sort();
  assert.deepEqual(files(again), files(dist));
  for (const name of files(again)) assert.ok(readFileSync(join(again, name)).equals(readFileSync(join(dist, name))), name);
  rmSync(again, { recursive: true });

  const zip = join(root, 'build/treadwater-page.zip');
  const before = readFileSync(zip);
  execFileSync(process.execPath, [join(root, 'web/pack.mjs')], { env: { ...process.env, TZ: 'Pacific/Auckland' } });
  assert.ok(readFileSync(zip).equals(before));
});
