// Forms saved on the device under a name, exported and imported: nothing is lost, whatever happens
// to the store, and a stranger's file is refused whole or imported whole.
import assert from 'node:assert/strict';
import { randomBytes } from 'node:crypto';
import { createRequire } from 'node:module';
import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';

import { pageFolder } from '../support/paths.mjs';
import { answered, desk, field, fillIn, focused, holdTo, house, KERB, own, phone, ready, typed, visit } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const { site, browser } = await house(after);

const button = (page, name) => page.getByRole('button', { name, exact: true });
const panel = (page) => page.locator('#panel');
const said = (page) => page.locator('#kept-said');
const names = (page) => page.locator('.records').first().locator('strong').allInnerTexts();

// The whole core is there, and what is typed is being put aside.
async function opened(options = {}, url = site.url) {
  const visited = await visit(browser, url, { serviceWorkers: 'block', ...options });
  await visited.page.waitForLoadState('networkidle');
  return visited;
}

async function openPanel(page) {
  await button(page, 'Kept').click();
  await page.getByRole('heading', { name: 'Kept on this device' }).waitFor();
  await page.getByText('Looking.', { exact: true }).waitFor({ state: 'detached' });
}

async function keepAs(page, name) {
  await page.getByLabel(/^Name for the form/).fill(name);
  await button(page, 'Keep it').click();
  await page.waitForFunction(() => document.getElementById('kept-said').innerText);
}

async function kerb(page, changes = {}) {
  await own(page).click();
  await fillIn(page, { ...KERB, ...changes });
  await answered(page);
}

const form = (changes = {}) => ({
  name: 'Depot van', sheet: 'tyre-check', made: '2026-11-01T08:00:00.000Z', changed: '2026-11-02T08:00:00.000Z',
  fields: { size: '205/55 R16 91V', load: '430', 'load.unit': 'kg', tread: '3' }, ...changes,
});
const file = (forms, changes = {}) => JSON.stringify({ treadwater: 'kept forms', version: 2, forms, ...changes });

async function takeIn(page, content, name = 'forms.json') {
  const before = await said(page).innerText();
  await page.evaluate(() => { document.getElementById('kept-said').dataset.old = '1'; });
  await page.getByLabel(/^Take in a file/).setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(content) });
  await page.waitForFunction((old) => document.getElementById('kept-said').innerText !== old || document.activeElement.id === 'kept-said', before);
  return said(page).innerText();
}

test('a form is kept under a name, found after a reload, opened, renamed, deleted and brought back', async () => {
  const { context, page, seen } = await opened();
  await kerb(page);
  const before = { form: await typed(page), hold: await holdTo(page) };
  await page.locator('.answering').getByRole('button', { name: 'Keep', exact: true }).click();
  await page.locator('#keep-name').waitFor();
  await page.waitForFunction(() => document.activeElement.id === 'keep-name');
  await page.keyboard.type('  Our   family car ');
  await page.keyboard.press('Enter');
  await page.getByText('“Our family car” is kept.').waitFor();

  await page.goto('about:blank');
  await page.goto(site.url);
  await ready(page);
  await openPanel(page);
  assert.deepEqual(await names(page), ['Our family car']);
  assert.match(await page.locator('.records li').first().innerText(), /Check one tyre, \d+ \w+ \d{4}/);
  await button(page, 'Open Our family car').click();
  assert.equal(await focused(page), 'form');
  assert.equal(await panel(page).isVisible(), false);
  assert.deepEqual({ form: await typed(page), hold: await holdTo(page) }, before);

  await openPanel(page);
  await button(page, 'Rename Our family car').click();
  assert.equal(await focused(page), 'new-name');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('The estate');
  await page.keyboard.press('Enter');
  await page.getByText('It is called “The estate” now.').waitFor();
  assert.deepEqual(await names(page), ['The estate']);
  await button(page, 'Bring it back').click();
  await page.getByText('It is called “Our family car” again.').waitFor();

  await button(page, 'Delete Our family car').click();
  await page.getByText('“Our family car” is deleted.').waitFor();
  assert.equal(await page.getByText('Nothing is kept yet.').count(), 1);
  assert.equal(await focused(page), 'kept-said', 'the focus is beside the way back');
  await button(page, 'Bring it back').click();
  await page.getByText('“Our family car” is back.').waitFor();
  assert.deepEqual(await names(page), ['Our family car']);
  assert.deepEqual(seen.complaints, []);
  assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
  await context.close();
});

