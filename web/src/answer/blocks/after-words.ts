// A slow phone takes longer to draw a picture than the words around it. So the words of a new
// answer come first, beside the old picture, and the new picture right after them.
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
