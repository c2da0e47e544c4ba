// Roads for the sheet `stopping`: every kind of ground, wetness and tyre, bends, grades, and what will not do.
export function stoppingInputs() {
  const base = { speed: '80 km/h', tread: '3 mm', today: '2026-11-25' };
  const changes = [
    {}, { wetness: 'damp' }, { wetness: 'wet', units: 'uk', seen: '70 m' }, { wetness: 'standing', units: 'us', seen: '200 ft' },
    { water: '5 mm', pressure: '2,3 bar' }, { water: '250 mm' }, { surface: 'smooth', water: '1 mm', tread: '1.6 mm' },
    { surface: 'gravel-loose', tyre_kind: 'gravel', water: '30 mm', radius: '60 m', bank: '-4' },
    { surface: 'ice', tyre_kind: 'studded', grade: '-4', seen: '150 m' }, { surface: 'ice', grade: '-9' },
    { surface: 'snow', tyre_kind: 'winter', grade: '8', obstacle: '90 m' }, { surface: 'grass', water: '2 mm' },
    { tyre_kind: 'slick', tread_heat: '110 °C', radius: '45 m', obstacle: '60 m' }, { tyre_kind: 'slick', wetness: 'wet' },
    { tyre_kind: 'cut-slick', rubber: 'soft-stage', tread_heat: '20 °C', wetness: 'wet' }, { rubber: 'natural', tread_heat: '140 °C' },
    { chord: '20 m', sagitta: '1.2 m', seen: '50 m', wetness: 'wet' }, { chord: '20 m' }, { seen: '20 km', radius: '20 km' },
    { speed: '240 mph', surface: 'smooth', wetness: 'wet' }, { speed: '1 km/h', seen: '0.1 m' }, { reaction: '0.1 s', obstacle: '30 m' },
    { heat: '20 °C' }, { speed: '' }, { speed: '500 km/h' }, { grade: 'steep' }, { reaction: '5 m' }, { surface: 'moon' },
  ];
  return changes.map((change) => ({ sheet: 'stopping', input: { ...base, ...change } }));
}
