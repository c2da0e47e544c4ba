// The page in each language: chosen by the browser, by a link, or in the settings; complete, within
// a phone's width, and without a server.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { after, test } from 'node:test';

import { waiting } from '../languages/progress.mjs';
import { field, fillIn, house, KERB, ready, typed, visit } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const LANGUAGES = { fr: { check: 'Vérifier', own: 'Utiliser mes propres chiffres' }, de: { check: 'Prüfen', own: 'Meine eigenen Zahlen verwenden' }, fi: { check: 'Tarkista', own: 'Käytä omia lukujani' } };
const LOCALES = { fr: 'fr-CH', de: 'de-AT', fi: 'fi-FI' };

const { site, browser } = await house(after);

const sideways = (page) => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
// Names of rows that are broken within a word.
const cutNames = (page) => page.evaluate(() => [...document.querySelectorAll('.row summary > span, .glance strong')]
  .filter((name) => name.checkVisibility())
  .flatMap((name) => [...name.childNodes].filter(({ nodeType }) => nodeType === Node.TEXT_NODE))
  .flatMap((text) => [...text.data.matchAll(/[\p{L}\d]+/gu)].filter(({ 0: word, index }) => {
    const range = document.createRange();
    range.setStart(text, index);
    range.setEnd(text, index + word.length);
    return new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1;
  }).map(([word]) => word)));
// Buttons that run over the rule below their row.
const spilt = (page) => page.$$eval('.row > button', (buttons) => buttons.filter((one) => one.getBoundingClientRect().bottom > one.parentElement.getBoundingClientRect().bottom).map((one) => one.innerText));
const lang = (page) => page.evaluate(() => document.documentElement.lang);
const words = (page) => page.evaluate(() => document.body.innerText);
const settled = (page) => page.waitForFunction(() => document.querySelectorAll('nav.sheets li').length > 8);
const kept = (page) => page.waitForFunction(() => document.getElementById('keeping').textContent.trim() !== '');

// English that would be no proper name: a leftover, unless a sentence waits for its text.
const LEFT = /(?<![“"„«”\p{L}])(?:the|and|with|this|that|tyre|tread|pressure)(?![\p{L}])/iu;

for (const [language, { check, own }] of Object.entries(LANGUAGES)) {
  test(`${language}: a browser of that language is answered in it from the first word`, async () => {
    const { context, page, seen } = await visit(browser, site.url, { locale: LOCALES[language] });
    assert.equal(await lang(page), language);
    await page.getByRole('button', { name: own }).click();
    await fillIn(page, { ...KERB, pressure: '2,2', tread: '3,5' });
    await page.getByRole('button', { name: check, exact: true }).click();
    await page.waitForSelector('.hold-speed');
    for (const summary of await page.locator('summary').all()) await summary.click();
    const sources = (await page.locator('.sources li [lang=en]').allInnerTexts()).join('\n').split('\n');
    const own_words = (await words(page)).split('\n').filter((line) => !sources.some((source) => line.includes(source)));
    const stillEnglish = waiting(language);
    assert.deepEqual(own_words.filter((line) => LEFT.test(line) && !stillEnglish(line)), []);
    assert.deepEqual(seen.complaints, []);
    await context.close();
  });

  for (const [width, text] of [[320, ''], [360, ''], [360, 'largest']]) {
    test(`${language}: every sheet's example stays within ${width} px${text && `, with the ${text} text`}`, async () => {
      const { context, page } = await visit(browser, site.url, { locale: LOCALES[language], viewport: { width, height: 740 } });
      await settled(page);
      await page.evaluate((size) => { document.documentElement.dataset.text = size; }, text);
      const ids = await page.$$eval('nav.sheets li a', (links) => links.map((link) => link.getAttribute('href')).filter((href) => href !== '#form'));
      for (const id of ['', ...ids]) {
        if (id) await page.evaluate((hash) => { location.hash = hash; }, id);
        await page.waitForSelector('.verdict');
        assert.equal(await sideways(page), 0, id || 'the first sheet');
        assert.deepEqual(await cutNames(page), [], id || 'the first sheet');
        assert.deepEqual(await spilt(page), [], id || 'the first sheet');
      }
      await context.close();
    });
  }

  test(`${language}: axe finds nothing, and the languages of parts are marked`, async () => {
    const { context, page } = await visit(browser, site.url, { bypassCSP: true, locale: LOCALES[language] });
    await settled(page);
    for (const summary of await page.locator('summary').all()) await summary.click();
    await page.addScriptTag({ content: axe });
    const { violations } = await page.evaluate(() => globalThis.axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }));
    assert.deepEqual(violations.map(({ id, nodes }) => [id, nodes[0].html]), []);
    assert.ok(await page.locator('.sources li [lang=en]').count() > 0, 'titles of sources');
    await context.close();
  });
}

