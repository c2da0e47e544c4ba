// A sheet on a club's own page: two lines, the strictest policy, and nothing that the host page can
// pass in except a colour and a length.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { createRequire } from 'node:module';
import { after, test } from 'node:test';

import { house } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const { site, browser } = await house(after, { base: '/a club/tyres/' });
const folder = new URL(site.url).href;
const { origin } = new URL(folder);

// The club's page: on another host than the tool, so that the browser keeps the two apart.
const pages = new Map();
const club = createServer((request, response) => {
  const { body, css = '' } = pages.get(request.url.split('.')[0]) ?? { body: '' };
  if (request.url.endsWith('.css')) {
    response.writeHead(200, { 'content-type': 'text/css' }).end(css);
    return;
  }
  response.writeHead(200, {
    'content-type': 'text/html; charset=utf-8',
    'content-security-policy': `default-src 'none'; script-src ${origin}; frame-src ${origin}; style-src 'self'; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'`,
  }).end(`<!doctype html><html lang="en"><head><title>The club</title><meta name="viewport" content="width=device-width">
<link rel="stylesheet" href="${request.url}.css"></head><body><main><h1>The club</h1>${body}</main></body></html>`);
});
await new Promise((ready) => club.listen(0, '127.0.0.1', ready));
after(() => { club.closeAllConnections(); club.close(); });

const script = `<script src="${folder}embed.js" async></script>`;
let count = 0;

// Opens a page of the club's; complaints and refusals of every frame are written down.
async function visitClub(body, { css, init, ...options } = {}) {
  const path = `/page${count += 1}`;
  pages.set(path, { body, css });
  const context = await browser.newContext({ viewport: { width: 800, height: 700 }, locale: 'en-GB', ...options });
  const page = await context.newPage();
  const seen = { requests: [], complaints: [] };
  context.on('request', (request) => seen.requests.push(request.url()));
  page.on('console', (message) => { if (message.type() === 'error') seen.complaints.push(message.text()); });
  page.on('pageerror', (error) => seen.complaints.push(String(error)));
  await context.addInitScript(() => {
    globalThis.refused = [];
    addEventListener('securitypolicyviolation', (event) => globalThis.refused.push(`${event.violatedDirective}: ${event.blockedURI}`));
  });
  if (init) await context.addInitScript(init);
  const here = `http://127.0.0.1:${club.address().port}${path}`;
  await page.goto(here);
  return { context, page, seen, here };
}

const frames = (page) => page.frames().filter((frame) => frame.url().startsWith(folder));
const inside = (page, n = 0) => page.locator('treadwater-sheet').nth(n).locator('iframe').contentFrame();
const frameHeight = (page, n = 0) => page.locator('treadwater-sheet').nth(n).locator('iframe').evaluate((frame) => frame.clientHeight);

async function answered(page, n = 0) {
  await page.locator('treadwater-sheet').nth(n).scrollIntoViewIfNeeded();
  await inside(page, n).locator('.verdict').waitFor();
}

// As high as what is in it: no bar to scroll, no empty space.
async function fits(page, n = 0) {
  const frame = page.locator('treadwater-sheet').nth(n).locator('iframe');
  const content = await inside(page, n).locator('html').evaluateHandle((root) => root);
  const measure = async () => [await frame.evaluate((one) => one.clientHeight), await content.evaluate((root) => root.getBoundingClientRect().height)];
  for (let tries = 0; tries < 40; tries++) {
    const [outer, inner] = await measure();
    if (Math.abs(outer - inner) <= 1) return true;
    await page.waitForTimeout(50);
  }
  throw new Error(`the frame is ${await measure()} px high`);
}

async function nothingWrong(page, seen) {
  assert.deepEqual(seen.complaints, []);
  for (const frame of page.frames()) assert.deepEqual(await frame.evaluate(() => globalThis.refused), [], frame.url());
}

const TWO = `${script}
  <treadwater-sheet sheet="tyre-check" units="uk" preset="size=205/55 R16 91V&amp;load=430 kg&amp;pressure=33 psi&amp;tread=3 mm&amp;water=5 mm"><a href="${folder}">Check a tyre</a></treadwater-sheet>`;

