// Where the builds put what the tests look at.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));
export const pageFolder = join(root, 'web/dist');
export const moduleFolder = join(root, 'build/wasm');
export const nativeFolder = join(root, 'build/native/bin');
export const clangFolder = join(root, 'build/clang/bin');

export function read(path) {
  return readFileSync(join(root, path), 'utf8');
}
