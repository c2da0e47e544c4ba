// The main job: somebody beside a car, with a phone, types what a sidewall, a gauge and a ruler say.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';

import { loadCore } from '../support/core.mjs';
import { check, desk, field, fillIn, focused, holdTo, house, KERB, KERB_INPUT, own, typed, visit } from './support.mjs';

const { site, browser } = await house(after);
const core = await loadCore();

test('a first visitor sees the worked example answered, and marked as one', async () => {
  const { context, page } = await visit(browser, site.url);
  const { example } = core.describe().sheets[0];
  assert.match(await page.locator('.example').innerText(), /^Example/);
  assert.ok((await page.locator('.example').innerText()).includes(example.title));
  assert.equal(await holdTo(page), core.answer('tyre-check', example.input).hold_to.text);
  assert.equal(new URL(page.url()).hash, '');
  const seen = await page.locator('.glance').boundingBox();
  assert.ok(seen.y + seen.height <= 740, 'the example is answered on the first screen of a phone');
  await context.close();
});

test('by keyboard alone, a motorist fills the form and reads the hold-to speed', async () => {
  const { context, page } = await visit(browser, site.url);
  const tabTo = async (id) => {
    for (let presses = 0; await focused(page) !== id; presses++) {
      assert.ok(presses < 60, `Tab never reaches ${id}`);
      await page.keyboard.press('Tab');
    }
  };
  await own(page).focus();
  await page.keyboard.press('Enter');
  assert.equal(await focused(page), 'field-size', 'one press empties the form and goes to its first field');
  for (const [id, value] of Object.entries(KERB)) {
    await tabTo(`field-${id}`);
    await page.keyboard.type(value);
  }
  await page.keyboard.press('Enter');
  assert.equal(await focused(page), 'answer-heading');
  const said = core.answer('tyre-check', KERB_INPUT);
  assert.equal(await holdTo(page), said.hold_to.text);
  assert.match(said.hold_to.text, /^\d+ km\/h$/);
  const answer = await page.locator('.answering').innerText();
  for (const text of [said.verdict.text, said.hold_to.why, said.limits[0].label, said.safety]) {
    assert.ok(answer.includes(text), `the answer says: ${text}`);
  }
  assert.equal(await page.locator('.example').count(), 0);
  await context.close();
});

test('the answer follows the typing, with no button pressed', async () => {
  const { context, page } = await visit(browser, site.url, { viewport: desk });
  await own(page).click();
  await fillIn(page, KERB);
  const shown = (input) => page.waitForFunction((text) => document.querySelector('.hold-speed')?.textContent === text,
    core.answer('tyre-check', input).hold_to.text);
  await shown(KERB_INPUT);
  await field(page, 'tread').fill('1,7');
  await shown({ ...KERB_INPUT, tread: '1.7 mm' });
  await context.close();
});

test('a screen reader is told the verdict and the speed, once typing has paused', async () => {
  const { context, page } = await visit(browser, site.url);
  const told = page.locator('main > [role=status]');
  assert.equal(await told.innerText(), '', 'nothing is announced at the start');
  await own(page).click();
  await fillIn(page, KERB);
  const { verdict, hold_to } = core.answer('tyre-check', KERB_INPUT);
  await page.waitForFunction((speed) => document.querySelector('main > [role=status]').textContent.includes(speed), hold_to.text);
  assert.ok((await told.innerText()).includes(verdict.text));
  await field(page, 'tread').pressSequentially('9', { delay: 20 });
  assert.ok((await told.innerText()).includes(verdict.text), 'it keeps quiet while a figure is being typed');
  await context.close();
});

