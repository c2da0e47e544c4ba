// A table goes into a list: pasted, opened from a file, or the list edited as text; nothing is lost
// on the way, and a whole field of 5 000 is answered, searched and exported.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { after, test } from 'node:test';

import { desk, house, phone, typed, visit } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const { site, browser } = await house(after);

const TABLE = [
  'Startnummer;Reifen;Last (kg);Luftdruck (bar);Profil;Art;Farbe',
  '7;"205/55 R16 91V; M+S";390;2,3;6,5 mm;Road tyre;rot',
  '12;195/65 R15 91T;360;2,2;about 5;winter;blau',
  '15;225/45 R17 94W XL;420;2,4;5;Semi;grün',
].join('\n');

async function open(options = {}, sheet = 'field-list') {
  const opened = await visit(browser, `${site.url}#${sheet}`, options);
  await opened.page.locator('.list').first().waitFor();
  await opened.page.waitForLoadState('networkidle');
  return opened;
}

const button = (page, name) => page.getByRole('button', { name });
const area = (page) => page.getByLabel('The table as text');

async function paste(page, text) {
  if (!await area(page).count()) await button(page, /^Paste or open a table/).click();
  await area(page).waitFor();
  // As the browser hands over what was copied: typing so much into a text area takes it most of a minute.
  await area(page).evaluate((box, copied) => {
    const data = new DataTransfer();
    data.setData('text/plain', copied);
    const event = new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true });
    if (box.dispatchEvent(event)) document.execCommand('insertText', false, copied);
  }, text);
}

async function use(page, rows) {
  await button(page, new RegExp(`^Use ${rows} rows?`)).click();
  await page.getByText(`${rows} ${rows === 1 ? 'row' : 'rows'} taken into the form`).waitFor();
}