test('the same name again keeps the form that is open now, and the former can be brought back', async () => {
  const { context, page } = await opened();
  await kerb(page);
  await openPanel(page);
  await keepAs(page, 'Van');
  await field(page, 'tread').fill('7');
  await keepAs(page, 'Van');
  await page.getByText('was here before').waitFor();
  assert.deepEqual(await names(page), ['Van']);
  await button(page, 'Bring it back').click();
  await page.getByText('is again as it was').waitFor();
  await button(page, 'Open Van').click();
  assert.equal(await field(page, 'tread').inputValue(), '3');
  await openPanel(page);
  await button(page, 'Keep it').click();
  await page.getByText('Give it a name first').waitFor();
  assert.equal(await focused(page), 'keep-name');
  await context.close();
});

test('saved as a file and taken in on another device, the forms are the same; once more adds none', async () => {
  const one = await opened({ acceptDownloads: true });
  await own(one.page).click();
  await fillIn(one.page, { ...KERB, size: '100%25 &load=1#?+ ü 🛞 "<b>', date_code: '2322' });
  const before = await typed(one.page);
  await openPanel(one.page);
  await keepAs(one.page, '<script>globalThis.pwned = 1</script>');
  await button(one.page, 'Close').click();
  await field(one.page, 'tread').fill('7');
  await openPanel(one.page);
  await keepAs(one.page, 'Second');
  const download = one.page.waitForEvent('download');
  await button(one.page, 'Save all as a file').click();
  const text = readFileSync(await (await download).path(), 'utf8');
  assert.match((await download).suggestedFilename(), /^treadwater-.*\.json$/);
  assert.equal(JSON.parse(text).version, 2);
  assert.equal(JSON.parse(text).forms.length, 2);
  await one.context.close();

  const other = await opened();
  await openPanel(other.page);
  assert.equal(await takeIn(other.page, text), '2 forms are taken in.');
  assert.equal(await takeIn(other.page, text), 'No forms are taken in; 2 forms are already here.');
  assert.equal((await names(other.page)).length, 2);
  assert.equal(await other.page.evaluate(() => globalThis.pwned), undefined);
  await other.page.getByRole('button', { name: 'Open <script>' }).click();
  assert.deepEqual(await typed(other.page), before);
  await other.context.close();
});

test('a file of the first version, whose forms are links, is taken in', async () => {
  const { context, page } = await opened();
  await openPanel(page);
  const old = { name: 'From before', link: '#tyre-check?size=155%2F80+R13+79T&load=300&load.unit=kg', made: '2026-01-01T08:00:00.000Z', changed: '2026-01-01T08:00:00.000Z' };
  assert.equal(await takeIn(page, file([old], { version: 1 })), '1 form is taken in.');
  await button(page, 'Open From before').click();
  assert.equal(await field(page, 'size').inputValue(), '155/80 R13 79T');
  await context.close();
});

