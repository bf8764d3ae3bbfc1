import { createSignal, onCleanup } from 'solid-js';

export type PageId = 'kitchen' | 'plan' | 'run' | 'record';
export type Route = { readonly page: PageId; readonly id?: string };

const PLACES: readonly PageId[] = ['kitchen', 'plan', 'run', 'record'];

/** "#/plan/flat-coils" → the place and what is open in it; anything unknown is the kitchen. */
export function parseRoute(hash: string): Route {
  const [place = '', id] = hash.replace(/^#\/?/, '').split('/');
  const known = PLACES.find((p) => p === place);
  if (!known) return { page: 'kitchen' };
  return id ? { page: known, id: decodeURIComponent(id) } : { page: known };
}

export function formatRoute(route: Route): string {
  return route.id ? `#/${route.page}/${encodeURIComponent(route.id)}` : `#/${route.page}`;
}

/** The address bar as a signal. */
export function createRoute(): readonly [() => Route, (route: Route) => void] {
  const [route, setRoute] = createSignal(parseRoute(location.hash));
  const read = () => setRoute(parseRoute(location.hash));
  window.addEventListener('hashchange', read);
  onCleanup(() => window.removeEventListener('hashchange', read));
  return [
    route,
    (next) => {
      location.hash = formatRoute(next);
    },
  ];
}
