// In a frame on somebody else's page: reports its height, and uses that page's colours if they are
// legible. Nothing else is taken from the host page: no figure, no words. What it sends goes
// through a canvas or a pattern, and only the result reaches a style.
import { recallOne } from '../core/remember';

type Colour = [red: number, green: number, blue: number];

const READABLE = 4.5; // WCAG's contrast of text
const SEEN = 3; // and of what is not text
const root = document.documentElement;

export function followPageAround(): void {
  addEventListener('message', ({ source, data }: MessageEvent) => {
    if (source === parent && data?.treadwater === 'theme') wear(data.theme);
  });
  new ResizeObserver(() => send({ treadwater: 'height', height: root.getBoundingClientRect().height })).observe(root);
  send({ treadwater: 'ready' });
}

// The host page may be anybody's: it gets a height, and nothing that was typed.
function send(message: object): void {
  parent.postMessage(message, '*');
}

// ---- colours and lengths of the page around

const style = document.styleSheets[0]!;
let worn = -1; // where in the style sheet the rule is

function wear(theme: unknown): void {
  const given = (id: string): string => {
    const value = typeof theme === 'object' && theme ? (theme as Record<string, unknown>)[id] : '';
    return typeof value === 'string' ? value : '';
  };
  if (worn >= 0) style.deleteRule(worn);
  worn = -1;
  const own = recallOne('look');
  if (own !== 'contrast') {
    const look = ['light', 'dark'].includes(given('look')) ? given('look') : own;
    document.dispatchEvent(new CustomEvent('dress', { detail: { look } }));
    const rules = [...colours(given), ...lengths(given)];
    if (rules.length) worn = style.insertRule(`@media screen { :root:root:root { ${rules.join(';')} } }`, style.cssRules.length);
  }
  root.dataset['worn'] = ''; // pictures are drawn anew
}

// If one is not legible on the other, ours stay.
function colours(given: (id: string) => string): string[] {
  const now = getComputedStyle(root);
  const ours = (id: string) => colour(now.getPropertyValue(`--${id}`).trim())!;
  let [paper, ink] = [colour(given('paper')) ?? ours('paper'), colour(given('ink')) ?? ours('ink')];
  if (contrast(paper, ink) < READABLE) [paper, ink] = [ours('paper'), ours('ink')];
  const changed = String([paper, ink]) !== String([ours('paper'), ours('ink')]);
  let accent = colour(given('accent'));
  if (!changed && !accent) return [];
  const asked = accent ?? ours('accent');
  accent = contrast(asked, paper) < READABLE ? (changed ? ink : ours('accent')) : asked;
  const wash = [mixed(accent, paper, 0.1), paper].find((one) => contrast(one, ink) >= READABLE && contrast(one, accent) >= READABLE) ?? paper;
  const onAccent: Colour = contrast(accent, [255, 255, 255]) >= READABLE ? [255, 255, 255] : [0, 0, 0];
  const found: Record<string, Colour> = { accent, wash, 'on-accent': onAccent };
  if (changed) {
    const readable = (part: number, least: number) => [mixed(ink, paper, part), ink].find((one) => contrast(one, paper) >= least && contrast(one, wash) >= least) ?? ink;
    Object.assign(found, { paper, ink, field: paper, soft: readable(0.75, READABLE), edge: readable(0.55, SEEN), line: mixed(ink, paper, 0.2) });
  }
  return Object.entries(found).map(([id, value]) => `--${id}: ${hex(value)}`);
}

// Corners, and the text size if the reader has not chosen one.
function lengths(given: (id: string) => string): string[] {
  const [corner, text] = [length(given('corner'), 0, 24), length(given('text'), 14, 24)];
  return [
    ...(corner === undefined ? [] : [`--corner: ${corner}px`]),
    ...(text === undefined || root.dataset['text'] ? [] : [`font-size: ${text}px`]),
  ];
}

function length(value: string, least: number, most: number): number | undefined {
  const [, number, unit] = /^(\d{1,3}(?:\.\d{1,3})?)(px|rem)$/.exec(value) ?? [];
  const px = Number(number) * (unit === 'rem' ? 16 : 1);
  return px >= least && px <= most ? px : undefined;
}

// A canvas gives back any opaque colour as #rrggbb, and keeps the one it has where it is given none.
function colour(value: string): Colour | undefined {
  const canvas = document.createElement('canvas').getContext('2d');
  if (!canvas || !value) return undefined;
  const [one, other] = ['#000', '#fff'].map((before) => {
    canvas.fillStyle = before;
    canvas.fillStyle = value;
    return canvas.fillStyle;
  });
  if (one !== other || !/^#[\da-f]{6}$/.test(one!)) return undefined;
  return [1, 3, 5].map((at) => parseInt(one!.slice(at, at + 2), 16)) as Colour;
}

function hex(one: Colour): string {
  return `#${one.map((part) => part.toString(16).padStart(2, '0')).join('')}`;
}

function mixed(one: Colour, other: Colour, part: number): Colour {
  return one.map((value, i) => Math.round(value * part + other[i]! * (1 - part))) as Colour;
}

// As WCAG 2 has it.
function contrast(one: Colour, other: Colour): number {
  const [dark, light] = [one, other].map((each) => {
    const [red, green, blue] = each.map((part) => (part <= 10 ? part / 3294.6 : ((part / 255 + 0.055) / 1.055) ** 2.4)) as Colour;
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  }).sort((a, b) => a - b);
  return (light! + 0.05) / (dark! + 0.05);
}
