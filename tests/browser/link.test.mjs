// Everything a person typed is in the link, and a link is a stranger's text.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';

import { answered, field, fillIn, holdTo, house, KERB, own, ready, typed, visit } from './support.mjs';

const { site, browser } = await house(after);

const hashNames = (page, text) => page.waitForFunction((part) => location.hash.includes(part), text);

test('a reload, and a copied link on another phone, give the same text and the same answer', async () => {
  const first = await visit(browser, site.url);
  await own(first.page).click();
  await fillIn(first.page, { ...KERB, load: '900', pressure: '33 psi', tread: '3,0', date_code: '2322' });
  await first.page.locator('[data-path=units][value=uk]').check();
  await first.page.locator('[data-path="load.unit"]').selectOption('lb');
  await answered(first.page);
  const before = { form: await typed(first.page), hold: await holdTo(first.page) };
  assert.equal(before.form.tread, '3,0');

  await first.page.reload();
  await ready(first.page);
  assert.deepEqual({ form: await typed(first.page), hold: await holdTo(first.page) }, before);

  const second = await visit(browser, first.page.url());
  assert.deepEqual({ form: await typed(second.page), hold: await holdTo(second.page) }, before);
  await first.context.close();
  await second.context.close();
});

test('text that no form would expect survives the way through a link', async () => {
  const { context, page } = await visit(browser, site.url);
  await own(page).click();
  const odd = { size: '100%25 &load=1#?+ ü 🛞 "<b>', load: '1e999', pressure: '+2.2', tread: '7/32', water: ' 5 ' };
  await fillIn(page, odd);
  const before = await typed(page);
  await hashNames(page, 'water=');
  await page.reload();
  await ready(page);
  assert.deepEqual(await typed(page), before);
  for (const [id, text] of Object.entries(odd)) assert.equal(before[id], text);
  await context.close();
});

test('the address is written without a new step in the history', async () => {
  const { context, page } = await visit(browser, site.url);
  const steps = await page.evaluate(() => history.length);
  await own(page).click();
  await fillIn(page, KERB);
  await hashNames(page, 'size=205/55');
  assert.equal(await page.evaluate(() => history.length), steps);
  await context.close();
});

test('a link opened in the same tab fills the form anew', async () => {
  const { context, page } = await visit(browser, site.url);
  await page.evaluate(() => { location.hash = '#tyre-check?size=155/80+R13+79T&load=300&load.unit=kg'; });
  await page.waitForFunction(() => document.getElementById('field-size').value === '155/80 R13 79T');
  assert.equal(await field(page, 'load').inputValue(), '300');
  assert.equal(await field(page, 'tread').inputValue(), '');
  await context.close();
});

test('a hostile link is text, and what has no place in the form is named and left out', async () => {
  const hostile = '<img src=x onerror="globalThis.pwned=1">';
  const query = new URLSearchParams([
    ['size', hostile], ['__proto__', 'x'], ['constructor', 'x'], [hostile, '1'], ['load', '430'], ['load.unit', hostile],
    ['place', hostile], ['size.unit', 'kg'], ['page.way', hostile], ['page.example', '1'],
  ]);
  const { context, page, seen } = await visit(browser, `${site.url}#tyre-check?${query}`);
  assert.equal(await field(page, 'size').inputValue(), hostile);
  assert.equal(await page.locator('img').count(), 0);
  assert.equal(await page.evaluate(() => globalThis.pwned ?? ({}).x), undefined);
  const notice = await page.locator('.notice').innerText();
  assert.match(notice, /“__proto__”/);
  assert.match(notice, /<img/);
  assert.equal((await typed(page))['load.unit'], 'kg');
  assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
  assert.deepEqual(seen.complaints, []);
  await context.close();
});

for (const fragment of ['#', '#nonsense', '#tyre-check?', '#%', '#?%E0%A4%A', '#__proto__?x=1', `#${'x'.repeat(20000)}`]) {
  test(`the fragment ${fragment.slice(0, 20)} opens the example`, async () => {
    const { context, page, seen } = await visit(browser, site.url + fragment);
    assert.equal(await page.locator('.example').count(), 1);
    assert.notEqual(await holdTo(page), '');
    assert.deepEqual(seen.complaints, []);
    await context.close();
  });
}

test('Copy link puts the whole form on the clipboard', async () => {
  const { context, page } = await visit(browser, site.url, { permissions: ['clipboard-read', 'clipboard-write'] });
  await own(page).click();
  await fillIn(page, KERB);
  await answered(page);
  await page.getByRole('button', { name: 'Copy link' }).click();
  await page.getByText('Copied.').waitFor();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  assert.ok(link.startsWith(`${site.url}#tyre-check?`), link);
  assert.equal(new URLSearchParams(link.split('?')[1]).get('size'), KERB.size);
  await context.close();
});

test('where the clipboard is refused, the link can be selected by hand', async () => {
  const { context, page } = await visit(browser, site.url);
  await page.evaluate(() => { navigator.clipboard.writeText = () => Promise.reject(new Error('refused')); });
  await page.getByRole('button', { name: 'Copy link' }).click();
  const byHand = page.locator('textarea:visible');
  await byHand.waitFor();
  assert.ok((await byHand.inputValue()).startsWith(`${site.url}#tyre-check?`));
  assert.equal(await page.evaluate(() => getSelection().toString() || document.activeElement.value.slice(document.activeElement.selectionStart, document.activeElement.selectionEnd)), await byHand.inputValue());
  await context.close();
});

test('the units and the law that were chosen are the next visit\'s start', async () => {
  const { context, page } = await visit(browser, site.url);
  await page.locator('[data-path=units][value=uk]').check();
  await page.goto('about:blank');
  await page.goto(site.url);
  await ready(page);
  assert.equal((await typed(page)).units, 'uk');
  await own(page).click();
  assert.equal((await typed(page))['pressure.unit'], 'psi');
  await context.close();
});
