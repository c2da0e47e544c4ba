// The types of the core's input and output: describe() returns a Description, answer() takes an
// Input and returns an Answer. Other people's programs get this same file, beside
// web/npm/index.d.ts.

export type Value = string | number | boolean | null;

/** A field's id to what a person would write ("33 psi"), or for a list to its rows. */
export type Input = { [field: string]: Value | Input[] };

// ---- describe()

export interface Choice {
  value: string;
  label: string;
}

export interface Field {
  id: string;
  label: string;
  hint: string;
  kind: 'text' | 'quantity' | 'choice' | 'number' | 'date' | 'list' | 'yes-no';
  required: boolean;
  default: string;
  example: string;
  dimension?: string;
  min?: string;
  max?: string;
  units?: string[];
  /** Unit system to the unit that a picker starts with. */
  preferred?: Record<string, string>;
  choices?: Choice[];
  /** Of a list. */
  fields?: Field[];
  /** Of a list: there are these rows, and no more. */
  row_names?: string[];
  /** Of a list: as many rows as are read. */
  most?: number;
  /** What else its column is called in people's own tables. */
  also?: string[];
}

export interface Example {
  title: string;
  input: Input;
}

export interface Sheet {
  id: string;
  title: string;
  purpose: string;
  fields: Field[];
  example?: Example;
  /** An answer can take seconds; ask for it in a worker, or with a listener. */
  long?: boolean;
  /** Known by name only: the first visit's module has no more of it. */
  elsewhere?: boolean;
}

/** A way in: a sheet, and what is filled in of it. */
export interface Way {
  id: string;
  title: string;
  text: string;
  sheet: string;
  input: Input;
}

export interface Description {
  version: string;
  name: string;
  safety: string;
  ways: Way[];
  sheets: Sheet[];
  sources: Record<string, Source>;
}

// ---- answer()

export type Level = 'fit' | 'care' | 'unfit' | 'note';

export interface Problem {
  /** In a row of a list: "list.0.field". */
  field: string;
  code: string;
  text: string;
}

export interface Verdict {
  level: Level;
  text: string;
}

export interface HoldTo {
  /** 0: do not drive. */
  kmh: number;
  text: string;
  governed_by: string;
  why: string;
}

/** Instead of a maximum speed: nothing limits it below the road's own limit. */
export interface NoLimit {
  text: string;
  own_kmh?: number;
  own_text?: string;
}

export interface Limit {
  id: string;
  label: string;
  kmh: number;
  low_kmh: number;
  high_kmh: number;
  text: string;
  governs: boolean;
  why: string;
  sources: string[];
}

export interface Figure {
  id: string;
  label: string;
  value: number;
  unit: string;
  low?: number;
  high?: number;
  text: string;
  note: string;
  sources: string[];
}

export interface Caution {
  id: string;
  level: Level;
  text: string;
  sources: string[];
}

export interface Block {
  kind: string;
  id: string;
  title: string;
  text: string;
  [more: string]: unknown;
}

export interface Source {
  title: string;
  clause: string;
  year: string;
  /** "published", "secondary", "memory" or "common practice", in the language asked for. */
  standing: string;
}

export interface Answer {
  sheet: string;
  ok: boolean;
  problems: Problem[];
  verdict?: Verdict;
  hold_to?: HoldTo;
  no_limit?: NoLimit;
  limits: Limit[];
  figures: Figure[];
  cautions: Caution[];
  blocks: Block[];
  sources: Record<string, Source>;
  safety: string;
}
