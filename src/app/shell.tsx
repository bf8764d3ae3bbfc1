import { For, type JSX } from 'solid-js';
import { formatRoute, type PageId } from './context/route.ts';
import type { Theme } from './context/theme.ts';

const PLACES: readonly (readonly [PageId, string])[] = [
  ['kitchen', 'Kitchen'],
  ['plan', 'Plan'],
  ['run', 'Run'],
  ['record', 'Record'],
];

/** The line through the four places. */
export function PagesLine(props: { at: PageId }) {
  return (
    <nav class="places" aria-label="Places">
      <For each={PLACES}>
        {([id, name]) => (
          <a href={formatRoute({ page: id })} aria-current={props.at === id ? 'page' : undefined}>
            {name}
          </a>
        )}
      </For>
    </nav>
  );
}

export function ThemeSwitch(props: { theme: Theme; onToggle: () => void }) {
  return (
    <button
      type="button"
      class="theme-switch"
      onClick={props.onToggle}
      aria-label={props.theme === 'day' ? 'Night colours' : 'Day colours'}
    >
      <svg
        viewBox="0 0 24 24"
        aria-hidden="true"
        fill="none"
        stroke="currentColor"
        stroke-width="2.2"
        stroke-linecap="round"
      >
        {props.theme === 'day' ? (
          <path d="M20 14.5A8.5 8.5 0 0 1 9.5 4 8.5 8.5 0 1 0 20 14.5Z" />
        ) : (
          <path d="M12 7a5 5 0 1 0 0 10 5 5 0 0 0 0-10ZM12 1.5v2M12 20.5v2M1.5 12h2M20.5 12h2" />
        )}
      </svg>
    </button>
  );
}

/** Head with the line of places, and the page below it. */
export function Shell(props: {
  at: PageId;
  theme: Theme;
  onTheme: () => void;
  banner?: JSX.Element;
  children: JSX.Element;
}) {
  return (
    <div class="shell">
      <div>
        <header class="shell-head">
          <a class="brand" href={formatRoute({ page: 'kitchen' })}>
            <svg viewBox="0 0 64 64" aria-hidden="true">
              <path
                d="M14 38a18 18 0 1 1 36 0"
                fill="none"
                stroke="var(--ember)"
                stroke-width="6"
                stroke-linecap="round"
              />
              <path
                d="M24 38a8 8 0 1 1 16 0"
                fill="none"
                stroke="var(--ember)"
                stroke-width="5"
                stroke-linecap="round"
              />
              <path d="M6 48c7-6 14 6 26 0s19 6 26 0v10H6z" fill="var(--water-fill-deep)" />
            </svg>
            <span>Glowpour</span>
          </a>
          <PagesLine at={props.at} />
          <div class="shell-tools">
            <ThemeSwitch theme={props.theme} onToggle={props.onTheme} />
          </div>
        </header>
        {props.banner}
      </div>
      {props.children}
    </div>
  );
}
