/** A small history router: one per app. Focus moves to the page's heading after a change of page, and the title says where one is. */
import { computed, signal } from '@preact/signals';
import type { ComponentChildren, ComponentType } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

export type Params = Record<string, string>;
export interface Route {
  /** Path under the app's base, with `:name` for a part: `/clients/:id`. */
  path: string;
  page: ComponentType<{ params: Params }>;
  /** What the browser's title begins with; called at each change of page, so that it follows the language. */
  title: (params: Params) => string;
}

const base = signal('');
const here = signal('/');
/** The path within the app, without the base: `/season`. */
export const path = computed(() => here.value.split('?')[0] ?? '/');
/** The query of the address in use. */
export const query = computed(() => new URLSearchParams(here.value.split('?')[1] ?? ''));

function readAddress(): void {
  const full = location.pathname + location.search;
  const inner = full.startsWith(base.value) ? full.slice(base.value.length) : full;
  here.value = inner.startsWith('/') ? inner : `/${inner}`;
}

/** Begin to follow the address. `prefix` is the app's base without its last slash: `/app`. */
export function startRouter(prefix: string): void {
  base.value = prefix;
  readAddress();
  addEventListener('popstate', readAddress);
}

/** Go to a path within the app. `replace` leaves no entry in the history. */
export function navigate(to: string, options: { replace?: boolean } = {}): void {
  history[options.replace ? 'replaceState' : 'pushState'](null, '', base.value + to);
  readAddress();
  scrollTo(0, 0);
}

/** Go back if the app was here before, else to `otherwise`: a phone app opened on a deep page has nothing behind it. */
export function back(otherwise: string): void {
  if (history.length > 1) history.back();
  else navigate(otherwise, { replace: true });
}

export function matchPath(pattern: string, actual: string): Params | null {
  const wanted = pattern.split('/').filter(Boolean);
  const given = actual.split('/').filter(Boolean);
  if (wanted.length !== given.length) return null;
  const params: Params = {};
  for (const [i, part] of wanted.entries()) {
    const value = given[i] as string;
    if (part.startsWith(':')) params[part.slice(1)] = safeDecode(value);
    else if (part !== value) return null;
  }
  return params;
}

function safeDecode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

function isPlainClick(event: MouseEvent): boolean {
  return event.button === 0 && !event.metaKey && !event.ctrlKey && !event.shiftKey && !event.altKey;
}

interface LinkProps {
  to: string;
  children: ComponentChildren;
  class?: string;
  id?: string;
  'aria-label'?: string;
}

/** A real link that changes the page without loading; marks itself `aria-current="page"` when it is where one is. */
export function Link({ to, ...rest }: LinkProps) {
  const follow = (event: MouseEvent) => {
    if (!isPlainClick(event)) return;
    event.preventDefault();
    navigate(to);
  };
  const current = path.value === to.split('?')[0] ? { 'aria-current': 'page' as const } : {};
  return <a {...rest} {...current} href={base.value + to} onClick={follow} />;
}

function focusHeading(): void {
  const heading = document.querySelector<HTMLElement>('h1');
  if (!heading) return;
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
}

/** Shows the first route that fits; `otherwise` when none does. */
export function Pages({ routes, otherwise }: { routes: readonly Route[]; otherwise: Route }) {
  const at = path.value;
  const first = useRef(true);
  const found = routes.find((route) => matchPath(route.path, at)) ?? otherwise;
  const params = matchPath(found.path, at) ?? {};
  const title = found.title(params);
  useEffect(() => {
    document.title = title === 'Steadfoot' ? title : `${title} · Steadfoot`;
  }, [title]);
  useEffect(() => {
    // On the first opening the browser's own focus is right; moving it would only be noise.
    if (!first.current) focusHeading();
    first.current = false;
  }, [at]);
  return <found.page key={at} params={params} />;
}
