// Charts, maps, timelines and tables: each is a picture for those who can see it, and words and
// figures for everybody; none moves, overflows or loads before it is needed.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { after, test } from 'node:test';

import { CHART, CORNERS, invented, MAP, TABLE, TIMELINE } from './invented.mjs';
import { desk, field, house, phone, visit } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const narrow = { width: 320, height: 640 };

const { site, browser } = await house(after);

const open = (blocks, options, before) => invented(browser, site.url, { blocks, before }, options);
const canvas = (page) => page.locator('line-plot canvas');
const picture = (page) => canvas(page).evaluate((drawn) => drawn.toDataURL());
const sideways = (page) => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

// How the picture is coloured in a column of it, at a share of its width: opaque pixels, as "r,g,b".
const column = (page, share) => canvas(page).evaluate((drawn, at) => {
  const { data } = drawn.getContext('2d').getImageData(Math.round(drawn.width * at), 0, 1, drawn.height);
  const met = [];
  for (let i = 0; i < data.length; i += 4) if (data[i + 3] === 255) met.push(data.slice(i, i + 3).join());
  return met;
}, share);

async function redrawn(page, before) {
  await page.waitForFunction((old) => {
    const drawn = document.querySelector('line-plot canvas');
    return drawn && drawn.toDataURL() !== old;
  }, before);
}

// ---- the chart

test('what draws a chart is asked for only when there is one', async () => {
  const plain = await visit(browser, site.url, { serviceWorkers: 'block' });
  await plain.page.waitForLoadState('networkidle');
  assert.ok(!plain.seen.requests.some((url) => /plot/.test(url)));
  await plain.context.close();
  const { context, page, complaints } = await open([CHART]);
  await canvas(page).waitFor();
  assert.deepEqual(complaints, []);
  assert.deepEqual(await page.evaluate(() => globalThis.refused), [], 'the content policy holds');
  await context.close();
});

test('a chart is a sentence, a picture with a name, a key without colour, and a table', async () => {
  const { context, page } = await open([CHART]);
  await canvas(page).waitFor();
  assert.ok(await page.getByText(CHART.text).isVisible());
  const figure = page.getByRole('figure', { name: CHART.title });
  for (const axis of ['Depth of water (mm)', 'Onset of aquaplaning (km/h)']) assert.ok((await figure.innerText()).includes(axis));
  assert.equal(await page.locator('line-plot').getAttribute('aria-hidden'), 'true', 'the canvas is for the eye only');
  const dashes = await figure.locator('.line path').evaluateAll((lines) => lines.map((line) => line.getAttribute('stroke-dasharray')));
  assert.equal(new Set(dashes).size, 3);
  const shapes = await figure.locator('.swatch.here path').evaluateAll((marks) => marks.map((mark) => mark.getAttribute('d')));
  assert.equal(new Set(shapes).size, 2);
  for (const { label } of [...CHART.series, ...CHART.marks]) assert.ok((await figure.innerText()).includes(label));
  await page.getByText('The same as a table').click();
  for (const cell of [...CHART.columns, ...CHART.rows.flat()]) assert.ok((await page.locator('.scroll').innerText()).includes(cell), cell);
  await context.close();
});

test('a missing point is a gap in the line, and so it stays beside a line with other points', async () => {
  const flat = { role: 'subject', label: 'Flat', x: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10], y: [10, 10, 10, 10, null, null, null, 10, 10, 10, 10] };
  const other = { role: 'reference', label: 'Other', x: [0, 4.5, 5.5, 10], y: [30, 30, 30, 30] };
  const { context, page } = await open([{ ...CHART, series: [flat, other], marks: [] }]);
  await canvas(page).waitFor();
  const accent = '11,85,99'; // #0b5563
  assert.ok((await column(page, 0.3)).includes(accent), 'the line is there');
  assert.ok(!(await column(page, 0.55)).includes(accent), 'and here is its gap');
  assert.ok((await column(page, 0.9)).includes(accent), 'and it goes on');
  await context.close();
});

