// Tables as people have them, read without a browser: the separators, the column names, what is
// left out and reported; and text that is not a table.
import assert from 'node:assert/strict';
import { test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { pageModules } from '../support/page-modules.mjs';

const { read, write, forSpreadsheet, rowsOf, named, fold, textOf } = await pageModules('list/csv.ts', 'list/columns.ts', 'list/file.ts');
// As the page says it in English.
const say = (english, ...values) => english.replace(/#/g, () => String(values.shift()));
const plural = (one, other, n, ...values) => say(n === 1 ? one : other, ...(values.length ? values : [n]));
const sheets = JSON.parse((await loadModule()).describe()).sheets;
const list = (sheet, id) => sheets.find((one) => one.id === sheet).fields.find((one) => one.id === id);
const FIELD = list('field-list', 'rows');

function take(text, of = FIELD, most = of.row_names?.length ?? of.most) {
  const found = rowsOf(read(text, (cells) => named(cells, of), say), of, most, { say, plural });
  return { ...found, rows: found.rows.map((row) => Object.fromEntries([...row].map(([id, { text: said, unit }]) => [id, unit ? `${said} [${unit}]` : said]))) };
}

const said = ({ doubts, remarks }) => [...doubts, ...remarks].join(' ');
const ONE = { name: '7', size: '205/55 R16 91V', load: '390', pressure: '2,3', tread: '6,5 mm' };

test('any of tab, semicolon, bar and comma parts the columns, decimal commas or not', () => {
  for (const sign of ['\t', ';', '|'])
    assert.deepEqual(take(Object.values(ONE).join(sign)).rows, [ONE], JSON.stringify(sign));
  assert.deepEqual(take('7,205/55 R16 91V,390,"2,3","6,5 mm"').rows, [ONE]);
  assert.deepEqual(take('3,5;2,2\n4,5;2,3', list('standing-water', 'tyres')).rows, [{ tyre_kind: '3,5', tread: '2,2' }, { tyre_kind: '4,5', tread: '2,3' }]);
});

test('names of columns in any order, case, accent and tongue; a unit beside them', () => {
  const { rows, columns, doubts } = take('PROFILTIEFE;Reifengroesse;Reifengrösse;Luftdruck [psi];Radlast (kg);start-number\n6,5;x;205/55 R16 91V;33;390;7');
  assert.deepEqual(rows, [{ tread: '6,5', size: '205/55 R16 91V', pressure: '33 [psi]', load: '390 [kg]', name: '7' }]);
  assert.deepEqual(columns, ['Tread depth', 'Sidewall text', 'Tyre pressure (psi)', 'Load on this wheel (kg)', 'Start number or name']);
  assert.deepEqual(doubts, ['No such column here, and left out: “Reifengroesse”.']);
  assert.deepEqual(take('Pneu,Charge kg,Pression bar\n205/55 R16 91V,390,2.3').rows, [{ size: '205/55 R16 91V', load: '390 [kg]', pressure: '2.3 [bar]' }]);
  assert.deepEqual(take('rengas\tkuorma\turasyvyys\n205/55 R16 91V\t390\t6').rows, [{ size: '205/55 R16 91V', load: '390', tread: '6' }]);
});

test('every name that the core gives for a column finds it, and no two fields of a list share one', () => {
  for (const { fields } of sheets)
    for (const one of fields.filter(({ kind }) => kind === 'list')) {
      const names = new Map();
      for (const part of one.fields)
        for (const name of [part.id, part.label, ...(part.also ?? [])]) {
          assert.ok([part.id, undefined].includes(names.get(fold(name))), `${one.id}: ${name} is ${part.id} and ${names.get(fold(name))}`);
          names.set(fold(name), part.id);
          const [row] = take(`${name};${one.fields.find(({ id }) => id !== part.id).id}\nx;y`, { ...one, row_names: undefined }, 9).rows;
          assert.equal(row[part.id], 'x', `${one.id}: ${name}`);
        }
    }
});

test('a choice by its value or its words; what is none is kept for the core to refuse', () => {
  const { rows } = take('size;kind of tyre\na;ROAD TYRE\nb;cut slick\nc;Full wet\nd;Semi');
  assert.deepEqual(rows.map(({ tyre_kind }) => tyre_kind), ['road', 'cut-slick', 'wet', 'Semi']);
});

test('a day with points is a date; others stay as they are', () => {
  const { rows } = take('Reifen;Datum;Profil\nfront left;3.4.2026;5\nrear-left;04/03/2026;5', list('wear-log', 'readings'));
  assert.deepEqual(rows, [{ tyre: 'front-left', date: '2026-04-03', depth: '5' }, { tyre: 'rear-left', date: '04/03/2026', depth: '5' }]);
});

test('the second column of one name, unknown columns and rows beyond the most are named and left out', () => {
  const found = take('Name;Colour;Tyre;Size;\n7;red;a;b;c\n8;blue;d;e;f\n9;;g;;', FIELD, 2);
  assert.deepEqual(found.rows, [{ name: '7', size: 'b' }, { name: '8', size: 'e' }]);
  assert.match(said(found), /left out: “Colour”, “Tyre”, “column 5”\./);
  assert.match(said(found), /takes 2 rows: 1 more line was left out/);
});

test('a line of more cells than columns is kept by its name alone, and said', () => {
  const found = take('Name,Tyre,Load,Pressure,Tread\n7,205/55 R16 91V,390,2,3,6,5\n8,205/55 R16 91V,390,2.3,6.5');
  assert.deepEqual(found.rows, [{ name: '7' }, { name: '8', size: '205/55 R16 91V', load: '390', pressure: '2.3', tread: '6.5' }]);
  assert.match(said(found), /More cells than columns in line 2/);
});

test('rows of fixed names go to their places', () => {
  const corners = list('car-check', 'corners');
  const found = take('Corner;Pressure;Tread\nrear left;2.1;4\nFRONT LEFT;2.2;5\nRoof;1;1', corners);
  assert.deepEqual({ ...found.rows }, { 0: { pressure: '2.2', tread: '5' }, 2: { pressure: '2.1', tread: '4' } });
  assert.match(said(found), /No such row here, and left out: “Roof”/);
  assert.deepEqual({ ...take('Rear right;205/55 R16 91V;2.2\nSpare;205/55 R16 91V;2.3', corners).rows }, { 3: { size: '205/55 R16 91V', pressure: '2.2' }, 4: { size: '205/55 R16 91V', pressure: '2.3' } });
});

test('quotation marks: whole ones are taken off, a broken one loses no line', () => {
  assert.deepEqual(take('7;"205/55 R16 91V; M+S";"a ""b"""').rows, [{ name: '7', size: '205/55 R16 91V; M+S', load: 'a "b"' }]);
  const found = take('7;"205/55 R16 91V;390\n8;30x3 1/2";400\n9;165 SR 13;300');
  assert.deepEqual(found.rows.map(({ name }) => name), ['7', '8', '9']);
  assert.match(said(found), /quotation mark/);
});

test('a quotation mark left open says in which line it is, and how many lines it would swallow', () => {
  const found = take('Name;Tyre;Load\n7;"205/55 R16 91V;390\n8;165 SR 13;400\n9;165 SR 13;300');
  assert.deepEqual(found.rows.map(({ name, load }) => [name, load]), [['7', '390'], ['8', '400'], ['9', '300']]);
  assert.match(said(found), /in line 2 does not close there\. Lines it would swallow: 2\./);
  assert.match(said(take('7;"205/55 R16 91V;390\n8;30x3 1/2";400\n9;165 SR 13;300')), /in line 1 does not close there\. Lines it would swallow: 1\./);
});

test('what stands in a column that is not known is asked about; an empty one is only named', () => {
  const slicks = take('Name;Tyre;Rubber\n7;205/55 R16 91V;slick\n8;165 SR 13;slick');
  assert.deepEqual(slicks.doubts, ['No such column here, and left out: “Rubber”.']);
  assert.deepEqual(take('Name;Tyre;\n7;205/55 R16 91V;slick').doubts, ['No such column here, and left out: “column 3”.']);
  const empty = take('Name;Tyre;Rubber\n7;205/55 R16 91V;\n8;165 SR 13;');
  assert.deepEqual(empty.doubts, []);
  assert.match(said(empty), /left out: “Rubber”/);
  assert.deepEqual(take('Name;Tyre;Kind of tyre\n7;205/55 R16 91V;slick').doubts, []);
});

test('a comma list with decimal commas is asked about, not read as 2 bar and 8 mm', () => {
  const torn = take('Name,Tyre,Load,Pressure,Tread\n7,205/55 R16 91V,390,2,8\n8,205/55 R16 91V,380,2,6');
  assert.match(torn.doubts.join(), /Line 2: “2” and “8” are two cells\. Is that comma a decimal one\?/);
  for (const good of [
    'Name,Tyre,Load,Pressure,Tread\n7,205/55 R16 91V,390,2.3,8',
    'Name,Tyre,Load,Pressure,Tread\n7,205/55 R16 91V,390,"2,3",8',
    'Name,Tyre,Load,Pressure (kPa),Tread\n7,205/55 R16 91V,390,230,8',
    'Name;Tyre;Load;Pressure;Tread\n7;205/55 R16 91V;390;2;8',
  ]) assert.deepEqual(take(good).doubts, [], good);
});

test('a title above the names of the columns is left out and said; so is the line that says the separator', () => {
  const found = take('Club sprint, 28 November\n\nName;Tyre;Load\n7;205/55 R16 91V;390'.replace(',', ''));
  assert.deepEqual(found.rows, [{ name: '7', size: '205/55 R16 91V', load: '390' }]);
  assert.match(said(found), /Above the names of the columns, and left out: “Club sprint 28 November”/);
  assert.deepEqual(found.doubts, []);
  // More than a title is asked about.
  assert.equal(take('7;205/55 R16 91V;390\nName;Tyre;Load\n8;165 SR 13;400').doubts.length, 1);
  for (const line of ['sep=;\n', 'sep=;\r\n', '\uFEFFSEP=;\n'])
    assert.deepEqual(take(`${line}Name;Tyre;Load\n7;205/55 R16 91V;390,5`).rows, [{ name: '7', size: '205/55 R16 91V', load: '390,5' }], line);
  assert.match(said(take('sep=,\nName,Tyre\n7,a,b')), /in line 3/);
});

test('a file in UTF-16 is read, and a spreadsheet file is known whatever its name', () => {
  const table = 'Größe;Name\n165 SR 13;7';
  const le = Buffer.from(table, 'utf16le');
  const be = Buffer.from(le).swap16();
  for (const [name, bytes] of [
    ['UTF-8', Buffer.from(table)], ['with its mark', Buffer.from(`\uFEFF${table}`)], ['Windows', Buffer.from(table, 'latin1')],
    ['UTF-16', Buffer.concat([Buffer.from([0xff, 0xfe]), le])], ['the other way round', Buffer.concat([Buffer.from([0xfe, 0xff]), be])],
    ['without its mark', le], ['without, the other way round', be],
  ]) assert.deepEqual(take(textOf(new Uint8Array(bytes)).text).rows, [{ size: '165 SR 13', name: '7' }], name);
  assert.deepEqual(textOf(new Uint8Array([0x50, 0x4b, 3, 4, 0, 0])), { is: 'spreadsheet' });
  assert.deepEqual(textOf(new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1])), { is: 'spreadsheet' });
  assert.deepEqual(textOf(new Uint8Array(Buffer.from('%PDF-1.7\n'))), { is: 'no-text' });
  assert.deepEqual(textOf(new Uint8Array([1, 2, 0, 9, 9, 0, 0, 0])), { is: 'no-text' });
  assert.deepEqual(textOf(new Uint8Array()), { text: '' });
});

