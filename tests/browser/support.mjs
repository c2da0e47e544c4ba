// A visit to the built page in the system's Chromium, and what the tests ask of it.
import { launch } from '../support/browser.mjs';
import { pageFolder } from '../support/paths.mjs';
import { serve } from '../support/server.mjs';

export const phone = { width: 360, height: 740 };
export const desk = { width: 1280, height: 900 };

// The page on a host of its own, and a browser; both are gone after the test file.
export async function house(after, { base = '/', folder = pageFolder } = {}) {
  const site = await serve(folder, { base });
  const browser = await launch();
  after(async () => {
    await browser.close();
    await site.stop();
  });
  return { site, browser };
}

// A person's first visit: a new context with nothing kept. What the page asks for, says on the
// console, and has refused by its content policy, is written down.
export async function visit(browser, url, options = {}) {
  const context = await browser.newContext({ viewport: phone, locale: 'en-GB', ...options });
  const page = await context.newPage();
  const seen = { requests: [], complaints: [] };
  context.on('request', (request) => seen.requests.push(request.url()));
  page.on('console', (message) => {
    if (message.type() === 'error') seen.complaints.push(message.text());
  });
  page.on('pageerror', (error) => seen.complaints.push(String(error)));
  await page.addInitScript(() => {
    globalThis.refused = [];
    addEventListener('securitypolicyviolation', (event) => globalThis.refused.push(`${event.violatedDirective}: ${event.blockedURI}`));
  });
  await page.goto(url);
  await ready(page);
  return { context, page, seen };
}

export function ready(page) {
  return page.waitForSelector('#answer-heading');
}

export const field = (page, id) => page.locator(`[id="field-${id}"]`);
export const own = (page) => page.getByRole('button', { name: 'Use my own figures' });
export const check = (page) => page.getByRole('button', { name: 'Check', exact: true });
export const holdTo = (page) => page.locator('.hold-speed').innerText();

// Everything a person has in the form, as it stands there.
export function typed(page) {
  return page.$$eval('form [data-path]', (controls) => Object.fromEntries(
    controls.filter((control) => control.type !== 'radio' || control.checked).map((control) => [control.dataset.path, control.value]),
  ));
}

// A family car on a wet road, as typed at the kerb.
export const KERB = { size: '205/55 R16 91V', load: '430', pressure: '2.2', tread: '3', water: '5' };
export const KERB_INPUT = { size: '205/55 R16 91V', load: '430 kg', pressure: '2.2 bar', tread: '3 mm', water: '5 mm' };

export async function fillIn(page, values) {
  for (const [id, value] of Object.entries(values)) await field(page, id).fill(value);
}

// Waits until the answer shown is the one to what is in the form now.
export async function answered(page) {
  await check(page).click();
  await page.waitForSelector('.verdict');
}

export function focused(page) {
  return page.evaluate(() => document.activeElement?.id ?? '');
}
