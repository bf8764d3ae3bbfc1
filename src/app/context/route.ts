import { createSignal, onCleanup } from 'solid-js';

/** The pages of the app, in the order they are offered. */
export const PAGES = ['kitchen', 'plan', 'run', 'record'] as const;
/** What of the run is opened by a shortcut of the device, "#/run/until-when" (public/app.webmanifest). */
export const UNTIL_WHEN = 'until-when';

export type PageId = (typeof PAGES)[number];
export type Route = { readonly page: PageId; readonly id?: string };

function partsOf(hash: string): readonly [path: string, query: string] {
  const [path = '', query = ''] = hash.replace(/^#\/?/, '').split('?');
  return [path, query];
}

/** "#/plan/flat-coils" → the page and what is open in it; anything unknown is the kitchen. */
export function parseRoute(hash: string): Route {
  const [page = '', id] = partsOf(hash)[0].split('/');
  const known = PAGES.find((one) => one === page);
  if (!known) return { page: 'kitchen' };
  const named = id && decoded(id);
  return named ? { page: known, id: named } : { page: known };
}

/** Undefined: an address that was cut off within a letter. */
function decoded(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
}

/** "#/run?language=en-XA" → "en-XA": the language asked for by address, if one is. */
export function languageAsked(hash: string): string | undefined {
  return new URLSearchParams(partsOf(hash)[1]).get('language') ?? undefined;
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