test('empty lines, a byte order mark and the line ends of any system', () => {
  assert.deepEqual(take('\uFEFFName;Tyre\r\n\r\n7;a\r\n;;\r\n8;b\r\n').rows, [{ name: '7', size: 'a' }, { name: '8', size: 'b' }]);
  assert.equal(take('').count, 0);
  assert.equal(take('Name;Tyre').count, 0);
});

test('what is written as text is read back the same', () => {
  const rows = [['7', '205/55 R16 91V; "M+S"', '390 kg', '2,3 bar', '6,5 mm', 'road', '-1'], ['=1+1', '', 'a\tb', '|', ',', 'cut-slick', '']];
  const back = take(write(FIELD.fields.map(({ label }) => label), rows)).rows;
  assert.deepEqual(back.map((row) => FIELD.fields.map(({ id }) => row[id] ?? '')), [rows[0], ['=1+1', '', 'a b', '|', ',', 'cut-slick', '']]);
  assert.match(forSpreadsheet(['Name'], [['=HYPERLINK("x")'], ['-3'], ['a,b']]), /'=HYPERLINK.*\r?\n.*'-3.*\r?\n"a,b"/);
});

test('no text at all makes it stumble: 3 000 random ones, and a line of a million characters', () => {
  let state = 20261125;
  const random = (below) => { state = (Math.imul(state, 1664525) + 1013904223) >>> 0; return state % below; };
  const bits = ['"', '""', '\n', '\r\n', ';', ',', '\t', '|', ' ', 'Reifen', 'Last (kg)', 'tread', '2,3', '12 %', '\0', '\uFEFF', '\uD800', '🛞', '__proto__', 'constructor', '=1', '((', ')]', 'é', 'e\u0301', '205/55 R16 91V'];
  const lists = sheets.flatMap(({ fields }) => fields.filter(({ kind }) => kind === 'list'));
  for (let i = 0; i < 3000; i++) {
    const text = Array.from({ length: random(60) }, () => (random(4) ? bits[random(bits.length)] : String.fromCharCode(random(i % 2 ? 256 : 65536)))).join('');
    const of = lists[i % lists.length];
    const found = take(text, of);
    assert.ok(found.rows.length <= of.most);
    assert.equal(Object.values(found.rows).length, found.count);
    for (const row of Object.values(found.rows))
      for (const id of Object.keys(row)) assert.ok(of.fields.some((part) => part.id === id));
    const lines = text.split(/[\r\n]+/).filter((line) => /[^\s";,|\uFEFF]/.test(line)).length;
    assert.ok(found.count || found.doubts.length || found.remarks.length || lines <= 1 || /"/.test(text), JSON.stringify(text));
  }
  const start = performance.now();
  for (const long of ['x'.repeat(1e6), '"'.repeat(1e6), ';'.repeat(1e6), '1;'.repeat(5e5), '(['.repeat(5e5), `Name;Tyre\n${'a,'.repeat(5e5)}`]) take(long);
  assert.ok(performance.now() - start < 20000, `${performance.now() - start} ms`);
});
