// What the page and the worker send each other.

export interface Question {
  sheet: string;
  input: string;
  language: string;
  catalogue: string; // empty where it is known already
}

export type Reply =
  | { kind: 'ready' }
  | { kind: 'progress'; share: number } // of the work that is done, 0 to 1
  | { kind: 'answer'; text: string }
  | { kind: 'failed' };
