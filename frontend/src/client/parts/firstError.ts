/** The button that saves is always in sight, what is missing may not be: it is shown, and has the focus. */
export const toFirstError = (): void =>
  void requestAnimationFrame(() => {
    const at = document.querySelector<HTMLElement>('[aria-invalid]');
    (at?.querySelector('input') ?? at)?.focus();
    at?.scrollIntoView({ block: 'center' });
  });
