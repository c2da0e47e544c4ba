// What happens when a part of the page is missing, broken, refused, replaced while in use, or was
// never there: a clear sentence, never a blank page, and nothing typed is lost.
import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';

import { pageFolder } from '../support/paths.mjs';
import { answered, field, fillIn, holdTo, house, KERB, own, ready, typed, visit } from './support.mjs';

const { site, browser } = await house(after);

const assets = readdirSync(join(pageFolder, 'assets'));
const asset = (pattern) => assets.find((name) => pattern.test(name));
const firstModule = readFileSync(join(pageFolder, 'assets', asset(/^treadwater-first.*\.wasm$/)));
const policy = /content="(default-src[^"]*)"/.exec(readFileSync(join(pageFolder, 'index.html'), 'utf8'))[1];

const kept = (page) => page.getByText('kept on this device').waitFor();

// A sentence a person can act on, and nothing from inside the program.
function isSentence(said) {
  assert.match(said, /[.!]$/);
  assert.ok(said.length > 40 && said.length < 300, said);
  assert.doesNotMatch(said, /undefined|null|Error|\[object|wasm|status \d/);
}

// ---- the calculation is refused

const served = (body, more = {}) => (page) => page.route(/treadwater-first.*\.wasm/, (route) => route.fulfill({ body, contentType: 'application/wasm', ...more }));
const compileWith = (broken) => (page) => page.addInitScript(broken);

const refused = {
  // Not by asking the server: on a bare machine only the browser knows the name localhost.
  'the policy of the host forbids WebAssembly': (page) => page.route(site.url, (route) => route.fulfill({
    path: join(pageFolder, 'index.html'), headers: { 'content-type': 'text/html', 'content-security-policy': policy.replace(" 'wasm-unsafe-eval'", '') },
  })),
  'the module is cut off': served(firstModule.subarray(0, 100_000)),
  'one byte of the module is another': served(Buffer.from(firstModule).fill(0xff, 8, 9)), // the first section is of no kind that there is
  'the module is nothing at all': served(Buffer.alloc(0)),
  'the module is another module': served(Buffer.from([0, 0x61, 0x73, 0x6d, 1, 0, 0, 0])),
  'the host has an error': served('<h1>503</h1>', { status: 503 }),
  'the browser cannot compile it': compileWith(() => {
    for (const way of ['compile', 'instantiate', 'compileStreaming', 'instantiateStreaming']) WebAssembly[way] = () => Promise.reject(new WebAssembly.CompileError('refused'));
    WebAssembly.Module = class { constructor() { throw new WebAssembly.CompileError('refused'); } };
  }),
  'there is no memory for it': compileWith(() => {
    WebAssembly.instantiate = () => Promise.reject(new RangeError('could not allocate memory'));
  }),
  'WebAssembly is there in name only': compileWith(() => { globalThis.WebAssembly = undefined; }),
};

for (const [what, breakIt] of Object.entries(refused)) {
  test(`where ${what}, the page says so in a sentence`, async () => {
    const context = await browser.newContext({ serviceWorkers: 'block' });
    const page = await context.newPage();
    await breakIt(page);
    await page.goto(site.url);
    isSentence(await page.locator('main [role=alert]').innerText());
    assert.match(await page.locator('main [role=alert]').innerText(), /no answer here|nothing can be calculated/);
    await context.close();
  });
}

for (const [what, more] of Object.entries({
  'of a text': { contentType: 'text/plain' },
  'of something to be downloaded': { contentType: 'application/octet-stream', headers: { 'content-disposition': 'attachment', 'x-content-type-options': 'nosniff' } },
  'that nobody knows': { contentType: 'x/y' },
})) {
  test(`the modules sent under the type ${what} work all the same`, async () => {
    const context = await browser.newContext({ serviceWorkers: 'block' });
    const page = await context.newPage();
    let sent = 0;
    await page.route('**/*.wasm', (route) => {
      sent += 1;
      return route.fulfill({ path: join(pageFolder, 'assets', route.request().url().split('/').at(-1)), ...more });
    });
    await page.goto(`${site.url}#puncture`);
    await page.getByRole('heading', { name: 'Puncture and slow leak', level: 2 }).or(page.locator('.asking h2')).first().waitFor();
    await page.waitForFunction(() => document.querySelectorAll('.sheets li').length > 2 && !document.querySelector('main > .notice'));
    assert.equal(sent, 2);
    await context.close();
  });
}

test('where the whole core is cut off, the first sheet works on and the others say why they are not there', async () => {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.route(/later-treadwater.*\.wasm/, (route) => route.fulfill({ body: Buffer.from([0, 0x61, 0x73, 0x6d, 1]), contentType: 'application/wasm' }));
  await page.goto(`${site.url}#puncture`);
  await page.getByText('The other sheets did not load.').waitFor();
  await own(page).click();
  await fillIn(page, KERB);
  await answered(page);
  await context.close();
});

// ---- a part that was kept is gone

const parts = ['index.html', ...assets.filter((name) => !/^icon/.test(name)).map((name) => `assets/${name}`)];

for (const part of parts) {
  test(`offline with ${part.replace(/-[^-]+(?=\.\w+$)/, '')} gone from what was kept, there is no blank page`, async () => {
    const { context, page } = await visit(browser, site.url);
    await kept(page);
    const gone = await page.evaluate(async (name) => {
      let count = 0;
      for (const id of await caches.keys()) {
        const cache = await caches.open(id);
        for (const request of await cache.keys()) if (new URL(request.url).pathname.endsWith(`/${name}`)) count += await cache.delete(request);
      }
      return count;
    }, part);
    assert.equal(gone, 1);
    await context.setOffline(true);
    const tab = await context.newPage();
    const opened = await tab.goto(site.url).then(() => true, () => false);
    if (part === 'index.html') {
      assert.equal(opened, false, 'the browser itself says that there is no connection');
    } else if (/later-/.test(part)) {
      await ready(tab);
      assert.notEqual(await holdTo(tab), '', 'the first answer is there');
    } else if (/\.css$/.test(part)) {
      await ready(tab);
      assert.match(await tab.locator('main').innerText(), /Hold to/, 'plain, but whole');
    } else if (/\.wasm$/.test(part)) {
      isSentence(await tab.locator('main [role=alert]').innerText());
    } else {
      const starting = tab.locator('.starting');
      await starting.waitFor({ state: 'visible' });
      assert.match(await starting.innerText(), /kept it from loading/);
    }
    await context.setOffline(false);
    await tab.goto(site.url);
    await ready(tab);
    assert.notEqual(await holdTo(tab), '', 'with a connection it mends itself');
    await context.close();
  });
}

test('on a first visit without a connection the browser says so, and with one the page opens', async (t) => {
  const { site: late, browser: another } = await house(t.after.bind(t));
  const context = await another.newContext();
  const page = await context.newPage();
  await context.setOffline(true);
  await assert.rejects(page.goto(late.url), /ERR_INTERNET_DISCONNECTED/);
  await context.setOffline(false);
  await page.goto(late.url);
  await ready(page);
  assert.notEqual(await holdTo(page), '');
});

test('where the connection goes after the page itself has come, the page says what is missing', async () => {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.route('**/*.wasm', (route) => route.abort('internetdisconnected'));
  await page.goto(site.url);
  const said = await page.locator('main [role=alert]').innerText();
  isSentence(said);
  assert.match(said, /Check the connection and load the page again/);
  await page.unroute('**/*.wasm');
  await page.reload();
  await ready(page);
  await context.close();
});

// ---- a new version in the middle of use

// The built page as a later version has it: every asset under another name.
function aLaterVersion(folder) {
  const renamed = readdirSync(join(folder, 'assets')).map((name) => [name, name.replace(/(-[\w-]{4})[\w-]{4}(?=\.\w+$)/, '$1next')]);
  for (const [from, to] of renamed) renameSync(join(folder, 'assets', from), join(folder, 'assets', to));
  const texts = ['index.html', 'sw.js', ...renamed.map(([, to]) => `assets/${to}`).filter((name) => /\.(js|css)$/.test(name))];
  for (const name of texts) {
    let text = readFileSync(join(folder, name), 'utf8');
    for (const [from, to] of renamed) text = text.replaceAll(from, to);
    writeFileSync(join(folder, name), name === 'sw.js' ? text.replaceAll(/revision:"[0-9a-f]+"/g, 'revision:"next"') : text);
  }
}

test('a new version comes while somebody types in two tabs: nothing typed is lost in either, and both go on', async (t) => {
  const folder = mkdtempSync(join(tmpdir(), 'treadwater-'));
  t.after(() => rmSync(folder, { recursive: true }));
  cpSync(pageFolder, folder, { recursive: true });
  const { site: club, browser: another } = await house(t.after.bind(t), { folder });
  const { context, page } = await visit(another, club.url);
  await kept(page);
  const complaints = [];
  context.on('weberror', (error) => complaints.push(String(error.error())));
  const other = await context.newPage();
  await other.goto(club.url);
  await ready(other);
  for (const tab of [page, other]) {
    await own(tab).click();
    await fillIn(tab, KERB);
  }
  await answered(other);
  await fillIn(other, { tread: '4,5', date_code: '2' });
  const before = await Promise.all([typed(page), typed(other)]);

  aLaterVersion(folder);
  await page.evaluate(async () => { await (await navigator.serviceWorker.getRegistration()).update(); });
  await page.getByRole('button', { name: 'Use it now' }).waitFor();
  assert.deepEqual(await Promise.all([typed(page), typed(other)]), before, 'while it waits');
  await field(page, 'tread').fill('2.5');
  before[0].tread = '2.5';
  await page.evaluate(() => { globalThis.old = true; });
  await page.getByRole('button', { name: 'Use it now' }).click();
  await page.waitForFunction(() => !globalThis.old);
  await ready(page);
  assert.deepEqual(await typed(page), before[0], 'a letter typed in the same moment is there');
  assert.ok(await page.evaluate(() => [...document.scripts].some(({ src }) => src.includes('next'))), 'it is the new version');

  // The other tab still runs the old version, whose files are gone from the host and from the device.
  assert.deepEqual(await typed(other), before[1]);
  await fillIn(other, { date_code: '2322', water: '8' });
  await answered(other);
  assert.match(await holdTo(other), /\d/);
  await other.goto(`${club.url}#standing-water`);
  await other.locator('#answer-heading').waitFor();
  await other.locator('line-plot, .map, .limits').first().waitFor();
  await other.reload();
  await ready(other);
  assert.deepEqual(complaints, []);
});
