// Before a release: every sentence is translated into every language, and the PO files are as
// web/languages/update.mjs writes them, without obsolete sentences.
//   node tests/languages/release.mjs
import { progress } from './progress.mjs';

for (const [language, { po, missing, said, inStep }] of progress) {
  const wrong = [
    missing.size ? `${said}:\n${[...missing.keys()].map((key) => `  ${JSON.stringify(key)}`).join('\n')}` : '',
    inStep ? '' : 'the file is not in step with the sources: node web/languages/update.mjs',
    po.obsolete.size ? `${po.obsolete.size} sentences are said no more: node web/languages/update.mjs --drop` : '',
  ].filter(Boolean);
  console.log(wrong.map((line) => `${language}.po: ${line}`).join('\n') || `${language}.po: whole`);
  if (wrong.length) process.exitCode = 1;
}
