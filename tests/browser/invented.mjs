// Blocks, fields and sheets that the core does not have: its text is changed on its way into the
// page; everything else is the page as built.
import { phone, ready } from './support.mjs';

// Opens the page with `blocks` in every answer, where there are any, and with other `sheets` beside the first: the first
// module knows them by name only. An answer to one of them is "fit", unless globalThis.problems says
// otherwise; what was asked is in globalThis.asked.
export async function invented(browser, url, { blocks, sheets = [], before = async () => {} }, options = {}) {
  const context = await browser.newContext({ viewport: phone, locale: 'en-GB', serviceWorkers: 'block', ...options });
  const page = await context.newPage();
  const complaints = [];
  page.on('console', (message) => { if (message.type() === 'error') complaints.push(message.text()); });
  page.on('pageerror', (error) => complaints.push(String(error)));
  await page.addInitScript((given) => {
    globalThis.refused = [];
    addEventListener('securitypolicyviolation', (event) => globalThis.refused.push(`${event.violatedDirective}: ${event.blockedURI}`));
    globalThis.blocks = given.blocks;
    const { parse, stringify } = JSON;
    let modules = 0;
    JSON.stringify = (value, ...rest) => {
      if (value?.today) globalThis.asked = parse(stringify(value));
      return stringify(value, ...rest);
    };
    JSON.parse = (text, ...rest) => {
      const value = parse(text, ...rest);
      if (value?.ways) {
        const known = parse(stringify(given.sheets));
        value.sheets = [value.sheets[0], ...(modules++ ? known : known.map(({ id, title, purpose }) => ({ id, title, purpose, fields: [], elsewhere: true })))];
      }
      if (value?.blocks && globalThis.blocks) value.blocks = parse(stringify(globalThis.blocks));
      if (value?.problems?.[0]?.code === 'unknown_sheet') {
        value.problems = globalThis.problems?.(globalThis.asked) ?? [];
        value.ok = !value.problems.length;
        if (value.ok) value.verdict = { level: 'fit', text: 'It will hold.' };
      }
      return value;
    };
  }, { blocks, sheets });
  await before(page);
  await page.goto(url);
  await ready(page);
  return { context, page, complaints };
}

const xs = Array.from({ length: 21 }, (_, i) => i * 0.5);
const onset = (tread) => xs.map((x) => (x < 0.5 ? null : 118 - 11 * Math.sqrt(x) * (1.6 - tread / 10)));
const times = (values, share) => values.map((value) => (value === null ? null : value * share));

export const CHART = {
  kind: 'chart', id: 'onset', title: 'Speed against water', text: 'In 5 mm of water this tyre may float from 78 km/h; a new one from 97 km/h.',
  x: { label: 'Depth of water', unit: 'mm' }, y: { label: 'Onset of aquaplaning', unit: 'km/h' },
  series: [
    { role: 'subject', label: 'This tyre', x: xs, y: onset(3), low: times(onset(3), 0.9), high: times(onset(3), 1.08) },
    { role: 'reference', label: 'The same tyre when new', x: [1, 3.3, 6, 10], y: [109, 100, 94, 88] },
    { role: 'reference', label: 'Worn to the legal limit', x: xs, y: onset(1.6).map((y, i) => (i > 8 && i < 12 ? null : y)) },
  ],
  marks: [{ x: 5, y: 86, label: 'You are here: 5 mm at 86 km/h' }, { x: 2, y: 70, label: 'The speed you mean to drive' }],
  columns: ['Water', 'This tyre', 'New', 'Worn to the limit'],
  rows: [['1 mm', '104 km/h', '109 km/h', '102 km/h'], ['5 mm', '86 km/h', '96 km/h', '83 km/h'], ['10 mm', '73 km/h', '88 km/h', '68 km/h']],
};

const depths = Array.from({ length: 25 }, (_, i) => 0.5 + i * 0.4);
const treads = Array.from({ length: 17 }, (_, i) => 1 + i * 0.45);