const deep = (levels) => '['.repeat(levels) + ']'.repeat(levels);
const hostile = {
  'nothing at all': ['', /is damaged, or is something else/],
  'a page': ['<script>globalThis.pwned = 1</script>', /is damaged, or is something else/],
  'half a file': [file([form()]).slice(0, -20), /is damaged/],
  'broken bytes': [Buffer.from([0xff, 0xfe, 0x00, 0x80]), /is damaged/],
  'somebody else\'s JSON': ['{"version":2,"forms":[]}', /does not say that it holds kept forms/],
  'a number': ['7', /does not say/],
  'a newer version': [file([form()], { version: 3 }), /newer version of this page/],
  'a version that is none': [file([form()], { version: '2' }), /not laid out like one/],
  'no forms': [file([]), /not laid out like one/],
  'forms of a wrong type': [file({ length: 1 }), /not laid out like one/],
  'something beside the forms': [file([form()], { more: 1 }), /not laid out like one/],
  'deep nesting': [`{"treadwater":"kept forms","version":2,"forms":${deep(100_000)}}`, /Form 1 in this file is not a form|is damaged/],
  'deep nesting in a field': [file([form({ fields: { size: 'DEEP' } })]).replace('"DEEP"', deep(100_000)), /something else than the texts|is damaged/],
  '100 000 forms': [file(Array(100_000).fill({})), /holds 100000 forms/],
  'a sheet that is not here': [file([form(), form({ sheet: 'moon-tyres' })]), /Form 2 in this file.*“moon-tyres”/],
  'a sheet of a wrong type': [file([form({ sheet: {} })]), /does not say of which sheet/],
  'a name that is none': [file([form({ name: ' ' })]), /has no name/],
  'a name of two lines': [file([form({ name: 'a\nb' })]), /has no name/],
  'a name as long as a book': [file([form({ name: 'x'.repeat(101) })]), /has no name/],
  'a time that is none': [file([form({ changed: 'yesterday' })]), /does not say when/],
  'a number for a text': [file([form({ fields: { load: 430 } })]), /something else than the texts/],
  'fields that are a list': [file([form({ fields: ['205/55'] })]), /something else than the texts/],
  'a field that is not on the sheet': [file([form({ fields: { size: 'x', moon: '1' } })]), /“moon”, which has no place/],
  'a unit that is none': [file([form({ fields: { size: 'x', 'load.unit': '<img src=x onerror=globalThis.pwned=1>' } })]), /“load.unit”, which has no place/],
  '__proto__ among the fields': [file([form()]).replace('"tread"', '"__proto__"'), /“__proto__”, which has no place/],
  '__proto__ with fields': [file([form()]).replace('"tread":"3"', '"__proto__":{"x":"1"}'), /something else than the texts/],
  '__proto__ in a form': [file([form()]).replace('"made"', '"__proto__"'), /“__proto__”, which has no place/],
  'an id to write over what is kept': [file([form({ id: 'one' })]), /“id”, which has no place/],
};

