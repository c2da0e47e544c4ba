// The panel "Share": a link, a QR code that a camera reads, and the lines for one's own page.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { pathToFileURL } from 'node:url';

import jsQR from 'jsqr';

import { root } from '../support/paths.mjs';
import { answered, desk, fillIn, house, KERB, own, phone, visit } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const { site, browser } = await house(after);

async function shared(options = {}, url = site.url) {
  const { init, ...rest } = options;
  const visited = await visit(browser, url, rest);
  if (init) {
    await visited.page.addInitScript(init);
    await visited.page.reload();
    await visited.page.waitForSelector('#answer-heading');
  }
  return visited;
}

const open = async (page) => {
  await page.getByRole('button', { name: 'Share', exact: true }).click();
  await page.getByRole('heading', { name: 'Share', level: 2 }).waitFor();
};

// What a camera sees: the picture of the code, read by another library.
async function read(page, picture) {
  const pixels = await (await page.context().newPage()).evaluate(async (png) => {
    const image = new Image();
    image.src = `data:image/png;base64,${png}`;
    await image.decode();
    const canvas = Object.assign(document.createElement('canvas'), { width: image.width, height: image.height });
    const context = canvas.getContext('2d');
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, image.width, image.height);
    return { width: image.width, height: image.height, data: btoa(Array.from(data, (byte) => String.fromCharCode(byte)).join('')) };
  }, picture.toString('base64'));
  return jsQR(new Uint8ClampedArray(Buffer.from(pixels.data, 'base64')), pixels.width, pixels.height)?.data;
}

// The code is drawn anew when the link changes, on a busy machine in the middle of a picture.
const pictureOf = (code, tries = 3) => code.screenshot().catch((reason) => {
  if (tries === 1 || !/not attached/.test(reason.message)) throw reason;
  return pictureOf(code, tries - 1);
});

for (const [name, options] of Object.entries({ 'light phone': { viewport: phone }, 'dark desk': { viewport: desk, colorScheme: 'dark' } })) {
  test(`the code on the screen is the link, and follows what is typed: ${name}`, async () => {
    const { context, page, seen } = await shared(options);
    await own(page).click();
    await fillIn(page, KERB);
    await answered(page);
    await open(page);
    const code = page.locator('.panel .code');
    assert.equal(await read(page, await pictureOf(code)), page.url());
    await fillIn(page, { tread: '7' });
    await page.waitForFunction(() => location.hash.includes('tread=7'));
    assert.equal(await read(page, await pictureOf(code)), page.url());
    assert.match(page.url(), /tread=7\+mm/);
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0);
    await page.locator('.panel summary').click();
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0);
    await page.evaluate(axe);
    const { violations } = await page.evaluate(() => globalThis.axe.run('.panel'));
    assert.deepEqual(violations.map(({ id, nodes }) => `${id} ${nodes[0].html.slice(0, 100)}`), []);
    assert.deepEqual(seen.complaints, []);
    assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
    await context.close();
  });
}

