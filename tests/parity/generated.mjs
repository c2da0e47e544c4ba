// Inputs generated from the core's description of its sheets: each is a sheet's example with some
// fields changed, realistic or extreme by kind of field. The same in every run.

// How many a sheet gets: those that weigh thousands of draws or plan a whole event get fewer.
const shares = { 'tyre-check': 1500, 'standing-water': 900, 'car-check': 450, 'cold-pressure': 2200, fitment: 2000, stopping: 700, puncture: 1600, 'stage-tyres': 90, 'field-list': 260, 'wear-log': 2200 };
const usual = 300;

function numbers(start) {
  let state = start >>> 0;
  return () => { // mulberry32
    state = (state + 0x6d2b79f5) >>> 0;
    let z = state;
    z = Math.imul(z ^ (z >>> 15), z | 1);
    z ^= z + Math.imul(z ^ (z >>> 7), z | 61);
    return ((z ^ (z >>> 14)) >>> 0) / 2 ** 32;
  };
}

const sizes = [
  '205/55 R16 91V', '195/65R15 91T', '225/40 ZR18 (92Y) XL', '205/55RF16 91W', 'P205/75R15 97S', 'P225/60R16', 'LT235/85R16 120/116R',
  '195/75 R16 C 107/105R', '195/75 R16 C 107/105R 475 kPa', '165 SR 13', 'T125/80 D15 95M', '255/35ZR19', '165 R 13 83S', '5.60-15',
  'HL 245/45 R19 101Y XL', '185/80-15', '31x10.50R15LT 109Q', '175/70 R14 84T M+S 3PMSF', '710x90', '820x120', '650x65', '30x3 1/2', '225/45 R17 94W XL',
  '315/80 R22.5 156/150L', '180/55 ZR 17 M/C (73W)', '120/70 R17 M/C 58V 290 kPa', 'FR78-15', '155/80 R13 79T', '245/40 R18 97Y', 'ST205/75R15 101M', '185/65 R15 88H DOT 4B9K 1XXX 2319',
  '205/55', '205/55 R16 99Z', 'banana', 'x'.repeat(300), '🛞🛞', '205/55 R16 91V'.repeat(3), '\u0000205/55 R16', '205／55 R16', '<b>205/55 R16</b>',
];
const texts = ['', ' ', 'A', 'car 7', '2316', '5324', '0026', '324', '9999', '<i>"#\\', '🛞', 'é ü ß', 'x'.repeat(5000), '\n\t', '0', 'Łódź'];
const dates = ['2026-11-25', '2024-02-29', '2023-02-29', '1970-01-01', '2099-12-31', '2026-01-01', '0000-00-00', '25.11.2026', '2026-13-01', '', 'tomorrow', '2025-06-30', '2026-06-15'];
const oddQuantities = [
  '', '0', '-1', '1e999', '-1e308', 'nan', 'inf', '5e-324', '1e308', '7/32', '7/32 in', '1 1/2 in', '2,5 bar', ' 33  psi ', '33PSI', '1.2.3', '１２', '🛞', '3 3 mm',
  '-0', '0.000001', '1/0 in', 'ten', '100 %', '5 apples', '.', '+3', '12e', 0, -1, 33, 2.5, 1e300, -0.1, null, true, false, [], {}, [1], '33 psi kg', '273.15 K', '-40 °C', '1e-30',
];

export function generated(description, factor = 1) {
  return description.sheets.flatMap((sheet, place) => {
    const next = numbers(1000 + place);
    const below = (n) => Math.floor(next() * n);
    const one = (list) => list[below(list.length)];

    // Near the example, in any of the field's units; now and then its ends.
    const quantity = (field) => {
      const dice = next();
      if (dice < 0.12) return one(oddQuantities);
      if (dice < 0.2) return one([field.min, field.max, field.example]);
      const given = parseFloat(String(field.example).replace(',', '.'));
      const value = (Number.isFinite(given) ? given : 1) * one([0, 0.2, 0.5, 0.8, 0.95, 1, 1.1, 1.4, 2, 4]) * (0.9 + 0.2 * next());
      const unit = String(field.example).replace(/^[-\d.,/ ]+/, '');
      const number = value.toFixed(below(4));
      const spelled = next() < 0.1 ? number.replace('.', ',') : number;
      const other = next() < 0.15 ? one(field.units ?? [unit]) : unit;
      return next() < 0.06 ? Number(number) : `${spelled}${one([' ', ' ', ''])}${other}`.trim();
    };
    const change = (field, old) => {
      if (next() < 0.03) return one([null, true, 5, [], {}, 'banana', '']);
      switch (field.kind) {
        case 'quantity':
        case 'number': return quantity(field);
        case 'choice': return next() < 0.05 ? one(['banana', '', 7]) : one(field.choices).value;
        case 'yes-no': return next() < 0.1 ? one([true, false, 'maybe', '']) : one(['yes', 'no']);
        case 'date': return one(dates);
        case 'list': return changeRows(field, old);
        default: return /size|tyre|spare|sidewall/.test(field.id) || next() < 0.1 ? one(sizes) : one(texts);
      }
    };
    const changeRows = (field, old) => {
      const rows = Array.isArray(old) ? old.map((row) => ({ ...row })) : [];
      const dice = next();
      if (dice < 0.06) rows.splice(below(rows.length + 1), 1);
      else if (dice < 0.14 && rows.length < 14) rows.push(rows.length ? { ...one(rows) } : {});
      else if (dice < 0.16) return [];
      else if (dice < 0.17) return [...rows, 5];
      else if (dice < 0.18) rows.push({ surprise: 1 });
      for (let n = 1 + below(3); n > 0 && rows.length; --n) {
        const row = one(rows);
        const part = one(field.fields);
        if (next() < 0.1) delete row[part.id];
        else row[part.id] = change(part, row[part.id]);
      }
      return rows;
    };

    const inputs = [];
    for (let i = Math.ceil((shares[sheet.id] ?? usual) * factor); i > 0; --i) {
      const input = { ...sheet.example.input, today: next() < 0.97 ? '2026-11-25' : one(dates) };
      for (let n = 1 + below(1 + below(6)); n > 0; --n) {
        const field = one(sheet.fields);
        if (next() < 0.12) delete input[field.id];
        else input[field.id] = change(field, input[field.id]);
      }
      if (next() < 0.01) input.surprise = 'yes';
      inputs.push({ sheet: sheet.id, input });
    }
    return inputs;
  });
}
