// The page's own modules, from TypeScript, in Node: everything that the named files of web/src
// export, as one object.
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

import { root } from './paths.mjs';

export async function pageModules(...files) {
  const web = createRequire(join(root, 'web/package.json'));
  const { rolldown } = await import(pathToFileURL(web.resolve('rolldown')));
  const all = files.map((file) => `export * from ${JSON.stringify(join(root, 'web/src', file))};`).join('\n');
  const bundle = await rolldown({
    input: 'all',
    plugins: [{
      name: 'all',
      resolveId: (id) => (id === 'all' ? '\0all' : null),
      load: (id) => (id === '\0all' ? all : null),
    }],
  });
  const { output } = await bundle.generate({ format: 'es' });
  return import(`data:text/javascript;base64,${Buffer.from(output[0].code).toString('base64')}`);
}
