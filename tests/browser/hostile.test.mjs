// A stranger's link, a paste gone wrong, a phone that saves nothing and a clock years out.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';

import { loadCore } from '../support/core.mjs';
import { answered, check, field, fillIn, holdTo, house, KERB, own, ready, typed, visit } from './support.mjs';

const { site, browser } = await house(after);
const { sheets } = (await loadCore()).describe();
const one = (id) => sheets.find((sheet) => sheet.id === id);

// Every place in a sheet that takes text, the first row of each list among them.
function places(fields, prefix = '') {
  return fields.flatMap((each) => (each.kind === 'list' ? places(each.fields, `${prefix}${each.id}.0.`) : [`${prefix}${each.id}`]));
}

async function unharmed({ page, seen }) {
  assert.deepEqual(await page.evaluate(() => [globalThis.pwned, ({}).polluted]), [undefined, undefined]);
  assert.equal(await page.locator('main img, main script, main iframe, main object, main a[href^="javascript:"]').count(), 0);
  assert.ok((await page.locator('#answer-heading').innerText()).length > 2);
  assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth), 'nothing runs out of the page');
  assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
  assert.deepEqual(seen.complaints, []);
}

const nasty = {
  'a script': '"><script>globalThis.pwned=1</script><img src=x onerror="globalThis.pwned=1">',
  'a template': '${globalThis.pwned=1}{{constructor.constructor("globalThis.pwned=1")()}}',
  'an address': 'javascript:globalThis.pwned=1',
  'control characters': `a\u0000b\u0007c\u001b[31md\u007fe\u0085f`,
  'half a character': 'a\ud83d b\udc00',
  '20 kB': 'W'.repeat(20_000),
};

for (const [what, text] of Object.entries(nasty)) {
  test(`${what} in every field of every sheet is text, or is not taken`, async () => {
    for (const sheet of sheets) {
      const query = new URLSearchParams(places(sheet.fields).map((path) => [path, text]));
      const it = await visit(browser, `${site.url}#${sheet.id}?${query}`);
      await it.page.getByRole('heading', { name: sheet.title, level: 2 }).waitFor();
      await check(it.page).click();
      await unharmed(it);
      await it.context.close();
    }
  });
}

const manyKeys = Array.from({ length: 10_000 }, (_, i) => `key${i}=${i}`).join('&');
const fragments = {
  'ten thousand keys': `tyre-check?size=${KERB.size}&${manyKeys}`,
  'ten thousand times the same key': `tyre-check?${'size=1&'.repeat(10_000)}`,
  'a megabyte of one value': `tyre-check?load=430&size=${'9'.repeat(1_000_000)}`,
  'a percent sign that begins nothing': 'tyre-check?load=430&size=100%&tread=%zz&water=%E0%A4',
  'names that every object has': 'tyre-check?load=430&__proto__=x&__proto__.polluted=x&constructor.prototype.polluted=x&hasOwnProperty=x&toString=x',
  'more rows than there are': 'stage-tyres?stages.rows=999&sets.rows=100&stages.99999.name=x&stages.-1.name=x&stages.1e1.name=x&stages.0.name.name=x',
  'rows where there is no list': 'tyre-check?size.rows=5&load=430&size.0.size=x',
  'rows that are no number': 'stage-tyres?stages.rows=NaN&sets.rows=-3&stages.0.name=x',
  'a question mark in a question': 'tyre-check??load=430?&?=?&&&===&load=430',
};

for (const [what, fragment] of Object.entries(fragments)) {
  test(`a link with ${what} opens within 5 seconds, is usable, and says in short what it left out`, async () => {
    const started = performance.now();
    const it = await visit(browser, `${site.url}#${fragment}`);
    await it.page.locator('.asking h2').waitFor();
    assert.ok(performance.now() - started < 5000, `${performance.now() - started} ms`);
    for (const notice of await it.page.locator('main > .notice').all()) assert.ok((await notice.innerText()).length < 400);
    await unharmed(it);
    if (fragment.startsWith('tyre-check')) {
      await fillIn(it.page, KERB);
      await answered(it.page);
      assert.match(await holdTo(it.page), /\d/);
    }
    await it.context.close();
  });
}

