// What the parts that come later use of the page. It is handed to them, not imported by them: what two
// chunks import would become a third one, to be waited for before the first answer.
import { html, nothing, render } from 'lit/html.js';
import { live } from 'lit/directives/live.js';
import { folding } from '../answer/blocks/table';
import { copyButton } from '../answer/copy-button';
import { carriesUnit, mostRows, preferredUnit, rowName, rows, withItsUnit } from '../form/state';
import { language, say } from '../core/language';

// Named one by one: a whole module as a value wants a helper, and that a chunk of its own.
const state = { carriesUnit, mostRows, preferredUnit, rowName, rows, withItsUnit };

export const kit = { html, nothing, render, live, folding, copyButton, state, say, language };
export type Kit = typeof kit;
