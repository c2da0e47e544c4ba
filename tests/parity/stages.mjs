// Events for the sheet `stage-tyres`: every attitude, halts and none, rules, worn sets, water, cars, and what will not do.
export function stageInputs() {
  const stage = { length: '8 km', dry: '50', damp: '20', wet: '20', standing: '10', air: '8 °C', halt: 'service' };
  const base = {
    stages: [stage, { ...stage, length: '12 km', halt: 'none' }, { ...stage, length: '5 miles', water: '4 mm' }],
    sets: [{ kind: 'soft', count: '2' }, { kind: 'cut-slick' }, { kind: 'wet', tread: '6 mm' }, { kind: 'all-weather' }],
    today: '2026-11-25',
  };
  const every = (change) => base.stages.map((one) => ({ ...one, ...change }));
  const changes = [
    {}, { attitude: 'steady' }, { attitude: 'safe' }, { units: 'uk' }, { units: 'us', attitude: 'steady' },
    { persistence: '0' }, { persistence: '100', drive: 'all' }, { most_sets: '1' }, { most_sets: '0' }, { most_sets: '1.5' },
    { stages: every({ halt: 'none' }) }, { stages: every({ halt: 'regroup' }) }, { stages: every({ standing: '0', dry: '60', water: '9 mm' }) },
    { stages: every({ water: '120 mm' }) }, { stages: every({ gravel: '60', roughness: 'broken' }), sets: [{ kind: 'gravel-soft', life: '60 km' }, { kind: 'all-weather' }] },
    { stages: every({ dry: '0', damp: '0', wet: '0', standing: '0', snow: '70', ice: '30', air: '-12 °C' }), sets: [{ kind: 'winter' }, { kind: 'studded' }] },
    { stages: every({ air: '35 °C', abrasion: '1.7' }) }, { stages: every({ dry: '', damp: '', wet: '', standing: '' }) },
    { stages: Array.from({ length: 12 }, (_, i) => ({ ...stage, length: '3 km', halt: i % 3 === 2 ? 'tyre_zone' : 'none' })), sets: ['soft', 'club', 'wet', 'all-weather'].map((kind) => ({ kind })) },
    { sets: [{ kind: 'slick' }] }, { sets: [{ kind: 'slick', used: '95' }, { kind: 'club' }] }, { sets: [] }, { sets: [{ count: '1' }] },
    { sets: [{ kind: 'soft', life: '80 km', name: 'A' }, { kind: 'soft', name: '#', slower_dry: '3', coolest: '9 °C' }, { kind: 'wet', hottest: '-90 °C' }] },
    { sets: [{ kind: 'soft' }, { kind: 'soft', life: '80 km', coolest: '30 °C' }] },
    { moulded_only: 'yes' }, { grooves: '20' }, { no_studs: 'yes', road_sections: 'yes' }, { least_tread: '3 mm' },
    { cars: [{ name: 'One', size: '185/60 R14', load: '290 kg', pressure: '1.9 bar' }, { size: '165/70 R13', load: '460 kg', pressure: '1.4 bar' }, { load: '300 kg' }, {}] },
    { cars: [{ pressure: '1.2 bar' }] }, { cars: [{ size: 'banana' }] },
  ];
  return changes.map((change) => ({ sheet: 'stage-tyres', input: { ...base, ...change } }));
}