test('a megabyte pasted into a field gets a short sentence, and the rest goes on working', async () => {
  const { context, page, seen } = await visit(browser, site.url);
  await own(page).click();
  await fillIn(page, KERB);
  const paste = (id, text) => page.evaluate(([name, long]) => {
    const input = document.getElementById(`field-${name}`);
    input.value = long;
    const start = performance.now();
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    input.dispatchEvent(new FocusEvent('focusout', { bubbles: true }));
    return performance.now() - start;
  }, [id, text]);
  for (const [id, text] of [['size', '205/55 R16 '.repeat(95_000)], ['load', '4'.repeat(1_000_000)], ['date_code', '🛞'.repeat(250_000)]]) {
    const took = await paste(id, text);
    console.log(`1 MB into ${id}: ${Math.round(took)} ms`);
    assert.ok(took < 1000, `${id}: ${took} ms`);
    const said = await page.locator(`[id="field-${id}-error"]`).innerText();
    assert.ok(said.length > 10 && said.length < 500, said.slice(0, 600));
    await field(page, id).fill(KERB[id] ?? '');
  }
  await answered(page);
  assert.match(await holdTo(page), /\d/);
  assert.deepEqual(seen.complaints, []);
  await context.close();
});

// ---- text that runs the other way, or is not seen

const controls = /[\u202a-\u202e\u2066-\u2069]/;

test('a name written from right to left keeps its place, and does not turn the figures beside it', async () => {
  const query = new URLSearchParams({
    'stages.rows': 2, 'sets.rows': 1, 'stages.0.name': 'שלב 3', 'stages.0.length': 9, 'stages.0.dry': 100,
    'stages.1.name': '\u202e05 ta dloh', 'stages.1.length': 9, 'stages.1.dry': 100, 'sets.0.kind': 'slick',
  });
  const { context, page, seen } = await visit(browser, `${site.url}#stage-tyres?${query}`);
  await page.locator('.timeline').waitFor();
  assert.equal(await field(page, 'stages.0.name').inputValue(), 'שלב 3', 'the field holds what was written');
  const spoken = await page.locator('.spoken').innerText();
  assert.match(spoken, /\u2068שלב 3\u2069/, 'the name is set apart from the words around it');
  assert.equal(controls.test((await page.locator('.timeline').innerText()).replaceAll(/\u2068([^\u2066-\u2069\u202a-\u202e]*)\u2069/g, '$1')), false, 'nothing else turns the text');
  assert.equal(controls.test((await page.locator('.list .digest').allInnerTexts()).join('').replaceAll(/\u2068([^\u2066-\u2069\u202a-\u202e]*)\u2069/g, '$1')), false);
  // The width in pixels of "for" to the full stop: the stop stands after the name, at the right.
  const [name, stop] = await page.locator('.spoken').evaluate((quote) => {
    const text = document.createTreeWalker(quote, NodeFilter.SHOW_TEXT);
    while (!text.nextNode().data.includes('שלב'));
    const box = (at) => {
      const range = document.createRange();
      range.setStart(text.currentNode, at);
      range.setEnd(text.currentNode, at + 1);
      return range.getBoundingClientRect();
    };
    return [box(text.currentNode.data.indexOf('ש')), box(text.currentNode.data.lastIndexOf('.'))];
  });
  assert.ok(stop.left >= name.right - 1 || stop.top > name.top + 4, `${name.right} ${stop.left}`);
  assert.deepEqual(seen.complaints, []);
  await context.close();
});

