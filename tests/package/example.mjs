// A program of somebody else's that uses the npm-shaped folder; its path is the first argument.
import assert from 'node:assert/strict';
import { pathToFileURL } from 'node:url';

const { load } = await import(pathToFileURL(`${process.argv[2]}/index.mjs`).href);
const core = await load();
const sheets = core.describe().sheets.map((sheet) => sheet.id);
assert.ok(sheets.includes('tyre-check'));
const answer = core.answer('tyre-check', {
  size: '205/55 R16 91V', load: '430 kg', pressure: '220 kPa', tread: '3 mm', water: '5 mm',
});
assert.equal(answer.ok, true);
console.log(`${sheets.length} sheets; ${answer.verdict.text} Hold to ${answer.hold_to.text}.`);
