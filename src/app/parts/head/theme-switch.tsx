import { t } from '../../context/language.ts';
import type { Theme } from '../../context/theme.ts';
import { useSwitchedOff } from '../press/switched-off.ts';

/** From paper by day to ember by night, and back. */
export function ThemeSwitch(props: { theme: Theme; onToggle: () => void }) {
  const off = useSwitchedOff();
  return (
    <button
      type="button"
      disabled={off()}
      class="theme-switch"
      data-action="theme"
      onClick={props.onToggle}
      aria-label={t(props.theme === 'day' ? 'shell.theme.night' : 'shell.theme.day')}
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
