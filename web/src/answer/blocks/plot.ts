// The picture of a chart, on a canvas. It is redrawn for new figures, another width or colour
// scheme, and in black for the printer.
import uPlot from 'uplot';
import type { Chart, Look } from './chart-parts';

// On paper the canvas is as large as this, and shrunk by the style sheet, so that its lines are sharp.
const PAPER = { width: 1000, height: 330, scale: 2.2 };

interface Ink {
  ink: string;
  accent: string;
  line: string;
  paper: string;
}

const BLACK: Ink = { ink: '#000', accent: '#000', line: '#bbb', paper: '#fff' };

const EXPANDED = 2; // a gap in one curve reaches as far as its own points, whatever points others have

class LinePlot extends HTMLElement {
  declare look: Look;
  #chart: Chart | undefined;
  #plot: uPlot | undefined;
  #printing = false;
  #soon = 0;
  #left: AbortController | undefined;
  readonly #size = new ResizeObserver(() => this.#draw());

  set chart(chart: Chart) {
    this.#chart = chart;
    if (this.isConnected) this.#drawSoon();
  }

  // The words come first: a slow phone shows them, and then draws the picture.
  #drawSoon(): void {
    cancelAnimationFrame(this.#soon);
    this.#soon = requestAnimationFrame(() => setTimeout(() => this.#draw()));
  }

  connectedCallback(): void {
    // The page may have set it before this class was here to take it.
    if (Object.hasOwn(this, 'chart')) {
      const { chart } = this as unknown as { chart: Chart };
      delete (this as { chart?: Chart }).chart;
      this.#chart = chart;
    }
    this.#left = new AbortController();
    const { signal } = this.#left;
    for (const query of ['(prefers-color-scheme: dark)', '(forced-colors: active)']) {
      matchMedia(query).addEventListener('change', () => this.#draw(), { signal });
    }
    const dressed = new MutationObserver(() => this.#draw());
    dressed.observe(document.documentElement, { attributeFilter: ['data-look', 'data-text', 'data-worn'] });
    signal.addEventListener('abort', () => dressed.disconnect());
    for (const event of ['beforeprint', 'afterprint']) {
      addEventListener(event, () => {
        this.#printing = event === 'beforeprint';
        this.#draw();
      }, { signal });
    }
    this.#size.observe(this);
  }

  disconnectedCallback(): void {
    this.#left?.abort();
    this.#size.disconnect();
    this.#plot?.destroy();
    this.#plot = undefined;
  }

  #draw(): void {
    const { width, height, scale } = this.#printing ? PAPER : { width: this.clientWidth, height: this.clientHeight, scale: 1 };
    this.#plot?.destroy();
    this.#plot = undefined;
    if (this.#chart && width > 0) this.#plot = draw(this, this.look, this.#chart, width, height, scale, this.#printing ? BLACK : inkOf(this));
  }
}

// In forced colours there is only one ink.
function inkOf(element: Element): Ink {
  const style = getComputedStyle(element);
  const forced = matchMedia('(forced-colors: active)').matches;
  const own = (name: string) => (forced ? style.color : style.getPropertyValue(name));
  return { ink: style.color, accent: own('--accent'), line: own('--line'), paper: getComputedStyle(document.body).backgroundColor };
}

function draw(place: HTMLElement, look: Look, chart: Chart, width: number, height: number, scale: number, { ink, accent, line, paper }: Ink): uPlot {
  const marks = look.placed(chart.marks);
  const { fontFamily, fontSize } = getComputedStyle(place);
  const size = Math.round(parseFloat(fontSize) * scale);
  const font = `${size}px ${fontFamily}`;

  const tables: (number | null)[][][] = [];
  const series: uPlot.Series[] = [{}];
  const bands: uPlot.Band[] = [];
  chart.series.forEach((one, i) => {
    const { role, x, y, low, high } = one;
    const known = x.flatMap((value, at) => (value === null ? [] : [at]));
    const column = (values: (number | null)[]) => known.map((at) => values[at] ?? null);
    const stroke = role === 'subject' ? accent : ink;
    tables.push([x, y, ...(low && high ? [low, high] : [])].map(column));
    series.push({ stroke, width: look.widthOf(one) * scale, dash: look.dashOf(i).map((length) => length * scale), points: { show: known.length < 2 } });
    if (low && high) {
      const edge: uPlot.Series = { stroke, width: scale / 2, points: { show: false } };
      bands.push({ series: [series.push(edge), series.push(edge) - 2], fill: faint(stroke) });
    }
  });

  const axis = (more: uPlot.Axis): uPlot.Axis => ({
    stroke: ink,
    font,
    gap: size / 2,
    grid: { stroke: line, width: scale },
    ticks: { show: false },
    values: (_, splits) => splits.map((value) => look.plain(value, 6)),
    ...more,
  });

  return new uPlot({
    width,
    height,
    padding: [size, size, 0, 0],
    cursor: { show: false },
    legend: { show: false },
    scales: {
      x: { time: false, range: (_, from, to) => reach([from, to, ...marks.map(({ x }) => x)], false) },
      y: { range: (_, from, to) => reach([from, to, ...marks.map(({ y }) => y)], true) },
    },
    axes: [
      axis({ space: size * 4, size: size * 2 }),
      axis({ space: size * 2.5, size: (_, labels) => size * (0.75 + 0.6 * Math.max(2, ...(labels ?? []).map(({ length }) => length))) }),
    ],
    series,
    bands,
    hooks: {
      draw: [(plot) => marks.forEach(({ x, y }, i) => {
        const { ctx, bbox } = plot;
        const [left, top] = [plot.valToPos(x, 'x', true), plot.valToPos(y, 'y', true)];
        const zoom = uPlot.pxRatio * scale;
        ctx.save();
        ctx.strokeStyle = ink;
        ctx.lineWidth = zoom;
        ctx.setLineDash([2 * zoom, 3 * zoom]);
        ctx.stroke(new Path2D(`M${bbox.left} ${top}H${left}V${bbox.top + bbox.height}`));
        ctx.setLineDash([]);
        ctx.translate(left, top);
        ctx.scale(zoom, zoom);
        ctx.lineWidth = 2.5;
        ctx.fillStyle = paper;
        const shape = new Path2D(look.shapeOf(i));
        ctx.fill(shape);
        ctx.stroke(shape);
        ctx.fillStyle = ink;
        ctx.fill(new Path2D('M0 -2A2 2 0 0 1 0 2A2 2 0 0 1 0 -2Z'));
        ctx.restore();
      })],
    },
  }, uPlot.join(tables as uPlot.AlignedData[], tables.map((table) => table.map(() => EXPANDED))), place);
}

// A scale holds the curves and the marks.
function reach(values: (number | null)[], pad: boolean): [number, number] {
  const known = values.filter((value) => value !== null);
  if (!known.length) return [0, 1];
  const [least, most] = [Math.min(...known), Math.max(...known)];
  return !pad && least < most ? [least, most] : uPlot.rangeNum(least, most, 0.1, true) as [number, number];
}

// A canvas returns any colour as #rrggbb, to which an opacity can be appended.
function faint(colour: string): string {
  const { fillStyle } = Object.assign(document.createElement('canvas').getContext('2d')!, { fillStyle: colour });
  return `${fillStyle}29`;
}

customElements.define('line-plot', LinePlot);
