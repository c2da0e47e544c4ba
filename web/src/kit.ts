// What the parts that come later use of the page. It is handed to them, not imported by them: what two
// chunks import would become a third one, to be waited for before the first answer.
import { html, nothing, render } from 'lit/html.js';
import { live } from 'lit/directives/live.js';
import { folding } from './blocks/table';
import { copyButton } from './copy';
import { carriesUnit, mostRows, preferredUnit, rowName, rows, withItsUnit } from './state';
import { language, plural, say } from './words';

// Named one by one: a whole module as a value wants a helper, and that a chunk of its own.
const state = { carriesUnit, mostRows, preferredUnit, rowName, rows, withItsUnit };

export const kit = { html, nothing, render, live, folding, copyButton, state, say, plural, language };
export type Kit = typeof kit;