export const MAP = {
  kind: 'map', id: 'depths', title: 'Tread and water together', text: 'More water and less tread both lower the speed.',
  x: { label: 'Depth of water', unit: 'mm' }, y: { label: 'Tread', unit: 'mm' }, value: { label: 'Hold to', unit: 'km/h' },
  xs: depths, ys: treads,
  values: treads.map((tread, row) => depths.map((depth, column) => (row < 3 && column > 20 ? null : 45 + 55 * Math.sqrt(tread / 8) - 12 * Math.sqrt(depth) * (1.5 - tread / 12)))),
  marks: [{ x: 5, y: 3, label: 'You are here' }],
};

export const TIMELINE = {
  kind: 'timeline', id: 'run', title: 'Stage by stage', text: 'The set lasts to the third stage.',
  steps: [
    { label: 'Stage 1, Long Forest', text: '12 km of gravel, dry. 7.1 mm left.', share: 12, level: 'note' },
    { label: 'Stage 2', text: '21 km, half of it wet. 5.0 mm left.', share: 21, level: 'care' },
    { label: 'Stage 3', text: '9 km, standing water. 2.2 mm left, too little for it.', share: 9, level: 'unfit' },
    { label: 'Road section', text: '30 km back.', share: 30, level: 'note' },
  ],
};

export const TABLE = {
  kind: 'table', id: 'corners', title: 'Corner by corner', text: 'The rear left is the one to see to.',
  columns: ['Corner', 'Tyre', 'Load', 'Pressure', 'Needed', 'Tread', 'Hold to', 'Verdict'],
  rows: ['Front left', 'Front right', 'Rear left', 'Rear right'].map((name) => [name, '205/55 R16 91V', '430 kg', '2.2 bar', '2.1 bar', '3.0 mm', '80 km/h', 'Take care']),
};

const corner = [
  { id: 'size', label: 'Sidewall text', hint: 'As it stands on the tyre.', kind: 'text', required: true, default: '', example: '205/55 R16 91V' },
  { id: 'load', label: 'Load on this wheel', hint: '', kind: 'quantity', units: ['kg', 'lb'], preferred: { metric: 'kg' }, required: true, default: '' },
  { id: 'tread', label: 'Tread depth', hint: 'At the lowest place.', kind: 'quantity', units: ['mm', '/32 in'], preferred: { metric: 'mm' }, required: true, default: '' },
  { id: 'kind', label: 'Kind of tyre', hint: '', kind: 'choice', required: false, default: 'road', choices: ['road', 'winter', 'slick', 'gravel'].map((value) => ({ value, label: value })) },
];

export const CORNERS = {
  id: 'corners', title: 'Check a whole car', purpose: 'Four corners, one answer.',
  fields: [
    { id: 'corners', label: 'Corner', hint: 'One after the other.', kind: 'list', required: false, default: '', fields: corner, row_names: ['Front left', 'Front right', 'Rear left', 'Rear right'] },
    { id: 'units', label: 'Units of the answer', hint: '', kind: 'choice', default: 'metric', choices: [{ value: 'metric', label: 'km/h, bar, mm' }, { value: 'uk', label: 'mph, psi, mm' }] },
  ],
  example: { title: 'A family car.', input: { corners: ['430 kg', '420 kg', '380 kg', '390 kg'].map((load) => ({ size: '205/55 R16 91V', load, tread: '3 mm' })) } },
};

export const STAGES = {
  id: 'stages', title: 'Which set for which stage', purpose: 'Says which tyres to fit when.',
  fields: [
    { id: 'stages', label: 'Stage', hint: 'One row for each.', kind: 'list', required: false, default: '', fields: [
      { id: 'name', label: 'Name', hint: '', kind: 'text', required: true, default: '', example: 'Long Forest' },
      { id: 'length', label: 'Length', hint: '', kind: 'quantity', units: ['km', 'mi'], preferred: { metric: 'km', uk: 'mi' }, required: true, default: '' },
      { id: 'runs', label: 'Runs', hint: '', kind: 'number', units: [], required: false, default: '' },
      { id: 'wet', label: 'Wet', hint: '', kind: 'yes-no', required: false, default: 'no' },
      { id: 'day', label: 'Day', hint: '', kind: 'date', required: false, default: '' }] },
  ],
};
