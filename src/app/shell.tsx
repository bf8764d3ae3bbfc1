import type { JSX } from 'solid-js';
import { t } from './context/language.ts';
import { formatRoute, type PageId } from './context/route.ts';
import type { Theme } from './context/theme.ts';
import { LanguageChoice } from './parts/head/language-choice.tsx';
import { PagesLine } from './parts/head/pages-line.tsx';
import { ThemeSwitch } from './parts/head/theme-switch.tsx';

/** Head with the line of pages, and the page below it. */
export function Shell(props: {
  at: PageId;
  theme: Theme;
  onTheme: () => void;
  onLanguage: (tag: string) => void;
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
            <span>{t('shell.title')}</span>
          </a>
          <PagesLine at={props.at} />
          <div class="shell-tools">
            <LanguageChoice onLanguage={props.onLanguage} />
            <ThemeSwitch theme={props.theme} onToggle={props.onTheme} />
          </div>
        </header>
        {props.banner}
      </div>
      {props.children}
    </div>
  );
}
