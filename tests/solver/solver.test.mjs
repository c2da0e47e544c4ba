// The planner of the stages against HiGHS, a solver for linear programmes. Each small event is
// rewritten as a flow of probability through its states: the leg, the weather seen, the wear of
// every set, which have been run, the time lost so far. What flows into a state flows out over the
// sets that may go on. The least mean is one programme; the mean of the worst fifth is, after
// Rockafellar and Uryasev, the least over t of t + E(lost - t)+ / 0.2, a programme for each t that
// the time lost can come to.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { test } from 'node:test';

import createHighs from 'highs';

import { nativeFolder } from '../support/paths.mjs';

const events = 240;
const tailShare = 0.2;
const run = spawnSync(join(nativeFolder, 'plan_numbers'), [String(events)], { encoding: 'utf8', maxBuffer: 1 << 26 });
assert.equal(run.status, 0, run.stderr);
const asked = run.stdout.trimEnd().split('\n').map((line) => JSON.parse(line));
const highs = await createHighs();

function legsOf({ stages }) {
  const legs = [[]];
  stages.forEach((stage, i) => {
    legs.at(-1).push(i);
    if (stage.halt_after && i + 1 < stages.length) legs.push([]);
  });
  return legs;
}

// How a leg may end on this set, from this weather: {weather, chance, lost, wear}.
function endings(event, leg, set, seen) {
  let ends = [{ weather: seen, chance: 1, lost: 0, wear: 0 }];
  for (const i of leg) {
    const { chances, follows, by_set } = event.stages[i];
    ends = ends.flatMap((end) => (follows ? follows[end.weather] : chances).flatMap((chance, weather) => chance > 0
      ? [{ weather, chance: end.chance * chance, lost: end.lost + by_set[set].lost[weather], wear: end.wear + by_set[set].wear[weather] }]
      : []));
  }
  return ends;
}

// May this set, worn so far, run the leg in any weather deemed possible?
function may(event, leg, set, worn) {
  let worst = worn;
  for (const i of leg) {
    const { refused, wear, lost } = event.stages[i].by_set[set];
    if (refused || lost.some((seconds) => seconds === null)) return false;
    worst += Math.max(...wear.filter((_, w) => event.stages[i].chances[w] > 0));
  }
  return worst <= event.sets[set].life + 1e-9;
}

// The states that can be reached, each with what may be done in it; and the ways it can all end.
function network(event) {
  const legs = legsOf(event);
  const states = [];
  const actions = []; // {from, ends: [{to | end, chance}], lost: expected over the leg}
  const finals = new Map(); // time lost → index
  const known = new Map();
  const stateOf = (leg, weather, worn, used, lost) => {
    const key = JSON.stringify([leg, weather, worn.map((w) => w.toFixed(9)), used, lost.toFixed(9)]);
    if (!known.has(key)) {
      known.set(key, states.length);
      states.push({ leg, weather, worn, used, lost });
    }
    return known.get(key);
  };
  stateOf(0, 0, event.sets.map(({ worn }) => worn), event.sets.map(() => false), 0);
  for (let from = 0; from < states.length; from++) {
    const { leg, weather, worn, used, lost } = states[from];
    event.sets.forEach((_, set) => {
      if (!may(event, legs[leg], set, worn[set])) return;
      const usedThen = used.with(set, true);
      if (event.most_sets !== null && usedThen.filter(Boolean).length > event.most_sets) return;
      const action = { from, lost: 0, ends: [] };
      for (const end of endings(event, legs[leg], set, weather)) {
        action.lost += end.chance * end.lost;
        const total = lost + end.lost;
        if (leg + 1 < legs.length) {
          const to = stateOf(leg + 1, end.weather, worn.with(set, worn[set] + end.wear), usedThen, total);
          action.ends.push({ to, chance: end.chance });
        } else {
          const key = total.toFixed(9);
          if (!finals.has(key)) finals.set(key, total);
          action.ends.push({ total, chance: end.chance });
        }
      }
      actions.push(action);
    });
  }
  return { states, actions, finals: [...finals.values()] };
}

// min cost·x where for each state: what flows out = what flows in (1 into the first).
function least({ states, actions }, cost) {
  const number = (x) => x.toFixed(15);
  const out = states.map(() => []);
  actions.forEach(({ from, ends }, a) => {
    out[from].push(`+ x${a}`);
    for (const { to, chance } of ends) if (to !== undefined) out[to].push(`- ${number(chance)} x${a}`);
  });
  if (out.some((terms) => !terms.some((term) => term.startsWith('+'))) && !actions.length) return Infinity;
  const rows = out.map((terms, s) => `s${s}: ${terms.join(' ') || '0 x0'} = ${s === 0 ? 1 : 0}`);
  const goal = actions.map((action, a) => `${cost(action) < 0 ? '-' : '+'} ${number(Math.abs(cost(action)))} x${a}`).join(' ');
  const { Status, ObjectiveValue } = highs.solve(`Minimize\n obj: ${goal}\nSubject To\n ${rows.join('\n ')}\nEnd`);
  if (Status === 'Infeasible') return Infinity;
  assert.equal(Status, 'Optimal');
  return ObjectiveValue;
}

function tail(net) {
  const excess = (action, t) => action.ends.reduce((sum, { total, chance }) => sum + (total === undefined ? 0 : chance * Math.max(0, total - t)), 0);
  return Math.min(...net.finals.map((t) => t + least(net, (action) => excess(action, t)) / tailShare));
}

const networks = asked.map(network);

test(`the least mean loss of ${events} small events is what HiGHS finds`, () => {
  let solved = 0, none = 0;
  asked.forEach((event, n) => {
    const other = least(networks[n], (action) => action.lost);
    if (event.average === null) {
      assert.equal(other, Infinity, JSON.stringify(event));
      none += 1;
    } else {
      assert.ok(Math.abs(other - event.average) < 1e-6, `${other} and ${event.average}: ${JSON.stringify(event)}`);
      solved += 1;
    }
  });
  console.log(`${solved} events with a plan, ${none} without`);
  assert.ok(solved > 100 && none > 10);
});

test('so is the least mean of the worst fifth', () => {
  let solved = 0;
  asked.forEach((event, n) => {
    if (event.steady === null || networks[n].finals.length > 40 || networks[n].states.length > 200) return;
    const other = tail(networks[n]);
    assert.ok(Math.abs(other - event.steady) < 1e-6, `${other} and ${event.steady}: ${JSON.stringify(event)}`);
    solved += 1;
  });
  console.log(`${solved} events`);
  assert.ok(solved > 60);
});