test('two lines put a sheet, filled in, into a page with a strict policy; nothing is refused or fetched elsewhere', async () => {
  const { context, page, seen, here } = await visitClub(TWO);
  await answered(page);
  const sheet = inside(page);
  assert.match(await sheet.locator('.hold-speed').innerText(), /\d+ mph/);
  assert.equal(await sheet.locator('[id="field-size"]').inputValue(), '205/55 R16 91V');
  assert.ok(await sheet.locator('.safety').isVisible());
  for (const part of ['.ways', '.sheets', '[data-panel]', '.offer']) {
    for (const one of await sheet.locator(part).all()) assert.ok(!await one.isVisible(), part);
  }
  assert.ok((await sheet.locator('.masthead').boundingBox()).height <= 1);
  assert.ok(!await page.getByText('Check a tyre').isVisible(), 'what stood there before has given way');
  await fits(page);
  for (const request of seen.requests) assert.ok(request.startsWith(folder) || request.startsWith(here), request);
  assert.deepEqual(await context.cookies(), []);
  assert.deepEqual(await frames(page)[0].evaluate(() => navigator.serviceWorker.getRegistrations().catch(() => [])), [], 'nothing is installed on a visitor of the club');
  await nothingWrong(page, seen);
  await context.close();
});

test('the frame is as high as its content, whatever is unfolded or however narrow it becomes', async () => {
  const { context, page, seen } = await visitClub(TWO);
  await answered(page);
  await fits(page);
  const before = await frameHeight(page);
  await inside(page).locator('summary').first().click();
  await fits(page);
  assert.ok(await frameHeight(page) > before);
  await page.setViewportSize({ width: 360, height: 700 });
  await fits(page);
  assert.equal(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0);
  assert.equal(await frames(page)[0].evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0);
  await nothingWrong(page, seen);
  await context.close();
});

test('what is pressed in the frame brings its place into view in the page around', async () => {
  const { context, page } = await visitClub(`<p>${'Words. '.repeat(400)}</p>${TWO}`, { viewport: { width: 360, height: 640 } });
  await answered(page);
  await fits(page);
  await inside(page).getByRole('button', { name: 'Check', exact: true }).click();
  const heading = inside(page).locator('#answer-heading');
  for (let tries = 0; tries < 40; tries++) {
    const { y } = await heading.boundingBox();
    if (y >= 0 && y < 600) break;
    await page.waitForTimeout(50);
  }
  const { y } = await heading.boundingBox();
  assert.ok(y >= 0 && y < 600, `the answer is at ${y} px`);
  await context.close();
});

test('the link to the whole tool takes along what was typed', async () => {
  const { context, page } = await visitClub(TWO);
  await answered(page);
  await inside(page).locator('[id="field-tread"]').fill('6');
  await inside(page).getByRole('button', { name: 'Check', exact: true }).click();
  const [tool] = await Promise.all([context.waitForEvent('page'), inside(page).getByRole('link', { name: 'Open the whole tool' }).click()]);
  await tool.waitForSelector('.verdict');
  assert.ok(await tool.locator('.masthead').isVisible());
  assert.equal(await tool.locator('[id="field-tread"]').inputValue(), '6');
  assert.equal(await tool.evaluate(() => opener), null);
  await context.close();
});

test('the frame has a name in the language of the sheet, else of the page around, else of the browser', async () => {
  const { context, page } = await visitClub(`${script}
    <treadwater-sheet sheet="standing-water" language="de"></treadwater-sheet>
    <div lang="fr-CH"><treadwater-sheet sheet="standing-water"></treadwater-sheet></div>
    <treadwater-sheet sheet="standing-water"></treadwater-sheet>
    <treadwater-sheet sheet="standing-water" title="Our own"></treadwater-sheet>
    <treadwater-sheet sheet="standing-water" language="sv"></treadwater-sheet>`, { locale: 'fi-FI' });
  await page.waitForFunction(() => customElements.get('treadwater-sheet'));
  const names = () => page.locator('treadwater-sheet iframe').evaluateAll((all) => all.map(({ title }) => title));
  assert.deepEqual(await names(), ['Treadwater, Blatt: standing-water', 'Treadwater, fiche\u00a0: standing-water', 'Treadwater: standing water', 'Our own', 'Treadwater: standing water']);
  await page.evaluate(() => {
    document.documentElement.removeAttribute('lang');
    document.querySelector('treadwater-sheet[title]').setAttribute('sheet', 'stopping');
    document.body.append(Object.assign(document.createElement('treadwater-sheet'), { id: 'late' }));
    document.getElementById('late').setAttribute('sheet', 'stopping');
  });
  assert.deepEqual((await names()).slice(3), ['Our own', 'Treadwater: standing water', 'Treadwater, lomake: stopping']);
  await context.close();
});

