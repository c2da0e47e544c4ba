// A picture takes a slow phone longer than the words it stands among. So the words of a new answer are
// shown first, beside the picture that is there, and the new picture right after them.
import { AsyncDirective, directive } from 'lit/async-directive.js';
import { noChange } from 'lit/html.js';

class AfterWords extends AsyncDirective {
  #drawn = false;
  #frame = 0;

  render(draw: () => unknown): unknown {
    if (!this.#drawn) {
      this.#drawn = true;
      return draw();
    }
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(() => setTimeout(() => {
      if (this.isConnected) this.setValue(draw());
    }));
    return noChange;
  }
}

export const afterWords = directive(AfterWords);
