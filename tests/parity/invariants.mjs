// What must be true of every answer of every sheet, whatever the input: the faults of one answer,
// as sentences.
const levels = ['note', 'care', 'unfit'];
const verdicts = ['fit', 'care', 'unfit'];

// Texts repeat what a person wrote in quotation marks only, or as a name in a cell; the rest is the core's own.
const noWord = /\b(nan|inf|infinity|undefined|null)\b/i;

function* strings(value, path = '') {
  if (typeof value === 'string') yield [path, value];
  else if (value !== null && typeof value === 'object') for (const key of Object.keys(value)) yield* strings(value[key], `${path}/${key}`);
}
function* numbers(value, path = '') {
  if (typeof value === 'number') yield [path, value];
  else if (value !== null && typeof value === 'object') for (const key of Object.keys(value)) yield* numbers(value[key], `${path}/${key}`);
}

export function faults(answer, sources) {
  const wrong = [];
  const demand = (held, what) => held || wrong.push(what);
  const said = (text, what) => demand(typeof text === 'string' && text.trim().length > 2, `${what} has no text`);
  const known = (ids, what) => {
    for (const id of ids) demand(answer.sources[id] !== undefined, `${what} names the source ${id}, which the answer does not give`);
  };

  demand(answer.ok === (answer.problems.length === 0), 'ok and problems at once');
  demand(answer.ok === (answer.verdict !== undefined), 'a verdict where there are problems, or none where there are none');
  for (const problem of answer.problems) {
    said(problem.text, `the problem ${problem.code}`);
    demand(typeof problem.field === 'string' && problem.code.length > 2, 'a problem without a field or a code');
  }
  if (!answer.ok) {
    demand(answer.hold_to === undefined, 'a speed to hold to where there are problems');
    demand(!answer.blocks.some((block) => block.kind === 'spoken'), 'something to read out where there are problems');
  } else {
    demand(verdicts.includes(answer.verdict.level), `a verdict of level ${answer.verdict.level}`);
    said(answer.verdict.text, 'the verdict');
  }

  for (const limit of answer.limits) {
    said(limit.label, `the limit ${limit.id}`);
    said(limit.why, `the limit ${limit.id}`);
    known(limit.sources, `the limit ${limit.id}`);
    demand(limit.low_kmh <= limit.kmh && limit.kmh <= limit.high_kmh && limit.low_kmh >= 0, `the limit ${limit.id} is not low, central, high`);
    // What is told beside the maximum speed does not set it.
    if (answer.hold_to && limit.id !== 'puddles') {
      demand(answer.hold_to.kmh <= limit.high_kmh + 1e-6, `the speed to hold to is above the high end of ${limit.id}`);
      demand(answer.hold_to.kmh <= limit.low_kmh + 1e-6, `the speed to hold to is above the low end of ${limit.id}`);
    }
  }
  if (answer.hold_to) {
    demand(Number.isFinite(answer.hold_to.kmh) && answer.hold_to.kmh >= 0, 'the speed to hold to is no speed');
    said(answer.hold_to.text, 'the speed to hold to');
    demand(answer.limits.some((limit) => limit.id === answer.hold_to.governed_by), `the speed to hold to is governed by ${answer.hold_to.governed_by}, which is no limit here`);
  }
  if (answer.hold_to) demand(answer.hold_to.kmh < 130, 'a speed to hold to where nothing bites below 130 km/h');
  if (answer.no_limit) {
    said(answer.no_limit.text, 'the speed that nothing limits');
    demand(answer.hold_to === undefined && answer.ok, 'a speed that nothing limits, and one to hold to or problems');
    demand(!answer.limits.some((limit) => limit.governs), 'a limit that governs where nothing limits');
    if (answer.no_limit.own_kmh !== undefined) {
      said(answer.no_limit.own_text, 'its own limit');
      demand(answer.no_limit.own_kmh > 125, `its own limit is ${answer.no_limit.own_kmh}`);
    }
  }
  for (const figure of answer.figures) {
    demand(Number.isFinite(figure.value), `the figure ${figure.id} is no number`);
    demand(!(figure.low > figure.value) && !(figure.value > figure.high), `the figure ${figure.id} is not low, value, high`);
    demand(typeof figure.text === 'string' && figure.text.length > 0, `the figure ${figure.id} has no text`);
    known(figure.sources, `the figure ${figure.id}`);
  }
  answer.cautions.forEach((caution, i) => {
    demand(levels.includes(caution.level), `a caution of level ${caution.level}`);
    said(caution.text, `the caution ${caution.id}`);
    known(caution.sources, `the caution ${caution.id}`);
    demand(i === 0 || levels.indexOf(answer.cautions[i - 1].level) >= levels.indexOf(caution.level), 'cautions out of order');
  });
  // The verdict is no better than the worst caution.
  if (answer.ok && answer.cautions.length)
    demand(verdicts.indexOf(answer.verdict.level) >= levels.indexOf(answer.cautions[0].level), `the verdict is ${answer.verdict.level} over a caution that says ${answer.cautions[0].level}`);

  for (const [id, source] of Object.entries(answer.sources)) demand(JSON.stringify(source) === JSON.stringify(sources[id]), `the source ${id} is not the described one`);
  for (const [path, text] of strings(answer)) {
    if (path.startsWith('/sources/') || path.includes('/stretches/')) continue;
    const own = text.replace(/“[^”]*”/g, '');
    demand(!noWord.test(own), `${path}: ${text.slice(0, 80)}`);
    const cell = /\/rows\/\d+\/\d+$/.test(path) && text === '–';
    demand(cell || !own.includes('–'), `a dash where a number belongs: ${path}: ${text.slice(0, 80)}`);
  }
  for (const [path, value] of numbers(answer)) demand(Number.isFinite(value), `${path} is no number`);
  return wrong;
}
