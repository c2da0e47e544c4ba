// Prints the inputs of the parity test, one per line, as parity_native reads them. Its path is the
// argument: it is asked for the list of sheets.
import { spawnSync } from 'node:child_process';

import { inputs } from './inputs.mjs';

const { stdout } = spawnSync(process.argv[2], { input: '', maxBuffer: 1 << 28, encoding: 'utf8' });
for (const line of inputs(JSON.parse(stdout))) console.log(JSON.stringify(line));
