// Grip: published friction formulas, mechanics of stopping and cornering, and stops in steps of
// speed.
// Sources: Leu and Henry 1978, the international friction index, the handbook's table, plain mechanics, rule 126 of
// the Highway Code, AASHTO (docs/method.md says how each is known).
import { D, exp, foot, g, grid, inch, line, max, min, mph, NONE, pi, pow, root, some, sqrt, sum } from './exact.mjs';

const mm = (v) => D(v).times(1000);
const inMph = (v) => D(v).div(mph);
const ms = (v) => D(v).div('3.6');
const speeds = [0, 1, 30, 50, 64.37376, 90, 100, 130, 250];

// ---- skid laws ----

const gradient = (t) => D('0.157').times(pow(D(t).div(inch), '-0.47'));
const index = (f60, sp, slip) => D(f60).times(exp(D(60).minus(D(slip)).div(D(sp))));
const profile = (texture) => max(0, mm(texture).minus('0.2').div('0.8'));

// ---- stopping ----

// On a road of this rise over run, in the angle itself.
const slowing = (mu, grade) => {
  const cosine = D(1).div(sqrt(D(1).plus(D(grade).pow(2))));
  return g.times(D(mu).times(cosine).plus(D(grade).times(cosine)));
};
const braking = (v, mu, grade) => {
  const a = slowing(mu, grade);
  return a.lte(0) ? NONE : ms(v).pow(2).div(a.times(2));
};
const cases = grid([1, 30, 50, 90, 130, 250], [0, 0.05, 0.1, 0.3, 0.6, 0.85, 1.2], [-0.3, -0.1, -0.04, 0, 0.05, 0.25]);

// ---- bends ----

const corner = (r, mu, e) => {
  if (D(mu).plus(D(e)).lte(0)) return D(0);
  const rest = D(1).minus(D(mu).times(D(e)));
  return rest.lte(0) ? NONE : sqrt(g.times(D(r)).times(D(mu).plus(D(e))).div(rest)).times('3.6');
};
// Thrown off an outward bank, where the fraction's lower half is gone.
const demand = (v, r, e) => {
  const need = ms(v).pow(2).div(g.times(D(r)));
  const pressed = D(1).plus(need.times(D(e)));
  return pressed.lte(0) ? D(Infinity) : need.minus(D(e)).div(pressed);
};
const comfort = (v) => line([[20, '0.27'], [30, '0.2'], [40, '0.16'], [50, '0.14'], [55, '0.13'], [60, '0.12'], [65, '0.11'], [70, '0.1']], inMph(v));

// ---- the handbook: dry, 0.2, 1 and 2 mm, at 50, 90 and 130 km/h ----

const films = [0, '0.0002', '0.001', '0.002'];
const handbook = {
  fresh: [['0.85', '0.65', '0.55', '0.5'], ['0.8', '0.6', '0.3', '0.05'], ['0.75', '0.55', '0.2', 0]],
  worn: [[1, '0.5', '0.4', '0.25'], ['0.95', '0.2', '0.1', '0.05'], ['0.9', '0.2', '0.1', 0]],
};
// Its lines are carried on past their ends, never under zero; under 50 km/h they run to the thin film's figure at rest.
const carried = (points, x) => {
  const past = points.length - (D(x).gt(D(points.at(-1)[0])) ? 2 : points.length);
  const [[x0, y0], [x1, y1]] = points.slice(past).map((point) => point.map(D));
  return D(x).gt(D(points.at(-1)[0])) ? y0.plus(y1.minus(y0).times(D(x).minus(x0)).div(x1.minus(x0))) : line(points, x);
};
const byFilm = (row, film) => carried(films.map((f, j) => [f, row[j]]), film);
const inTable = (table, v, film) => (D(v).lt(50)
  ? line([[0, byFilm(table[0], min(film, '0.0002'))], [50, max(0, byFilm(table[0], film))]], v)
  : max(0, carried([50, 90, 130].map((speed, i) => [speed, byFilm(table[i], film)]), v)));
const printed = (v, tread, film) => line([['0.0016', inTable(handbook.worn, v, film)], ['0.008', inTable(handbook.fresh, v, film)]], tread);