test('a damaged, hostile or foreign file is refused with a sentence, and nothing of it is kept', async () => {
  const { context, page, seen } = await opened();
  await kerb(page);
  await openPanel(page);
  await keepAs(page, 'Mine');
  for (const [what, [content, expected]] of Object.entries(hostile)) {
    const sentence = await takeIn(page, content);
    assert.match(sentence, expected, what);
    assert.match(sentence, /Nothing was changed\.$/, what);
    assert.doesNotMatch(sentence, /undefined|\[object|Error/, what);
    assert.deepEqual(await names(page), ['Mine'], what);
    await page.evaluate(() => { document.getElementById('kept-said').blur(); });
  }
  assert.equal(await page.evaluate(() => globalThis.pwned ?? ({}).x), undefined);
  assert.deepEqual(seen.complaints, []);
  assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
  await context.close();
});

test('a file of 50 MB is refused before it is read', async () => {
  const { context, page } = await opened();
  await openPanel(page);
  await page.evaluate(() => { Blob.prototype.text = () => { throw new Error('it was read'); }; });
  const folder = mkdtempSync(join(tmpdir(), 'treadwater-'));
  writeFileSync(join(folder, 'huge.json'), '');
  truncateSync(join(folder, 'huge.json'), 50_000_000);
  await page.getByLabel(/^Take in a file/).setInputFiles(join(folder, 'huge.json'));
  await page.getByText(/holds 50 MB.*Nothing was changed\.$/).waitFor();
  rmSync(folder, { recursive: true });
  await context.close();
});

// ---- the store

// Puts a database there as another version of the page would have left it.
async function before(page, version, records) {
  await page.route('**/bare', (route) => route.fulfill({ contentType: 'text/html', body: 'bare' }));
  await page.goto(`${site.url}bare`);
  await page.evaluate(([version, records]) => new Promise((done, fail) => {
    const request = indexedDB.open('treadwater', version);
    request.onupgradeneeded = () => {
      for (const shelf of ['kept', 'drafts'].slice(0, version)) {
        if (request.result.objectStoreNames.contains(shelf)) continue;
        const store = request.result.createObjectStore(shelf, { keyPath: 'id' });
        for (const record of records[shelf] ?? []) store.put(record);
      }
    };
    request.onsuccess = () => { request.result.close(); done(); };
    request.onerror = fail;
  }), [version, records]);
}

async function fresh() {
  const context = await browser.newContext({ viewport: phone, locale: 'en-GB', serviceWorkers: 'block' });
  const page = await context.newPage();
  return { context, page };
}

const times = { made: '2026-01-01T08:00:00.000Z', changed: '2026-01-01T08:00:00.000Z' };

test('what the first version of the store kept is all there, brought up to date', async () => {
  const { context, page } = await fresh();
  await before(page, 1, { kept: ['155/80 R13 79T', '205/55 R16 91V'].map((size, i) => ({ id: `old-${i}`, name: `Old ${i}`, link: `#tyre-check?${new URLSearchParams({ size, load: '300', 'load.unit': 'kg' })}`, ...times })) });
  await page.goto(site.url);
  await ready(page);
  await openPanel(page);
  await page.waitForFunction(() => document.querySelectorAll('.records li').length === 2);
  await button(page, 'Open Old 1').click();
  assert.equal(await field(page, 'size').inputValue(), '205/55 R16 91V');
  await context.close();
});

test('a form of a sheet that this version lacks stays kept, and is shown as not to be opened', async () => {
  const { context, page } = await fresh();
  await before(page, 2, { kept: [{ id: 'x', name: 'From the future', sheet: 'moon-tyres', fields: { size: '1' }, ...times }] });
  await page.goto(site.url);
  await ready(page);
  await openPanel(page);
  await page.getByText('it cannot be opened here').waitFor();
  assert.equal(await page.getByRole('button', { name: 'Open From the future' }).count(), 0);
  await keepAs(page, 'Mine');
  assert.deepEqual(await names(page), ['Mine', 'From the future']);
  await context.close();
});

test('a store of a newer version is left alone, and the page says so', async () => {
  const { context, page } = await fresh();
  await before(page, 9, {});
  await page.goto(site.url);
  await ready(page);
  await openPanel(page);
  await page.getByText('put away by a newer version of this page, and is safe').waitFor();
  await keepAs(page, 'Mine');
  assert.match(await said(page).innerText(), /newer version/);
  assert.notEqual(await holdTo(page), '', 'the rest of the page works');
  await context.close();
});

test('a new version of the page does not lose what the former kept', async (t) => {
  const folder = mkdtempSync(join(tmpdir(), 'treadwater-'));
  t.after(() => rmSync(folder, { recursive: true }));
  cpSync(pageFolder, folder, { recursive: true });
  const { site, browser } = await house(t.after.bind(t), { folder });
  const { page } = await visit(browser, site.url);
  await page.getByText('kept on this device').waitFor();
  await kerb(page);
  await openPanel(page);
  await keepAs(page, 'Through the change');
  appendFileSync(join(folder, 'sw.js'), '\n// a later version\n');
  await page.reload();
  await button(page, 'Use it now').waitFor();
  await page.evaluate(() => { globalThis.old = true; });
  await button(page, 'Use it now').click();
  await page.waitForFunction(() => !globalThis.old);
  await ready(page);
  await openPanel(page);
  await page.waitForFunction(() => document.querySelectorAll('.records li').length);
  assert.deepEqual(await names(page), ['Through the change']);
});

test('two tabs see what the other keeps, and a newer version is not kept waiting', async () => {
  const { context, page } = await opened();
  const tab = await context.newPage();
  await tab.goto(site.url);
  await ready(tab);
  await openPanel(page);
  await openPanel(tab);
  await keepAs(page, 'Seen in both');
  await tab.getByText('Seen in both').first().waitFor();
  await button(tab, 'Delete Seen in both').click();
  await page.getByText('Nothing is kept yet.').waitFor();

  await before(tab, 9, {}); // would wait for ever if the page held on to its older shelves
  await keepAs(page, 'Too late');
  await page.getByText('newer version of this page, and is safe').waitFor();
  await context.close();
});

test('a tab with an older version that does not let go is named', async () => {
  const { context, page } = await fresh();
  await page.route('**/bare', (route) => route.fulfill({ contentType: 'text/html', body: 'bare' }));
  await page.goto(`${site.url}bare`);
  await page.evaluate(() => new Promise((done) => {
    const request = indexedDB.open('treadwater', 1);
    request.onupgradeneeded = () => request.result.createObjectStore('kept', { keyPath: 'id' });
    request.onsuccess = () => { globalThis.held = request.result; done(); };
  }));
  const tab = await context.newPage();
  await tab.goto(site.url);
  await ready(tab);
  await openPanel(tab);
  await tab.getByText('Another tab still holds an older version').waitFor();
  await page.close();
  await keepAs(tab, 'Now it goes');
  await tab.getByText('“Now it goes” is kept.').waitFor();
  await context.close();
});

test('a full disk is said, and all that was kept before is still there', async () => {
  const { context, page } = await opened();
  const devtools = await context.newCDPSession(page);
  const room = (quotaSize) => devtools.send('Storage.overrideQuotaForOrigin', { origin: new URL(site.url).origin, quotaSize });
  await room(200_000);
  await kerb(page);
  await openPanel(page);
  await keepAs(page, 'Before');
  await field(page, 'size').fill(randomBytes(375_000).toString('base64')); // a browser may press together what it keeps
  await keepAs(page, 'After');
  await page.getByText('There is no room left on this device').waitFor();
  assert.deepEqual(await names(page), ['Before']);
  assert.equal(await page.locator('#keep-name').inputValue(), 'After', 'what was typed stays');
  await field(page, 'size').fill(KERB.size);
  await room(50_000_000); // what was refused may take its room for a while yet
  await button(page, 'Keep it').click();
  await page.getByText('“After” is kept.').waitFor();
  assert.deepEqual(await names(page), ['After', 'Before']);
  await context.close();
});

for (const [what, shut] of Object.entries({
  'there is no store': () => Object.defineProperty(globalThis, 'indexedDB', { value: undefined }),
  'the store is refused': () => { IDBFactory.prototype.open = () => { throw new DOMException('no', 'SecurityError'); }; },
  'the store breaks': () => { IDBFactory.prototype.open = () => { const request = new EventTarget(); Object.setPrototypeOf(request, IDBOpenDBRequest.prototype); throw new DOMException('no', 'UnknownError'); }; },
})) {
  test(`where ${what}, the page says so, works on, and saves a file instead`, async () => {
    const context = await browser.newContext({ viewport: phone, locale: 'en-GB', serviceWorkers: 'block', acceptDownloads: true });
    const page = await context.newPage();
    const complaints = [];
    page.on('pageerror', (error) => complaints.push(String(error)));
    await page.addInitScript(shut);
    await page.goto(site.url);
    await ready(page);
    await page.waitForLoadState('networkidle');
    await kerb(page);
    await page.waitForTimeout(1000);
    await openPanel(page);
    await page.getByText('This browser keeps nothing for this page').waitFor();
    await keepAs(page, 'Mine');
    assert.match(await said(page).innerText(), /Save the form as a file/);
    const download = page.waitForEvent('download');
    await button(page, 'Save it as a file').click();
    assert.equal(JSON.parse(readFileSync(await (await download).path(), 'utf8')).forms[0].fields.size, KERB.size);
    assert.deepEqual(complaints, []);
    await context.close();
  });
}

// ---- drafts

const offer = (page) => page.locator('.offer');

test('what was typed last is offered on return, and neither imposed nor lost', async () => {
  const { context, page } = await opened();
  await kerb(page, { tread: '2.7' });
  const was = await typed(page);
  await page.waitForFunction(() => localStorage.getItem('treadwater.draft.tyre-check'));
  await page.goto('about:blank');

  await page.addInitScript(() => {
    globalThis.shift = 0;
    new PerformanceObserver((list) => list.getEntries().forEach((entry) => { globalThis.shift += entry.value; })).observe({ type: 'layout-shift', buffered: true });
  });
  await page.goto(site.url);
  await ready(page);
  assert.match(await offer(page).innerText(), /Go on with what you typed on \d+ \w+, \d\d:\d\d\?/);
  assert.equal(await page.locator('.example').count(), 1, 'the example is shown, as ever');
  await page.waitForLoadState('networkidle');
  assert.equal(await page.evaluate(() => globalThis.shift), 0, 'and nothing moves for it');
  await button(page, 'Go on').click();
  await page.locator('.example').waitFor({ state: 'detached' });
  assert.deepEqual(await typed(page), was);
  assert.equal(await offer(page).count(), 0);
  assert.equal(await focused(page), 'form');

  await page.goto('about:blank');
  await page.goto(site.url);
  await ready(page);
  await button(page, 'Not now').click();
  assert.equal(await offer(page).count(), 0);
  await page.reload();
  await ready(page);
  assert.equal(await offer(page).count(), 0, 'and it is not asked again');
  await openPanel(page);
  await page.getByRole('button', { name: /^Go on Check one tyre/ }).first().click();
  assert.deepEqual(await typed(page), was);
  await context.close();
});

test('a link that is opened, and an example that is looked at, are not put aside as typed', async () => {
  const { context, page } = await opened({}, `${site.url}#tyre-check?size=155/80+R13+79T&load=300&load.unit=kg`);
  await page.waitForTimeout(1200);
  assert.equal(await page.evaluate(() => localStorage.getItem('treadwater.draft.tyre-check')), null);
  await openPanel(page);
  assert.equal(await page.getByText('Typed and not kept').count(), 0);
  await context.close();
});

test('a form too long for the address comes back too', async () => {
  const { context, page } = await opened({}, `${site.url}#stage-tyres`);
  await page.locator('.asking').getByRole('heading', { name: 'Tyres for the stages' }).waitFor();
  await page.waitForTimeout(300);
  await own(page).click();
  const long = 'Long Meadow '.repeat(150).trim();
  await field(page, 'stages.0.name').fill(long);
  await field(page, 'stages.0.length').fill('9');
  for (let row = 1; row < 6; row++) {
    await page.locator('[id="field-stages"]').getByRole('button', { name: 'Add one more' }).click();
    await field(page, `stages.${row}.name`).fill(long);
  }
  await page.waitForFunction(() => localStorage.getItem('treadwater.draft.stage-tyres'));
  await page.waitForTimeout(900);
  assert.ok((await page.evaluate(() => location.hash)).length < 500);
  await page.reload();
  await page.getByText('Go on with what you typed').waitFor();
  await button(page, 'Go on').click();
  await page.waitForFunction(() => document.getElementById('field-stages.0.length')?.value === '9');
  assert.equal(await field(page, 'stages.0.name').inputValue(), long);
  await context.close();
});

test('a draft whose store is gone is said, and the page goes on', async () => {
  const { context, page } = await opened();
  await page.evaluate(() => localStorage.setItem('treadwater.draft.tyre-check', '2026-11-25T14:30:00.000Z'));
  await page.reload();
  await button(page, 'Go on').click();
  await page.getByText('no longer on this device').waitFor();
  assert.equal(await offer(page).count(), 0);
  await page.evaluate(() => localStorage.setItem('treadwater.draft.tyre-check', '<img src=x>'));
  await page.reload();
  await ready(page);
  assert.equal(await offer(page).count(), 0);
  await context.close();
});

// ---- for everybody

test('by keyboard alone: to the panel, through it in the order it is read, and out with Escape', async () => {
  const { context, page } = await opened();
  await kerb(page);
  await openPanel(page);
  await keepAs(page, 'One');
  await keepAs(page, 'Two');
  await button(page, 'Close').click();
  const kept = button(page, 'Kept');
  assert.equal(await page.evaluate(() => document.activeElement.innerText), 'Kept', 'the focus is back where it came from');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement.id === 'panel-heading');
  assert.equal(await kept.getAttribute('aria-expanded'), 'true');
  await page.getByText('Two').first().waitFor();
  const order = [];
  for (let i = 0; i < 14; i++) {
    await page.keyboard.press('Tab');
    order.push(await page.evaluate(() => document.activeElement.innerText || document.activeElement.labels?.[0]?.innerText));
  }
  assert.deepEqual(order.map((one) => one.replace(/\s+/g, ' ')).slice(0, 12), [
    'Name for the form that is open (Check one tyre)', 'Keep it', 'Save it as a file',
    ...['Two', 'One'].flatMap((name) => ['Open', 'Rename', 'Save as a file', 'Delete'].map((what) => `${what} ${name}`)),
    'Take in a file that was saved from this page',
  ]);
  await page.keyboard.press('Escape');
  assert.equal(await panel(page).isVisible(), false);
  assert.equal(await kept.getAttribute('aria-expanded'), 'false');
  assert.equal(await page.evaluate(() => document.activeElement.innerText), 'Kept');
  await context.close();
});