test('the picture follows the answer, the colour scheme and the width', async () => {
  const { context, page } = await open([CHART]);
  await canvas(page).waitFor();
  const light = await picture(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  await redrawn(page, light);
  assert.ok((await column(page, 0.5)).includes('130,210,223'), 'in the accent of the dark scheme');
  const dark = await picture(page);
  await page.setViewportSize(narrow);
  await redrawn(page, dark);
  assert.ok(await canvas(page).evaluate((one) => one.getBoundingClientRect().width) <= 320);
  const small = await picture(page);
  await page.evaluate(() => { globalThis.blocks[0].series.length = 1; });
  await field(page, 'tread').fill('7');
  await redrawn(page, small);
  assert.equal(await canvas(page).count(), 1);
  await context.close();
});

test('nothing moves when the picture comes, however late, and without it the rest is there', async () => {
  let let_go;
  const held = new Promise((resolve) => { let_go = resolve; });
  const late = await open([CHART, TABLE], { viewport: { width: 360, height: 4000 } }, async (page) => {
    await page.addInitScript(() => {
      globalThis.shift = 0;
      new PerformanceObserver((list) => list.getEntries().forEach((entry) => { globalThis.shift += entry.value; })).observe({ type: 'layout-shift', buffered: true });
    });
    await page.route(/later-plot/, async (route) => { await held; await route.continue(); });
  });
  const place = () => late.page.getByRole('heading', { name: TABLE.title }).boundingBox();
  await late.page.getByRole('heading', { name: TABLE.title }).waitFor();
  const before = await place();
  await late.page.evaluate(() => { globalThis.shift = 0; });
  let_go();
  await canvas(late.page).waitFor();
  assert.deepEqual(await place(), before);
  assert.equal(await late.page.evaluate(() => globalThis.shift), 0);
  await late.context.close();

  const never = await open([CHART], {}, (page) => page.route(/later-plot/, (route) => route.abort()));
  await never.page.getByText('The same as a table').click();
  assert.ok(await never.page.getByText('104 km/h').isVisible());
  assert.ok(!never.complaints.some((text) => !/Failed to load resource/.test(text)), String(never.complaints));
  await never.context.close();
});

// ---- the map

test('a map has a name, values written on it, a key in ranges, and a table with its ends', async () => {
  const { context, page } = await open([MAP]);
  const figure = page.getByRole('figure', { name: MAP.title });
  assert.equal(await figure.getByRole('img', { name: MAP.title }).count(), 1);
  assert.ok(await figure.locator('.written text').count() >= 8);
  assert.ok(await figure.locator('.edge').count() >= 4);
  const key = await figure.locator('.key').innerText();
  assert.match(key, /Hold to \(km\/h\):\s*under 20\s*20 to 30\s*30 to 40/);
  assert.match(key, /90 and more\s*You are here/);
  assert.equal(await figure.locator('svg .here').count(), 2, 'on the map and in the key');
  await page.getByText('The same as a table').click();
  const cells = await page.locator('.scroll tr').evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent)));
  assert.ok(cells.length <= 9 && cells[0].length <= 7);
  const { xs, ys, values } = MAP;
  const three = (value) => String(Number(value.toPrecision(3)));
  assert.deepEqual([cells[0][1], cells[0].at(-1)], [xs[0], xs.at(-1)].map(three));
  assert.deepEqual([cells[1][0], cells.at(-1)[0]], [ys[0], ys.at(-1)].map(three));
  assert.equal(cells[1].at(-1), '–', 'a gap');
  assert.equal(cells.at(-1).at(-1), three(values.at(-1).at(-1)));
  await context.close();
});

