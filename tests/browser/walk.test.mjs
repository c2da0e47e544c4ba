// A walk through every sheet, with every choice taken and every button pressed: nothing violates
// the content policy, no other host is contacted, no error is reported.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';

import { loadCore } from '../support/core.mjs';
import { check, house, phone, ready, visit } from './support.mjs';

const { site, browser } = await house(after);
const { sheets } = (await loadCore()).describe();

// Answers whatever is asked for: an edge, a plain figure, nonsense.
async function takeEverything(page) {
  for (const select of await page.locator('form select[id]:visible').all()) {
    const values = await select.locator('option').evaluateAll((options) => options.map((option) => option.value));
    for (const value of [values.at(-1), values[Math.min(1, values.length - 1)]]) await select.selectOption(value);
  }
  await page.evaluate(() => {
    for (const input of document.querySelectorAll('form input[type=radio]')) {
      input.checked = true;
      input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    }
    for (const text of ['-1', 'furlong', '3']) {
      for (const input of document.querySelectorAll('form input:not([type=radio], [type=date], [type=file])')) {
        input.value = text;
        input.dispatchEvent(new InputEvent('input', { bubbles: true }));
        input.dispatchEvent(new FocusEvent('focusout', { bubbles: true }));
      }
    }
  });
}

const unfold = (page) => page.evaluate(() => { for (const details of document.querySelectorAll('details')) details.open = true; });

// Presses each button of the page once; what it opens is looked at too.
async function pressEverything(page) {
  const pressed = new Set();
  for (;;) {
    const names = await page.locator('button:visible').evaluateAll((buttons) => buttons.map((button) => button.textContent.trim().replace(/\s+/g, ' ')));
    const name = names.find((one) => !pressed.has(one) && !/^(Print|Use it now)$/.test(one));
    if (name === undefined) return pressed.size;
    pressed.add(name);
    await page.locator('button:visible').nth(names.indexOf(name)).click({ timeout: 5000 });
    await unfold(page);
  }
}

test('the whole page, sheet by sheet', async (t) => {
  const { context, page, seen } = await visit(browser, site.url, { viewport: phone, permissions: ['clipboard-read', 'clipboard-write'] });
  await page.getByText('kept on this device').waitFor();
  page.on('dialog', (dialog) => dialog.dismiss());
  let buttons = 0;
  const walkedInto = async (where) => {
    assert.deepEqual(await page.evaluate(() => globalThis.refused), [], `the policy: ${where}`);
    assert.deepEqual(seen.complaints, [], `the console: ${where}`);
    for (const request of seen.requests.splice(0)) {
      assert.ok(request.startsWith('blob:') || new URL(request).origin === new URL(site.url).origin, `${where} asks for ${request}`);
    }
  };
  for (const sheet of sheets) {
    await t.test(sheet.id, async () => {
      await page.goto(`${site.url}#${sheet.id}`);
      await page.getByRole('heading', { name: sheet.title, level: 2 }).waitFor();
      await unfold(page);
      await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
      await page.evaluate(() => dispatchEvent(new Event('afterprint')));
      await walkedInto(`${sheet.id}, the example`);
      await takeEverything(page);
      await check(page).click();
      await walkedInto(`${sheet.id}, every choice`);
      await page.goto(`${site.url}#${sheet.id}`);
      await page.reload();
      await ready(page);
      await unfold(page);
      buttons += await pressEverything(page);
      await walkedInto(`${sheet.id}, every button`);
    });
  }
  assert.ok(buttons > 5 * sheets.length, `only ${buttons} buttons were found`);
  assert.deepEqual(await context.cookies(), []);
  await context.close();
});
