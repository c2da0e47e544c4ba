// A sheet whose answers take long is answered in a worker: the page stays responsive, shows the
// progress, and never shows the answer to anything but the current form as its answer.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { after, test } from 'node:test';

import { loadCore } from '../support/core.mjs';
import { check, desk, field, focused, house, phone, visit } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const { site, browser } = await house(after);
const core = await loadCore();

// Twenty stages, four services, eight sets of eight kinds.
const kinds = ['slick', 'race', 'soft', 'club', 'cut-slick', 'wet', 'all-weather', 'gravel-hard'];
const STAGES = Array.from({ length: 20 }, (_, i) => ({
  name: `Stage ${i + 1}`, length: String(6 + (i % 7)), dry: '40', damp: '20', wet: '30', standing: '10', halt: i % 4 === 3 ? 'service' : 'none',
}));

function link(stages, sets) {
  const query = new URLSearchParams({ 'stages.rows': stages.length, 'sets.rows': sets.length, drive: 'rear', persistence: '60', attitude: 'average' });
  stages.forEach((stage, i) => Object.entries(stage).forEach(([id, value]) => query.set(`stages.${i}.${id}`, value)));
  sets.forEach((kind, i) => query.set(`sets.${i}.kind`, kind));
  return `${site.url}#stage-tyres?${query}`;
}

const SMALL = link([{ length: '9', dry: '100' }], ['slick', 'wet']);

// A visit whose workers can be listened to, and their answers held back (globalThis.holding) until
// let go.
async function watched(url, { before = async () => {}, options = {} } = {}) {
  const context = await browser.newContext({ viewport: phone, locale: 'en-GB', serviceWorkers: 'block', ...options });
  const page = await context.newPage();
  const complaints = [];
  page.on('console', (message) => { if (message.type() === 'error') complaints.push(message.text()); });
  page.on('pageerror', (error) => complaints.push(String(error)));
  await page.addInitScript(() => {
    Object.assign(globalThis, { workers: 0, said: 0, held: [], tasks: [], refused: [] });
    addEventListener('securitypolicyviolation', (event) => globalThis.refused.push(`${event.violatedDirective}: ${event.blockedURI}`));
    new PerformanceObserver((list) => list.getEntries().forEach((entry) => globalThis.tasks.push(Math.round(entry.duration)))).observe({ type: 'longtask' });
    globalThis.Worker = class extends Worker {
      constructor(...given) {
        super(...given);
        globalThis.workers += 1;
      }

      postMessage(data) {
        this.question = data.input;
        super.postMessage(data);
      }

      set onmessage(then) {
        globalThis.inject = (data) => then.call(this, { data });
        super.onmessage = (event) => {
          if (event.data.kind === 'answer') globalThis.said += 1;
          if (globalThis.holding && event.data.kind === 'answer') globalThis.held.push({ question: this.question, deliver: () => then.call(this, event) });
          else then.call(this, event);
        };
      }
    };
  });
  await before(page);
  await page.goto(url);
  await page.locator('.asking').getByRole('heading', { name: 'Tyres for the stages' }).waitFor();
  return { context, page, complaints };
}

const verdict = (page) => page.locator('.verdict').innerText();
const change = (page, wet) => field(page, 'stages.0.wet').fill(wet).then(() => field(page, 'stages.0.dry').fill(String(100 - wet)));
const expected = (wet) => core.answer('stage-tyres', {
  units: 'metric', stages: [{ length: '9 km', dry: String(100 - wet), wet: String(wet), halt: 'none', roughness: 'smooth' }],
  sets: [{ kind: 'slick' }, { kind: 'wet' }], attitude: 'average', drive: 'rear', persistence: '60', no_studs: 'no', road_sections: 'no',
}).verdict.text;

async function working(page, wet = '100') {
  await page.locator('.verdict').waitFor();
  await page.evaluate(() => { globalThis.holding = true; });
  await change(page, wet);
  await page.locator('progress').waitFor();
  await heldFor(page, wet);
}

// The answer to what is in the form now has come, and is held back.
const heldFor = (page, wet) => page.waitForFunction((dry) => globalThis.held.some(({ question }) => question.includes(`"dry":"${dry}"`)), 100 - wet);

