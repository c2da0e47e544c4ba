// The two files that the build of the core lays into src/generated.
declare module '*/treadwater.mjs' {
  const create: (options: { wasmBinary: Uint8Array }) => Promise<{
    describe(): string;
    answer(sheet: string, input: string): string;
  }>;
  export default create;
}

declare module '*?url' {
  const url: string;
  export default url;
}

declare module '*.css';
