// After the page is built: puts the one-file version beside it, and the whole folder into a zip
// with a note for the webmaster. The same folder always gives the same bytes.
import { copyFileSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { zipSync } from 'fflate';

const root = fileURLToPath(new URL('..', import.meta.url));
const dist = join(root, 'web/dist');
const written = new Date(2026, 0, 1); // a zip must have a date: always this one

copyFileSync(join(root, 'build/one-file/index.html'), join(dist, 'treadwater-one-file.html'));

const files = readdirSync(dist, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
  .sort();
const contents = { 'READ-ME.txt': readFileSync(join(root, 'web/handout/READ-ME.txt')) };
for (const file of files) contents[`treadwater/${relative(dist, file).replaceAll('\\', '/')}`] = readFileSync(file);

writeFileSync(join(root, 'build/treadwater-page.zip'), zipSync(contents, { level: 9, mtime: written }));
