// The page's own words, in the reader's language. Every sentence is in the source in English, in
// say('...') or plural('...', '...'), with a # for each gap; the core's sentences are in the same
// catalogues, one for each language, loaded when needed and made from the PO files in
// web/languages.
import { recallOne, rememberOne } from './remember';

type Catalogue = Record<string, string>;

export const LANGUAGES: Record<string, string> = { en: 'English', fr: 'Français', de: 'Deutsch', fi: 'Suomi' };

const CATALOGUES: Record<string, () => Promise<{ default: Catalogue }>> = {
  fr: () => import('../generated/languages/fr.json'),
  de: () => import('../generated/languages/de.json'),
  fi: () => import('../generated/languages/fi.json'),
};

let now = 'en';
let asked = '';
let catalogue: Catalogue = {};

export function language(): string {
  return now;
}

// For the core, which keeps its own copy.
export function catalogueText(): string {
  return now === 'en' ? '' : JSON.stringify(catalogue);
}

// The translation of an English sentence, with its gaps filled. A gap is a #, or #1 to #9 if a
// language puts them in another order.
export function say(english: string, ...values: (string | number)[]): string {
  let next = 0;
  return (catalogue[english] ?? english).replace(/#([1-9]?)/g, (_, place: string) => {
    const at = catalogue[english] && place ? Number(place) - 1 : next;
    next++;
    return String(values[at] ?? '') + (catalogue[english] ? '' : place);
  });
}

// A sentence about n things, in the language's form for that count. The values fill its gaps; if
// there are none, n does.
export function plural(one: string, other: string, n: number, ...values: (string | number)[]): string {
  const known = one in catalogue ? now : 'en';
  return say(new Intl.PluralRules(known).select(n) === 'one' ? one : other, ...(values.length ? values : [n]));
}

export type Say = typeof say;
export type Plural = typeof plural;

// With the language's decimal sign: the one between the digits of its 0.5.
export function decimals(number: string): string {
  return number.replace('.', say('0.5').slice(1, -1));
}

// The language that the link asked for, which stays in the address until another is chosen.
export function linked(): string {
  return asked;
}

function known(tag: string | null | undefined): string {
  return tag && Object.hasOwn(LANGUAGES, tag) ? tag : '';
}

// What a link asks for, which then stays in the address.
export function askedBy(fragment: string): string {
  asked = known(new URLSearchParams(fragment.replace(/^[^?]*/, '')).get('page.language')) || asked;
  return asked;
}

// What the link asks for, else what the person chose here, else the first of the browser's languages
// that is known.
export function preferred(fragment: string): string {
  const own = navigator.languages.map((tag) => known(tag.slice(0, 2).toLowerCase())).find(Boolean);
  return askedBy(fragment) || known(recallOne('language')) || own || 'en';
}

export function choose(wanted: string): void {
  asked = '';
  rememberOne('language', wanted);
}

// Without a connection a catalogue may not load: then the page keeps the language it has.
export async function speak(wanted: string): Promise<boolean> {
  try {
    catalogue = wanted === 'en' ? {} : (await CATALOGUES[wanted]!()).default;
  } catch {
    return false;
  }
  now = wanted;
  document.documentElement.lang = wanted;
  for (const element of document.querySelectorAll<HTMLElement>('[data-say]')) {
    element.dataset['say'] ||= element.textContent ?? '';
    element.textContent = say(element.dataset['say']!);
  }
  return true;
}
