// Nothing leaves the phone: no request to anywhere else, nothing typed in a request, a strict policy.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';

import { answered, fillIn, house, KERB, own, ready, visit } from './support.mjs';

const { site, browser } = await house(after);

test('a whole visit asks only the page\'s own host, and never with what was typed', async () => {
  const { context, page, seen } = await visit(browser, site.url);
  await page.getByText('kept on this device').waitFor();
  await own(page).click();
  await fillIn(page, KERB);
  await answered(page);
  await page.reload();
  await ready(page);
  assert.ok(seen.requests.length >= 4, 'the requests were seen');
  for (const request of seen.requests) {
    assert.equal(new URL(request).origin, new URL(site.url).origin);
    assert.ok(!/205|430/.test(new URL(request).search), request);
  }
  assert.deepEqual(await context.cookies(), []);
  await context.close();
});

test('the content policy allows only what is needed, and nothing runs into it', async () => {
  const { context, page, seen } = await visit(browser, site.url);
  await page.getByText('kept on this device').waitFor();
  await own(page).click();
  await fillIn(page, KERB);
  await answered(page);
  for (const summary of await page.locator('summary').all()) await summary.click();
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  assert.match(policy, /^default-src 'none';/);
  assert.doesNotMatch(policy, /unsafe-inline|'unsafe-eval'|\*|https?:/);
  assert.deepEqual(await page.evaluate(() => globalThis.refused), []);
  assert.deepEqual(seen.complaints, []);
  await context.close();
});

test('the policy is alive: a script from elsewhere and a written-in style are refused', async () => {
  const { context, page } = await visit(browser, site.url);
  await page.evaluate(() => {
    const script = document.createElement('script');
    script.src = 'https://example.org/x.js';
    document.body.append(script);
    document.body.setAttribute('style', 'color: red');
  });
  await page.waitForFunction(() => globalThis.refused.length >= 2);
  await context.close();
});
