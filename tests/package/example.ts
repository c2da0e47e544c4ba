// Only compiled: the types that the npm-shaped folder comes with must fit this use.
import { load, type Answer, type Core, type Field, type Input } from 'treadwater';

const core: Core = await load();
const answer: Answer = core.answer('tyre-check', { size: '205/55 R16 91V', load: 430, water: null });
const kmh: number | undefined = answer.hold_to?.kmh;
core.answer('stage-tyres', {}, (share: number) => console.log(share));
const [first] = core.describe('fr').sheets;
const input: Input = { ...first?.example.input, corners: [{ load: '430 kg', tread: null }] };
const fields: Field[] | undefined = first?.fields;
// @ts-expect-error a sheet is named by its id, not by a number
core.answer(1, {});
export { fields, input, kmh };