test('several on one page are each their own sheet, and one far below waits until it is near', async () => {
  const { context, page, seen } = await visitClub(`${script}
    <treadwater-sheet sheet="standing-water"></treadwater-sheet>
    <treadwater-sheet sheet="stopping" units="us"></treadwater-sheet>
    <p class="far">Far.</p>
    <treadwater-sheet sheet="puncture"></treadwater-sheet>`, { css: '.far { height: 30000px }' });
  await answered(page, 0);
  await inside(page, 0).getByRole('heading', { name: 'Standing water', level: 2 }).waitFor();
  await inside(page, 1).locator('#answer-heading').waitFor();
  assert.equal(frames(page).length, 2);
  await answered(page, 2);
  await inside(page, 2).locator('.example').waitFor();
  assert.equal(await page.locator('treadwater-sheet iframe').nth(1).getAttribute('title'), 'Treadwater: stopping');
  for (const n of [0, 1, 2]) {
    await page.locator('treadwater-sheet').nth(n).scrollIntoViewIfNeeded();
    await fits(page, n);
  }
  await nothingWrong(page, seen);
  await context.close();
});

test('the element may ask for a language, and the worked example is in it', async () => {
  const { context, page, seen } = await visitClub(`${script}<treadwater-sheet sheet="standing-water" language="de"></treadwater-sheet>`);
  await answered(page);
  await inside(page).locator('.example').waitFor();
  assert.equal(await inside(page).locator('html').getAttribute('lang'), 'de');
  await page.locator('treadwater-sheet').evaluate((one) => one.setAttribute('language', 'fi'));
  await inside(page).locator('html[lang=fi]').waitFor();
  await nothingWrong(page, seen);
  await context.close();
});

test('a change of an attribute changes the sheet', async () => {
  const { context, page, seen } = await visitClub(TWO);
  await answered(page);
  await page.locator('treadwater-sheet').evaluate((one) => { one.setAttribute('sheet', 'puncture'); one.removeAttribute('preset'); one.removeAttribute('units'); });
  await inside(page).getByRole('heading', { name: 'A soft tyre' }).waitFor();
  await fits(page);
  await nothingWrong(page, seen);
  await context.close();
});

// ---- looks

const colours = (page, n = 0) => inside(page, n).locator('body').evaluate((body) => {
  const style = getComputedStyle(body);
  const button = document.querySelector('button.primary, form button');
  return { paper: style.backgroundColor, ink: style.color, accent: getComputedStyle(document.querySelector('.whole')).color, corner: getComputedStyle(button).borderTopLeftRadius, text: getComputedStyle(document.documentElement).fontSize };
});

async function become(page, wanted, n = 0) {
  for (let tries = 0; tries < 40; tries++) {
    if (Object.entries(wanted).every(([id, value]) => value === seenNow?.[id])) break;
    await page.waitForTimeout(50);
    var seenNow = await colours(page, n);
  }
  for (const [id, value] of Object.entries(wanted)) assert.equal(seenNow[id], value, id);
}

const ours = { paper: 'rgb(250, 249, 246)', ink: 'rgb(22, 25, 27)', accent: 'rgb(11, 85, 99)', corner: '4px', text: '17px' };

test('the sheet wears the club\'s colours, corners and size of text, and follows when they change', async () => {
  const css = `treadwater-sheet { --treadwater-paper: hsl(40 50% 95%); --treadwater-ink: #222; --treadwater-accent: var(--club); --treadwater-corner: 0px; --treadwater-text: 1.25rem; --club: darkred }
    .night treadwater-sheet { --treadwater-paper: #111; --treadwater-ink: #eee; --treadwater-accent: rgb(255, 200, 0) }`;
  const { context, page, seen } = await visitClub(TWO, { css });
  await answered(page);
  await become(page, { paper: 'rgb(249, 244, 236)', ink: 'rgb(34, 34, 34)', accent: 'rgb(139, 0, 0)', corner: '0px', text: '20px' });
  await page.evaluate(() => document.body.classList.add('night'));
  await become(page, { paper: 'rgb(17, 17, 17)', ink: 'rgb(238, 238, 238)', accent: 'rgb(255, 200, 0)' });
  await frames(page)[0].evaluate(axe);
  const { violations } = await frames(page)[0].evaluate(() => globalThis.axe.run());
  assert.deepEqual(violations.map(({ id }) => id), []);
  await nothingWrong(page, seen);
  await context.close();
});