// The band of what water leaves, as the header of the core's film.hpp lays it down.
const gained = (tread, middle) => line([['0.0016', 0], ['0.003', middle], ['0.008', 1]], tread);
function shareKept(given, tread, film) {
  const v = min(given, 300);
  const counted = D(film).lt('0.0001') ? D(film).times(2) : max(film, film === 0 ? 0 : '0.0002');
  const [fresh, worn] = [handbook.fresh, handbook.worn].map((table) => inTable(table, v, counted));
  const bare = D(tread).lt('0.0016');
  const treaded = bare ? worn.times(line([[0, '0.4'], ['0.0016', 1]], tread)) : worn.plus(fresh.minus(worn).times(gained(tread, '0.15')));
  const gain = bare ? D(tread).minus('0.0016').div('0.0064') : gained(tread, '0.6');
  const viscous = D('0.2').minus(D('0.18').times(gain)).times(min(1, mm(film).div('0.2')));
  const c = max(2, D(4).plus(gain.times(12)));
  const high = D(1).minus(viscous).times(max(0, D(1).minus(mm(film).times(D(v).div(100).pow(2)).div(c))));
  const low = min(min(fresh, treaded).div(inTable(handbook.fresh, v, 0)), high);
  return [low, sqrt(low.times(high)), high];
}
// The two laws of less texture than 0.7 mm, the index at a fifth of the speed.
function textureShare(texture, v) {
  if (D(texture).gte('0.0007')) return [D(1), D(1)];
  const depth = max(texture, '0.0001');
  const bySkid = exp(gradient('0.0007').minus(gradient(depth)).times(inMph(v)).div(100));
  const sp = (t) => D('14.2').plus(D('89.7').times(profile(t)));
  const byIndex = exp(D(v).div(5).times(D(1).div(sp('0.0007')).minus(D(1).div(sp(depth)))));
  return [min(bySkid, byIndex), max(bySkid, byIndex)];
}

// ---- the friction of a case, as the header of the core's friction.hpp lays it down ----

// Of what is printed for each ground: [share, texture] where it is paved, else the ends in the dry and in the wet.
const surfaces = {
  asphalt: [1, '0.0007'], smooth: ['0.9', '0.0004'], cobbles: ['0.75', '0.0004'],
  'gravel-loose': ['0.35', '0.75', '0.35', '0.75'], 'gravel-packed': ['0.55', '0.85', '0.4', '0.8'], earth: ['0.35', '0.68', '0.15', '0.65'],
  grass: ['0.3', '0.45', '0.15', '0.3'], snow: ['0.15', '0.6', '0.15', '0.6'], ice: ['0.05', '0.1', '0.05', '0.1'], 'ice-cold': ['0.05', '0.25', '0.05', '0.25'],
};
// Groove credit; share of the low figure on paved ground; of both on loose and on frozen ground; low and high end of its
// usual rubber in the dry and in the wet, of unknown warmth.
const kinds = {
  road: [1, 1, 1, '0.7', 1, 1, 1, 1], winter: [1, '0.85', 1, 1, 1, 1, 1, 1], studded: [1, '0.8', 1, 1, 1, 1, 1, 1], gravel: [1, '0.85', 1, '0.7', 1, 1, 1, 1],
  wet: [1, 1, 1, '0.7', '0.95', '1.05', '0.95', '1.25'],
  'cut-slick': ['0.5', 1, '0.7', '0.5', '0.8', '1.5', '0.72', '1.1'], slick: [0, 1, '0.5', '0.5', '0.8', '1.5', '0.72', '1.1'],
};
const mixed = (from, to, share) => D(from).plus(D(to).minus(D(from)).times(share));
const threeOf = (low, high, central = sqrt(low.times(high))) => [low, central, high];