test('a unit picker changes what the number means, never the number', async () => {
  const { context, page } = await visit(browser, site.url);
  await own(page).click();
  await fillIn(page, { ...KERB, pressure: '32' });
  await page.locator('[data-path="pressure.unit"]').selectOption('psi');
  await check(page).click();
  assert.equal(await field(page, 'pressure').inputValue(), '32');
  assert.equal(await holdTo(page), core.answer('tyre-check', { ...KERB_INPUT, pressure: '32 psi' }).hold_to.text);
  assert.match(await page.locator('label[for="field-pressure"]').innerText(), /\(psi\)/);
  await field(page, 'pressure').fill('2.2 bar');
  await check(page).click();
  assert.equal(await holdTo(page), core.answer('tyre-check', { ...KERB_INPUT, pressure: '2.2 bar' }).hold_to.text);
  assert.match(await page.locator('label[for="field-pressure"]').innerText(), /\(bar\)/, 'a typed unit counts');
  await context.close();
});

test('another unit system moves the pickers of empty fields and leaves typed numbers alone', async () => {
  const { context, page } = await visit(browser, site.url);
  await own(page).click();
  await field(page, 'pressure').fill('2.2');
  await page.locator('[data-path=units][value=us]').check();
  const now = await typed(page);
  assert.equal(now.pressure, '2.2');
  assert.equal(now['pressure.unit'], 'bar');
  assert.equal(now['tread.unit'], '/32 in');
  await fillIn(page, { size: KERB.size, load: '950', tread: '4', water: '0.2' });
  await check(page).click();
  const expected = { size: KERB.size, load: '950 lb', pressure: '2.2 bar', tread: '4/32 in', water: '0.2 in', units: 'us' };
  assert.equal(await holdTo(page), core.answer('tyre-check', expected).hold_to.text);
  assert.match(await holdTo(page), /mph|[a-z]/);
  await context.close();
});

test('a way in opens its sheet with its own choices, and Back returns to what was typed', async () => {
  const { context, page } = await visit(browser, site.url);
  const way = core.describe().ways.find(({ id }) => id === 'stage');
  const sheet = core.describe().sheets.find(({ id }) => id === way.sheet);
  await own(page).click();
  await fillIn(page, { size: '185/65 R15 88T', load: '390' });
  await page.getByRole('button', { name: way.title }).click();
  await page.getByRole('heading', { name: sheet.title, level: 2 }).waitFor();
  const now = await typed(page);
  for (const [list, [row]] of Object.entries(way.input))
    for (const [id, value] of Object.entries(row)) assert.equal(now[`${list}.0.${id}`], value);
  assert.equal(await page.getByRole('button', { name: way.title }).getAttribute('aria-pressed'), 'true');
  await page.goBack();
  await page.getByRole('heading', { name: 'Check one tyre', level: 2 }).waitFor();
  const again = await typed(page);
  assert.equal(again.size, '185/65 R15 88T');
  assert.equal(again.load, '390');
  await context.close();
});

test('a way in on the same sheet takes nothing typed away', async () => {
  const { context, page } = await visit(browser, site.url);
  const way = core.describe().ways.find(({ id }) => id === 'club');
  await own(page).click();
  await fillIn(page, { size: '185/65 R15 88T', load: '390' });
  await page.getByRole('button', { name: way.title }).click();
  const now = await typed(page);
  assert.equal(now.size, '185/65 R15 88T');
  assert.equal(now.load, '390');
  assert.equal(await page.getByRole('button', { name: way.title }).getAttribute('aria-pressed'), 'true');
  await context.close();
});

test('an emptied form can be brought back', async () => {
  const { context, page } = await visit(browser, site.url);
  await own(page).click();
  await fillIn(page, KERB);
  const before = await typed(page);
  await page.getByRole('button', { name: 'Empty the form' }).click();
  assert.equal((await typed(page)).size, '');
  await page.getByRole('button', { name: 'Bring it back' }).click();
  assert.deepEqual(await typed(page), before);
  await context.close();
});

test('figures of one\'s own stay when the example\'s are taken out', async () => {
  const { context, page } = await visit(browser, site.url);
  await field(page, 'tread').fill('6.5');
  await page.waitForFunction(() => location.hash.includes('page.example=1'));
  await own(page).click();
  const now = await typed(page);
  assert.equal(now.tread, '6.5');
  assert.equal(now.size, '');
  assert.equal(now.load, '');
  await context.close();
});
