/** Focus after a change: the page is drawn a moment after the state, so look for the element until it is there. */
const LOOKS = 8;

/** What is folded away cannot take the focus. */
function openAround(element: Element | undefined | null): void {
  const folded = element?.closest<HTMLDetailsElement>('details:not([open])');
  if (!folded) return;
  folded.open = true;
  openAround(folded.parentElement);
}

/** Focuses the first of these ids that is there, once the page has been drawn. */
export function focusSoon(...ids: string[]): void {
  const look = (left: number) => {
    const found = ids.map((id) => document.getElementById(id)).find((element) => element !== null);
    openAround(found);
    found?.focus();
    // Not there yet, or still behind a dialog that is closing and will give the focus back to its own button.
    if (left > 0 && (!found || document.activeElement !== found)) requestAnimationFrame(() => look(left - 1));
  };
  requestAnimationFrame(() => requestAnimationFrame(() => look(LOOKS)));
}

/** The part of the page that had the focus is gone: put it to the heading, so that the keyboard does not begin at the top again. */
export function focusIfLost(...ids: string[]): void {
  requestAnimationFrame(() => document.activeElement === document.body && focusSoon(...ids));
}

/** The columns lie under each other: what was chosen is out of sight. */
export const isNarrow = (): boolean => matchMedia('(max-width: 900px)').matches;
