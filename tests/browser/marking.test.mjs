// The picture of a sidewall: each part of the text gives its meaning by touch, keyboard and screen
// reader, and a text of any length stays legible.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { after, test } from 'node:test';

import { loadCore } from '../support/core.mjs';
import { answered, desk, fillIn, house, KERB, KERB_INPUT, own, phone, ready, visit } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const { site, browser } = await house(after);
const core = await loadCore();

const TRUCK = '315/80 R22.5 156/150L (154/150M) TL M+S 3PMSF E4 REGROOVABLE DOT AB12 CDE3 2319';

function partsOf(size) {
  const { blocks } = core.answer('tyre-check', { ...KERB_INPUT, size, today: '2026-01-01' });
  return blocks.find(({ kind }) => kind === 'marking').stretches.filter(({ meaning }) => meaning);
}

async function sidewall(size, options) {
  const opened = await visit(browser, site.url, options);
  await own(opened.page).click();
  await fillIn(opened.page, { ...KERB, size });
  await answered(opened.page);
  return opened;
}

// Whatever the core would send, the block is this one instead.
async function invented(stretches, options) {
  const context = await browser.newContext({ viewport: { width: 320, height: 640 }, serviceWorkers: 'block', ...options });
  const page = await context.newPage();
  await page.addInitScript((block) => {
    const parse = JSON.parse;
    JSON.parse = (text, ...rest) => {
      const value = parse(text, ...rest);
      if (value?.blocks) value.blocks = [block];
      return value;
    };
  }, { kind: 'marking', id: 'sidewall', title: 'What it says', text: '', stretches });
  await page.goto(site.url);
  await ready(page);
  return { context, page };
}

const parts = (page) => page.locator('.marking [role=button]');
const said = (page) => page.locator('.marking figcaption').innerText();
const chosen = (page) => page.locator('.marking [aria-current]');
const sideways = (page) => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
const list = (page) => page.$$eval('.marking dl > div', (rows) => rows.map((row) => (
  { text: row.querySelector('dt').textContent, meaning: row.querySelector('dd').textContent })));

for (const size of [KERB.size, TRUCK]) {
  test(`each part shows its meaning where a finger lands on it: ${size}`, async () => {
    const { context, page, seen } = await sidewall(size);
    const meant = partsOf(size);
    assert.ok(meant.length >= 6);
    assert.equal(await parts(page).count(), meant.length);
    for (const [i, { text, meaning }] of meant.entries()) {
      // On each sign, and a finger above and below it.
      const spots = await parts(page).nth(i).evaluate((part) => {
        part.scrollIntoView({ block: 'center' });
        return [...part.querySelectorAll('text')].flatMap((sign) => {
          const { x, y, width, height } = sign.getBoundingClientRect();
          return [-16, 0, 16].map((down) => ({ x: x + width / 2, y: y + height / 2 + down }));
        });
      });
      assert.ok(spots.length >= 3);
      for (const { x, y } of spots) {
        await page.mouse.click(5, 5);
        await page.mouse.click(x, y);
        assert.equal(await said(page), `${text} ${meaning}`);
        assert.equal(await chosen(page).count(), 1);
        assert.equal(await chosen(page).getAttribute('aria-label'), `${text}: ${meaning}`);
      }
    }
    assert.deepEqual(seen.complaints, []);
    await context.close();
  });
}

test('the keyboard goes through the parts in the order of the text, and sees where it is', async () => {
  const { context, page } = await sidewall(KERB.size);
  assert.equal(await said(page), 'Choose a part to see what it means.');
  await parts(page).first().evaluate((part) => {
    const links = [...document.querySelectorAll('.answering a, .answering button, .answering summary')];
    links.filter((link) => link.compareDocumentPosition(part) & Node.DOCUMENT_POSITION_FOLLOWING).at(-1).focus();
  });
  for (const { text, meaning } of partsOf(KERB.size)) {
    await page.keyboard.press('Tab');
    const { name, ring } = await page.evaluate(() => ({
      name: document.activeElement.getAttribute('aria-label'),
      ring: getComputedStyle(document.activeElement.querySelector('.hit')).strokeWidth,
    }));
    assert.equal(name, `${text}: ${meaning}`);
    assert.equal(ring, '3px');
    assert.equal(await said(page), `${text} ${meaning}`);
  }
  const before = await page.evaluate(() => scrollY);
  await page.keyboard.press('Space');
  assert.equal(await page.evaluate(() => scrollY), before, 'a button keeps the space bar to itself');
  await context.close();
});

