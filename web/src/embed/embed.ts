// For somebody else's page: this one script, and an element for each sheet.
//
//   <script src="https://the-club.example/tyres/embed.js" async></script>
//   <treadwater-sheet sheet="standing-water" units="uk" preset="depth=4 mm"></treadwater-sheet>
//
// The sheet runs in a frame, from this script's folder. Only the frame's height and the element's
// colours pass between the two, as messages; never a figure. No inline style or script is used, so
// the strictest policy of the host page will do.
{
  const folder = new URL('.', (document.currentScript as HTMLScriptElement).src);
  const FIRST_HEIGHT = 640; // px, until the frame has said how high it is
  const HIGHEST = 40_000;

  // As the element has them: --treadwater-accent and so on. What is not a colour or a length there,
  // the frame leaves out.
  const PROPERTIES = ['paper', 'ink', 'accent', 'corner', 'text'];

  // What a screen reader calls the frame, if the host page does not say. Only the frame knows the
  // sheet's name in other languages, so its id is used here.
  const SHEET: Record<string, string> = { fr: 'fiche\u00a0:', de: 'Blatt:', fi: 'lomake:' };

  class TreadwaterSheet extends HTMLElement {
    static readonly observedAttributes = ['sheet', 'preset', 'units', 'language', 'theme'];
    readonly #frame = document.createElement('iframe');
    readonly #root = this.attachShadow({ mode: 'open' });
    readonly #dress = () => this.#send();
    readonly #hear = (event: MessageEvent) => this.#heard(event);
    #left: (() => void) | undefined;
    #ready = false; // the frame listens

    constructor() {
      super();
      const frame = this.#frame;
      // Scripts, and its own origin, without which a plain host refuses it the modules; its form is
      // never submitted; a table can be saved, the sheet printed, and the full page opened.
      frame.setAttribute('sandbox', 'allow-scripts allow-same-origin allow-forms allow-downloads allow-modals allow-popups allow-popups-to-escape-sandbox');
      frame.setAttribute('allow', 'clipboard-write');
      frame.referrerPolicy = 'no-referrer';
      frame.loading = 'lazy';
      Object.assign(frame.style, { display: 'block', width: '100%', height: `${FIRST_HEIGHT}px`, border: '0' });
      this.#root.append(frame, document.createElement('slot')); // the element's content stays until the sheet is there
    }

    connectedCallback(): void {
      if (getComputedStyle(this).display === 'inline') this.style.display = 'block';
      addEventListener('message', this.#hear);
      const dark = matchMedia('(prefers-color-scheme: dark)');
      dark.addEventListener('change', this.#dress);
      const changed = new MutationObserver(this.#dress); // a page that changes its looks does it there
      for (const root of [document.documentElement, document.body]) changed.observe(root, { attributes: true });
      this.#left = () => {
        removeEventListener('message', this.#hear);
        dark.removeEventListener('change', this.#dress);
        changed.disconnect();
      };
      this.#open();
    }

    disconnectedCallback(): void {
      this.#left?.();
      this.#ready = false;
    }

    attributeChangedCallback(name: string): void {
      if (!this.isConnected) return;
      if (name === 'theme') this.#send();
      else this.#open();
    }

    #open(): void {
      const sheet = this.getAttribute('sheet') ?? '';
      const preset = new URLSearchParams(this.getAttribute('preset') ?? '');
      const units = this.getAttribute('units');
      const language = this.getAttribute('language');
      if (units) preset.set('units', units);
      if (language) preset.set('page.language', language);
      const query = preset.toString();
      const address = `${new URL('index.html', folder)}#${encodeURIComponent(sheet)}${query && `?${query}`}`;
      if (this.#frame.src !== address) this.#frame.src = address;
      this.#frame.title = this.title || this.#called(sheet);
    }

    #called(sheet: string): string {
      const language = this.getAttribute('language') ?? this.closest<HTMLElement>('[lang]')?.lang ?? navigator.language;
      const words = SHEET[language.slice(0, 2).toLowerCase()];
      return words ? `Treadwater, ${words} ${sheet}` : `Treadwater: ${sheet.replaceAll('-', ' ')}`;
    }

    #heard({ source, origin, data }: MessageEvent): void {
      if (!source || source !== this.#frame.contentWindow || origin !== folder.origin) return;
      const height: unknown = data?.treadwater === 'height' ? data.height : undefined;
      if (data?.treadwater === 'ready') {
        this.#ready = true;
        this.#root.querySelector('slot')?.remove();
        this.#send();
      } else if (typeof height === 'number' && height > 0 && height <= HIGHEST) {
        this.#frame.style.height = `${Math.ceil(height)}px`;
      }
    }

    #send(): void {
      if (!this.#ready) return;
      const style = getComputedStyle(this);
      const theme: Record<string, string> = { look: this.getAttribute('theme') ?? '' };
      for (const id of PROPERTIES) theme[id] = style.getPropertyValue(`--treadwater-${id}`).trim();
      this.#frame.contentWindow?.postMessage({ treadwater: 'theme', theme }, folder.origin);
    }
  }

  if (!customElements.get('treadwater-sheet')) customElements.define('treadwater-sheet', TreadwaterSheet);
}
