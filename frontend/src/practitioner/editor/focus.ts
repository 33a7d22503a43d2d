/** Focus after a change: the page is drawn a moment after the state, so look for the element until it is there. */
const LOOKS = 4;

/** Focuses the first of these ids that is there, once the page has been drawn. */
export function focusSoon(...ids: string[]): void {
  const look = (left: number) => {
    const found = ids.map((id) => document.getElementById(id)).find((element) => element !== null);
    if (found) found.focus();
    else if (left > 0) requestAnimationFrame(() => look(left - 1));
  };
  requestAnimationFrame(() => requestAnimationFrame(() => look(LOOKS)));
}

/** The columns lie under each other: what was chosen is out of sight. */
export const isNarrow = (): boolean => matchMedia('(max-width: 900px)').matches;
