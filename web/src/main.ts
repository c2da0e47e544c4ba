// The page starts here.
import { html, render } from 'lit/html.js';
import { loadEngine } from './core/engine';
import { preferred, speak } from './core/language';
import { embedded } from './embed/embedded';
import { App } from './page/app';
import { keeping, pageView } from './page/drawing';
import { followPlaceLinks } from './page/navigate';
import { keepOffline } from './page/offline';
import { offerPanels } from './page/panels';
import { openForPrint } from './page/print';

const root = document.getElementById('page')!;
const foot = document.getElementById('keeping')!;

followPlaceLinks();
openForPrint();
if (embedded) import('./embed/frame').then(({ followPageAround }) => followPageAround(), () => { /* it stays as high as it is */ });

const started = start();
offerPanels(started);
started.then(whole, (reason: Error) => {
  root.replaceChildren();
  render(html`<p class="notice" role="alert">${reason.message}</p>`, root);
});

async function start(): Promise<App> {
  await speak(preferred(location.hash));
  const app = new App(await loadEngine(), (now) => render(pageView(now), root));
  await breath(); // a slow phone does this work in several short steps
  root.replaceChildren();
  app.open();
  await breath();
  return app;
}

// After the first answer: all the sheets, and saving what is typed.
async function whole(app: App): Promise<void> {
  await app.widen();
  import('./page/paper').then(({ onPaper }) => onPaper(app), () => { /* paper has the form as the screen has it */ });
  if (!embedded) await import('./keep/draft').then(({ watch }) => watch(app), () => { /* what is typed is in the address */ });
}

function breath(): Promise<void> {
  return new Promise((next) => setTimeout(next));
}

if (!embedded) keepOffline((now) => render(keeping(now), foot));