const letGo = (page) => page.evaluate(() => {
  globalThis.holding = false;
  globalThis.held.splice(0).forEach(({ deliver }) => deliver());
});

test('while an event of 20 stages and 8 sets is worked out, nothing keeps the page from answering the thumb', async () => {
  const { context, page, complaints } = await watched(link(STAGES, kinds));
  await page.locator('progress, .verdict').first().waitFor();
  let fewest; // the machine may be busy with something else
  for (let tries = 0; tries < 8 && fewest?.length !== 0; tries++) {
    await page.evaluate(() => { globalThis.tasks.length = 0; });
    for (const letter of 'Long Meadow') {
      await field(page, 'stages.0.name').press(letter === ' ' ? 'Space' : letter);
      await page.waitForTimeout(60);
    }
    await page.waitForTimeout(700);
    // What was long is told only after its end: once a few short tasks have gone by, all has been told.
    const tasks = await page.evaluate(async () => {
      for (let i = 0; i < 5; i++) await new Promise((next) => setTimeout(next, 50));
      return globalThis.tasks.slice();
    });
    if (!fewest || tasks.length < fewest.length) fewest = tasks;
  }
  assert.deepEqual(fewest, []);
  await page.waitForFunction(() => document.querySelector('.verdict') && !document.querySelector('[aria-busy]'), undefined, { timeout: 60_000 });
  assert.match(await verdict(page), /\w/);
  assert.deepEqual(complaints, []);
  assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
  await context.close();
});

test('after a moment the page says that it is working it out and how far it has come; the former answer is marked', async () => {
  const { context, page } = await watched(SMALL);
  await working(page);
  await page.evaluate(() => globalThis.inject({ kind: 'progress', share: 0.405 }));
  await page.getByText('Working it out: 40 %').waitFor();
  assert.equal(await page.locator('progress').getAttribute('value'), '0.405');
  assert.equal(await page.getByRole('progressbar', { name: 'Working it out: 40 %' }).count(), 1);
  assert.equal(await page.locator('.answering').getAttribute('aria-busy'), 'true');
  assert.equal(await page.locator('#answer-heading').innerText(), 'Working it out');
  assert.equal(await page.locator('.verdict, .hold-speed, .spoken').count(), 0, 'nothing one might drive by');
  assert.match(await page.locator('.former').innerText(), /^For what was typed before/);
  assert.match(await page.locator('.glance').innerText(), /Working it out/);
  assert.equal(await page.locator('p[role=status].unseen').innerText(), 'Working it out.');
  await page.emulateMedia({ media: 'print' });
  assert.ok(!await page.locator('.former').isVisible(), 'nor is it printed');
  await page.emulateMedia({ media: 'screen' });
  await letGo(page);
  await page.locator('.verdict').waitFor();
  assert.equal(await verdict(page), expected(100));
  assert.equal(await page.locator('progress, .former, [aria-busy]').count(), 0);
  await context.close();
});

test('a late reply to what was typed before is never shown, and what is typed anew is not kept waiting by it', async () => {
  const { context, page } = await watched(SMALL);
  await working(page, '100');
  await change(page, '10');
  await letGo(page);
  await page.locator('.verdict').waitFor();
  assert.equal(await verdict(page), expected(10));
  assert.notEqual(expected(10), expected(100));
  await page.waitForTimeout(300);
  assert.equal(await verdict(page), expected(10));
  await context.close();
});

test('a keystroke ends the work on what was typed before', async () => {
  // Its answer is held back, so that the work is under way whenever the keystroke comes.
  const { context, page } = await watched(link(STAGES, kinds), { before: (one) => one.addInitScript(() => { globalThis.holding = true; }) });
  await page.locator('progress').waitFor();
  await page.waitForFunction(() => globalThis.held.length); // until then the worker may still be loading, and be kept
  const before = await page.evaluate((small) => {
    location.href = small;
    return globalThis.workers;
  }, SMALL);
  await page.waitForFunction((few) => globalThis.workers > few, before);
  await letGo(page);
  await page.locator('.verdict').waitFor({ timeout: 5000 });
  await page.waitForFunction(() => !document.querySelector('[aria-busy]'));
  assert.equal(await page.evaluate(() => globalThis.workers), before + 1, 'another worker took over');
  assert.equal(await verdict(page), expected(0), 'and what is shown is its answer');
  await context.close();
});