// 1/Vg^2 of the longest, central and shortest stop; the onset is three speeds, or none.
const worn = (figures) => (tread) => line(['0', '0.001', '0.0016', '0.003', '0.0047', '0.008'].map((t, i) => [t, figures[i]]), tread);
const lossOfTread = worn(['10e-5', '7.2e-5', '6.1e-5', '5.9e-5', '1.9e-5', '1.2e-5']);
const shareOfTread = worn(['0.8', '0.84', '0.85', 1, 1, 1]);
function lossBySpeed(tread, film, onset) {
  const h = mm(film);
  const longest = h.lt(1) ? sqrt(h) : pow(min(h, 2), '0.7');
  const afloat = max(0, min(1, h.minus(2)));
  return [longest.times('1.25'), min(1, h), min(1, h).times('0.7')].map((f, i) => {
    const loss = lossOfTread(tread).times(f);
    return onset === NONE ? loss : mixed(loss, max(loss, D(1).div(max(1, onset[i]).pow(2))), afloat);
  });
}
const ofRoad = (central) => ['0.85', 1, '1.15'].map((share) => D(central).times(share));
const wetAtRest = (road) => [['0.55', '0.76', '1.04'].map(D), ofRoad('0.9'), ofRoad('0.76'), ofRoad('0.65')][road];
const inTheDry = (road) => [max('0.7', wetAtRest(road)[0]), D('0.98'), D('1.2')];

// mu = rest - loss V^2 with its dry part, by side.
function squareLaws(ground, kind, tread, film, road, onset) {
  const [groove, paved, , , dryLow, dryHigh, wetLow, wetHigh] = kinds[kind];
  const [share] = surfaces[ground];
  const wet = min(1, mm(film).div('0.2'));
  const credited = D(tread).times(groove);
  const losses = lossBySpeed(credited, film, onset);
  const middle = (low, high) => [D(low), sqrt(D(low).times(D(high))), D(high)];
  const [dryRubber, wetRubber, tyre] = [middle(dryLow, dryHigh), middle(wetLow, wetHigh), middle(paved, 1)];
  return losses.map((loss, i) => {
    const most = inTheDry(road)[i].times(dryRubber[i]);
    const soaked = min(most, wetAtRest(road)[i].times(shareOfTread(credited)).times(wetRubber[i])).times(wet);
    const dry = most.times(D(1).minus(wet));
    const by = tyre[i].times(share);
    return { rest: dry.plus(soaked).times(by), loss: soaked.times(loss).times(by), dry: dry.times(by), gone: loss };
  });
}
function friction(ground, kind, tread, film, v, road = 0, old = 0, onset = NONE) {
  const [groove, paved, loose, frozen, dryLow, dryHigh, wetLow, wetHigh] = kinds[kind];
  const wet = min(1, mm(film).div('0.2'));
  if (surfaces[ground].length === 2) {
    const [share, texture] = surfaces[ground];
    const [textureLow, textureHigh] = textureShare(texture, v).map((kept) => mixed(1, kept, wet));
    const modern = squareLaws(ground, kind, tread, film, road, onset)
      .map((law) => max(law.dry, law.rest.minus(law.loss.times(min(v, 400).pow(2)))))
      .map((mu, i) => mu.times([textureLow, sqrt(textureHigh), 1][i]));
    if (!old) return modern;
    const [low, , high] = shareKept(v, D(tread).times(groove), film);
    const atSpeed = inTable(handbook.fresh, v, 0);
    const dry = D('0.6').times(atSpeed).div('0.85');
    const least = (film > 0 ? min(dry, atSpeed.times(low).times('0.9')) : dry).times(share).times(paved).times(mixed(dryLow, wetLow, wet));
    const most = D('1.2').times(share).times(min(dryHigh, high.times(mixed(dryHigh, wetHigh, wet))));
    return threeOf(least.times(textureLow), most, sqrt(least.times(textureHigh).times(most))).map((mu, i) => min(mu, modern[i]));
  }
  const ice = ground.startsWith('ice');
  const share = ice || ground === 'snow' ? frozen : loose;
  const flooded = max(0, min(1, mm(film).minus('0.2').div('1.8')));
  const [least, most, wetLeast, wetMost] = surfaces[ground];
  let low = D(share).times(mixed(least, wetLeast, min(1, wet.times(2)))).times(mixed(1, '0.5', flooded));
  let high = D(share).times(mixed(most, wetMost, wet));
  if (ice && kind === 'studded') [low, high] = [low.div('0.92'), D('0.3')];
  if (ground.startsWith('gravel') && kind === 'gravel') high = max(high, '0.8');
  return threeOf(low, high);
}

