// The band of the aquaplaning onset and its map in plain JavaScript, with nothing clever: the same
// draws, the same models, each power calculated where it is needed, then sorted. And the clock for
// both.

const kmhPerMph = 1.609344;
const kpaPerPsi = 6.894757293168361;
const line = (x, x0, y0, x1, y1) => y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);

function filmOnset(kpa, tread, film, texture) {
  const wd = (film / 25.4) ** 0.06;
  const a1 = 10.409 / wd + 3.507;
  const a2 = (28.952 / wd - 7.817) * (texture / 25.4) ** 0.14;
  return kmhPerMph * 10 ** 0.04 * (kpa / kpaPerPsi) ** 0.3 * (tread / 0.79375 + 1) ** 0.06 * Math.max(a1, a2);
}

function clearing(tread, bare) {
  if (tread < 1.6) return line(tread, 0, bare, 1.6, 0.55);
  if (tread < 3) return line(tread, 1.6, 0.55, 3, 0.8);
  return tread < 8 ? line(tread, 3, 0.8, 8, 1) : 1;
}

const worn = (bare, tread, film) => 1 - (1 - clearing(tread, bare)) * Math.min(1, (film / 8) ** (2 / 3));

const byLine = 0.55 - (1.6 * (0.8 - 0.55)) / (3 - 1.6);
const bares = [byLine, byLine, (byLine + 0.55) / 2, 0.55];

// Each law: the speed of a new tyre from 3 mm of water up, and how far it rises below.
const byGrooves = (tread, water) => ((3 - water) / (3 - Math.min(1.8, 0.145 * tread))) ** 2;
const laws = [
  {
    top: 144.5,
    fresh: (kpa, film, { texture, width }) =>
      filmOnset(24 * kpaPerPsi, 3 * 0.79375, film, Math.min(texture, 0.7)) * Math.sqrt(Math.min(1, kpa / 220)) *
      Math.min(1, Math.sqrt(205 / width)) * Math.sqrt(Math.min(1, 10 / film)),
    rise: (tread, water) => Math.min(1, Math.max(0, 1 - (water - Math.min(1.35, Math.max(0, 0.18 * (tread - 1.6)))) / 1.65)) ** 1.5,
  },
  {
    top: 180,
    fresh: (kpa, film, { texture, width }) =>
      filmOnset(Math.min(kpa, 280), 8, film, texture) * Math.sqrt(205 / width) * Math.min(1, 10 / film) ** 0.25,
    rise: byGrooves,
  },
  {
    top: 180,
    fresh: (kpa, film, { width }) =>
      kmhPerMph * 10.35 * Math.sqrt(Math.min(kpa, 250) / kpaPerPsi) * Math.max(1, Math.sqrt(205 / width)) *
      Math.min(1, 10 / film) ** 0.25,
    rise: byGrooves,
  },
];
function onset(law, bare, kpa, tread, water, tyre, spread) {
  const film = Math.max(3, water);
  const x = law.fresh(kpa, film, tyre) * worn(bare, tread, film) * spread;
  if (water >= 3) return x;
  const y = law.rise(tread, water);
  return y >= 1 || x >= law.top ? Infinity : law.top - (law.top - x) * (1 - y);
}
const drawsOfACase = 1680;

// SplitMix64; a byte each for pressure, film, tread and the spread between tyres.
export function errors() {
  const mask = (1n << 64n) - 1n;
  let state = 20260101n;
  return Array.from({ length: 12 * drawsOfACase }, () => {
    state = (state + 0x9e3779b97f4a7c15n) & mask;
    let z = state;
    z = ((z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n) & mask;
    z = ((z ^ (z >> 27n)) * 0x94d049bb133111ebn) & mask;
    z ^= z >> 31n;
    const error = (byte) => (2 * Number((z >> (8n * byte)) & 255n) + 1 - 256) / 256;
    return { pressure: error(0n), film: error(1n), tread: error(2n), spread: error(3n) };
  });
}

export function plainBand(tyre, draws) {
  const speeds = new Float64Array(draws.length);
  let next = 0;
  for (const law of laws)
    for (const bare of bares)
      for (let i = 0; i < drawsOfACase; ++i) {
        const error = draws[next];
        const kpa = Math.max(10, tyre.kpa + 10 * error.pressure);
        const water = tyre.film + Math.min(1, tyre.film / 2) * error.film;
        const tread = Math.max(0, tyre.tread + 0.2 * error.tread);
        speeds[next++] = onset(law, bare, kpa, tread, water, tyre, 1 + 0.11 * error.spread);
      }
  speeds.sort();
  const at = (share) => speeds[Math.floor(share * (speeds.length - 1))];
  return { low: at(0.05), central: onset(laws[1], byLine, tyre.kpa, tyre.tread, tyre.film, tyre, 1), high: at(0.95) };
}

export function plainMap(tyre, side) {
  let sum = 0;
  for (let i = 0; i < side; ++i)
    for (let j = 0; j < side; ++j) {
      const film = 0.5 + (9.5 * j) / (side - 1);
      // Where nothing floats there is nothing to add.
      const kmh = onset(laws[1], byLine, tyre.kpa, (8 * i) / (side - 1), film, tyre, 1);
      if (kmh < Infinity) sum += kmh;
    }
  return sum;
}

// The least of so many times, ms.
export function best(rounds, work) {
  let least = Infinity;
  for (let i = 0; i < rounds; ++i) {
    const start = performance.now();
    work();
    least = Math.min(least, performance.now() - start);
  }
  return least;
}
