// Sets the page's look as its user chose, before it is first drawn: a separate script, since the
// page's content policy allows no inline ones. It learns of a change by an event from the settings,
// or from another tab by storage.
(() => {
  const choices = { look: ['light', 'dark', 'contrast'], text: ['larger', 'largest'] };
  const papers = { light: '#faf9f6', dark: '#12171a' };
  const root = document.documentElement;

  const kept = (id) => {
    try {
      return localStorage.getItem(`treadwater.${id}`);
    } catch {
      return null; // no storage here
    }
  };

  const dress = (chosen) => {
    for (const [id, value] of Object.entries(chosen)) {
      if (choices[id].includes(value)) root.dataset[id] = value;
      else delete root.dataset[id];
    }
    for (const meta of document.querySelectorAll('meta[name=theme-color]')) {
      meta.content = papers[root.dataset.look] ?? papers[/dark/.test(meta.media) ? 'dark' : 'light'];
    }
  };

  const recall = () => dress({ look: kept('look'), text: kept('text') });
  if (parent !== self) root.dataset.embedded = ''; // on somebody else's page
  recall();
  addEventListener('storage', recall);
  document.addEventListener('dress', ({ detail }) => dress(detail));
})();