for (const [look, colorScheme, viewport] of [['', 'light', { width: 320, height: 640 }], ['', 'dark', phone], ['contrast', 'light', phone], ['contrast', 'dark', desk], ['', 'light', desk]]) {
  test(`axe finds nothing in what is kept, and everything can be pressed: ${look || colorScheme}, ${colorScheme}, ${viewport.width} px`, async () => {
    const { context, page } = await opened({ bypassCSP: true, colorScheme, viewport });
    await page.evaluate((value) => localStorage.setItem('treadwater.look', value), look);
    await page.reload();
    await ready(page);
    await kerb(page);
    await page.waitForFunction(() => localStorage.getItem('treadwater.draft.tyre-check'));
    await page.evaluate(axe);
    const clean = async () => {
      assert.equal(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0);
      const { violations } = await page.evaluate(() => globalThis.axe.run());
      assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`), []);
      const small = await page.evaluate(() => [...document.querySelectorAll('.tools button, #panel button, #panel input, .offer button')]
        .filter((one) => one.checkVisibility() && (one.getBoundingClientRect().height < 44 || one.getBoundingClientRect().width < 44)).map((one) => one.outerHTML.slice(0, 80)));
      assert.deepEqual(small, []);
    };
    await openPanel(page);
    await page.getByText('Typed and not kept').waitFor();
    await clean();
    await keepAs(page, 'x'.repeat(100));
    await keepAs(page, 'Another');
    await field(page, 'tread').fill('7');
    await keepAs(page, 'Another');
    await clean();
    await button(page, 'Rename Another').click();
    await clean();
    await page.goto('about:blank');
    await page.goto(site.url);
    await offer(page).waitFor();
    await page.evaluate(axe);
    await clean();
    await context.close();
  });
}
