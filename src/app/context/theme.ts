import { createEffect, createSignal } from 'solid-js';

export type Theme = 'day' | 'night';

/** Paper by day, ember by night; follows the device until the person chooses. */
export function createTheme(keep: (theme: Theme) => void) {
  const dark = window.matchMedia('(prefers-color-scheme: dark)').matches;
  const [theme, setTheme] = createSignal<Theme>(dark ? 'night' : 'day');
  createEffect(() => {
    document.documentElement.dataset['theme'] = theme();
  });
  return {
    theme,
    /** What was stored, if it is a theme at all. */
    restore(stored: unknown): void {
      if (stored === 'day' || stored === 'night') setTheme(stored);
    },
    toggle(): void {
      const next = theme() === 'day' ? 'night' : 'day';
      setTheme(next);
      keep(next);
    },
  };
}