async function flaws(page) {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => globalThis.axe.run());
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  const small = await page.locator('form button, form textarea, form input[type=file], .answering button, .answering select, .answering input').evaluateAll((all) => all
    .filter((one) => one.checkVisibility()).filter((one) => one.getBoundingClientRect().height < 44).map((one) => one.outerHTML.slice(0, 80)));
  return [...violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`), ...(wide > 0 ? [`${wide} px too wide`] : []), ...small];
}

for (const [name, options] of [['phone, light', { viewport: phone, colorScheme: 'light' }], ['desk, dark', { viewport: desk, colorScheme: 'dark' }]]) {
  test(`semicolons, decimal commas, quotes, a strange column and unreadable rows, ${name}`, async () => {
    const { context, page, seen } = await open({ ...options, bypassCSP: true });
    const before = await typed(page);
    await paste(page, TABLE);
    await page.getByText('No such column here, and left out: “Farbe”.').waitFor();
    assert.deepEqual(await flaws(page), []);
    await use(page, 3);
    const now = await typed(page);
    assert.deepEqual([0, 1, 2].map((row) => ['name', 'size', 'load', 'pressure', 'tread', 'tyre_kind'].map((id) => now[`rows.${row}.${id}`])), [
      ['7', '205/55 R16 91V; M+S', '390', '2,3', '6,5', 'road'],
      ['12', '195/65 R15 91T', '360', '2,2', 'about 5', 'winter'],
      ['15', '225/45 R17 94W XL', '420', '2,4', '5', 'Semi'],
    ]);
    assert.equal(now['rows.0.pressure.unit'], 'bar');
    const unread = page.locator('.answering h3', { hasText: 'Could not be read' }).locator('xpath=following-sibling::table-more[1]');
    assert.match(await unread.innerText(), /about 5/);
    assert.match(await unread.innerText(), /Semi/);
    assert.match(await page.locator('.verdict').innerText(), /2 of 3 could not be read/);
    assert.deepEqual(await flaws(page), []);
    assert.deepEqual(seen.complaints, []);

    await page.reload();
    await page.locator('.list').first().waitFor();
    assert.deepEqual(await typed(page), now, 'after a reload');
    await button(page, /^Paste or open a table/).click();
    await area(page).fill('99;165 SR 13');
    await use(page, 1);
    await button(page, 'Bring it back').click();
    assert.deepEqual(await typed(page), now, 'brought back');
    assert.notDeepEqual(now, before);
    await context.close();
  });

  test(`5 000 rows: answered, looked through, not in the link, and edited as text, ${name}`, async () => {
    const { context, page, seen } = await open({ ...options, bypassCSP: true });
    const kinds = ['road', 'winter', 'gravel'];
    const lines = Array.from({ length: 5003 }, (_, i) => [i + 1, '205/55 R16 91V', `${300 + (i % 200)}`, (1.9 + (i % 7) / 10).toFixed(1), i === 4321 ? 'bald' : (1.2 + (i % 60) / 10).toFixed(1), kinds[i % 3]].join('\t'));
    await paste(page, ['No\tTyre\tLoad\tPressure\tTread\tKind', ...lines].join('\n'));
    await page.getByText('The list takes 5000 rows: 3 more lines were left out.').waitFor();
    await use(page, 5000);
    await page.getByText('Not read: 1 of 5000.').first().waitFor({ timeout: 20000 });
    assert.equal(await page.locator('.row').count(), 0, 'rows drawn one by one');
    assert.match(await page.locator('.list').innerText(), /5000 rows/);

    const field = page.locator('.answering h3', { hasText: 'worst first' }).locator('xpath=following-sibling::table-more[1]');
    const rows = field.locator('tbody tr:visible');
    await field.getByLabel('Only rows with').waitFor();
    assert.equal(await rows.count(), 50);
    await field.getByLabel('Finding').selectOption('not read');
    assert.equal(await rows.count(), 1);
    assert.match(await rows.innerText(), /4322[\s\S]*bald/);
    await field.getByLabel('Finding').selectOption('');
    await field.getByLabel('Only rows with').fill('legal minimum');
    const few = await rows.count();
    assert.ok(few > 0 && few <= 50);
    await field.getByLabel('Only rows with').fill('');
    await field.getByLabel('Order').selectOption({ label: 'by Name' });
    assert.match(await rows.first().innerText(), /^1\b/);
    await field.getByRole('button', { name: 'Turn round' }).click();
    assert.match(await rows.first().innerText(), /^5000\b/);
    assert.deepEqual(await flaws(page), []);
    await field.getByRole('button', { name: /^Show all 5000/ }).click();
    assert.equal(await rows.count(), 5000);
    await field.getByRole('button', { name: /^Show 50/ }).click();

    assert.ok((await page.evaluate(() => location.hash)).length < 1000);
    await page.getByText('is too long for a link').waitFor();
    await button(page, /^Edit as text/).click();
    assert.equal((await area(page).inputValue()).split('\n').length, 5001);
    await button(page, 'Close without a change').click();
    const hash = await page.evaluate(() => location.hash);
    const other = await visit(browser, site.url + hash, options);
    await other.page.getByText('The list “Tyre” was too long for this link').waitFor();
    await other.context.close();

    // What no link can carry is kept whole, and put aside.
    await button(page, 'Keep').click();
    await page.getByLabel(/^Name for the form/).fill('The whole field');
    await button(page, 'Keep it').click();
    await page.getByText('“The whole field” is kept.').waitFor();
    await page.reload();
    await page.getByText('The list “Tyre” was too long for this link').waitFor();
    await button(page, 'Go on').click();
    await page.getByText('Not read: 1 of 5000.').first().waitFor({ timeout: 20000 });
    await button(page, 'Kept').click();
    await button(page, 'Open The whole field').click();
    await page.getByText('Not read: 1 of 5000.').first().waitFor({ timeout: 20000 });
    await button(page, /^Edit as text/).click();
    assert.equal((await area(page).inputValue()).split('\n').length, 5001);
    assert.deepEqual(seen.complaints, []);
    await context.close();
  });
}

test('a file is opened, in UTF-8 or as an old spreadsheet saves it; what is no table is refused', async () => {
  const { context, page } = await open();
  await button(page, /^Paste or open a table/).click();
  const file = page.getByLabel('Or open a file');
  await file.setInputFiles({ name: 'field.csv', mimeType: 'text/csv', buffer: Buffer.from('Numéro;Pneu\n7;205/55 R16 91V\n', 'latin1') });
  await page.getByText('field.csv: 1 row. Columns: Start number or name, Sidewall text.').waitFor();
  await file.setInputFiles({ name: 'large.csv', mimeType: 'text/csv', buffer: Buffer.alloc(9e6, 120) });
  await page.getByText('This file could not be read here.').waitFor();
  await file.setInputFiles({ name: 'field.txt', mimeType: 'text/plain', buffer: Buffer.from('Größe\tNo\n165 SR 13\t8\n') });
  await use(page, 1);
  assert.equal((await typed(page))['rows.0.size'], '165 SR 13');
  await context.close();
});

test('every list of every sheet takes its own text back unchanged', async () => {
  for (const sheet of ['standing-water', 'car-check', 'stage-tyres', 'field-list', 'wear-log']) {
    const { context, page, seen } = await open({}, sheet);
    const before = await typed(page);
    for (let i = 0; i < await page.locator('.list').count(); i++) {
      await page.locator('.list').nth(i).getByRole('button', { name: /^Edit as text/ }).click();
      const count = (await area(page).inputValue()).trim().split('\n').length - 1;
      await button(page, new RegExp(`^Use ${count} rows?`)).click();
      await area(page).waitFor({ state: 'detached' });
    }
    assert.deepEqual(await typed(page), before, sheet);
    assert.deepEqual(seen.complaints, []);
    assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
    await context.close();
  }
});

test('a table is taken along for a spreadsheet', async () => {
  const { context, page } = await open({ permissions: ['clipboard-read', 'clipboard-write'] });
  const field = page.locator('.answering h3', { hasText: 'worst first' }).locator('xpath=following-sibling::table-more[1]');
  const [download] = await Promise.all([page.waitForEvent('download'), field.getByRole('button', { name: /^Save as CSV/ }).click()]);
  assert.equal(download.suggestedFilename(), 'field.csv');
  const saved = readFileSync(await download.path(), 'utf8');
  assert.match(saved, /^\uFEFFName,Finding,Hold to,/);
  assert.equal(saved.trim().split(/\r?\n/).length, 7);
  await field.getByRole('button', { name: 'Copy table' }).click();
  await field.getByText('Copied.').waitFor();
  assert.match(await page.evaluate(() => navigator.clipboard.readText()), /^Name,Finding/);
  assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
  await context.close();
});
