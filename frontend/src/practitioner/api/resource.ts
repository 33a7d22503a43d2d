/**
 * What the pages show, kept by path. The last answer is there at once when a page is opened again; news replaces it without a
 * reload: on a word from the server, when the window is looked at again, and every minute in case that word was lost.
 */
import { signal, type Signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { failureFrom, request, type Failure } from './request';

export interface Loaded<T> {
  data: T | null;
  etag: string | null;
  /** When `data` was answered. */
  asOf: Date | null;
  /** Why the newest question got no answer; `data` is then older than that. */
  failure: Failure | null;
}
const NOTHING: Loaded<never> = { data: null, etag: null, asOf: null, failure: null };

interface Resource {
  path: string;
  /** The client this is about; null when it is about many. */
  about: string | null;
  state: Signal<Loaded<unknown>>;
  watchers: number;
  running: Promise<void> | null;
  again: boolean;
}
const known = new Map<string, Resource>();

/** Fallback for lost words from the server. House value, milliseconds. */
export const ASK_AGAIN_MS = 60_000;

function find(path: string, about: string | null): Resource {
  const made = known.get(path) ?? { path, about, state: signal<Loaded<unknown>>(NOTHING), watchers: 0, running: null, again: false };
  known.set(path, made);
  return made;
}

async function ask(resource: Resource): Promise<void> {
  try {
    const { data, etag } = await request<unknown>('GET', resource.path);
    resource.state.value = { data, etag, asOf: new Date(), failure: null };
  } catch (error) {
    resource.state.value = { ...resource.state.value, failure: failureFrom(error) };
  }
}

/** Ask again. A question asked while another is under way is asked after it, since the first answer may be older than the news. */
function refresh(resource: Resource): Promise<void> {
  if (resource.running) {
    resource.again = true;
    return resource.running;
  }
  resource.running = (async () => {
    do {
      resource.again = false;
      await ask(resource);
    } while (resource.again);
  })().finally(() => (resource.running = null));
  return resource.running;
}

/** The answer to GET `path`, kept up to date while the component is shown. `about` is the client it speaks of. */
export function useResource<T>(path: string, about: string | null = null): Loaded<T> & { reload: () => Promise<void> } {
  const resource = find(path, about);
  useEffect(() => {
    resource.watchers += 1;
    void refresh(resource);
    return () => void (resource.watchers -= 1);
  }, [resource]);
  return { ...(resource.state.value as Loaded<T>), reload: () => refresh(resource) };
}

const watched = () => [...known.values()].filter((resource) => resource.watchers > 0);
export const refreshAll = (): void => watched().forEach((resource) => void refresh(resource));
/** News about one client: what is about them, and what is about many. */
export function refreshAbout(client: string): Promise<void[]> {
  return Promise.all(watched().filter(({ about }) => about === null || about === client).map(refresh));
}

/** Let go of everything that is about one client; what is about many is asked for again. */
export function forgetAbout(client: string): void {
  for (const [path, resource] of known) if (resource.about === client || path.includes(client)) known.delete(path);
  refreshAll();
}

export function forgetAll(): void {
  for (const [path, resource] of known) {
    if (resource.watchers === 0) known.delete(path);
    else resource.state.value = NOTHING;
  }
}
