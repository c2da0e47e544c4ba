// Every sheet on one page of A4: with its example, and with as much input as an event has.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { desk, house, phone, visit } from './support.mjs';

const { site, browser } = await house(after);
const { sheets } = JSON.parse((await loadModule()).describe());

const LONG = {
  'tyre-check': 'units=uk&size=205/55+R16+91V&load=650+kg&pressure=1.2+bar&tread=1+mm&water=10+mm&speed=160+mph&tyre_kind=road&surface=asphalt&place=GB&date_code=0110',
  'standing-water': 'units=uk&where=Long+Meadow,+kilometre+7,+below+the+farm&depth=14+mm&pool=40+m&wheels=one&moving=yes&vehicle=small&surface=asphalt&tyres.rows=6&tyres.tyre_kind=road~winter~cut-slick~wet~slick~gravel&tyres.tread=2+mm~6+mm~3+mm~7+mm~1+mm~8+mm&tyres.pressure=2.1+bar~2.3+bar~1.9+bar~1.8+bar~2+bar~2.2+bar&speed=50+mph&forecast=none',
  'car-check': 'units=metric&corners.size=205/55+R16+91V~195/65+R15+91T~205/55+R16+91V~205/55+R16+91H~T125/80+D15+95M&corners.pressure=2.2+bar~1.2+bar~2+bar~2.6+bar~1+bar&corners.tread=2+mm~6+mm~1.4+mm~8+mm~3+mm&corners.tread_inner=1+mm~6+mm~1.2+mm~8+mm~3+mm&corners.tread_outer=4+mm~6+mm~3+mm~8+mm~3+mm&corners.date_code=0110~2322~0115~2322~1114&corners.load=500+kg~480+kg~400+kg~390+kg~&front_axle=980+kg&rear_axle=790+kg&top_speed=230+km/h&speed=200+km/h&water=6+mm&tyre_kind=road&surface=asphalt&place=GB',
  // A longer event goes on to a second page, as large as can be read.
  'stage-tyres': 'units=metric&stages.rows=6&stages.name=Long+Meadow~Mill+Lane~Quarry~Over+the+Top~Sheepwash~Home&stages.length=6+km~5+km~7+km~5+km~6+km~6+km&stages.dry=60~50~30~20~40~40&stages.damp=30~30~20~30~30~20&stages.wet=10~20~50~50~30~40&stages.halt=none~service~none~tyre_zone~service~none&stages.water=~~4+mm~~~&sets.rows=3&sets.kind=soft~cut-slick~wet&sets.count=2~1~1&cars.rows=2&cars.name=Car+7~Car+12&cars.size=165/70+R13+79T~185/60+R14+82H&cars.load=240+kg~290+kg&cars.pressure=1.7+bar~1.9+bar&attitude=average&drive=rear&persistence=60',
  'field-list': `units=metric&water=4+mm&surface=asphalt&place=GB&rows.rows=16&rows.name=${Array.from({ length: 16 }, (_, i) => i + 1).join('~')}&rows.size=${'205/55+R16+91V~195/65+R15+91T~175/65+R14~185/60+R14+82H~'.repeat(4).slice(0, -1)}&rows.load=${'390+kg~360+kg~300+kg~290+kg~'.repeat(4).slice(0, -1)}&rows.pressure=${'2.2+bar~2.3+bar~1.2+bar~2+bar~'.repeat(4).slice(0, -1)}&rows.tread=${'6+mm~1.2+mm~4+mm~3+mm~'.repeat(4).slice(0, -1)}&rows.date_code=${'2322~0110~~1119~'.repeat(4).slice(0, -1)}`,
  'wear-log': `units=metric&place=GB&readings.rows=16&readings.tyre=${'front-left~front-right~rear-left~rear-right~'.repeat(4).slice(0, -1)}&readings.date=${['2025-01-10', '2025-05-11', '2025-10-12', '2026-03-13'].map((day) => `${day}~${day}~${day}~${day}`).join('~')}&readings.depth=${['8', '7', '5.5', '4.6'].map((mm) => `${mm}+mm~${mm}+mm~7+mm~6.9+mm`).join('~')}&readings.odometer=${[30000, 34000, 40000, 45000].map((km) => `${km}+km~${km}+km~${km}+km~${km}+km`).join('~')}`,
};

async function printed(page) {
  const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true });
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g).length;
}

for (const sheet of sheets) {
  for (const [what, query, options] of [
    ['with its example, from a dark phone', '', { viewport: phone, colorScheme: 'dark' }],
    ['with a long answer, from a desk', LONG[sheet.id], { viewport: desk }],
  ]) {
    if (query === undefined) continue;
    test(`${sheet.id} prints on one page of A4: ${what}`, async () => {
      const { context, page, seen } = await visit(browser, `${site.url}#${sheet.id}${query && `?${query}`}`, options);
      await page.getByRole('heading', { name: sheet.title, level: 2 }).waitFor();
      await page.waitForSelector('.verdict');
      assert.equal(await page.locator('.notice').count(), 0, 'the link is read as a whole');
      await page.waitForLoadState('networkidle');
      const open = await page.locator('details[open]').count();
      assert.equal(await printed(page), 1);
      assert.equal(await page.locator('details[open]').count(), open, 'what was folded is folded again');
      assert.ok(!await page.locator('#paper-form').isVisible());
      assert.ok(await page.locator('form').isVisible());
      assert.deepEqual(seen.complaints, []);
      assert.deepEqual(await page.evaluate(() => globalThis.refused), []);

      await page.emulateMedia({ media: 'print' });
      await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
      for (const part of ['#paper-form dd', '.safety', '.sources li', '.paper-link svg', '.verdict']) {
        assert.ok(await page.locator(part).first().isVisible(), part);
      }
      assert.ok(!await page.locator('form').isVisible());
      const size = await page.evaluate(() => parseFloat(getComputedStyle(document.documentElement).fontSize) * 72 / 96);
      console.log(`${sheet.id} ${what}: ${size} pt`);
      assert.ok(size >= 6);
      await context.close();
    });
  }
}
