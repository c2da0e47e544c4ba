// The choices that stay a person's own from one visit to the next, kept on the device only.
// Storage may be full, forbidden or absent; then nothing is remembered, and nothing breaks.
import type { Input } from './contract';

const KEPT = ['units', 'place'];

export function recall(): Input {
  const kept: Input = {};
  try {
    for (const id of KEPT) {
      const value = localStorage.getItem(`treadwater.${id}`);
      if (value) kept[id] = value;
    }
  } catch { /* no storage here */ }
  return kept;
}

// Pixels a millimetre of this screen, as somebody found by holding a card to it.
export function recallScale(): number | undefined {
  try {
    const scale = Number(localStorage.getItem('treadwater.scale'));
    return scale >= 1 && scale <= 16 ? scale : undefined;
  } catch {
    return undefined;
  }
}

export function rememberScale(scale: number): void {
  try {
    localStorage.setItem('treadwater.scale', String(scale));
  } catch { /* no storage here */ }
}

export function remember(id: string, value: string): void {
  if (!KEPT.includes(id)) return;
  try {
    localStorage.setItem(`treadwater.${id}`, value);
  } catch { /* no storage here */ }
}
