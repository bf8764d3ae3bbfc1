import type { PlaceState } from '../../../../core/report/index.ts';

/** One fill pattern a state, told apart in grey: mesh, waves, squares, dots, bars, heavy crosses, dashes. */
export function StatePatterns(props: { prefix: string }) {
  const id = (state: PlaceState) => `${props.prefix}-${state}`;
  return (
    <defs>
      <pattern id={id('heated')} width="9" height="9" patternUnits="userSpaceOnUse">
        <rect width="9" height="9" class="rp-heat" />
        <path d="M0 0 9 9M9 0 0 9" class="rp-line" />
      </pattern>
      <pattern id={id('poured')} width="16" height="8" patternUnits="userSpaceOnUse">
        <rect width="16" height="8" class="rp-water" />
        <path d="M0 4q4-3 8 0t8 0" class="rp-line" />
      </pattern>
      <pattern id={id('covered')} width="12" height="12" patternUnits="userSpaceOnUse">
        <path d="M0 0H12M0 0V12" class="rp-line" />
      </pattern>
      <pattern id={id('cleaned')} width="11" height="11" patternUnits="userSpaceOnUse">
        <circle cx="5.5" cy="5.5" r="1.3" class="rp-dot" />
      </pattern>
      <pattern id={id('closed-up')} width="7" height="7" patternUnits="userSpaceOnUse">
        <path d="M3.5 0V7" class="rp-line" />
      </pattern>
      <pattern id={id('not-purged')} width="22" height="22" patternUnits="userSpaceOnUse">
        <path d="M4 4 18 18M18 4 4 18" class="rp-cross" />
      </pattern>
      <pattern id={id('not-done')} width="16" height="10" patternUnits="userSpaceOnUse">
        <path d="M2 5H10" class="rp-cross" />
      </pattern>
    </defs>
  );
}
