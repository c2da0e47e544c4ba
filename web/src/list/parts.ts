// What the panel that reads tables is handed by the page. It does not import it: what two chunks import
// would become a third one, to be waited for before the first answer.
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
