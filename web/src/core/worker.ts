// Beside the page: the whole core once more, for the sheets whose answers take long. One question
// at a time; whoever wants to ask something else meanwhile ends this worker and starts another.
import create from '../generated/treadwater.mjs';
import wholeUrl from '../generated/treadwater.wasm?url';

export interface Question {
  sheet: string;
  input: string;
  language: string;
  catalogue: string; // empty where it is known already
}

export type Reply =
  | { kind: 'ready' }
  | { kind: 'share'; share: number } // how much of the work is done, 0 to 1
  | { kind: 'said'; text: string }
  | { kind: 'failed' };

const PAUSE = 150; // ms between two words on how far it has come: nobody reads faster

function reply(message: Reply): void {
  postMessage(message);
}

try {
  const response = await fetch(wholeUrl);
  if (!response.ok) throw new Error(`status ${response.status}`);
  const core = await create({ wasmBinary: new Uint8Array(await response.arrayBuffer()) });
  onmessage = ({ data: { sheet, input, language, catalogue } }: MessageEvent<Question>) => {
    let last = 0;
    try {
      if (catalogue) core.learn(language, catalogue);
      const text = core.answerTelling(sheet, input, (share) => {
        const now = Date.now();
        if (now - last < PAUSE) return;
        last = now;
        reply({ kind: 'share', share });
      });
      reply({ kind: 'said', text });
    } catch {
      reply({ kind: 'failed' });
    }
  };
  reply({ kind: 'ready' });
} catch {
  reply({ kind: 'failed' });
}