test('the bands of a map lie where the values are', async () => {
  // It rises evenly from left to right, so the line at 50 is half way, and the gap is bare.
  const xs = [0, 1, 2, 3, 4];
  const even = { ...MAP, xs, ys: [0, 1, 2], values: [[0, 25, 50, 75, null], [0, 25, 50, 75, 100], [0, 25, 50, 75, 100]], marks: [] };
  const { context, page } = await open([even]);
  const boxes = await page.locator('.map > svg').evaluate((svg) => {
    const of = (path) => { const { x, y, width, height } = path.getBBox(); return [x, x + width, y, y + height].map(Math.round); };
    return { ground: of(svg.querySelector('.tone path')), areas: [...svg.querySelectorAll('.tone path:not(.edge)')].slice(1).map(of), edges: [...svg.querySelectorAll('.edge')].map(of) };
  });
  const [left, right] = boxes.ground;
  assert.equal(boxes.areas.length, 4, 'at 20, 40, 60 and 80');
  boxes.edges.forEach(([from, to], i) => {
    const expected = Math.round(left + (right - left) * (i + 1) / 5);
    assert.ok(Math.abs(from - expected) <= 1 && Math.abs(to - expected) <= 1, `${from} ${to} ${expected}`);
  });
  boxes.areas.forEach(([from, to]) => assert.ok(to === right && from > left));
  const bare = await page.locator('.map > svg').evaluate((svg) => {
    const ground = svg.querySelector('.tone path');
    const { x, y, width, height } = ground.getBBox();
    const inside = (across, up) => ground.isPointInFill(new DOMPoint(x + across * width, y + (1 - up) * height));
    return [inside(0.9, 0.25), inside(0.9, 0.75), inside(0.5, 0.25)];
  });
  assert.deepEqual(bare, [false, true, true]);
  await context.close();
});

// ---- the timeline and the table

test('a timeline lies side by side by share on a desk, and one under the other on a phone', async () => {
  const steps = [{ label: 'One', text: 'Short.', share: 1, level: 'note' }, { label: 'Two', text: 'Long.', share: 3, level: 'unfit' }];
  for (const [viewport, across] of [[desk, true], [phone, false]]) {
    const { context, page } = await open([{ ...TIMELINE, steps }], { viewport });
    const [one, two] = await Promise.all([0, 1].map((i) => page.locator('.timeline li').nth(i).boundingBox()));
    if (across) {
      assert.equal(one.y, two.y);
      assert.ok(two.width > 2.5 * one.width);
    } else {
      assert.ok(two.y >= one.y + one.height);
    }
    assert.match(await page.locator('.timeline').innerText(), /Two\s+Not fit\. Long\./);
    assert.equal(await page.locator('.step-unfit .mark').count(), 1, 'a shape beside the word');
    assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
    await context.close();
  }
});

test('a table that does not fit is a list for each row, still a table to whoever hears it, with nothing out of sight', async () => {
  for (const viewport of [narrow, phone, desk]) {
    const { context, page } = await open([TABLE], { viewport });
    assert.ok(await page.getByText(TABLE.text).isVisible());
    assert.equal(await sideways(page), 0);
    const box = page.getByRole('group', { name: TABLE.title });
    assert.ok(await box.evaluate((one) => one.scrollWidth <= one.clientWidth), 'nothing to scroll to');
    assert.equal(await box.getByRole('columnheader').count(), TABLE.columns.length);
    const row = box.getByRole('row', { name: 'Rear left' });
    const cell = row.getByRole('cell', { name: '80 km/h' });
    const [name, verdict, hold] = await Promise.all([row.getByRole('rowheader'), row.getByRole('cell').last(), cell].map((one) => one.boundingBox()));
    assert.ok(verdict.y > name.y && verdict.x + verdict.width <= viewport.width && hold.y - name.y < 200, 'beside its name');
    assert.equal(await cell.evaluate((one) => getComputedStyle(one, '::before').content.split('"')[1]), 'Hold to', 'under the name of its column');
    await context.close();
  }
});

test('a table that fits keeps its columns', async () => {
  const few = { ...TABLE, columns: ['Corner', 'Tread', 'Verdict'], rows: TABLE.rows.map(([corner]) => [corner, '3.0 mm', 'care']) };
  const { context, page } = await open([few], { viewport: phone });
  const [one, two] = await Promise.all([0, 1].map((i) => page.locator('.scroll tbody tr').first().locator('td').nth(i).boundingBox()));
  assert.equal(one.y, two.y);
  assert.ok(await page.getByText('Verdict', { exact: true }).isVisible());
  await context.close();
});

