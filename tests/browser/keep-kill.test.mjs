// Killed at any moment while saving: the old or the new is there, never half of it, and whatever
// was reported as saved is there.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { pathToFileURL } from 'node:url';

import { launchIn } from '../support/browser.mjs';
import { root } from '../support/paths.mjs';
import { serve } from '../support/server.mjs';

const PAGES = 200;
const BROWSERS = 2;
const FIELDS = 400; // of 200 characters each: a big form, so that a save takes its time

// A bare page around the page's own store.
async function bare(folder) {
  const { build } = await import(pathToFileURL(createRequire(join(root, 'web/package.json')).resolve('vite')));
  await build({
    configFile: false, root: join(root, 'web'), logLevel: 'error',
    build: { outDir: folder, emptyOutDir: false, lib: { entry: 'src/keep/store.ts', formats: ['es'], fileName: 'store' } },
  });
  writeFileSync(join(folder, 'index.html'), `<!doctype html><script type="module" src="run.js"></script>`);
  writeFileSync(join(folder, 'run.js'), `
    import { all, keep } from './store.js';
    Object.assign(globalThis, { all, keep });
    globalThis.save = async (from) => {
      for (let n = from; ; n++) {
        const fields = Object.fromEntries(Array.from({ length: ${FIELDS} }, (_, i) => ['stages.' + i + '.name', String(n).padStart(200, '0')]));
        await keep({ id: 'one', name: 'Form ' + n, sheet: 'stage-tyres', fields, made: '', changed: String(n) });
        said(n);
      }
    };
    globalThis.ready = true;
  `);
}

// Is any process of the browser with this profile left?
function running(profile) {
  return readdirSync('/proc').some((id) => {
    try {
      return /^\d+$/.test(id) && Number(id) !== process.pid && readFileSync(`/proc/${id}/cmdline`, 'latin1').includes(profile);
    } catch {
      return false; // gone meanwhile
    }
  });
}

test(`${PAGES} pages and ${BROWSERS} browsers killed while they save leave the old or the new`, async (t) => {
  const [folder, profile] = [0, 1].map(() => mkdtempSync(join(tmpdir(), 'treadwater-')));
  await bare(folder);
  const site = await serve(folder);
  let context;
  t.after(async () => {
    await context?.close();
    await site.stop();
    rmSync(folder, { recursive: true });
    rmSync(profile, { recursive: true, force: true, maxRetries: 10 });
  });

  let said = 0; // the last that the page called kept
  let found = 0;

  async function opened(context) {
    const page = await context.newPage();
    await page.goto(site.url);
    await page.waitForFunction(() => globalThis.ready);
    return page;
  }

  async function check(page) {
    const { kept } = await page.evaluate(() => globalThis.all());
    if (!said && !kept.length) return;
    assert.equal(kept.length, 1);
    const [{ name, changed, fields }] = kept;
    const now = Number(changed);
    assert.equal(name, `Form ${changed}`);
    const values = new Set(Object.values(fields));
    assert.deepEqual([Object.keys(fields).length, values.size, Number([...values][0])], [FIELDS, 1, now], 'all of one save');
    assert.ok(now >= said, `${now} is kept, and ${said} was said to be`);
    found = now;
  }

  async function startSaving(page) {
    page.evaluate((from) => globalThis.save(from), found + 1).catch(() => { /* killed */ });
    said = found;
    const first = said;
    for (const end = Date.now() + 5000; said === first && Date.now() < end;) await new Promise((next) => setTimeout(next, 1));
    assert.notEqual(said, first, 'it saves');
    await new Promise((next) => setTimeout(next, Math.random() * 15));
  }

  async function house() {
    const context = await launchIn(profile);
    await context.exposeFunction('said', (n) => { said = n; });
    return context;
  }

  // One in eight breaks down with its process; the others are loaded anew in the middle.
  context = await house();
  let page = await opened(context);
  for (let kill = 0; kill < PAGES; kill++) {
    await startSaving(page);
    if (kill % 8) await page.reload();
    else {
      const crashed = page.waitForEvent('crash');
      const devtools = await context.newCDPSession(page);
      devtools.send('Page.crash').catch(() => { /* it never answers */ });
      await crashed;
      await page.close();
      page = await opened(context);
    }
    await page.waitForFunction(() => globalThis.ready);
    await check(page);
  }
  for (let kill = 0; kill < BROWSERS; kill++) {
    page = await opened(context);
    await check(page);
    await startSaving(page);
    const gone = context.waitForEvent('close');
    const devtools = await context.newCDPSession(page);
    devtools.send('Browser.crash').catch(() => { /* nor this */ });
    await gone;
    // What is left of the old browser still holds the store's lock.
    for (const end = Date.now() + 20_000; running(profile) && Date.now() < end;) await new Promise((next) => setTimeout(next, 50));
    context = await house();
  }
  await check(await opened(context));
  await context.close();
  assert.ok(found > PAGES, `${found} saves came through`);
});
