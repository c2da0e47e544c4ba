// The core as other programs use it: installed for CMake, and as an npm-shaped folder.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';

import { root } from '../support/paths.mjs';

const run = (program, args, options = {}) => execFileSync(program, args, { encoding: 'utf8', ...options });
const folder = join(root, 'build/npm/treadwater');

test('a program finds the installed library with find_package, compiles and runs', () => {
  const place = mkdtempSync(join(tmpdir(), 'treadwater-'));
  run('cmake', ['--install', join(root, 'build/native'), '--prefix', join(place, 'installed')]);
  run('cmake', ['-S', join(root, 'tests/package'), '-B', join(place, 'build'), '-G', 'Ninja', `-DCMAKE_PREFIX_PATH=${join(place, 'installed')}`]);
  run('cmake', ['--build', join(place, 'build')]);
  const said = run(join(place, 'build/example'), []);
  assert.match(said, /carries 615 kg/);
  assert.match(said, /floats from 94 km\/h/);
});

test('a program in Node loads the npm-shaped folder and asks it', () => {
  const said = run(process.execPath, [join(root, 'tests/package/example.mjs'), folder]);
  assert.match(said, /sheets; .* Hold to \d+ km\/h\./);
});

test('its TypeScript types fit, and refuse what does not', () => {
  const place = mkdtempSync(join(tmpdir(), 'treadwater-'));
  mkdirSync(join(place, 'node_modules'));
  symlinkSync(folder, join(place, 'node_modules/treadwater'));
  symlinkSync(join(root, 'tests/package/example.ts'), join(place, 'example.ts'));
  writeFileSync(join(place, 'tsconfig.json'), JSON.stringify({
    compilerOptions: { module: 'esnext', target: 'es2022', moduleResolution: 'bundler', strict: true, noEmit: true, preserveSymlinks: true, types: [] },
    files: ['example.ts'],
  }));
  run(process.execPath, [join(root, 'web/node_modules/typescript/bin/tsc'), '-p', place]);
});