// ---- a stop, step by step ----

// Friction of the core at every whole km/h, as three columns: recomputed above, given here.
const share = D('0.8784').div('1.0422');
function stop(friction, from, to, grade, radius, bank) {
  let way = D(0);
  for (let v = Math.ceil(from); v > to; --v) {
    let mu = D(friction[v]);
    if (radius !== NONE) {
      const side = demand(v, radius, bank).div(mu.times(share)).abs();
      mu = side.gte(1) ? D(0) : mu.times(sqrt(D(1).minus(side.pow(2))));
    }
    const a = slowing(mu, grade);
    if (a.lte(0) || (radius !== NONE && mu.lte(0))) return NONE;
    way = way.plus(ms(Math.min(v, from)).pow(2).minus(ms(Math.max(v - 1, to)).pow(2)).div(a.times(2)));
  }
  return way;
}
// On paved ground, in closed form where all of it is a square law and there is no bend; told to 0.95 of where the grip is
// gone, or downhill of what is left of it, and below the onset.
const byLaw = (law, from, to, grade) => {
  const held = law.rest.plus(grade);
  if (held.lte(0)) return NONE;
  const c = law.loss.div(held);
  const [p, q] = [to, from].map((v) => D(1).minus(c.times(D(v).pow(2))));
  if (q.lte(0)) return NONE;
  const squares = c.isZero() ? D(from).pow(2).minus(D(to).pow(2)) : p.div(q).ln().div(c);
  return squares.div('25.92').div(slowing(law.rest, grade));
};
const isPaved = (ground) => surfaces[ground].length === 2;
const isClosed = (ground, film, radius) => isPaved(ground) && radius === NONE && (film === 0 || D(surfaces[ground][1]).gte('0.0007'));
function toldTo([ground, kind, tread, film], side, grade, road, onset) {
  if (!isPaved(ground)) return D(400);
  const law = squareLaws(ground, kind, tread, film, road, onset)[side];
  if (law.gone.isZero()) return D(400);
  const held = max(0, law.rest.plus(min(0, grade)));
  const most = min(400, min(sqrt(held.div(law.loss)), D(1).div(sqrt(law.gone))).times('0.95'));
  const seenToStop = film <= 0.002 && tread * kinds[kind][0] >= 0.001;
  // Below the onset by less than any speed asked.
  return onset === NONE ? most : min(most, D(onset[side === 0 && seenToStop ? 1 : side]).minus('1e-12'));
}
function way(ground, side, mu, from, to, grade, radius, bank) {
  if (!isClosed(ground[0], ground[3], radius)) return stop(mu, from, to, grade, radius, bank);
  return byLaw(squareLaws(...ground, 0, NONE)[side], from, to, grade);
}
const toldWay = (ground, side, mu, from, ...rest) => (D(from).gt(toldTo(ground, side, rest[1], 0, NONE)) ? NONE : way(ground, side, mu, from, ...rest));
// Cases with all that may be told: the road, old tyres, the onset.
const onsets = [NONE, [55, 80, 105], [55.5, 1e9, 1e9], [0, 0.5, 12]];
const told = grid(['asphalt', 'smooth'], [['road', 0.008], ['winter', 0.003], ['road', 0.0009], ['wet', 0.0047]], [0, 0.00009, 0.0007, 0.0018, 0.0025, 0.004], [0, 1, 3], [0, 1], onsets.slice(0, 3))
  .filter((_, i) => i % 3 === 0)
  .map(([ground, [kind, tread], film, road, old, onset]) => [ground, kind, tread, film, road, old, ...[onset].flat()]);
