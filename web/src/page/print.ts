// Paper cannot be unfolded, so what is folded on the screen is unfolded for the printer.
export function openForPrint(): void {
  const opened: HTMLDetailsElement[] = [];
  addEventListener('beforeprint', () => {
    for (const part of document.querySelectorAll<HTMLDetailsElement>('details:not([open])')) {
      part.open = true;
      opened.push(part);
    }
  });
  addEventListener('afterprint', () => {
    for (const part of opened.splice(0)) part.open = false;
  });
}
