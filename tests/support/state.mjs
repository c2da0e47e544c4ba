// The page's own state.ts in Node: what a form holds, as a link and back.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

import { root } from './paths.mjs';

export async function loadState() {
  const web = createRequire(join(root, 'web/package.json'));
  const { transformWithOxc } = await import(pathToFileURL(web.resolve('vite')));
  const { code } = await transformWithOxc(readFileSync(join(root, 'web/src/state.ts'), 'utf8'), 'state.ts', { sourcemap: false });
  return import(`data:text/javascript,${encodeURIComponent(code)}`);
}
