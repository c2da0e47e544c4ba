// What the core and the page say to each other. The core says, the page draws: nothing in this
// folder knows about tyres.

export interface Choice {
  value: string;
  label: string;
}

export interface Field {
  id: string;
  label: string;
  hint?: string;
  kind: 'text' | 'quantity' | 'choice' | 'number' | 'date' | 'list' | 'yes-no';
  required?: boolean;
  default?: string;
  example?: string;
  units?: string[];
  preferred?: Record<string, string>; // unit system → the unit a picker starts with
  choices?: Choice[];
  fields?: Field[]; // of a list
  row_names?: string[]; // of a list: there are these rows, and no more
  most?: number; // of a list: as many rows as are read
  also?: string[]; // what else its column is called in people's own tables
}

export type Given = string | { [field: string]: Given }[];
export type Input = { [field: string]: Given };

export interface Sheet {
  id: string;
  title: string;
  purpose: string;
  fields: Field[];
  example?: { title: string; input: Input };
  long?: boolean; // its answer may take a while: asked for beside the page
  elsewhere?: boolean; // known by name only, until the whole core is here
}

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
  languages?: Choice[]; // that the words can be had in
}

export type Level = 'fit' | 'care' | 'unfit' | 'note';

export interface Problem {
  field: string; // a row of a list: "list.0.field"
  code: string;
  text: string;
}

export interface Limit {
  id: string;
  label: string;
  text: string;
  governs: boolean;
  why: string;
  sources: string[];
}

export interface Figure {
  id: string;
  label: string;
  text: string;
  note?: string;
  sources: string[];
}

export interface Caution {
  id: string;
  level: Level;
  text: string;
  sources: string[];
}

export interface Source {
  title: string;
  clause?: string;
  year?: number | string;
  standing: string;
}

export interface Block {
  kind: string;
  id: string;
  title: string;
}

export interface Answer {
  sheet: string;
  ok: boolean;
  problems: Problem[];
  verdict?: { level: Level; text: string };
  hold_to?: { kmh: number; text: string; governed_by?: string; why?: string };
  limits: Limit[];
  figures: Figure[];
  cautions: Caution[];
  blocks: Block[];
  sources: Record<string, Source>;
  safety: string;
}
