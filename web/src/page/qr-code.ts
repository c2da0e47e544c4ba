// A link as a code that a phone's camera reads (a QR code, ISO/IEC 18004): in the panel "Share", and on
// paper.
import qrcode from 'qrcode-generator';
import { say } from '../core/language';

// Sizes easily read from a screen or paper at arm's length: the stronger error correction if it is
// not too fine, otherwise the weaker one, a little finer.
const FINENESS = [['M', 81], ['L', 117]] as const;
const QUIET = 4; // modules of white round it, as the standard asks
const MODULE = 0.4; // mm on paper
const SVG = 'http://www.w3.org/2000/svg';

export const tooLong = () => say('This sheet holds too much for a code that a camera could read. Copy the link instead.');

// Black on white in any look, since cameras want it so. Nothing where the text is too long.
export function codeOf(text: string): SVGSVGElement | undefined {
  for (const [level, finest] of FINENESS) {
    const code = qrcode(0, level);
    code.addData(text);
    try {
      code.make();
    } catch {
      return undefined; // more than any code holds
    }
    if (code.getModuleCount() <= finest) return drawn(code);
  }
  return undefined;
}

function drawn(code: ReturnType<typeof qrcode>): SVGSVGElement {
  const count = code.getModuleCount();
  const size = count + 2 * QUIET;
  let path = '';
  for (let row = 0; row < count; row++) {
    for (let from = 0; from < count; from++) {
      let to = from;
      while (to < count && code.isDark(row, to)) to++;
      if (to > from) path += `M${from + QUIET} ${row + QUIET}h${to - from}v1h${from - to}z`;
      from = to;
    }
  }
  const svg = made('svg', { class: 'code', viewBox: `0 0 ${size} ${size}`, width: `${size * MODULE}mm`, role: 'img', 'aria-label': say('The link as a code for a camera'), 'shape-rendering': 'crispEdges' });
  svg.append(made('rect', { width: String(size), height: String(size), fill: '#fff' }), made('path', { d: path, fill: '#000' }));
  return svg as SVGSVGElement;
}

function made(name: string, attributes: Record<string, string>): SVGElement {
  const element = document.createElementNS(SVG, name);
  for (const [id, value] of Object.entries(attributes)) element.setAttribute(id, value);
  return element;
}