test('theme says light or dark, against the device', async () => {
  const { context, page } = await visitClub(`${script}<treadwater-sheet sheet="stopping" theme="dark"></treadwater-sheet>`, { colorScheme: 'light' });
  await answered(page);
  await become(page, { paper: 'rgb(18, 23, 26)' });
  await page.locator('treadwater-sheet').evaluate((one) => one.setAttribute('theme', 'light'));
  await become(page, ours);
  await context.close();
});

test('colours that hide words, and what is no colour or length, change nothing', async () => {
  for (const css of [
    'treadwater-sheet { --treadwater-ink: #faf9f6 }',
    'treadwater-sheet { --treadwater-paper: #777; --treadwater-ink: #888 }',
    'treadwater-sheet { --treadwater-accent: #fff }',
    'treadwater-sheet { --treadwater-paper: transparent; --treadwater-ink: rgba(0, 0, 0, 0.01); --treadwater-accent: url(http://127.0.0.1:9/x) }',
    `treadwater-sheet { --treadwater-accent: red} .safety { display: none; --x: y; --treadwater-corner: 1px; } .hold-speed::after { content: '0' `,
    'treadwater-sheet { --treadwater-accent: "red; } .safety { display: none } x {"; --treadwater-corner: calc(4px + 100vw); --treadwater-text: 1px }',
    'treadwater-sheet { --treadwater-text: 400px; --treadwater-corner: -3px; --treadwater-ink: inherit }',
  ]) {
    const { context, page, seen } = await visitClub(TWO, { css });
    await answered(page);
    await page.waitForTimeout(150);
    const { accent, ...now } = await colours(page);
    const { accent: our, ...rest } = ours;
    assert.deepEqual(now, rest, css);
    assert.ok([our, 'rgb(255, 0, 0)'].includes(accent) === true, `${css}: ${accent}`);
    assert.ok(await inside(page).locator('.safety').isVisible());
    for (const request of seen.requests) assert.ok(!request.includes(':9/'), request);
    await context.close();
  }
});

// ---- strangers

test('hostile attributes are text in the sheet\'s own address', async () => {
  const hostile = [
    'javascript:globalThis.pwned=1', '"><img src=x onerror=alert(1)>', '../../evil', '//evil.example/', '#x?size=<script>alert(1)</script>',
    'tyre-check?size=<b>x', '\u0000\u202e', '%00%ff', 'x'.repeat(5000), '__proto__', 'constructor',
  ];
  const { context, page, seen } = await visitClub(`${script}<treadwater-sheet></treadwater-sheet>`);
  await answered(page);
  for (const text of hostile) {
    for (const name of ['sheet', 'preset', 'units', 'theme']) {
      await page.locator('treadwater-sheet').evaluate((one, [id, value]) => {
        for (const each of ['sheet', 'preset', 'units', 'theme']) one.removeAttribute(each);
        if (id !== 'sheet') one.setAttribute('sheet', 'tyre-check');
        one.setAttribute(id, value);
      }, [name, text]);
      const src = await page.locator('treadwater-sheet iframe').getAttribute('src');
      assert.ok(src.startsWith(`${folder}index.html#`), src.slice(0, 100));
    }
  }
  await answered(page);
  for (const frame of page.frames()) assert.equal(await frame.evaluate(() => globalThis.pwned ?? ({}).x), undefined);
  assert.equal(await inside(page).locator('img, main script').count(), 0);
  assert.deepEqual(seen.complaints, []);
  await context.close();
});

