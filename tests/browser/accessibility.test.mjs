// axe on every state of the page, in both colour schemes, on a phone and on a desktop; then what
// axe cannot see.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { after, test } from 'node:test';

import { answered, check, desk, fillIn, house, KERB, own, phone, visit } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const { site, browser } = await house(after);

const states = {
  example: async () => {},
  empty: async (page) => own(page).click(),
  answered: async (page) => {
    await own(page).click();
    await fillIn(page, KERB);
    await answered(page);
    for (const summary of await page.locator('summary').all()) await summary.click();
  },
  unfit: async (page) => {
    await own(page).click();
    await fillIn(page, { ...KERB, tread: '0.5' });
    await answered(page);
  },
  error: async (page) => {
    await own(page).click();
    await fillIn(page, { size: 'banana', load: '-3 mm' });
    await check(page).click();
  },
};

for (const [state, reach] of Object.entries(states)) {
  for (const colorScheme of ['light', 'dark']) {
    for (const viewport of [phone, desk]) {
      test(`axe finds nothing: ${state}, ${colorScheme}, ${viewport.width} px`, async () => {
        // The page's own policy would refuse axe, so this context does without it.
        const { context, page } = await visit(browser, site.url, { bypassCSP: true, colorScheme, viewport });
        await reach(page);
        await page.evaluate(axe);
        const { violations } = await page.evaluate((values) => globalThis.axe.run({ runOnly: { type: 'tag', values } }), tags);
        assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`), []);
        await context.close();
      });
    }
  }
}

test('a source is 44 px high to a finger, and the lines it stands in are no further apart', async () => {
  const { context, page } = await visit(browser, site.url);
  const [ref, line] = await page.locator('.cautions .ref').first().evaluate((one) => [one.getBoundingClientRect(), parseFloat(getComputedStyle(one.parentElement).lineHeight)].map((box) => box.height ?? box));
  assert.ok(ref >= 44, `${ref}`);
  const text = await page.locator('.cautions li div').first().evaluate((one) => one.getBoundingClientRect().height);
  assert.ok(Math.abs(text / line - Math.round(text / line)) < 0.1, `${text} in lines of ${line}`);
  await context.close();
});

test('everything to press is at least 44 px, but for links within a line', async () => {
  const { context, page } = await visit(browser, site.url);
  await states.error(page);
  const small = await page.evaluate(() => [...document.querySelectorAll('button, input, select, summary, .summary a, .plain a, .glance a')]
    .map((element) => element.closest('.choices label') ?? element)
    .filter((element) => element.checkVisibility())
    .map((element) => [element.outerHTML.slice(0, 100), element.getBoundingClientRect()])
    .filter(([, box]) => box.height < 44 || box.width < 44)
    .map(([html, box]) => `${Math.round(box.width)} × ${Math.round(box.height)} ${html}`));
  assert.deepEqual(small, []);
  await context.close();
});

test('each field is label, hint, error, input, and the field names its hint and error', async () => {
  const { context, page } = await visit(browser, site.url);
  await states.error(page);
  const wrong = await page.evaluate(() => [...document.querySelectorAll('form input:not([type=radio])')].filter((input) => {
    const parts = [document.querySelector(`label[for="${input.id}"]`),
      ...(input.getAttribute('aria-describedby') ?? '').split(' ').filter(Boolean).map((id) => document.getElementById(id)), input];
    return parts.some((part, i) => !part || (i && !(parts[i - 1].compareDocumentPosition(part) & Node.DOCUMENT_POSITION_FOLLOWING)));
  }).map((input) => input.id));
  assert.deepEqual(wrong, []);
  await context.close();
});

test('the verdict is a word and a shape, and the level survives without colour', async () => {
  for (const [tread, word] of [['0.5', 'Not fit'], ['8', null]]) {
    const { context, page } = await visit(browser, site.url, { forcedColors: 'active' });
    await own(page).click();
    await fillIn(page, { ...KERB, tread });
    await answered(page);
    const heading = page.locator('#answer-heading');
    assert.ok((await heading.innerText()).trim().length > 2);
    if (word) assert.equal((await heading.innerText()).trim(), word);
    assert.equal(await heading.locator('svg path').count(), 1);
    await context.close();
  }
});

test('a focused field is never covered', async () => {
  const { context, page } = await visit(browser, site.url);
  const covered = [];
  for (let i = 0; i < 40; i++) {
    await page.keyboard.press('Tab');
    covered.push(...await page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body || element.matches('[type=radio]')) return [];
      const box = element.getBoundingClientRect();
      const top = document.elementFromPoint(box.x + box.width / 2, box.y + Math.min(box.height / 2, 20));
      return element.contains(top) ? [] : [element.outerHTML.slice(0, 100)];
    }));
  }
  assert.deepEqual(covered, []);
  await context.close();
});