test('the code on paper is the link too', async () => {
  const { context, page } = await shared({ deviceScaleFactor: 2 }, `${site.url}#stage-tyres`);
  await page.getByRole('heading', { name: 'Tyres for the stages', level: 2 }).waitFor();
  await page.waitForSelector('.verdict');
  await page.waitForLoadState('networkidle');
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  const link = await read(page, await page.locator('.paper-link .code').screenshot());
  assert.match(link, /#stage-tyres\?units=metric&stages\.rows=5&stages\.name=Long\+Meadow~/);
  const width = await page.locator('.paper-link .code').evaluate((one) => one.getBoundingClientRect().width / 96 * 25.4);
  assert.ok(width > 20 && width < 50, `${width} mm`);
  await context.close();
});

test('what is too much for a code is said in a sentence, and the link is there all the same', async () => {
  const thirty = (cell) => Array(30).fill(cell).join('~');
  const link = `#stage-tyres?stages.rows=30&stages.name=${thirty('A+stage+with+a+long+name')}&stages.length=${thirty('10.25+km')}&stages.average=${thirty('100+km/h')}`;
  const { context, page, seen } = await shared({}, site.url + link);
  await page.getByRole('heading', { name: 'Tyres for the stages', level: 2 }).waitFor();
  await page.waitForSelector('.actions [data-panel="share"]');
  await open(page);
  await page.getByText('too much for a code').waitFor();
  assert.equal(await page.locator('.panel .code').count(), 0);
  assert.ok(await page.getByRole('button', { name: 'Copy the link' }).isVisible());
  assert.deepEqual(seen.complaints, []);
  await context.close();
});

test('Send hands the link to the device; a person\'s "no" is left alone, and a failure copies it', async () => {
  const { context, page } = await shared({
    permissions: ['clipboard-read', 'clipboard-write'],
    init: () => {
      globalThis.sent = [];
      globalThis.refusal = undefined;
      navigator.share = async (what) => {
        globalThis.sent.push(what);
        if (globalThis.refusal) throw new DOMException('no', globalThis.refusal);
      };
    },
  });
  await open(page);
  const send = page.getByRole('button', { name: 'Send the link' });
  await page.evaluate(() => navigator.clipboard.writeText('before'));
  await send.click();
  const [{ url }] = await page.evaluate(() => globalThis.sent);
  assert.ok(url.startsWith(`${site.url}#tyre-check?units=metric&size=`), url);
  await page.evaluate(() => { globalThis.refusal = 'AbortError'; });
  await send.click();
  assert.equal(await page.evaluate(() => navigator.clipboard.readText()), 'before');
  await page.evaluate(() => { globalThis.refusal = 'NotAllowedError'; });
  await send.click();
  await page.getByText('Copied.').waitFor();
  assert.equal(await page.evaluate(() => navigator.clipboard.readText()), url);
  await context.close();
});

test('where the device has no way to send, there is no such button', async () => {
  const { context, page } = await shared({ init: () => { delete Navigator.prototype.share; } });
  await open(page);
  await page.getByRole('button', { name: 'Copy the link' }).waitFor();
  assert.equal(await page.getByRole('button', { name: 'Send the link' }).count(), 0);
  await page.getByRole('button', { name: 'Close' }).click();
  assert.equal(await page.evaluate(() => document.activeElement.dataset.panel), 'share', 'the focus is back where it came from');
  await context.close();
});

test('the lines for a page of one\'s own put this very sheet there', async () => {
  const { context, page } = await shared();
  await own(page).click();
  await fillIn(page, { ...KERB, size: '205/55 R16 "91V" & <b>' });
  await page.waitForFunction(() => location.hash.includes('water='));
  await open(page);
  await page.locator('.panel summary').click();
  const lines = await page.locator('.panel pre').textContent();
  assert.ok(lines.startsWith(`<script src="${site.url}embed.js" async></script>\n<treadwater-sheet sheet="tyre-check" preset="`), lines);
  const club = await context.newPage();
  await club.setContent(`<!doctype html><title>Club</title>${lines}`);
  const sheet = club.locator('treadwater-sheet iframe').contentFrame();
  await sheet.locator('[id="field-size"]').waitFor();
  assert.equal(await sheet.locator('[id="field-size"]').inputValue(), '205/55 R16 "91V" & <b>');
  assert.equal(await sheet.locator('[id="field-load"]').inputValue(), KERB.load);
  await context.close();
});

test('from a file, the panel says that the link stays on this device', async () => {
  const { context, page, seen } = await shared({}, pathToFileURL(join(root, 'web/dist/treadwater-one-file.html')).href);
  await open(page);
  await page.getByText('opened from a file').waitFor();
  assert.equal(await page.locator('.panel .code, .panel pre').count(), 0);
  assert.deepEqual(seen.complaints, []);
  await context.close();
});
