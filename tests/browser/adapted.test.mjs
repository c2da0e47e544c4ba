// Every sheet as people set their screens: zoomed to 400 %, with wider text spacing, with forced
// colours, without motion.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';

import { loadCore } from '../support/core.mjs';
import { check, house, own, phone, visit } from './support.mjs';

const { site, browser } = await house(after);
const { sheets } = (await loadCore()).describe();

async function open(sheet, options) {
  const it = await visit(browser, `${site.url}#${sheet.id}`, options);
  await it.page.getByRole('heading', { name: sheet.title, level: 2 }).waitFor();
  await unfold(it.page);
  return it;
}

const unfold = (page) => page.evaluate(() => { for (const details of document.querySelectorAll('details')) details.open = true; });

// In turn: the example with everything unfolded, an empty form that has been checked.
async function everyState(sheet, options, look) {
  const { context, page } = await open(sheet, options);
  await look(page, `${sheet.id}, the example`);
  await own(page).click();
  await check(page).click();
  await unfold(page);
  await look(page, `${sheet.id}, with nothing filled in`);
  await context.close();
}

// Nothing may be wider than the screen but what scrolls by itself because it must keep its two
// dimensions (a table, a drawing in true size), and that must fit with its own box.
const tooWide = (page) => page.evaluate(() => {
  const width = document.documentElement.clientWidth;
  const scrolls = (element) => element.closest('.scroll, .picture.true, svg, canvas, .u-wrap');
  return [...document.querySelectorAll('body *')]
    .filter((element) => element.checkVisibility() && !element.closest('.unseen') && (!scrolls(element) || element.matches('.scroll')))
    .filter((element) => element.getBoundingClientRect().right > width + 0.5 || element.getBoundingClientRect().left < -0.5)
    .map((element) => element.outerHTML.slice(0, 100))
    .concat(document.documentElement.scrollWidth > width ? [`the page scrolls sideways: ${document.documentElement.scrollWidth} px`] : []);
});

// The heads of a table laid out as lists are there to be heard only.
const withHeard = (page) => page.evaluate(() => {
  globalThis.heard = (element) => {
    const heads = element.closest('thead');
    return heads && getComputedStyle(heads).position === 'absolute';
  };
});

// Text that is cut off by its own box.
const cutOff = (page) => page.evaluate(() => [...document.querySelectorAll('main *, header *, footer *')]
  .filter((element) => element.checkVisibility() && !element.closest('.unseen, svg, line-plot, select, [inert]') && !globalThis.heard(element) && element.childNodes.length)
  .filter((element) => {
    const { overflowX, overflowY } = getComputedStyle(element);
    return (overflowX !== 'visible' && overflowX !== 'auto' && element.scrollWidth > element.clientWidth + 1)
      || (overflowY !== 'visible' && overflowY !== 'auto' && element.scrollHeight > element.clientHeight + 1);
  })
  .map((element) => element.outerHTML.slice(0, 100)));

// Two pieces of text of one line that lie over each other.
const overlapping = (page) => page.evaluate(() => {
  const pieces = [...document.querySelectorAll('main :is(p, li, label, legend, h2, h3, th, td, dt, dd, summary, button, figcaption)')]
    .filter((element) => element.checkVisibility({ visibilityProperty: true, opacityProperty: true }) && !element.closest('.unseen, svg, line-plot') && !globalThis.heard(element) && element.innerText.trim()
      && !element.querySelector('p, li, label, legend, h2, h3, th, td, dt, dd, summary, button, figcaption'))
    .map((element) => {
      const boxes = [];
      for (const words = document.createTreeWalker(element, NodeFilter.SHOW_TEXT); words.nextNode();) {
        if (words.currentNode.parentElement.closest('.unseen')) continue;
        const range = document.createRange();
        range.selectNodeContents(words.currentNode);
        boxes.push(...range.getClientRects());
      }
      return [element, boxes];
    });
  const found = [];
  for (const [i, [one, these]] of pieces.entries()) {
    for (const [other, those] of pieces.slice(i + 1, i + 12)) {
      if (one.contains(other) || other.contains(one)) continue;
      if (these.some((a) => those.some((b) => Math.min(a.right, b.right) - Math.max(a.left, b.left) > 2 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 6))) {
        found.push(`${one.outerHTML.slice(0, 70)} over ${other.outerHTML.slice(0, 70)}`);
      }
    }
  }
  return found;
});

