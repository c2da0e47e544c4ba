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

export function remember(id: string, value: string): void {
  if (!KEPT.includes(id)) return;
  try {
    localStorage.setItem(`treadwater.${id}`, value);
  } catch { /* no storage here */ }
}
