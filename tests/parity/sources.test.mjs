// Which sources each finding, limit and figure names, over all inputs: compared with the record in
// sources.json. A missing or extra source shows here. If it is meant, write a new record:
//   RECORD=1 node --test tests/parity/sources.test.mjs
import assert from 'node:assert/strict';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';

import { loadModule } from '../support/core.mjs';
import { read, root } from '../support/paths.mjs';
import { inputs } from './inputs.mjs';
import { recordOf } from './sources.mjs';

const module = await loadModule();

function* answers() {
  for (const { sheet, input } of inputs(JSON.parse(module.describe()))) yield JSON.parse(module.answer(sheet, JSON.stringify(input)));
}

test('every finding, limit and figure names its sources', () => {
  const record = recordOf(answers());
  if (process.env.RECORD) writeFileSync(join(root, 'tests/parity/sources.json'), `${JSON.stringify(record, null, 1)}\n`);
  for (const [sheet, of] of Object.entries(JSON.parse(read('tests/parity/sources.json')))) assert.deepEqual(record[sheet], of, sheet);
});