const toldOf = ([road, old, ...onset]) => [road, old, onset.length === 3 ? onset : NONE];
const grounds = [['asphalt', 'road', 0.008, 0], ['asphalt', 'road', 0.003, 0.001], ['smooth', 'road', 0.0016, 0.0005], ['asphalt', 'slick', 0, 0.002], ['gravel-loose', 'gravel', 0.006, 0], ['ice', 'winter', 0.005, 0], ['snow', 'studded', 0.005, 0], ['grass', 'road', 0.004, 0.001]];
// What a stop needs to know of the core first: its friction at every km/h.
const asksFriction = (ground) => Array.from({ length: 201 }, (_, v) => `friction_at ${ground.join(' ')} ${v}`);
const columns = (answers) => [2, 1, 0].map((column) => answers.map((line) => Number(line.split(' ')[column])));

export const checks = [
  { formula: 'skid_number', over: grid([40, 60], [0, 0.5, 0.881], speeds), expected: (sn, png, v) => D(sn).times(exp(D(png).negated().times(inMph(v)).div(100))) },
  { formula: 'skid_number_at_zero_speed', over: grid([40, 60], [0, 0.5, 0.881], speeds), expected: (sn, png, v) => D(sn).times(exp(D(png).times(inMph(v)).div(100))) },
  { formula: 'skid_gradient', over: [[0.0001], [0.000647], [0.0015]], expected: gradient },
  { formula: 'skid_number_from_pendulum', over: [[30], [60], [75.5]], expected: (bpn) => D('1.32').times(D(bpn)).minus('34.9') },
  { formula: 'sand_patch_texture', over: [[2, 0.254], [1.5, 0.3]], expected: (v, d) => D(v).times(inch.pow(3)).times(4).div(pi.times(D(d).pow(2))) },
  { formula: 'index_friction', over: grid([0.2, 0.4], [50, 102, 148.75], speeds), expected: index },
  { formula: 'speed_constant_from_profile', over: [[0.0003], [0.001], [0.0015]], expected: (t) => D('14.2').plus(D('89.7').times(mm(t))) },
  { formula: 'speed_constant_from_sand_patch', over: [[0.0005], [0.001], [0.0015]], expected: (t) => D('-11.6').plus(D('113.6').times(mm(t))) },
  { formula: 'estimated_sand_patch', over: [[0], [0.0005], [0.001]], expected: (t) => D('0.2').plus(D('0.8').times(mm(t))).div(1000) },
  { formula: 'estimated_profile', over: [[0], [0.0001], [0.0005], [0.001]], expected: (t) => profile(t).div(1000), scale: 0.0002 },

  { formula: 'deceleration', over: cases.map(([, mu, grade]) => [mu, grade]), expected: slowing, scale: 0.1 },
  { formula: 'braking_distance', over: cases.filter(([, mu, grade]) => Math.abs(mu + grade) > 1e-3 || mu + grade === 0), expected: braking },
  { formula: 'stopping_distance', over: some(90, [1, 30, 50, 90, 130, 250], [0, 0.9, 2.5], [0.05, 0.3, 0.6, 0.85, 1.2], [-0.31, -0.04, 0, 0.05]), expected: (v, t, mu, grade) => {
    const way = braking(v, mu, grade);
    return way === NONE ? NONE : ms(v).times(D(t)).plus(way);
  } },
  { formula: 'speed_left', over: grid([30, 90, 130], [0, 10, 59.1, 120], [20, 59.2, 154.9]), expected: (v, room, need) => (room >= need ? D(0) : D(v).times(sqrt(D(1).minus(D(room).div(D(need)))))), scale: 1 },
  { formula: 'speed_to_stop_within', over: some(90, [0, 1, 20, 75.5, 300], [0, 0.9, 2.5], [0.05, 0.3, 0.6, 1.2], [-0.31, -0.04, 0, 0.05]), expected: (seen, t, mu, grade) => {
    const a = slowing(mu, grade);
    if (a.lte(0)) return NONE;
    const at = a.times(D(t));
    return sqrt(at.pow(2).plus(a.times(D(seen)).times(2))).minus(at).times('3.6');
  } },
  { formula: 'highway_code', over: speeds.map((v) => [v]), expected: (v) => [inMph(v), inMph(v).pow(2).div(20), inMph(v).plus(inMph(v).pow(2).div(20))].map((feet) => feet.times(foot)) },
  { formula: 'driving_school', over: grid(speeds, [0, 1]), expected: (v, full) => {
    const parts = [D(v).times('0.3'), D(v).div(10).pow(2).div(full ? 2 : 1)];
    return [...parts, sum(parts)];
  } },
  { formula: 'sight_distance_us', over: speeds.map((v) => [v]), expected: (v) => D('1.47').times(inMph(v)).times('2.5').plus(D('1.075').times(inMph(v).pow(2)).div('11.2')).times(foot) },
  { formula: 'sight_distance_metric', over: speeds.map((v) => [v]), expected: (v) => D('0.278').times(D(v)).times('2.5').plus(D('0.039').times(D(v).pow(2)).div('3.4')) },
  { formula: 'sight_distance_on_grade', over: grid(speeds, [-0.4, -0.06, 0, 0.06]), expected: (v, grade) => {
    const a = D('3.4').div('9.81').plus(D(grade));
    return a.lte(0) ? NONE : D('0.278').times(D(v)).times('2.5').plus(D(v).pow(2).div(a.times(254)));
  } },
  { formula: 'following_time', over: [[0, 2], [1, 4], [2, 20]], line: ([road]) => `${road}`, expected: (road, time) => D(time) },
  { formula: 'following_gap', over: grid(speeds, [0, 1, 2]), expected: (v, road) => ms(v).times([2, 4, 20][road]) },

  { formula: 'radius_from_chord', over: grid([5, 20, 100], [0, 0.05, 1.2, 2.5]), expected: (c, s) => (s === 0 ? NONE : D(c).pow(2).div(D(s).times(8)).plus(D(s).div(2))) },
  { formula: 'corner_speed', over: grid([5, 50, 400], [0, 0.1, 0.5, 0.85, 1.2], [-0.2, -0.04, 0, 0.07, 0.2, 1]), expected: corner, scale: 1e-6 },
  { formula: 'corner_speed_simple', over: grid([5, 50, 400], [0.1, 0.5, 0.85], [-0.04, 0, 0.07]), expected: (r, mu, e) => sqrt(D(127).times(D(r)).times(D(mu).plus(D(e)))), },
  { formula: 'design_radius_us', over: grid([50, 112.65408], [0.1, 0.16], [0, 0.08]), expected: (v, f, e) => inMph(v).pow(2).div(D(15).times(D(e).plus(D(f)))).times(foot) },
  { formula: 'design_radius_metric', over: grid([50, 100], [0.12, 0.16], [0, 0.08]), expected: (v, f, e) => D(v).pow(2).div(D(127).times(D(e).plus(D(f)))) },
  { formula: 'comfortable_side_friction', over: [0, 20, 32.18688, 40, 52.7, 70, 85, 99.9, 112.65408, 180].map((v) => [v]), expected: comfort },
  { formula: 'comfortable_corner_speed', over: grid([15, 50, 180, 600], [-0.02, 0, 0.06]), within: () => D('1e-6'), expected: (r, e) => root((v) => demand(v, r, e).minus(comfort(v)), '0.001', 250) },
  { formula: 'side_demand', over: grid([0, 30, 90, 180], [12, 50, 400], [-0.03, 0, 0.07]), expected: demand, scale: 0.1 },
  { formula: 'side_demand', over: [[90, 0, 0], [90, -50, 0.05], [90, 5, -0.2], [180, 12, -0.05]], expected: () => Infinity },
  { formula: 'braking_left', over: grid([0.3, 0.85, 1.1], [0.25, 0.8], [0, 0.1, 0.2, 0.25, 0.79, 1.5]), expected: (mx, my, d) => (d >= my ? D(0) : D(mx).times(sqrt(D(1).minus(D(d).div(D(my)).pow(2))))) },
  { formula: 'half_way', over: grid([0, 0.3, 0.6], [0.6, 1.2]), expected: (low, high) => sqrt(D(low).times(D(high))) },
  { formula: 'handbook_friction', over: grid([50, 63.3, 90, 117, 130], [0.0016, 0.003, 0.0071, 0.008], [0, 0.0001, 0.0002, 0.00055, 0.001, 0.0013, 0.002]), expected: printed, scale: 0.1 },

  { formula: 'friction_at', over: grid(Object.keys(surfaces), Object.keys(kinds), [[0.008, 0], [0.003, 0.00003], [0.0016, 0.0005], [0.004, 0.0015], [0.008, 0.0025], [0.001, 0.00017]], [0, 33.3, 80, 120, 210]).map(([ground, kind, wet, v]) => [ground, kind, ...wet, v]), scale: 0.01, expected: friction },
  { formula: 'wet_grip_at_rest', over: [[0], [1], [2], [3]], expected: wetAtRest },
  { formula: 'dry_grip', over: [[0], [1], [2], [3]], expected: inTheDry },
  { formula: 'wet_tread_share', over: [0, 0.0007, 0.001, 0.0013, 0.0016, 0.0029, 0.003, 0.0047, 0.008, 0.012].map((t) => [t]), expected: shareOfTread },
  {
    formula: 'grip_gone_at', relative: '1e-11', over: grid([0, 0.0007, 0.0016, 0.0024, 0.003, 0.004, 0.0081], [0.00003, 0.0002, 0.0007, 0.001, 0.0013, 0.002, 0.0022, 0.0029, 0.003, 0.05], onsets).map(([t, f, onset]) => [t, f, ...[onset].flat()]),
    expected: (t, f, ...onset) => lossBySpeed(t, f, onset.length === 3 ? onset : NONE).map((loss) => D(1).div(sqrt(loss))),
  },
  {
    formula: 'braked_by', over: grid([0.55, 0.76, 1.04], [0, 1e-9, 1.2e-5, 6.1e-5], [0.5, 30, 80, 119.9], [0, 29.9, 79.999], [-0.1, 0, 0.05]).filter(([, , from, to]) => from > to),
    expected: (rest, loss, from, to, grade) => byLaw({ rest: D(rest), loss: D(loss) }, from, to, grade),
  },
  {
    formula: 'friction_told', over: grid(told, [0, 33.3, 80, 120, 210]).map(([c, v]) => [...c, v]), scale: 0.01,
    expected: (...asked) => friction(...asked.slice(0, 4), asked.at(-1), ...toldOf(asked.slice(4, -1))),
  },
  {
    formula: 'braking_told', over: grid(told.filter(([ground, , , , , old]) => ground === 'asphalt' && !old), [[30, 0], [80, 20], [120, 0]], [-0.05, 0, 0.03]).map(([c, speeds, grade]) => [...c, ...speeds, grade]),
    expected(...asked) {
      const [from, to, grade] = asked.slice(-3);
      const [road, , onset] = toldOf(asked.slice(4, -3));
      const laws = squareLaws(...asked.slice(0, 4), road, onset);
      return [2, 1, 0].map((side) => (D(from).gt(toldTo(asked.slice(0, 4), side, grade, road, onset)) ? NONE : byLaw(laws[side], from, to, grade)));
    },
  },
  {
    // By halving 0 to 400 km/h thirty times.
    formula: 'corner_speed_band', within: () => D('4e-7'),
    over: grid([['asphalt', 'road', 0.008, 0], ['smooth', 'winter', 0.003, 0.001], ['cobbles', 'slick', 0, 0.0004], ['earth', 'gravel', 0.006, 0.0003], ['ice', 'studded', 0.005, 0]], [15, 60, 180], [-0.03, 0, 0.06]).map(([ground, ...bend]) => [...ground, ...bend]),
    expected: (ground, kind, tread, film, radius, bank) => [0, 1, 2].map((side) => root((v) => demand(v, radius, bank).minus(friction(ground, kind, tread, film, v)[side].times(share)), 0, 400)),
  },
  { formula: 'share_kept', over: grid([0, 20, 50, 71.7, 90, 130, 190, 340], [0, 0.001, 0.0016, 0.003, 0.0055, 0.008, 0.009], [0, 0.00005, 0.00015, 0.0002, 0.0005, 0.001, 0.00199, 0.0024]), expected: shareKept, scale: 0.01 },
  { formula: 'texture_share', over: grid([0, 0.0001, 0.0002, 0.00045, 0.0007, 0.0015], [0, 30, 80, 130, 200]), expected: textureShare },
  ...grid(['asphalt', 'smooth'], [[0.003, 0.001], [0.0016, 0.0005]], [50, 100]).map(([surface, [tread, film], v]) => ({
    // Of the core's own stops, which are recomputed below: on this tread over those on 8 mm, the high end widened by 1.2.
    formula: 'worn_stop_ratio', first: [tread, 0.008].map((t) => `braking_band ${surface} road ${t} ${film} ${v} 0 0 none 0`), over: [[surface, 'road', tread, film, v]],
    expected: (s, t, d, f, speed, known) => {
      const [here, fresh] = known.map((answer) => answer.split(' ').map(Number));
      const ratios = here.map((way, i) => D(way).div(D(fresh[i])));
      return [min(...ratios), ratios[1], max(...ratios).times('1.2')];
    },
  })),

  ...grounds.flatMap((ground) => [
    {
      // From that speed the stop takes all that is seen.
      formula: 'seen_distance_speed', first: asksFriction(ground), over: grid([4, 30, 61.7], [0, 0.9, 2.5], [-0.02, 0, 0.05]).map((c) => [...ground, ...c, NONE, 0]), relative: '1e-11',
      expected: (...asked) => [D(asked[4]), D(asked[4]), D(asked[4])],
      back(...asked) {
        const [, t, grade, radius, bank, ...speeds] = asked.slice(4);
        const mu = columns(this.known).reverse();
        return speeds.map((v, side) => ms(v).times(D(t)).plus(way(ground, side, mu[side], v, 0, grade, radius, bank)));
      },
    },
    {
      // Down to that speed it has taken all the room.
      formula: 'speed_left_band', first: asksFriction(ground), over: grid([90, 130], [1, 7.5, 20], [-0.02, 0, 0.05]).map(([v, room, grade]) => [...ground, v, room, grade, NONE, 0]), relative: '1e-11',
      expected: (...asked) => [D(asked[5]), D(asked[5]), D(asked[5])],
      back(...asked) {
        const [v, room, grade, radius, bank, ...left] = asked.slice(4);
        return columns(this.known).map((mu, i) => {
          const side = 2 - i;
          if (left[i] < v) return D(v).gt(toldTo(ground, side, grade, 0, NONE)) ? stop(mu, v, left[i], grade, radius, bank) : way(ground, side, mu, v, left[i], grade, radius, bank);
          const a = slowing(mu[v], grade); // downhill it may gain
          return a.isZero() && left[i] === v ? D(room) : ms(v).pow(2).minus(ms(left[i]).pow(2)).div(a.times(2));
        });
      },
    },
    {
      formula: 'braking_band', first: asksFriction(ground),
      over: some(14, [10, 50, 80, 130, 200], [0, 5, 30], [-0.06, 0, 0.05, -0.2], [[NONE, 0], [300, 0.03], [90, -0.02], [40, 0.05]]).map(([from, to, grade, bend]) => [...ground, from, to, grade, ...bend]).filter((c) => c[4] > c[5]),
      expected: (...asked) => {
        const [from, to, grade, radius, bank, known] = asked.slice(4);
        return columns(known).map((mu, i) => toldWay(ground, 2 - i, mu, from, to, grade, radius, bank));
      },
    },
    {
      formula: 'stopping_band', first: asksFriction(ground),
      over: some(8, [10, 50, 80, 130], [0.9, 2.5], [-0.06, 0, 0.05], [[NONE, 0], [300, 0.03]]).map(([v, t, grade, bend]) => [...ground, v, t, grade, ...bend]),
      expected: (...asked) => {
        const [v, t, grade, radius, bank, known] = asked.slice(4);
        return columns(known).map((mu, i) => {
          const braked = toldWay(ground, 2 - i, mu, v, 0, grade, radius, bank);
          return braked === NONE ? NONE : ms(v).times(D(t)).plus(braked);
        });
      },
    },
  ]),
];