test('messages of a wrong shape, from a wrong place, do nothing on either side', async () => {
  const { context, page, seen } = await visitClub(`${TWO}<iframe src="${folder}index.html#stopping" title="Not ours"></iframe>`);
  await answered(page);
  await fits(page);
  const before = { height: await frameHeight(page), text: await inside(page).locator('main').innerText() };
  const strange = [null, 1, 'x', [], {}, { treadwater: 'height' }, { treadwater: 'height', height: '10000px' }, { treadwater: 'height', height: -5 }, { treadwater: 'height', height: 1e9 }, { treadwater: 'height', height: NaN },
    { treadwater: 'theme' }, { treadwater: 'theme', theme: 'x' }, { treadwater: 'theme', theme: null }, { treadwater: 'theme', theme: { paper: {}, ink: [], look: 'contrast', corner: 5 } },
    { treadwater: 'answer', text: 'Hold to 200 mph' }, { treadwater: 'theme', theme: { look: 'light' }, answer: { verdict: { level: 'fit' } }, html: '<b>Fit</b>', hash: '#stopping' }];
  // From the page around into the sheet, and from the page to itself as if it were the frame.
  await page.evaluate((messages) => {
    const frame = document.querySelector('treadwater-sheet').shadowRoot.querySelector('iframe').contentWindow;
    for (const message of messages) {
      frame.postMessage(message, '*');
      postMessage(message, '*');
    }
    postMessage({ treadwater: 'height', height: 5000 }, '*');
  }, strange);
  // From the sheet's own origin, but another frame.
  const other = frames(page).find((frame) => frame.url().includes('#stopping'));
  await other.evaluate(() => parent.postMessage({ treadwater: 'height', height: 6000 }, '*'));
  // A frame beside the sheet talks to it as if it were the page around.
  await other.evaluate(() => parent.frames[0].postMessage({ treadwater: 'theme', theme: { accent: '#800080' } }, '*'));
  // From the frame itself, misshapen.
  await frames(page).find((frame) => frame.url().includes('#tyre-check')).evaluate((messages) => { for (const message of messages) parent.postMessage(message, '*'); }, strange.slice(0, 10));
  await page.waitForTimeout(200);
  assert.deepEqual({ height: await frameHeight(page), text: await inside(page).locator('main').innerText() }, before);
  const { accent, ...now } = await colours(page);
  assert.deepEqual({ accent, ...now }, ours);
  assert.deepEqual(seen.complaints, []);
  await context.close();
});

test('where the browser refuses storage in a frame, the sheet answers all the same', async () => {
  const { context, page, seen } = await visitClub(TWO, {
    init: () => {
      if (parent === self) return;
      const refuse = () => { throw new DOMException('refused', 'SecurityError'); };
      for (const name of ['localStorage', 'sessionStorage', 'indexedDB', 'caches']) Object.defineProperty(globalThis, name, { get: refuse });
    },
  });
  await answered(page);
  await inside(page).locator('[data-path=units][value=us]').check();
  assert.match(await inside(page).locator('.hold-speed').innerText(), /\d/);
  await fits(page);
  await nothingWrong(page, seen);
  await context.close();
});

test('without the script, what stands in the element stays', async () => {
  const { context, page } = await visitClub(TWO, { javaScriptEnabled: false });
  assert.ok(await page.getByRole('link', { name: 'Check a tyre' }).isVisible());
  await context.close();
});

test('a plain frame, where a host allows no script, shows the one sheet too', async () => {
  const { context, page } = await visitClub(`<iframe title="Stopping" width="700" height="500" src="${folder}index.html#stopping"></iframe>`);
  const sheet = page.locator('iframe').contentFrame();
  await sheet.locator('.verdict').waitFor();
  assert.ok(!await sheet.locator('.ways').isVisible());
  await context.close();
});

// ---- for everybody

test('the keyboard goes into the sheet, through it and out again, both ways', async () => {
  const { context, page } = await visitClub(`<a href="#before" id="before">Before</a>${script}<treadwater-sheet sheet="tyre-check"></treadwater-sheet><a href="#after" id="after">After</a>`);
  await answered(page);
  await page.locator('#before').focus();
  // The frame is a process of its own: the focus takes a moment to go over.
  const where = async () => {
    await page.waitForTimeout(60);
    return page.evaluate(() => document.activeElement.id || document.activeElement.localName);
  };
  await page.keyboard.press('Tab');
  assert.equal(await where(), 'treadwater-sheet');
  let stops = 0;
  while (await where() === 'treadwater-sheet' && stops < 80) {
    await page.keyboard.press('Tab');
    stops += 1;
  }
  assert.equal(await where(), 'after');
  assert.ok(stops > 10, `${stops} stops within`);
  await page.keyboard.press('Shift+Tab');
  assert.equal(await where(), 'treadwater-sheet');
  assert.equal(await frames(page)[0].evaluate(() => document.activeElement.textContent), 'Open the whole tool');
  await context.close();
});

for (const colorScheme of ['light', 'dark']) {
  test(`axe finds nothing in the page and in the sheet: ${colorScheme}`, async () => {
    const { context, page } = await visitClub(TWO, { colorScheme, viewport: { width: 360, height: 740 } });
    await answered(page);
    await fits(page);
    const flaws = async (frame) => {
      await frame.evaluate(axe);
      const { violations } = await frame.evaluate(() => globalThis.axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }));
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
    };
    for (const frame of page.frames()) assert.deepEqual(await flaws(frame), []);
    await context.close();
  });
}