test('what is chosen differs from the rest by weight and line, not by colour alone', async () => {
  const { context, page } = await sidewall(KERB.size);
  const look = (i) => parts(page).nth(i).evaluate((part) => [
    Number(getComputedStyle(part.querySelector('text')).fontWeight), parseFloat(getComputedStyle(part.querySelector('.under')).strokeWidth)]);
  const [weight, line] = await look(1);
  await parts(page).nth(1).click();
  const [heavier, thicker] = await look(1);
  assert.ok(heavier >= weight + 200 && thicker >= 2 * line);
  assert.deepEqual(await look(0), [weight, line]);
  await context.close();
});

test('what is chosen stays while something else is typed, and goes with the text it was of', async () => {
  const { context, page } = await sidewall(KERB.size);
  await parts(page).first().click();
  const was = await said(page);
  await fillIn(page, { tread: '6' });
  await answered(page);
  assert.equal(await said(page), was);
  await fillIn(page, { size: '195/65 R15 91H' });
  await answered(page);
  assert.equal(await chosen(page).count(), 0);
  assert.equal(await said(page), 'Choose a part to see what it means.');
  assert.deepEqual(await parts(page).evaluateAll((all) => all.map((part) => part.textContent.replace(/\s/g, ''))), ['195', '65', 'R', '15', '91', 'H']);
  await context.close();
});

test('the list says the same as the picture, and the picture shows the text as it was typed', async () => {
  const { context, page } = await sidewall(TRUCK);
  assert.deepEqual(await list(page), partsOf(TRUCK));
  assert.ok(!await page.locator('.marking dl').isVisible());
  await page.locator('.marking summary').click();
  assert.ok(await page.locator('.marking dl').isVisible());
  const shown = await page.$$eval('.marking text', (signs) => signs.map((sign) => sign.textContent.trim()).join(''));
  assert.equal(shown, TRUCK.replace(/\s/g, ''));
  await context.close();
});

