// Do the tests notice when the core is wrong? Breaks one operator or constant at a time in a copy
// of the core, or takes one source out of a finding, builds what depends on it, and runs the unit
// tests, then the register, the record of sources, and last the pinned sweeps, which catch any
// change at all and are therefore counted separately. What none of them catches is a survivor, and
// is printed; docs/survivors.md explains the harmless ones. Takes about half a minute per mutant;
// not part of the test run.
//
//   node tests/mutation.mjs [COUNT] [NUMBER]    COUNT mutants (150), chosen by NUMBER (1)
//   node tests/mutation.mjs FILE:LINE:COLUMN    the mutants of one place
//
// Two fifths of the mutants are operators, two fifths constants, a fifth sources. Headers are left
// out: each would rebuild nearly everything.
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';

import { inputs } from './parity/inputs.mjs';
import { recordOf } from './parity/sources.mjs';
import { root } from './support/paths.mjs';

const rooms = ['quantity', 'words', 'standard', 'sidewall', 'patch', 'water', 'grip', 'air', 'wear', 'car', 'stage', 'judge', 'sheets', 'json'];
const tree = join(root, 'build/mutation');
const build = join(tree, 'build/native');
const patience = 180_000; // ms for one kind of tests: a mutant may loop for ever

// ---- the mutants

const otherwise = {
  '+': ['-'], '-': ['+'], '*': ['/'], '/': ['*'], '&&': ['||'], '||': ['&&'], '==': ['!='], '!=': ['=='],
  '<': ['<=', '>'], '<=': ['<', '>='], '>': ['>=', '<'], '>=': ['>', '<='],
};
// .clang-format puts a blank on both sides of an operator with two sides, and on neither side of a
// template's bracket, a reference's && and a sign.
const operator = /(?<=[\w)\]] )(?:&&|\|\||==|!=|<=|>=|[-+*/<>])(?=\s)/g;
const constant = /(?<![\w.'])\d+(?:\.\d*)?(?:e[+-]?\d+)?(?![\w.'])/g;

