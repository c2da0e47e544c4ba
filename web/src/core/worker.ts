// The worker: a second copy of the full core, for sheets whose answers take long. One question at a
// time; to ask something else meanwhile, end this worker and start another.
import create from '../generated/treadwater.mjs';
import wholeUrl from '../generated/treadwater.wasm?url';
import type { Question, Reply } from './worker-messages';

const PAUSE = 150; // ms between progress reports: nobody reads faster

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
        reply({ kind: 'progress', share });
      });
      reply({ kind: 'answer', text });
    } catch {
      reply({ kind: 'failed' });
    }
  };
  reply({ kind: 'ready' });
} catch {
  reply({ kind: 'failed' });
}
