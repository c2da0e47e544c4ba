// The user's settings from one visit to the next, saved only on the device. Storage may be full,
// forbidden or absent; then nothing is remembered, and nothing breaks.
import type { Input } from './contract';

const KEPT = ['units', 'place'];

// The key of a setting; look.js, which runs before the page is drawn, reads some.
export function recallOne(id: string): string {
  try {
    return localStorage.getItem(`treadwater.${id}`) ?? '';
  } catch {
    return ''; // no storage here
  }
}

// Says whether it will be remembered. An empty value is forgotten.
export function rememberOne(id: string, value: string): boolean {
  try {
    if (value) localStorage.setItem(`treadwater.${id}`, value);
    else localStorage.removeItem(`treadwater.${id}`);
    return true;
  } catch {
    return false; // no storage here
  }
}

export function recall(): Input {
  const kept: Input = {};
  for (const id of KEPT) {
    const value = recallOne(id);
    if (value) kept[id] = value;
  }
  return kept;
}

export function remember(id: string, value: string): void {
  if (KEPT.includes(id)) rememberOne(id, value);
}

// Pixels per millimetre of this screen, found by holding a card to it.
export function recallScale(): number | undefined {
  const scale = Number(recallOne('scale'));
  return scale >= 1 && scale <= 16 ? scale : undefined;
}

export function rememberScale(scale: number): void {
  rememberOne('scale', String(scale));
}

// When something that can be resumed was last typed into a sheet. The text itself is in the
// database; this much is known at once, so that the offer is there on the first drawing.
export function recallDraft(sheet: string): string {
  const when = recallOne(`draft.${sheet}`);
  return Number.isNaN(Date.parse(when)) ? '' : when;
}

export function rememberDraft(sheet: string, when: string): void {
  rememberOne(`draft.${sheet}`, when);
}