test('the table of a wide chart scrolls in a box of its own, by the keyboard too, and its rows keep their names', async () => {
  const { context, page } = await open([{ ...CHART, columns: TABLE.columns, rows: TABLE.rows }], { viewport: narrow });
  await page.getByText('The same as a table').click();
  assert.equal(await sideways(page), 0);
  const box = page.getByRole('group', { name: CHART.title });
  await box.focus();
  for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
  await page.waitForFunction(() => document.querySelector('.scroll').scrollLeft > 100);
  const name = await box.locator('tbody th').first().boundingBox();
  assert.ok(name.x >= 0 && name.x < 40, 'the first column stays');
  await context.close();
});

// ---- all of them

const all = [TIMELINE, CHART, MAP, TABLE];

for (const viewport of [narrow, phone, desk]) {
  for (const colorScheme of ['light', 'dark']) {
    test(`axe finds nothing in the blocks, and nothing runs out: ${colorScheme}, ${viewport.width} px`, async () => {
      const { context, page } = await open(all, { viewport, colorScheme, bypassCSP: true });
      await canvas(page).waitFor();
      for (const summary of await page.locator('.answering summary').all()) await summary.click();
      assert.equal(await sideways(page), 0);
      await page.evaluate(axe);
      const { violations } = await page.evaluate(() => globalThis.axe.run());
      assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`), []);
      await context.close();
    });
  }
}

test('in the colours a person chose for everything, a chart is drawn in those', async () => {
  const { context, page } = await open([CHART], { forcedColors: 'active', colorScheme: 'dark' });
  await canvas(page).waitFor();
  assert.ok((await column(page, 0.5)).includes('255,255,255'));
  assert.ok(!(await column(page, 0.5)).includes('130,210,223'), 'not in the page’s accent');
  await context.close();
});

test('on paper a chart is black on white, whatever the screen was, and the sheet is one page', async () => {
  const { context, page } = await invented(browser, `${site.url}#corners`, { blocks: all, sheets: [CORNERS] }, { colorScheme: 'dark' });
  await page.locator('.row').first().waitFor();
  await canvas(page).waitFor();
  const dark = await picture(page);
  const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true });
  assert.equal(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g).length, 1);
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await redrawn(page, dark);
  const met = new Set(await column(page, 0.5));
  assert.ok(met.has('0,0,0'));
  assert.ok([...met].every((colour) => new Set(colour.split(',')).size === 1), 'no colour');
  assert.ok(await page.getByText('104 km/h').isVisible(), 'the table is unfolded');
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await page.waitForFunction((old) => document.querySelector('line-plot canvas').toDataURL() === old, dark);
  await context.close();
});

test('blocks with next to nothing in them are drawn as far as they go', async () => {
  const bare = { text: '', marks: [{ label: 'Nowhere' }], columns: [], rows: [] };
  const { context, page, complaints } = await open([
    { ...CHART, ...bare, series: [] },
    { ...CHART, ...bare, id: 'b', series: [{ role: 'subject', label: 'All gaps', x: [1, 2], y: [null, null], low: [null, null], high: [null, null] }] },
    { ...CHART, ...bare, id: 'c', series: [{ role: 'subject', label: 'One point', x: [1], y: [2] }, { role: 'reference', label: 'No place', x: [null, 2], y: [1, 2] }] },
    { ...MAP, ...bare, xs: [], ys: [], values: [] },
    { ...MAP, ...bare, id: 'e', xs: [1, 2], ys: [1, 2], values: [[5, 5], [5, 5]] },
    { ...MAP, ...bare, id: 'f', xs: [1], ys: [1], values: [[null]] },
    { ...TIMELINE, text: '', steps: [{ label: 'No share', text: '', level: 'note' }] },
    { ...TABLE, text: '', columns: [], rows: [] },
  ]);
  await canvas(page).nth(1).waitFor();
  assert.equal(await canvas(page).count(), 2);
  assert.equal(await page.locator('.map').count(), 1);
  assert.match(await page.locator('.map .key').innerText(), /Hold to \(km\/h\):\s*all$/);
  assert.equal(await page.getByText('Nowhere').count(), 0);
  assert.deepEqual(complaints, []);
  assert.equal(await sideways(page), 0);
  await context.close();
});
