// A plain static host for the built page, under any path, that a test can stop: like a club's web
// space, gone when a marshal's phone looks for it.
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.wasm': 'application/wasm',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.txt': 'text/plain; charset=utf-8',
};

// serve(folder, {base}): {url, stop()}. base is the path the folder is put under, as '/club/tyres/'.
export async function serve(folder, { base = '/' } = {}) {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url, 'http://localhost').pathname);
    const file = path.startsWith(base) ? fileAt(folder, path.slice(base.length)) : undefined;
    if (!file) {
      response.writeHead(404).end('not found');
      return;
    }
    response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' });
    createReadStream(file).pipe(response);
  });
  await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
  return {
    url: `http://localhost:${server.address().port}${base}`,
    stop() {
      server.closeAllConnections();
      return new Promise((closed) => server.close(closed));
    },
  };
}

function fileAt(folder, path) {
  const found = join(folder, normalize(`/${path}`));
  const stat = statSync(found, { throwIfNoEntry: false });
  if (stat?.isDirectory()) return fileAt(folder, `${path.replace(/\/*$/, '')}/index.html`);
  return stat?.isFile() ? found : undefined;
}
