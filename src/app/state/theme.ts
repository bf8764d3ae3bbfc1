import { createEffect, createSignal } from 'solid-js';

export type Theme = 'day' | 'night';

/** Paper by day, ember by night; follows the device until the person chooses. */
export function createTheme(stored: Theme | undefined, keep: (theme: Theme) => void) {
  const dark = window.matchMedia('(prefers-color-scheme: dark)').matches;
  const [theme, setTheme] = createSignal<Theme>(stored ?? (dark ? 'night' : 'day'));
  createEffect(() => {
    document.documentElement.dataset['theme'] = theme();
  });
  const toggle = () => {
    const next = theme() === 'day' ? 'night' : 'day';
    setTheme(next);
    keep(next);
  };
  return { theme, toggle };
}