test('what cannot be seen in a pasted sidewall does no harm', async () => {
  const { context, page } = await visit(browser, site.url);
  await own(page).click();
  await fillIn(page, KERB);
  await answered(page);
  const hold = await holdTo(page);
  for (const size of ['\ufeff205/55 R16 91V', '205/55\u200b R16 91V\u200d', '\u202d205/55 R16 91V\u202c', '205/55\u00a0R16\u202f91V', '205/55\u00adR16 91V\u0000']) {
    await field(page, 'size').fill(size);
    await answered(page);
    assert.equal(await page.locator('.error').count(), 0, JSON.stringify(size));
    assert.equal(await holdTo(page), hold, JSON.stringify(size));
  }
  await context.close();
});

// ---- a phone that keeps nothing

const refusals = {
  'storage is refused': () => {
    for (const name of ['localStorage', 'sessionStorage', 'indexedDB', 'caches']) {
      Object.defineProperty(globalThis, name, { get() { throw new DOMException('The operation is insecure.', 'SecurityError'); } });
    }
  },
  'storage is full': () => {
    Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };
  },
  'storage is empty air': () => {
    for (const name of ['localStorage', 'sessionStorage', 'indexedDB', 'caches']) Object.defineProperty(globalThis, name, { value: null });
  },
  'the address may not be changed': () => {
    history.replaceState = () => { throw new DOMException('too often', 'SecurityError'); };
    history.pushState = history.replaceState;
  },
  'a service worker is refused': () => {
    ServiceWorkerContainer.prototype.register = () => Promise.reject(new DOMException('refused', 'SecurityError'));
  },
};

for (const [what, refuse] of Object.entries(refusals)) {
  test(`where ${what}, the page answers all the same`, async () => {
    const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
    const page = await context.newPage();
    const complaints = [];
    page.on('pageerror', (error) => complaints.push(String(error)));
    await page.addInitScript(refuse);
    await page.goto(site.url);
    await ready(page);
    await page.locator('[data-path=units][value=uk]').check();
    await own(page).click();
    await fillIn(page, { ...KERB, pressure: '33' });
    await answered(page);
    assert.match(await holdTo(page), /mph/);
    await page.locator('.ways button').nth(1).click();
    await page.locator('.ways button[aria-pressed=true]').waitFor();
    assert.deepEqual(complaints, []);
    await context.close();
  });
}

// ---- a clock that is out

for (const [day, words] of [['1970-01-01', /still to come on 1970-01-01/], ['2099-12-31', /76 years before 2099-12-31/]]) {
  test(`on a phone that says it is ${day}, what rests on the date names that date, and the rest holds`, async () => {
    const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
    const page = await context.newPage();
    const complaints = [];
    page.on('pageerror', (error) => complaints.push(String(error)));
    await page.clock.setFixedTime(new Date(`${day}T12:00:00Z`));
    await page.goto(site.url);
    await ready(page);
    assert.match(await page.locator('.version').innerText(), new RegExp(day));
    await own(page).click();
    await fillIn(page, KERB);
    await answered(page);
    assert.match(await holdTo(page), /\d/, 'without a date code the answer is the same');
    await field(page, 'date_code').fill('2323');
    await check(page).click();
    assert.match(await page.locator('main').innerText(), words);
    for (const sheet of sheets) {
      await page.goto(`${site.url}#${sheet.id}`);
      await page.getByRole('heading', { name: sheet.title, level: 2 }).waitFor();
      assert.match(await page.locator('#answer-heading').innerText(), /\w/, sheet.id);
    }
    assert.deepEqual(complaints, []);
    await context.close();
  });
}

test('a wear log on a phone whose clock is behind says which day it took for today', async () => {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.clock.setFixedTime(new Date('1970-01-01T12:00:00Z'));
  await page.goto(`${site.url}#wear-log`);
  await page.getByRole('heading', { name: one('wear-log').title, level: 2 }).waitFor();
  assert.match(await page.locator('.answering').innerText(), /not come yet on 1970-01-01/);
  await context.close();
});
