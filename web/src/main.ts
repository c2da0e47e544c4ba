import { html, render } from 'lit/html.js';
import { App } from './app';
import { loadFirst, loadWhole } from './engine';
import { followPlaceLinks } from './go';
import { keepOffline } from './offline';
import { keeping } from './page';
import { openForPrint } from './print';

const root = document.getElementById('page')!;
const foot = document.getElementById('keeping')!;

followPlaceLinks();
openForPrint();

try {
  const app = new App(await loadFirst(), root);
  await breath(); // a slow phone does this work in several short steps
  root.replaceChildren();
  app.open();
  await breath();
  loadWhole().then((engine) => app.widen(engine), () => app.stayNarrow());
} catch (reason) {
  root.replaceChildren();
  render(html`<p class="notice" role="alert">${(reason as Error).message}</p>`, root);
}

function breath(): Promise<void> {
  return new Promise((next) => setTimeout(next));
}

keepOffline((now) => render(keeping(now), foot));