test('a count is said in the form that the language has for so many', async () => {
  const LINES = ['7;205/55 R16 91V', '8;195/65 R15 91T'];
  for (const [language, ...said] of [['en', '1 row. ', '2 rows. '], ['fr', '1 ligne. ', '2 lignes. '], ['de', '1 Zeile. ', '2 Zeilen. '], ['fi', '1 rivi. ', '2 riviä. ']]) {
    const { context, page } = await visit(browser, `${site.url}#field-list?page.language=${language}`);
    await settled(page);
    await page.locator('[id^=open-]').first().click();
    for (const [i, words] of said.entries()) {
      await page.locator('.table-in textarea').fill(LINES.slice(0, i + 1).join('\n'));
      await page.locator('.table-in [role=status]').getByText(words).waitFor();
    }
    await context.close();
  }
});

test('another language in the settings keeps what was typed, and is remembered', async () => {
  const { context, page } = await visit(browser, site.url);
  await settled(page);
  await page.getByRole('button', { name: 'Use my own figures' }).click();
  await fillIn(page, KERB);
  await page.getByRole('button', { name: 'Check', exact: true }).click();
  await page.waitForSelector('.hold-speed');
  const before = { form: await typed(page), hold: await page.locator('.hold-speed').innerText() };
  await page.locator('[data-panel=settings]').click();
  await page.locator('#set-language').selectOption('de');
  await page.waitForFunction(() => document.documentElement.lang === 'de');
  assert.deepEqual({ form: await typed(page), hold: await page.locator('.hold-speed').innerText() }, before);
  assert.match(await words(page), /Einstellungen/);
  assert.match(await page.locator('.masthead p').first().innerText(), /Reifen/);
  await page.reload();
  await ready(page);
  assert.equal(await lang(page), 'de');
  assert.deepEqual(await typed(page), before.form);
  await page.locator('[data-panel=settings]').click();
  await page.locator('#set-language').selectOption('en');
  await page.waitForFunction(() => document.documentElement.lang === 'en');
  assert.match(await page.locator('.masthead p').first().innerText(), /^Is this tyre fit/);
  await context.close();
});

test('a link may ask for a language, whatever the browser speaks', async () => {
  const { context, page } = await visit(browser, `${site.url}#tyre-check?size=205%2F55+R16+91V&page.language=fi`);
  assert.equal(await lang(page), 'fi');
  assert.equal(await page.locator('.notice').count(), 0);
  await field(page, 'load').fill('430');
  await page.waitForFunction(() => location.hash.includes('430'));
  assert.match(await page.evaluate(() => location.hash), /page\.language=fi/);
  await page.goto(`${site.url}#tyre-check?size=205%2F55+R16+91V&page.language=tlh`);
  await page.reload();
  await ready(page);
  assert.equal(await lang(page), 'en', 'one that is not here');
  await context.close();
});

test('a long answer, worked out beside the page, is in the language too', async () => {
  const { context, page } = await visit(browser, `${site.url}#stage-tyres?page.language=fr`, {});
  await settled(page);
  await page.evaluate(() => { location.hash = '#stage-tyres'; });
  await page.waitForFunction(() => /À monter maintenant/.test(document.querySelector('.verdict')?.textContent ?? ''), undefined, { timeout: 60000 });
  await context.close();
});

test('with the server stopped, the languages are all here', async (t) => {
  const { site: gone, browser: own } = await house(t.after.bind(t));
  const { page } = await visit(own, gone.url);
  await kept(page);
  await gone.stop();
  await page.reload();
  await ready(page);
  await page.locator('[data-panel=settings]').click();
  for (const language of ['fi', 'fr']) {
    await page.locator('#set-language').selectOption(language);
    await page.waitForFunction((wanted) => document.documentElement.lang === wanted, language);
  }
  assert.match(await page.locator('.safety').first().innerText(), /^Une estimation/);
});
