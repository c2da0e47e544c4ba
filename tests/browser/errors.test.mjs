// Errors are shown beside the field and, on request, in a summary; nothing typed is lost.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';

import { check, field, fillIn, focused, house, KERB, own, typed, visit } from './support.mjs';

const { site, browser } = await house(after);

const error = (page, id) => page.locator(`[id="field-${id}-error"]`);

test('an untouched form is not scolded, and Check says what is missing', async () => {
  const { context, page } = await visit(browser, site.url);
  await own(page).click();
  await page.keyboard.press('Tab');
  assert.equal(await page.locator('.error').count(), 0);
  assert.equal(await page.locator('.summary').count(), 0);
  await check(page).click();
  assert.equal(await focused(page), 'problems', 'the summary takes the focus');
  assert.equal(await page.locator('.summary [role=alert]').count(), 1);
  for (const id of ['size', 'load', 'pressure', 'tread']) {
    const input = field(page, id);
    assert.equal(await input.getAttribute('aria-invalid'), 'true');
    assert.ok((await input.getAttribute('aria-describedby')).includes(`field-${id}-error`));
    assert.equal(await error(page, id).count(), 1);
  }
  assert.equal(await page.locator('.hold-speed').count(), 0, 'no speed rests on nothing');
  await context.close();
});

test('each line of the summary leads to its field, and goes when the field is put right', async () => {
  const { context, page } = await visit(browser, site.url);
  await own(page).click();
  await fillIn(page, { ...KERB, size: 'banana', tread: '-3 mm' });
  const before = await typed(page);
  await check(page).click();
  const lines = page.locator('.summary a');
  assert.equal(await lines.count(), 2);
  const hash = await page.evaluate(() => location.hash);
  await page.locator('.summary a[href="#field-tread"]').click();
  assert.equal(await focused(page), 'field-tread');
  assert.equal(await page.evaluate(() => location.hash), hash, 'the link of the form stays');
  const box = await field(page, 'tread').boundingBox();
  assert.ok(box.y >= 0 && box.y + box.height <= 740, 'the field is in view');
  assert.deepEqual(await typed(page), before, 'nothing typed is lost or altered');
  await field(page, 'tread').fill('3 mm');
  await page.waitForFunction(() => document.querySelectorAll('.summary a').length === 1);
  await field(page, 'size').fill(KERB.size);
  await page.waitForSelector('.hold-speed');
  assert.equal(await page.locator('.summary, .error').count(), 0);
  await context.close();
});

test('a field is judged when it is left or typing pauses, and never while a first word is under way', async () => {
  const { context, page } = await visit(browser, site.url);
  await own(page).click();
  await field(page, 'size').pressSequentially('20', { delay: 30 });
  assert.equal(await error(page, 'size').count(), 0);
  await page.keyboard.press('Tab');
  await error(page, 'size').waitFor();
  assert.equal(await error(page, 'load').count(), 0, 'the next field has not been touched');
  await field(page, 'load').fill('heavy');
  await error(page, 'load').waitFor();
  await field(page, 'load').fill('');
  await page.keyboard.press('Tab');
  await page.waitForFunction(() => /missing/i.test(document.getElementById('field-load-error')?.textContent ?? ''));
  await context.close();
});

for (const junk of ['205/55', '205/55 R16 99Z', 'banana', '😀', '<b>', '0', 'x'.repeat(10_000)]) {
  test(`the sidewall text ${junk.slice(0, 16)} gets a sentence, keeps its place and breaks nothing`, async () => {
    const { context, page, seen } = await visit(browser, site.url);
    await own(page).click();
    await fillIn(page, { ...KERB, size: junk });
    await check(page).click();
    assert.equal(await field(page, 'size').inputValue(), junk);
    assert.ok((await page.locator('.summary').innerText()).length > 20);
    assert.equal(await page.locator('.hold-speed').count(), 0);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth));
    assert.deepEqual(seen.complaints, []);
    await context.close();
  });
}

test('what can be said of part of the input is said, under words that it is partial', async () => {
  const { context, page } = await visit(browser, site.url);
  await own(page).click();
  await field(page, 'size').fill(KERB.size);
  await page.getByText('What can be said so far').waitFor();
  assert.match(await page.locator('#answer-heading').innerText(), /No answer yet/);
  await context.close();
});
