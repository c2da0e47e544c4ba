// What the page passes to the panel that reads tables. The panel does not import it: what two
// chunks import becomes a third, which the first answer would wait for.
import type { html, nothing } from 'lit/html.js';
import type { live } from 'lit/directives/live.js';
import type { plural, say } from '../core/language';
import type { carriesUnit, preferredUnit, withItsUnit } from '../form/units';
import type { mostRows, rowName, rows } from '../form/values';

export interface ListParts {
  html: typeof html;
  nothing: typeof nothing;
  live: typeof live;
  folding(label: string, columns: string[], rows: string[][]): unknown;
  say: typeof say;
  plural: typeof plural;
  carriesUnit: typeof carriesUnit;
  preferredUnit: typeof preferredUnit;
  withItsUnit: typeof withItsUnit;
  mostRows: typeof mostRows;
  rowName: typeof rowName;
  rows: typeof rows;
}
