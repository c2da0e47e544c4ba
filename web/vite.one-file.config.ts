// The whole page in one file that runs from a memory stick: no server, no network, no other files.
// Its content policy allows only the file's own content, by hash.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { defineConfig, type Plugin } from 'vite';
import { viteSingleFile } from 'vite-plugin-singlefile';

import { catalogues } from './languages/compile.mjs';

// The full module serves as the first one too: nothing has to be fetched here.
function oneModule(): Plugin {
  return {
    name: 'one-module',
    enforce: 'pre',
    resolveId(source, importer) {
      return source.includes('/treadwater-first.') ? this.resolve(source.replace('-first', ''), importer) : null;
    },
    // The glue is passed the bytes: if it looked for them itself, they would be held twice.
    transform(code, id) {
      return id.endsWith('/treadwater.mjs') ? code.replace(/new URL\("treadwater\.wasm",\s*import\.meta\.url\)\.toString\(\)/, '""') : null;
    },
  };
}

// Nothing beside the file is asked for: no icons, no manifest, nothing loaded ahead, no worker (the
// page works out long answers itself); and the script that dresses the page stands within it.
function noNeighbours(): Plugin {
  const look = readFileSync(new URL('public/look.js', import.meta.url), 'utf8');
  return {
    name: 'no-neighbours',
    enforce: 'pre',
    transform: (code, id) => (id.endsWith('/long-answer.ts') ? code.replace(/new Worker\(.*\)/, 'undefined') : null),
    transformIndexHtml: {
      order: 'pre',
      handler: (html) => html.replace(/^<link rel="(icon|apple-touch-icon|preload)".*\n/gm, '')
        .replace(/<script [^>]*src="\.\/look\.js"><\/script>/, () => `<script>\n${look}</script>`),
    },
  };
}

function policyByHash(): Plugin {
  const hashes = (html: string, tag: string) => [...html.matchAll(new RegExp(`<${tag}\\b[^>]*>(.*?)</${tag}>`, 'gs'))]
    .map(([, inner = '']) => `'sha256-${createHash('sha256').update(inner).digest('base64')}'`).join(' ');
  return {
    name: 'policy-by-hash',
    enforce: 'post',
    generateBundle: {
      order: 'post',
      handler(_, bundle) {
        for (const file of Object.values(bundle)) {
          if (file.type !== 'asset' || !file.fileName.endsWith('.html')) continue;
          const html = String(file.source);
          // Module scripts wait for the page by themselves; inline ones do not fetch, so need no origin.
          file.source = html.replace(/content="default-src [^"]*"/, `content="default-src 'none'; script-src ${hashes(html, 'script')} 'wasm-unsafe-eval'; style-src ${hashes(html, 'style')}; connect-src data:; base-uri 'none'; form-action 'none'"`);
        }
      },
    },
  };
}

export default defineConfig({
  base: './',
  mode: 'one-file',
  define: { 'import.meta.env.MODE': '"one-file"' },
  publicDir: false,
  build: { target: 'es2022', outDir: '../build/one-file', emptyOutDir: true, assetsInlineLimit: Number.MAX_SAFE_INTEGER, reportCompressedSize: false },
  plugins: [catalogues(), oneModule(), noNeighbours(), viteSingleFile({ removeViteModuleLoader: true }), policyByHash()],
});
