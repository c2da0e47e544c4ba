// The panel "Share": the link to the filled-in sheet, as a QR code for another phone's camera, and
// the two lines that put the sheet on a page of one's own.
import { html, nothing, render } from 'lit/html.js';
import { copy, copyButton } from '../answer/copy-button';
import { say } from '../core/language';
import type { App } from './app';
import { codeOf, tooLong } from './qr-code';

let draw = () => {};
const follow = () => draw(); // the link is always to what is in the form

export async function show(app: App, root: HTMLElement, close: () => void): Promise<void> {
  app.watchers.add(follow);
  draw = () => { if (root.isConnected) render(panel(app, close), root); };
  draw();
}

function panel(app: App, close: () => void) {
  const link = app.link();
  const hosted = location.protocol !== 'file:';
  return html`
    <section class="panel" aria-labelledby="panel-heading">
      <h2 id="panel-heading" tabindex="-1">${say('Share')}</h2>
      <p class="hint">${say('The link holds the whole sheet as it is filled in now. Whoever has it can open it, and nobody else.')}</p>
      <div class="actions">
        ${'share' in navigator ? copyButton(say('Send the link'), () => app.link(), send) : nothing}
        ${copyButton(say('Copy the link'), () => app.link())}
      </div>
      ${hosted ? code(link) : html`<p>${say('This page was opened from a file, so its link opens on this device only.')}</p>`}
      ${hosted ? embedding(app) : nothing}
      <div class="actions"><button type="button" @click=${close}>${say('Close')}</button></div>
    </section>`;
}

function code(link: string) {
  const drawn = codeOf(link);
  if (!drawn) return html`<p>${tooLong()}</p>`;
  return html`
    <figure class="link-code">
      ${drawn}
      <figcaption>${say('Another phone\'s camera opens the sheet from here. The page must be reachable for that phone, or kept on it.')}</figcaption>
    </figure>`;
}

function embedding(app: App) {
  return html`
    <details>
      <summary>${say('On a page of your own')}</summary>
      <p>${say('These two lines show this sheet, filled in like this, on any page of your site.')}</p>
      <pre class="lines">${lines(app)}</pre>
      ${copyButton(say('Copy the lines'), () => lines(app))}
    </details>`;
}

function lines(app: App): string {
  const [, sheet = '', query = ''] = /#([^?]*)\??(.*)$/s.exec(app.link()) ?? [];
  const preset = app.form.example ? '' : ` preset="${query.replaceAll('&', '&amp;').replaceAll('"', '&quot;')}"`;
  return `<script src="${new URL('embed.js', location.href)}" async></script>\n<treadwater-sheet sheet="${sheet}"${preset}></treadwater-sheet>`;
}

// By the device's own share function; if that fails, the link is copied.
async function send(button: HTMLElement, url: string): Promise<void> {
  try {
    await navigator.share({ url });
  } catch (reason) {
    if ((reason as Error).name !== 'AbortError') await copy(button, url); // not the user's own "no"
  }
}
