// Set by the build: 'one-file' where the whole page is in one file.
interface ImportMeta {
  readonly env: { readonly MODE: string };
}

// The files that the build of the core lays into src/generated.
declare module '*/treadwater-first.mjs' {
  const create: (options: { wasmBinary: Uint8Array }) => Promise<{
    describe(): string;
    answer(sheet: string, input: string): string;
  }>;
  export default create;
}

declare module '*/treadwater.mjs' {
  export { default } from '*/treadwater-first.mjs';
}

declare module '*?url' {
  const url: string;
  export default url;
}

declare module '*.css';
