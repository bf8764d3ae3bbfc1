import { createSignal, onCleanup } from 'solid-js';

export type PlaceId = 'kitchen' | 'plan' | 'run' | 'record';
export type Route = { readonly place: PlaceId; readonly id?: string };

const PLACES: readonly PlaceId[] = ['kitchen', 'plan', 'run', 'record'];

/** "#/plan/flat-coils" → the place and what is open in it; anything unknown is the kitchen. */
export function parseRoute(hash: string): Route {
  const [place = '', id] = hash.replace(/^#\/?/, '').split('/');
  const known = PLACES.find((p) => p === place);
  if (!known) return { place: 'kitchen' };
  return id ? { place: known, id: decodeURIComponent(id) } : { place: known };
}

export function formatRoute(route: Route): string {
  return route.id ? `#/${route.place}/${encodeURIComponent(route.id)}` : `#/${route.place}`;
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