for (const colorScheme of ['light', 'dark']) {
  for (const viewport of [phone, desk]) {
    test(`axe finds nothing with a part chosen: ${colorScheme}, ${viewport.width} px`, async () => {
      // The page's own policy would refuse axe, so this context does without it.
      const { context, page } = await sidewall(TRUCK, { bypassCSP: true, colorScheme, viewport });
      await parts(page).nth(2).click();
      await page.locator('.marking summary').click();
      await page.evaluate(axe);
      const { violations } = await page.evaluate(() => globalThis.axe.run('.answering', {
        runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] } }));
      assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`), []);
      await context.close();
    });
  }
}

// Every sign is inside the drawing and belongs to its part, with room for a finger along its row and
// across it.
async function legible(page, what) {
  assert.equal(await sideways(page), 0, what);
  const wrong = await page.evaluate(() => {
    const partAt = (x, y) => document.elementFromPoint(x, y)?.closest('[role=button]');
    const found = [];
    for (const sign of document.querySelectorAll('.marking text')) {
      sign.scrollIntoView({ block: 'center' });
      const frame = sign.ownerSVGElement.getBoundingClientRect();
      const { x, y, left, right, top, bottom, width, height } = sign.getBoundingClientRect();
      if (left < frame.left - 1 || right > frame.right + 1 || top < frame.top || bottom > frame.bottom) found.push(`${sign.textContent} is outside`);
      const part = sign.closest('[role=button]');
      if (!part) continue;
      const { a, b } = sign.getScreenCTM();
      const size = Math.hypot(a, b);
      const reach = (alongX, alongY) => {
        let steps = 0;
        while (partAt(x + width / 2 + alongX * steps, y + height / 2 + alongY * steps) === part) steps += 0.5;
        return steps;
      };
      const [right1, down1] = [a / size, b / size];
      const along = reach(right1, down1) + reach(-right1, -down1);
      const across = reach(down1, -right1) + reach(-down1, right1);
      if (along < 24 || across < 44) found.push(`${sign.textContent} of ${part.ariaLabel}: ${along} × ${across}`);
    }
    return found;
  });
  assert.deepEqual(wrong, [], what);
}

test('at 320 px every part is legible and large enough, in one row or in several', async () => {
  for (const size of [KERB.size, '205/55R16', '5.60-15', 'LT245/75R16 120/116Q', TRUCK]) {
    const { context, page } = await sidewall(size, { viewport: { width: 320, height: 640 } });
    await legible(page, size);
    await context.close();
  }
});

test('a text too long for a picture is a list, and a word longer than a row is broken', async () => {
  const many = Array.from({ length: 24 }, (_, i) => [{ text: `MARK NO ${i}`, meaning: `The mark with the number ${i}` }, { text: ' ', meaning: '' }]).flat();
  for (const stretches of [many, [{ text: 'W'.repeat(300), meaning: 'A very long word '.repeat(20) }]]) {
    const { context, page } = await invented(stretches);
    assert.equal(await page.locator('.marking svg').count(), 0);
    assert.ok(await page.locator('.marking dl').isVisible());
    assert.deepEqual(await list(page), stretches.filter(({ meaning }) => meaning));
    assert.equal(await sideways(page), 0);
    await context.close();
  }
  const { context, page } = await invented([{ text: 'ABCDEFGHIJ'.repeat(4), meaning: 'Forty letters' }]);
  assert.ok(await page.locator('.marking .hit').count() > 1);
  await legible(page, 'forty letters');
  await context.close();
});

test('marks of every script, and somebody else’s markup, are only text', async () => {
  const nasty = ['<img src=x onerror="globalThis.hit=1">', '"><script>hit=1</script>', '轮胎🛞', '\u202e91V', 'e\u0301'];
  const stretches = nasty.flatMap((text) => [{ text, meaning: `${text} means ${text}` }, { text: ' ', meaning: '' }]);
  const { context, page } = await invented(stretches);
  assert.equal(await parts(page).count(), nasty.length);
  for (const [i, text] of nasty.entries()) {
    await parts(page).nth(i).focus();
    assert.equal(await page.locator('.marking figcaption .now').textContent(), `${text} ${text} means ${text}`);
  }
  assert.equal(await page.locator('.marking img, .marking script').count(), 0);
  assert.equal(await page.evaluate(() => globalThis.hit), undefined);
  assert.equal(await sideways(page), 0);
  await context.close();
});

test('choosing a part moves nothing', async () => {
  const { context, page } = await sidewall(TRUCK);
  const below = () => page.getByRole('button', { name: 'Copy link' }).evaluate((element) => element.getBoundingClientRect().top + scrollY);
  const before = await below();
  for (let i = 0; i < await parts(page).count(); i++) {
    await parts(page).nth(i).focus();
    assert.equal(await below(), before);
  }
  await context.close();
});

test('on paper the list stands in for the picture, and the sheet is still one page', async () => {
  const { context, page } = await sidewall(KERB.size);
  const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true });
  assert.equal(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g).length, 1);
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  assert.ok(await page.locator('.marking dl').isVisible());
  assert.ok(!await page.locator('.marking svg').isVisible());
  await context.close();
});

test('in the colours a person chose for everything, the parts and the one chosen stand out', async () => {
  const { context, page } = await sidewall(KERB.size, { forcedColors: 'active' });
  await parts(page).nth(1).click();
  const [rubber, letters, marked] = await page.evaluate(() => ['.rubber', '[role=button] text', '[aria-current] .under']
    .map((one) => getComputedStyle(document.querySelector(`.marking ${one}`)))
    .map(({ fill, stroke }, i) => (i < 2 ? fill : stroke)));
  assert.notEqual(rubber, letters);
  assert.notEqual(rubber, marked);
  assert.notEqual(letters, marked);
  await context.close();
});
