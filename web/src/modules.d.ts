// Set by the build: 'one-file' if the whole page is in one file.
interface ImportMeta {
  readonly env: { readonly MODE: string };
}

// The files that the core's build puts into src/generated.
declare module '*/treadwater-first.mjs' {
  export interface First {
    describe(): string;
    describeIn(language: string): string;
    learn(language: string, catalogue: string): boolean;
    answer(sheet: string, input: string): string;
  }
  const create: (options: { wasmBinary: Uint8Array }) => Promise<First>;
  export default create;
}

declare module '*/treadwater.mjs' {
  import type { First } from '*/treadwater-first.mjs';
  const create: (options: { wasmBinary: Uint8Array }) => Promise<First & {
    answerTelling(sheet: string, input: string, listener: (share: number) => void): string;
  }>;
  export default create;
}

declare module '*?url' {
  const url: string;
  export default url;
}

declare module '*.css';

declare module '*/languages/*.json' {
  const catalogue: Record<string, string>;
  export default catalogue;
}
