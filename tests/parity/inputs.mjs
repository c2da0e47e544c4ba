// The inputs given to every build: for each sheet its example in every unit system with each field
// left out, spoilt or changed in turn; for tyre-check a grid of real ones, odd ones and bad ones;
// and for every sheet those of generated.mjs.
import { generated } from './generated.mjs';
import { stageInputs } from './stages.mjs';
import { stoppingInputs } from './stopping.mjs';

const sizes = [
  '205/55 R16 91V', '195/65R15 91T', '225/40 ZR18 (92Y) XL', '205/55RF16 91W', 'P205/75R15 97S', 'P225/60R16',
  '195/75 R16 C 107/105R', '195/75 R16 C 107/105R 475 kPa', '165 SR 13', 'T125/80 D15 95M', '255/35ZR19',
  '165 R 13 83S', 'HL 245/45 R19 101Y XL', '185/80-15',
];
const bad = [
  { size: '205/55' }, { size: '205/55 R16 99Z' }, { size: 'banana' }, { size: '' }, { size: 'x'.repeat(10000) },
  { size: '🛞🛞' }, { tread: '-3 mm' }, { pressure: '1e999 bar' }, { load: '🛞' }, { load: '430 psi' },
  { water: '5 5 mm' }, { units: 'furlongs' }, { place: 'XX' }, { date_code: '9999' }, { surprise: 'yes' },
  { load: null }, { load: 430 }, { load: [] }, { speed: true }, { today: 'tomorrow' }, { tread: '7/32' },
];

function tyreChecks() {
  const base = { size: sizes[0], load: '430 kg', pressure: '220 kPa', tread: '3 mm', water: '5 mm', today: '2026-11-25' };
  const list = bad.map((change) => ({ ...base, ...change }));
  for (const size of sizes)
    for (const [tread, water] of [['8 mm', '0'], ['5 mm', '1 mm'], ['3 mm', '5 mm'], ['1.6 mm', '8 mm'], ['1 mm', '30 mm']])
      for (const [load, pressure] of [['280 kg', '1.8 bar'], ['948 lb', '32 psi'], ['610 kg', '2,5 bar']])
        list.push({ ...base, size, tread, water, load, pressure });
  for (const units of ['metric', 'uk', 'us'])
    for (const tyre_kind of ['road', 'winter', 'studded', 'gravel', 'wet', 'cut-slick', 'slick'])
      for (const speed of ['', '50 km/h', '130 km/h'])
        list.push({ ...base, units, tyre_kind, speed, place: units === 'us' ? 'US' : 'AT', date_code: '2316' });
  for (const surface of ['asphalt', 'smooth', 'concrete', 'surface-dressing', 'porous', 'loose'])
    for (const pressure_state of ['cold', 'hot'])
      list.push({ ...base, surface, pressure_state, date_code: '324', water: '250 mm' }, { ...base, surface, pressure_state });
  return list;
}

// Every example, and what happens to it when one field is left out, is no quantity, or is something else.
function examples(description) {
  const list = [];
  for (const { id: sheet, fields, example } of description.sheets) {
    const base = { ...example.input, today: '2026-11-25' };
    for (const units of ['metric', 'uk', 'us']) list.push({ sheet, input: { ...base, units } });
    for (const field of fields) {
      const { [field.id]: left, ...without } = base;
      list.push({ sheet, input: without });
      for (const value of ['furlong', '-1', field.example, ...(field.choices ?? []).map((choice) => choice.value)])
        if (value) list.push({ sheet, input: { ...base, [field.id]: value } });
      if (field.kind === 'yes-no') list.push({ sheet, input: { ...base, [field.id]: left === 'yes' ? 'no' : 'yes' } });
      if (field.kind !== 'list') continue;
      const rows = base[field.id] ?? [{}];
      for (const part of field.fields)
        for (const value of [part.example, '', 'furlong', ...(part.choices ?? []).map((choice) => choice.value)])
          list.push({ sheet, input: { ...base, [field.id]: [{ ...rows[0], [part.id]: value }, ...rows.slice(1)] } });
    }
  }
  return list;
}

