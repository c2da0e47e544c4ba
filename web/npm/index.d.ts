import type { Answer, Description as Described, Example, Input, Sheet } from './contract.js';

export * from './contract.js';

/** The full core has every sheet, so each has its example. */
export interface Description extends Described {
  sheets: (Sheet & { example: Example })[];
}

export interface Core {
  /** In a language that was learnt; otherwise in English. */
  describe(language?: string): Description;
  /**
   * Keeps a catalogue (languages/fr.json, de.json, fi.json) under the name that `language` in an input
   * and describe() will use. False where it is no object of texts.
   */
  learn(language: string, catalogue: { [english: string]: string }): boolean;
  /** A long answer reports its progress, 0 to 1; the listener must not call the core. */
  answer(sheet: string, input: Input, listener?: (share: number) => void): Answer;
}

/** Loads the core; the bytes of treadwater.wasm are fetched from beside this file if none are given. */
export function load(wasmBinary?: Uint8Array): Promise<Core>;
