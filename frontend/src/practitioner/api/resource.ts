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
  /** No news is asked about before this, performance.now(). */
  quietUntil: number;
  later: ReturnType<typeof setTimeout> | undefined;
}
const known = new Map<string, Resource>();

/** Fallback for lost words from the server. House value, milliseconds. */
export const ASK_AGAIN_MS = 60_000;
/**
 * News about single clients follows closely where many of them train at once, and what is about all of them is the largest thing a
 * page asks for: the first word is asked about at once, those of the next seconds together. House value, milliseconds.
 */
export const TOGETHER_MS = 10_000;

function find(path: string, about: string | null): Resource {
  const made = known.get(path) ?? { path, about, state: signal<Loaded<unknown>>(NOTHING), watchers: 0, running: null, again: false, quietUntil: 0, later: undefined };
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

/** Keep it up to date until the answer is called. */
export function watch(path: string, about: string | null = null): () => void {
  const resource = find(path, about);
  resource.watchers += 1;
  void refresh(resource);
  return () => void (resource.watchers -= 1);
}

/** The answer to GET `path`, kept up to date while the component is shown. `about` is the client it speaks of. */
export function useResource<T>(path: string, about: string | null = null): Loaded<T> & { reload: () => Promise<void> } {
  const resource = find(path, about);
  useEffect(() => watch(path, about), [resource]);
  return { ...(resource.state.value as Loaded<T>), reload: () => refresh(resource) };
}

const watched = () => [...known.values()].filter((resource) => resource.watchers > 0);
export const refreshAll = (): void => watched().forEach((resource) => void refresh(resource));
const concerned = (client: string) => watched().filter(({ about }) => about === null || about === client);
/** Something was done here about one client: what is about them, and what is about many. Ends with `path` where the rest need not be waited for. */
export async function refreshAbout(client: string, path?: string): Promise<void> {
  const running = concerned(client).map((one) => [one.path, refresh(one)] as const);
  await Promise.all(running.filter(([which]) => path === undefined || which === path).map(([, done]) => done));
}
/** The server's word about one client: what is about them at once, what is about many together with the words that follow. */
export const hearAbout = (client: string): void => concerned(client).forEach((one) => (one.about ? void refresh(one) : hear(one)));

function hear(resource: Resource): void {
  const wait = resource.quietUntil - performance.now();
  if (resource.later !== undefined) return;
  if (wait <= 0) {
    resource.quietUntil = performance.now() + TOGETHER_MS;
    return void refresh(resource);
  }
  resource.later = setTimeout(() => {
    resource.later = undefined;
    if (resource.watchers > 0) hear(resource);
  }, wait);
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
