import { html, render } from 'lit/html.js';
import { App } from './page/app';
import { loadFirst, loadWhole } from './core/engine';
import { framed } from './embed/embedded';
import { followPlaceLinks } from './page/navigate';
import { keepOffline } from './page/offline';
import { keeping } from './page/drawing';
import { openForPrint } from './page/print';
import { offerTools } from './page/panels';
import { preferred, speak } from './core/language';

const root = document.getElementById('page')!;
const foot = document.getElementById('keeping')!;

followPlaceLinks();
openForPrint();
if (framed) import('./embed/frame').then(({ settle }) => settle(), () => { /* it stays as high as it is */ });

const started = start();
offerTools(started);
started.then(whole, (reason: Error) => {
  root.replaceChildren();
  render(html`<p class="notice" role="alert">${reason.message}</p>`, root);
});

async function start(): Promise<App> {
  await speak(preferred(location.hash));
  const app = new App(await loadFirst(), root);
  await breath(); // a slow phone does this work in several short steps
  root.replaceChildren();
  app.open();
  await breath();
  return app;
}

// After the first answer: all the sheets, and putting aside what is typed.
async function whole(app: App): Promise<void> {
  await loadWhole().then((engine) => app.widen(engine), () => app.stayNarrow());
  import('./page/paper').then(({ onPaper }) => onPaper(app), () => { /* paper has the form as the screen has it */ });
  if (!framed) await import('./keep/draft').then(({ watch }) => watch(app), () => { /* what is typed is in the address */ });
}

function breath(): Promise<void> {
  return new Promise((next) => setTimeout(next));
}

if (!framed) keepOffline((now) => render(keeping(now), foot));
