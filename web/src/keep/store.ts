// What is saved on this device, in the browser's own database. Each write is one transaction: after
// a kill at any moment there is the old or the new, never half of it.
import { openDB } from 'idb';
import type { DBSchema, IDBPDatabase } from 'idb';
import { say } from '../core/language';
import { upgraded } from './record';
import type { Draft, Kept, KeptAsLink } from './record';

interface Shelves extends DBSchema {
  kept: { key: string; value: Kept };
  drafts: { key: string; value: Draft };
}

const VERSION = 2;
const DRAFTS_OF_A_SHEET = 3;

// Shown to the user as it is.
export class Refusal extends Error {}

let database: Promise<IDBPDatabase<Shelves>> | undefined;
const listeners = new Set<(elsewhere: boolean) => void>();
const others = 'BroadcastChannel' in globalThis ? new BroadcastChannel('treadwater-kept') : undefined;
others?.addEventListener('message', () => listeners.forEach((listener) => listener(true)));

// Calls back whenever something was saved or deleted, here or in another tab.
export function onChange(listener: (elsewhere: boolean) => void): void {
  listeners.add(listener);
}

export async function all(): Promise<{ kept: Kept[]; drafts: Draft[] }> {
  return attempt(async (shelves) => {
    const tx = shelves.transaction(['kept', 'drafts']);
    const [kept, drafts] = await Promise.all([tx.objectStore('kept').getAll(), tx.objectStore('drafts').getAll()]);
    return { kept: kept.sort(newestFirst), drafts: drafts.sort(newestFirst) };
  });
}

export async function keep(...records: Kept[]): Promise<void> {
  await attempt(async (shelves) => {
    const tx = shelves.transaction('kept', 'readwrite', { durability: 'strict' });
    await Promise.all([...records.map((record) => tx.store.put(record)), tx.done]);
  });
  changed();
}

export async function remove(shelf: 'kept' | 'drafts', id: string): Promise<void> {
  await attempt((shelves) => shelves.delete(shelf, id));
  changed();
}

// The last few of each sheet are kept; the newest is offered on return.
export async function keepDraft(draft: Draft): Promise<void> {
  await attempt(async (shelves) => {
    const tx = shelves.transaction('drafts', 'readwrite');
    const older = (await tx.store.getAll()).filter(({ id, sheet }) => sheet === draft.sheet && id !== draft.id).sort(newestFirst);
    const out = older.slice(DRAFTS_OF_A_SHEET - 1).map(({ id }) => tx.store.delete(id));
    await Promise.all([...out, tx.store.put(draft), tx.done]);
  });
  changed();
}

function newestFirst(one: Draft, other: Draft): number {
  return one.changed < other.changed ? 1 : -1;
}

function changed(): void {
  listeners.forEach((listener) => listener(false));
  others?.postMessage('changed');
}

// ---- the database

async function attempt<T>(work: (shelves: IDBPDatabase<Shelves>) => Promise<T>): Promise<T> {
  try {
    database ??= open();
    return await work(await database);
  } catch (reason) {
    if (!(reason instanceof DOMException && reason.name === 'QuotaExceededError')) forget();
    throw new Refusal(sentence(reason), { cause: reason });
  }
}

function forget(): void {
  database?.then((shelves) => shelves.close(), () => { /* it never opened */ });
  database = undefined;
}

function open(): Promise<IDBPDatabase<Shelves>> {
  return new Promise((resolve, reject) => {
    openDB<Shelves>('treadwater', VERSION, {
      async upgrade(shelves, from, _to, tx) {
        if (from < 1) shelves.createObjectStore('kept', { keyPath: 'id' });
        if (from < 2) shelves.createObjectStore('drafts', { keyPath: 'id' });
        if (from === 1) {
          const kept = tx.objectStore('kept');
          for (const record of await kept.getAll()) await kept.put(upgraded(record as unknown as KeptAsLink));
        }
      },
      blocked: () => reject(new Refusal(say('Another tab still holds an older version of this page. Close it, and try again.'))),
      blocking: forget, // a newer version wants to upgrade the database: let it
      terminated: forget,
    }).then(resolve, reject);
  });
}

function sentence(reason: unknown): string {
  if (reason instanceof Refusal) return reason.message;
  switch (reason instanceof DOMException ? reason.name : '') {
    case 'QuotaExceededError':
      return say('There is no room left on this device, so this was not kept. All that was kept before is still there. Make room, or save the form as a file.');
    case 'VersionError':
      return say('What is kept here was put away by a newer version of this page, and is safe. Load the page again while there is a connection to get at it.');
    default:
      return say('This browser keeps nothing for this page, as in a private window or when its storage is shut. Save the form as a file, or copy its link.');
  }
}