// Lists of a few rows: in several waters, places and units, whole, broken and empty.
function fields() {
  const row = { name: '7', size: sizes[0], load: '400 kg', pressure: '2,2 bar', tread: '5 mm' };
  const rows = [...sizes.map((size, i) => ({ ...row, name: String(i), size, tread: `${0.8 + i * 0.6} mm`, pressure: `${22 + i} psi`, date_code: `0${1 + (i % 9)}${12 + i}` })),
    ...bad.map((change, i) => ({ ...row, name: `bad ${i}`, ...change })).map(({ size, load, pressure, tread, date_code, name }) => ({ name, size, load: Array.isArray(load) ? '' : load, pressure, tread, date_code })),
    { name: '<b>"\n', ...row, tyre_kind: 'banana' }, {}, { ...row, tyre_kind: 'slick' }];
  const list = [[], [{}], [row], rows, rows.slice(0, 9)].map((some) => ({ rows: some }));
  for (const water of ['', '0', '0.4 mm', '7 mm', '1/2 in', '150 mm'])
    for (const units of ['metric', 'us'])
      list.push({ rows, water, units, place: units === 'us' ? 'US' : 'AT', surface: 'loose', pressure_state: 'hot', speed: '60 mph' });
  return list.map((input) => ({ sheet: 'field-list', input: { ...input, today: '2026-11-25' } }));
}

// Water by a word, by a ruler, by both and from rain, in every sheet that asks for it.
function wetRoads() {
  const list = [];
  const ask = (sheet, input) => list.push({ sheet, input: { ...input, today: '2026-11-25' } });
  const tyre = { size: sizes[0], load: '400 kg', pressure: '2.3 bar' };
  for (const wetness of ['unsaid', 'dry', 'damp', 'wet', 'downpour', 'standing'])
    for (const depth of ['', '0', '0.15 mm', '0.7 mm', '2.4 mm', '7 mm', '120 mm'])
      for (const tread of ['0.3 mm', '1.6 mm', '4 mm', '8 mm']) {
        const road = { wetness, water: depth, speed: '90 km/h', units: depth === '7 mm' ? 'uk' : 'metric' };
        ask('tyre-check', { ...road, ...tyre, tread });
        ask('car-check', { ...road, corners: Array(4).fill({ ...tyre, tread }) });
        ask('field-list', { ...road, rows: [{ ...tyre, tread }, { ...tyre, tread: '2 mm', tyre_kind: 'cut-slick' }] });
        ask('stopping', { ...road, tread, road: depth ? 'grippy' : 'polished', old_or_hard: tread === '4 mm' ? 'yes' : 'no', width: '205 mm' });
        ask('standing-water', { wetness, depth, speed: '90 km/h', tyres: [{ tread, pressure: '2.3 bar', width: '205 mm' }] });
      }
  for (const surface of ['asphalt', 'smooth', 'porous', 'loose'])
    for (const rain of ['', '4 mm/h', '50 mm/h', '200 mm/h'])
      for (const rut of ['', '6 mm'])
        for (const wetness of ['unsaid', 'wet'])
          ask('standing-water', { surface, rain, rut, wetness, forecast: rain ? 'none' : 'uk-heavy-rain', moving: rut && rain === '' ? 'yes' : 'no' });
  ask('standing-water', { moving: 'yes' });
  for (const pressure of ['150 kPa', '300 kPa', '450 kPa'])
    ask('car-check', { wetness: 'wet', corners: Array(4).fill({ size: '28x3 beaded edge', load: '150 kg', pressure, tread: '4 mm' }) });
  return list;
}

// Those put together by hand.
export function chosen(description) {
  return [...fields(), ...wetRoads(), ...tyreChecks().map((input) => ({ sheet: 'tyre-check', input })), ...examples(description), ...stoppingInputs(), ...stageInputs()];
}

// Numbers of up to 40 digits, each of which tells in the last bit: the page has them read by the browser
// (web/bindings/number.js), and the native builds by the C library.
function longNumbers() {
  const list = [];
  let state = 1n;
  for (let i = 0; i < 600; i++) {
    let digits = '';
    for (let n = 0; n < 3; n++) {
      state = (state * 6364136223846793005n + 1442695040888963407n) % 2n ** 64n;
      digits += String(state).padStart(20, '0').slice(0, 14);
    }
    const pressure = `2.${digits.slice(0, 1 + (i % 39))} bar`;
    list.push({ size: sizes[0], load: 400 + Number(`0.${digits.slice(0, 17)}`), pressure, tread: `${digits.slice(20, 21)}.${digits.slice(2, 2 + (i % 25))} mm`, today: '2026-11-25' });
  }
  return list.map((input) => ({ sheet: 'tyre-check', input }));
}

export function inputs(description) {
  return [...chosen(description), ...longNumbers(), ...generated(description)];
}
