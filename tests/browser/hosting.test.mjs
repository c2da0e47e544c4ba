// Any static host will do, and where the page cannot work it says so.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { after, test } from 'node:test';

import { moduleFolder } from '../support/paths.mjs';
import { answered, fillIn, holdTo, house, KERB, own, ready, visit } from './support.mjs';

const base = '/a/club\'s/tyres/';
const { site, browser } = await house(after, { base });

test('under a path of somebody else\'s site the page answers, and goes on without the server', async (t) => {
  const { site, browser } = await house(t.after.bind(t), { base: '/club/tyres/' });
  const { page, seen } = await visit(browser, site.url);
  await page.getByText('kept on this device').waitFor();
  await own(page).click();
  await fillIn(page, KERB);
  await answered(page);
  assert.match(await holdTo(page), /\d/);
  for (const request of seen.requests) assert.ok(request.startsWith(site.url), request);
  await site.stop();
  await page.reload();
  await ready(page);
  assert.match(await holdTo(page), /\d/);
});

test('a host that sends the module under a wrong type does no harm', async () => {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  // The modules' own bytes from the disk: a bare system may have no name for its own address.
  let served = 0;
  await page.route('**/*.wasm', (route) => {
    served += 1;
    const name = route.request().url().includes('first') ? 'treadwater-first.wasm' : 'treadwater.wasm';
    return route.fulfill({ path: join(moduleFolder, name), contentType: 'text/plain' });
  });
  await page.goto(site.url);
  await ready(page);
  assert.match(await holdTo(page), /\d/);
  assert.ok(served > 0);
  await context.close();
});

const broken = {
  'the module is not there': (page) => page.route('**/*.wasm', (route) => route.fulfill({ status: 404, body: 'gone' })),
  'the module never arrives': (page) => page.route('**/*.wasm', (route) => route.abort()),
  'the module is something else': (page) => page.route('**/*.wasm', (route) => route.fulfill({ body: '<html>Sign in to the hotel</html>' })),
  'the browser has no WebAssembly': (page) => page.addInitScript(() => { delete globalThis.WebAssembly; }),
};

for (const [what, breakIt] of Object.entries(broken)) {
  test(`where ${what}, the page says so in a sentence`, async () => {
    const context = await browser.newContext({ serviceWorkers: 'block' });
    const page = await context.newPage();
    await breakIt(page);
    await page.goto(site.url);
    const said = await page.locator('main [role=alert]').innerText();
    assert.match(said, /no answer here|nothing can be calculated/);
    assert.doesNotMatch(said, /undefined|TypeError|\[object/);
    await context.close();
  });
}

test('with scripts off, the page says what it needs', async () => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(site.url);
  assert.match(await page.locator('noscript').innerText(), /JavaScript is switched off/);
  await context.close();
});

test('where the script itself is refused, the page still says so', async () => {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.route('**/*.js', (route) => route.abort());
  await page.goto(site.url);
  await page.getByText('If these words stay').waitFor({ state: 'visible' });
  await context.close();
});

test('the page can be put on a home screen', async () => {
  const { context, page } = await visit(browser, site.url);
  const manifest = await page.evaluate(async () => (await fetch(document.querySelector('link[rel=manifest]').href)).json());
  assert.equal(manifest.name, 'Treadwater');
  assert.equal(manifest.display, 'standalone');
  for (const size of ['192x192', '512x512']) {
    const icon = manifest.icons.find(({ sizes }) => sizes === size);
    const drawn = await page.evaluate(async (src) => {
      const image = new Image();
      image.src = src;
      await image.decode();
      return `${image.width}x${image.height}`;
    }, icon.src);
    assert.equal(drawn, size);
  }
  await context.close();
});
