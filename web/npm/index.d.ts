export type Level = 'fit' | 'care' | 'unfit' | 'note';
export type Value = string | number | boolean | null;
/** A field's id to what a person would write ("33 psi"), or for a list to its rows. */
export type Input = { [field: string]: Value | { [field: string]: Value }[] };

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
  choices?: { value: string; label: string }[];
  fields?: Field[];
  /** Of a list: there are these rows, and no more. */
  row_names?: string[];
  /** Of a list: as many rows as are read. */
  most?: number;
  /** What else its column is called in people's own tables. */
  also?: string[];
}

export interface Source {
  title: string;
  clause: string;
  year: string;
  standing: 'published' | 'secondary' | 'memory' | 'common practice';
}

export interface Description {
  version: string;
  name: string;
  safety: string;
  /** long: an answer can take seconds; ask for it in a worker, or with a listener. */
  sheets: { id: string; title: string; purpose: string; long?: true; fields: Field[]; example: { title: string; input: Input } }[];
  sources: { [id: string]: Source };
}

export interface Answer {
  sheet: string;
  ok: boolean;
  problems: { field: string; code: string; text: string }[];
  verdict?: { level: Level; text: string };
  /** 0 km/h: do not drive. */
  hold_to?: { kmh: number; text: string; governed_by: string; why: string };
  limits: { id: string; label: string; kmh: number; low_kmh: number; high_kmh: number; text: string; governs: boolean; why: string; sources: string[] }[];
  figures: { id: string; label: string; value: number; unit: string; low?: number; high?: number; text: string; note: string; sources: string[] }[];
  cautions: { id: string; level: Level; text: string; sources: string[] }[];
  blocks: { kind: string; id: string; title: string; text: string; [more: string]: unknown }[];
  sources: { [id: string]: Source };
  safety: string;
}

export interface Core {
  /** In a language that was learnt; without one, or in another, in English. */
  describe(language?: string): Description;
  /**
   * Keeps a catalogue (languages/fr.json, de.json, fi.json) under the name that `language` in an input
   * and describe() will use. False where it is no object of texts.
   */
  learn(language: string, catalogue: { [english: string]: string }): boolean;
  /** A long answer tells on its way how much of it is done, 0 to 1; the listener must not ask again. */
  answer(sheet: string, input: Input, told?: (share: number) => void): Answer;
}

/** Loads the core; the bytes of treadwater.wasm are fetched from beside this file if none are given. */
export function load(wasmBinary?: Uint8Array): Promise<Core>;
