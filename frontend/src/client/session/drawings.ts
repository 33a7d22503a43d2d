/** Keeps the drawings of the program's movements on the phone, so that a card shows them without a network. */
import { effect } from '@preact/signals';
import { olderPrograms, program, type Program } from '../../outbox';
import { drawingUrl, drawnAs } from '../../shared/drawing';
import { DRAWINGS } from '../../sw/drawings';
import { findExercise, rungsAround } from './library';

/** House: how often each kept drawing is asked for anew, ms. A drawing changes only with a new version of the program that draws. */
export const REFRESH_MS = 7 * 24 * 3600 * 1000;
const CHECKED = 'steadfoot.drawingsChecked';

/** Addresses of the prescribed variants and of the rungs beside them, as far as they are drawn. */
export function wantedDrawings(programs: readonly Pick<Program, 'content' | 'exercises'>[]): string[] {
  const found = new Set<string>();
  for (const { content, exercises } of programs) {
    const prescribed = content.sessions.flatMap((session) => (session.kind === 'circuit' ? session.prescriptions : []));
    for (const { exercise, variant } of prescribed) {
      const entry = findExercise(exercises, exercise);
      const { easier, now, harder } = rungsAround(entry, variant);
      for (const rung of [now, easier, harder]) {
        if (entry && rung?.drawn) for (const form of ['still', 'moving'] as const) found.add(drawingUrl(drawnAs(entry), rung.variant, form));
      }
    }
  }
  return [...found];
}

/** A sign-in page of a hut's network answers 200 as well. */
const isPicture = (answer: Response) => answer.ok && (answer.headers.get('Content-Type') ?? '').startsWith('image/svg+xml');

/** Makes the cache hold what is wanted and nothing else; answers whether all is there. One call at a time: it shares the link with check-ins. */
export async function keepDrawings(wanted: readonly string[], cache: Cache, ask: typeof fetch, anew: boolean): Promise<boolean> {
  const held = new Set<string>();
  for (const { url } of await cache.keys()) {
    const { pathname, search } = new URL(url);
    if (wanted.includes(pathname + search)) held.add(pathname + search);
    else await cache.delete(url);
  }
  let whole = true;
  for (const url of wanted) {
    if (held.has(url) && !anew) continue;
    const answer = await ask(url, { cache: 'no-cache', credentials: 'omit' });
    if (isPicture(answer)) await cache.put(url, answer);
    else whole = false;
  }
  return whole;
}

const due = () => Date.now() - Number(localStorage.getItem(CHECKED) ?? 0) > REFRESH_MS;

/** Without a cache or a network the cards work as they are; the next occasion tries again. */
async function keep(): Promise<void> {
  const programs = program.value ? [program.value, ...olderPrograms.value] : [];
  if (!('caches' in globalThis)) return;
  try {
    const anew = due();
    const whole = await keepDrawings(wantedDrawings(programs), await caches.open(DRAWINGS), fetch, anew);
    if (anew && whole) localStorage.setItem(CHECKED, String(Date.now()));
  } catch {
    // no network, no room or no storage
  }
}

/** Call once after the first drawing of the page. */
export function watchDrawings(): void {
  let last = Promise.resolve();
  const next = () => void (last = last.then(keep));
  let known: string | null | undefined;
  effect(() => {
    const id = program.value?.id ?? null;
    if (id === known) return; // a sync that brought something else
    known = id;
    next();
  });
  addEventListener('online', next);
}
