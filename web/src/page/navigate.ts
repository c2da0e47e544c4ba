// Moves within the page. The address holds the form's state, so a link to a place on the page must
// not change it: such links carry data-goto, and come here instead.

export function navigateTo(id: string): void {
  const target = document.getElementById(id);
  if (!target) return;
  for (let around = target.closest('details'); around; around = around.parentElement?.closest('details') ?? null) {
    around.open = true;
  }
  target.focus({ preventScroll: true });
  (target.closest('.field') ?? target).scrollIntoView({ block: 'start' });
}

export function followPlaceLinks(): void {
  document.addEventListener('click', (event) => {
    const link = (event.target as Element).closest<HTMLElement>('a[data-goto]');
    if (!link) return;
    event.preventDefault();
    navigateTo(link.dataset['goto'] ?? '');
  });
}