// 1280 by 1024 px at 400 %: WCAG 1.4.10.
const zoomed = { viewport: { width: 320, height: 256 }, deviceScaleFactor: 4 };
// WCAG 1.4.12, each at its full measure.
const spacing = '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }';

for (const sheet of sheets) {
  test(`${sheet.id} at 400 %: everything is read by scrolling one way`, async () => {
    await everyState(sheet, zoomed, async (page, state) => {
      assert.deepEqual(await tooWide(page), [], state);
      await withHeard(page);
      assert.deepEqual(await cutOff(page), [], state);
      assert.deepEqual(await overlapping(page), [], state);
    });
  });

  test(`${sheet.id} with wider text spacing: nothing is cut off, nothing lies over anything`, async () => {
    await everyState(sheet, { viewport: phone }, async (page, state) => {
      await page.evaluate((rules) => {
        const sheet = new CSSStyleSheet();
        sheet.replaceSync(rules);
        document.adoptedStyleSheets = [sheet];
      }, spacing);
      assert.deepEqual(await tooWide(page), [], state);
      await withHeard(page);
      assert.deepEqual(await cutOff(page), [], state);
      assert.deepEqual(await overlapping(page), [], state);
    });
  });

  test(`${sheet.id} in forced colours: what is chosen, what bites and what is pressed show without a colour of ours`, async () => {
    await everyState(sheet, { viewport: phone, forcedColors: 'active' }, async (page, state) => {
      // Every button and field has an edge or an underline that the person's colours draw.
      const bare = await page.evaluate(() => [...document.querySelectorAll('main :is(button, select, input[type=text])')]
        .filter((element) => element.checkVisibility() && !element.closest('.ways'))
        .filter((element) => parseFloat(getComputedStyle(element).borderTopWidth) < 1)
        .map((element) => element.outerHTML.slice(0, 100)));
      assert.deepEqual(bare, [], state);
      // A chosen switch differs from its neighbours by background.
      const alike = await page.evaluate(() => [...document.querySelectorAll('.switch .choices')].filter((choices) => {
        const chosen = choices.querySelector('label:has(:checked)');
        const other = choices.querySelector('label:not(:has(:checked))');
        return chosen && other && getComputedStyle(chosen).backgroundColor === getComputedStyle(other).backgroundColor;
      }).length);
      assert.equal(alike, 0, state);
      // Marks and drawings are drawn in the person's colours, not lost in the ground.
      const lost = await page.evaluate(() => {
        const ground = getComputedStyle(document.body).backgroundColor;
        return [...document.querySelectorAll('.mark path, .drawing rect')].filter((shape) => shape.checkVisibility()
          && [getComputedStyle(shape).stroke, getComputedStyle(shape).fill].every((colour) => colour === ground || colour === 'none'))
          .map((shape) => shape.outerHTML.slice(0, 100));
      });
      assert.deepEqual(lost, [], state);
    });
  });

  test(`${sheet.id} for those who asked for less motion: nothing moves`, async () => {
    await everyState(sheet, { viewport: phone, reducedMotion: 'reduce' }, async (page, state) => {
      const moving = await page.evaluate(() => document.getAnimations().map((one) => one.animationName ?? one.transitionProperty)
        .concat(getComputedStyle(document.documentElement).scrollBehavior === 'smooth' ? ['smooth scrolling'] : []));
      assert.deepEqual(moving, [], state);
    });
  });
}