test('what has been answered is not worked out again for a glance at it', async () => {
  const { context, page } = await watched(SMALL);
  await page.locator('.verdict').waitFor();
  await change(page, '30');
  await page.waitForFunction(() => !document.querySelector('[aria-busy]'));
  await page.waitForTimeout(1200);
  const said = await page.evaluate(() => globalThis.said);
  await check(page).click();
  assert.equal(await focused(page), 'answer-heading');
  await page.waitForTimeout(300);
  assert.equal(await page.evaluate(() => globalThis.said), said);
  await context.close();
});

test('Check leads to the work under way, and from there to the answer or to what is wrong', async () => {
  const { context, page } = await watched(SMALL);
  await working(page);
  await check(page).click();
  assert.equal(await focused(page), 'answer-heading');
  await letGo(page);
  await page.locator('.verdict').waitFor();
  assert.equal(await focused(page), 'answer-heading');
  await page.evaluate(() => { globalThis.holding = true; });
  await field(page, 'stages.0.length').fill('');
  await check(page).click();
  await page.locator('progress').waitFor();
  await letGo(page);
  await page.locator('#problems').waitFor();
  assert.equal(await focused(page), 'problems');
  await context.close();
});

test('when the calculation breaks off, the page says so and goes on with the next keystroke', async () => {
  const { context, page } = await watched(SMALL);
  await working(page);
  await page.evaluate(() => globalThis.inject({ kind: 'failed' }));
  await page.getByText('The calculation stopped on this input').waitFor();
  assert.equal(await page.locator('.former, progress').count(), 0);
  await page.evaluate(() => { globalThis.holding = false; globalThis.held = []; });
  await change(page, '10');
  await page.waitForFunction((text) => document.querySelector('.verdict')?.innerText === text, expected(10));
  await context.close();
});

const without = {
  'there are no workers': (page) => page.addInitScript(() => { delete globalThis.Worker; }),
  'a worker is refused': (page) => page.addInitScript(() => { globalThis.Worker = class { constructor() { throw new DOMException('refused', 'SecurityError'); } }; }),
  'the worker does not load': (page) => page.route(/later-worker/, (route) => route.abort()),
  'the worker is something else': (page) => page.route(/later-worker/, (route) => route.fulfill({ contentType: 'text/javascript', body: 'not { a script' })),
};

for (const [what, before] of Object.entries(without)) {
  test(`where ${what}, the page works it out itself`, async () => {
    const { context, page } = await watched(SMALL, { before });
    await page.locator('.verdict').waitFor();
    await change(page, '100');
    await page.waitForFunction((text) => document.querySelector('.verdict')?.innerText === text, expected(100));
    await context.close();
  });
}

test('the worker is kept on the device too, under any path', async (t) => {
  const { site: club, browser: other } = await house(t.after.bind(t), { base: '/club/tyres/' });
  const { context, page, seen } = await visit(other, club.url);
  await page.getByText('kept on this device').waitFor();
  await club.stop();
  const tab = await context.newPage();
  await tab.addInitScript(() => {
    globalThis.said = 0;
    globalThis.Worker = class extends Worker {
      set onmessage(then) { super.onmessage = (event) => { if (event.data.kind === 'answer') globalThis.said += 1; then(event); }; }
    };
  });
  await tab.goto(`${club.url}#stage-tyres`);
  await tab.getByRole('heading', { name: 'Tyres for the stages' }).waitFor();
  await tab.waitForFunction(() => document.querySelector('.verdict') && globalThis.said === 1);
  assert.deepEqual(seen.complaints, []);
});

for (const [colorScheme, viewport] of [['light', { width: 320, height: 640 }], ['dark', phone], ['light', desk], ['dark', desk]]) {
  test(`axe finds nothing while it works: ${colorScheme}, ${viewport.width} px`, async () => {
    const { context, page } = await watched(SMALL, { options: { bypassCSP: true, colorScheme, viewport } });
    await working(page);
    await page.evaluate(() => globalThis.inject({ kind: 'progress', share: 0.4 }));
    await page.getByText('Working it out: 40 %').waitFor();
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0);
    await page.evaluate(axe);
    const { violations } = await page.evaluate(() => globalThis.axe.run());
    assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`), []);
    await context.close();
  });
}
