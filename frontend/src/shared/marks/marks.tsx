/** Small marks. All are decoration for the ear: a word always stands beside them. */
const strokes = { fill: 'none', stroke: 'currentColor', 'stroke-linecap': 'round', 'stroke-linejoin': 'round' } as const;

/** "Now", and nothing else: on the next stone, on the ridge today, on the rest timer. */
export function Walker({ class: name = '' }: { class?: string }) {
  return (
    <svg class={`walker ${name}`} viewBox="-10 -28 20 29" aria-hidden="true">
      <WalkerLines />
    </svg>
  );
}

/** The walker's lines alone, feet at 0,0, for use inside another drawing. */
export function WalkerLines() {
  return (
    <>
      <path {...strokes} stroke-width="2.5" d="M.8-18.5-.6-10.4 3-5.6 3.2-.6h2.4M-.6-10.4-3-5.4-6.6-1M.8-17.5 3.4-13.3 6.4-13.6M6.8-16 8.2-.4" />
      <circle cx="1.9" cy="-23.4" r="3.3" fill="currentColor" />
      <path fill="currentColor" d="M-1.2-19.8c-3-.4-5.2 1.2-5.4 4.6l-.3 3.6c2 1 4 .9 5.6.2Z" />
    </>
  );
}

/** "Arrived": the end of a session's path, a folded round, the trip. */
export function Cairn({ filled = true }: { filled?: boolean }) {
  return (
    <svg class={`cairn ${filled ? 'filled' : 'open'}`} viewBox="0 0 30 30" aria-hidden="true">
      <CairnStones />
    </svg>
  );
}

/** The cairn's three stones in a box of 30 x 30, ground at 28. */
export function CairnStones() {
  return (
    <>
      <path d="M2 26c0-4 4-6 13-6s13 2 13 6c0 3-26 3-26 0Z" />
      <path d="M6 17c0-4 4-5 9-5s9 2 8 5c0 4-17 4-17 0Z" />
      <path d="M10 9c0-4 2-6 6-6s5 3 5 6c-1 3-11 3-11 0Z" />
    </>
  );
}

export function Tick() {
  return (
    <svg class="tick" viewBox="0 0 24 24" aria-hidden="true">
      <path {...strokes} stroke-width="3.2" d="M4 13.5c2 1.6 3.6 3.4 5 5.6C11.6 13 15 8.4 20.5 4.5" />
    </svg>
  );
}

const TURN = { right: undefined, left: 'rotate(180 12 12)', up: 'rotate(-90 12 12)', down: 'rotate(90 12 12)' } as const;

export function Arrow({ to = 'right' }: { to?: keyof typeof TURN }) {
  return (
    <svg class="arrow" viewBox="0 0 24 24" aria-hidden="true">
      <path {...strokes} stroke-width="2.5" transform={TURN[to] ?? ''} d="M4 12h15M13 5.5 19.5 12 13 18.5" />
    </svg>
  );
}

/** The one ornament, once a page: over the phone's bottom edge, under the desk's header. */
export function MapEdge() {
  return <div class="map-edge" aria-hidden="true" />;
}
