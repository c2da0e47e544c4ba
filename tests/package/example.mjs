// Somebody else's program that uses the npm-shaped folder; the folder's path is the first argument.
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
const { id, example } = core.describe().sheets.find((sheet) => sheet.long);
const shares = [];
assert.deepEqual(core.answer(id, example.input, (share) => shares.push(share)), core.answer(id, example.input));
assert.ok(shares.every((share, i) => share >= (shares[i - 1] ?? 0) && share <= 1), `${shares}`);
console.log(`${sheets.length} sheets; ${answer.verdict.text} Hold to ${answer.hold_to.text}.`);