// The same text with nothing in it that is not code, every character still in its place.
function codeOnly(text) {
  return text.replace(/\/\/.*|\/\*[^]*?\*\/|"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])'|^#.*/gm, (found) => found.replace(/[^\n]/g, ' '));
}

function nudged(number) {
  if (/^\d+$/.test(number)) return String(Number(number) + 1);
  const nudge = Number(number) === 0 ? '0.01' : String(Number(number) * 1.01);
  return /[e.]/.test(nudge) ? nudge : `${nudge}.0`;
}

// A source taken out of what a finding, limit or figure names.
const source = /&(?:\w+::)*(?:\w+_source\(\)|advice::\w+)(?:, )?/g;

function mutantsOf(file) {
  const text = readFileSync(join(root, file), 'utf8');
  const code = codeOnly(text);
  const found = (kind, pattern, others) => [...code.matchAll(pattern)].flatMap(({ 0: from, index }) => others(from).map((to) => {
    const before = text.slice(0, index).split('\n');
    return { kind, file, index, from, to, place: `${file}:${before.length}:${before.at(-1).length + 1}`, line: text.split('\n')[before.length - 1].trim() };
  }));
  return [
    ...found('operator', operator, (from) => otherwise[from]),
    ...found('constant', constant, (from) => [nudged(from)]),
    ...(/^core\/(?:judge|sheets)\//.test(file) ? found('source', source, () => ['']) : []),
  ];
}

// SplitMix64 decides the order, so that a number gives the same mutants on every machine.
function shuffled(list, number) {
  const mask = (1n << 64n) - 1n;
  let state = BigInt(number);
  const next = () => {
    state = (state + 0x9e3779b97f4a7c15n) & mask;
    let z = state;
    z = ((z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n) & mask;
    z = ((z ^ (z >> 27n)) * 0x94d049bb133111ebn) & mask;
    return z ^ (z >> 31n);
  };
  return list.map((one) => [next(), one]).sort(([a], [b]) => (a < b ? -1 : 1)).map(([, one]) => one);
}

const files = rooms.flatMap((room) => readdirSync(join(root, 'core', room), { recursive: true }).map(String).filter((name) => name.endsWith('.cpp')).sort()
  .map((name) => `core/${room}/${name}`));
const all = files.flatMap(mutantsOf);

// ---- the copy, and its tests

function prepare() {
  mkdirSync(tree, { recursive: true });
  const copied = execFileSync('git', ['ls-files', '-z', 'CMakeLists.txt', 'core', 'tests', 'docs'], { cwd: root, encoding: 'utf8' });
  for (const file of copied.split('\0').filter(Boolean)) {
    const [from, to] = [join(root, file), join(tree, file)];
    mkdirSync(join(to, '..'), { recursive: true });
    const bytes = readFileSync(from);
    if (!existsSync(to) || !readFileSync(to).equals(bytes)) writeFileSync(to, bytes);
  }
  if (!existsSync(join(build, 'build.ninja'))) {
    const tools = [];
    if (spawnSync('ccache', ['--version']).status === 0) tools.push('-DCMAKE_CXX_COMPILER_LAUNCHER=ccache');
    if (spawnSync('ld.gold', ['--version']).status === 0) tools.push('-DCMAKE_EXE_LINKER_FLAGS=-fuse-ld=gold');
    execFileSync('cmake', ['-S', tree, '-B', build, '-G', 'Ninja', '-DCMAKE_BUILD_TYPE=None', '-DCMAKE_CXX_FLAGS=-O1 -g1 -D_GLIBCXX_ASSERTIONS', ...tools], { stdio: 'ignore' });
  }
}

function compile(target) {
  const { status, stdout } = spawnSync('ninja', ['-C', build, target], { encoding: 'utf8', maxBuffer: 1 << 26 });
  if (status !== 0) return /static assertion failed/.test(stdout) ? 'a static assertion' : 'does not compile';
  return undefined;
}

function run(program, ...given) {
  return spawnSync('sh', ['-c', 'ulimit -v 6000000; exec "$0" "$@"', join(build, 'bin', program), ...given],
    { encoding: 'utf8', timeout: patience, killSignal: 'SIGKILL', maxBuffer: 1 << 28 });
}

function unitTests(which) {
  const { status, signal, stdout } = run('unit_tests', which, '--abort');
  if (signal) return `unit: no end (${signal})`;
  return status === 0 ? undefined : `unit: ${/-{79}\n([^]*?)\n-{79}/.exec(stdout)?.[1].split('\n')[0] ?? `exit ${status}`}`;
}

function register() {
  const { status, stdout } = run('register_native', ...readdirSync(join(root, 'tests/register')).filter((name) => name.endsWith('.json')).map((name) => join(root, 'tests/register', name)));
  if (status !== 0) return `register: exit ${status}`;
  const rows = stdout.trimEnd().split('\n').slice(0, -1).flatMap((line) => JSON.parse(line).rows);
  const wrong = rows.find((row) => !row.agrees || row.error);
  return wrong && `register: ${wrong.entry}`;
}

// The answers to the inputs of tests/parity: the sources they name, against the record.
const asked = [];
function sources() {
  if (asked.length === 0) {
    const description = JSON.parse(run('parity_native').stdout);
    asked.push(...inputs(description).map((one) => JSON.stringify(one)));
  }
  const { status, stdout } = spawnSync(join(build, 'bin/parity_native'), [], { input: `${asked.join('\n')}\n`, encoding: 'utf8', maxBuffer: 1 << 30, timeout: patience });
  if (status !== 0) return `sources: exit ${status}`;
  const record = recordOf(stdout.trimEnd().split('\n').slice(1).map((line) => JSON.parse(line)));
  return isDeepStrictEqual(record, JSON.parse(readFileSync(join(root, 'tests/parity/sources.json'), 'utf8'))) ? undefined : 'sources of the answers';
}

// Who notices first: the name of a test that fails, a static assertion, or nobody.
function noticed() {
  return compile('unit_tests') ?? unitTests('~pinned*') ?? compile('register_native') ?? register() ?? compile('parity_native') ?? sources() ?? unitTests('pinned*');
}

function fate(mutant) {
  const path = join(tree, mutant.file);
  const whole = readFileSync(path, 'utf8');
  writeFileSync(path, whole.slice(0, mutant.index) + mutant.to + whole.slice(mutant.index + mutant.from.length));
  try {
    return noticed();
  } finally {
    writeFileSync(path, whole);
  }
}

// ---- the run

const [what = '150', number = '1'] = process.argv.slice(2);
const onePlace = what.includes(':');
const most = onePlace ? Infinity : Number(what);
const order = onePlace ? all.filter(({ place }) => place === what) : shuffled(all, number);
const wanted = { operator: Math.ceil(0.4 * most), constant: Math.floor(0.4 * most), source: Math.floor(0.2 * most) };

prepare();
const flaw = noticed();
if (flaw) throw new Error(`the tests fail before anything is broken: ${flaw}`);
console.log(`${all.length} mutants in ${files.length} files; ${onePlace ? 'those of one place' : `${most} of them, by the number ${number}`}; ${cpus().length} processors`);

const tally = { operator: [0, 0], constant: [0, 0], source: [0, 0] };
let stillborn = 0;
let moved = 0; // noticed by the pinned sweeps alone
for (const mutant of order) {
  const count = tally[mutant.kind];
  if (count[0] >= wanted[mutant.kind]) continue;
  const by = fate(mutant);
  if (by === 'does not compile') {
    stillborn += 1;
    continue;
  }
  count[0] += 1;
  if (by) count[1] += 1;
  if (by?.startsWith('unit: pinned')) moved += 1;
  console.log(`${by ? 'killed  ' : 'SURVIVED'} ${mutant.place}  ${mutant.from} -> ${mutant.to}  ${by ? `(${by})` : `in: ${mutant.line}`}`);
}

const [tried, killed] = [0, 1].map((i) => tally.operator[i] + tally.constant[i] + tally.source[i]);
const share = ([n, k]) => `${k} of ${n}`;
console.log(`operators killed: ${share(tally.operator)}; constants killed: ${share(tally.constant)}; sources killed: ${share(tally.source)}; did not compile, and not counted: ${stillborn}`);
console.log(`${killed} of ${tried} mutants killed, ${((100 * killed) / tried).toFixed(1)} %; ${moved} of them by the pinned sweeps alone`);
