/** Fill patterns, one a phase, told apart without colour: dots, water lines, empty, slant, mesh, crosses, bars, solid, weave. */
export function PhasePatterns(props: { prefix: string }) {
  const id = (phase: string) => `${props.prefix}-${phase}`;
  return (
    <defs>
      <pattern id={id('untouched')} width="10" height="10" patternUnits="userSpaceOnUse" />
      <pattern id={id('to-clean')} width="9" height="9" patternUnits="userSpaceOnUse">
        <circle cx="4.5" cy="4.5" r="1.5" class="pt-ink" />
      </pattern>
      <pattern id={id('resting')} width="16" height="8" patternUnits="userSpaceOnUse">
        <rect width="16" height="8" class="pt-rest" />
        <path d="M0 4q4-3 8 0t8 0" class="pt-line" />
      </pattern>
      <pattern id={id('ready')} width="10" height="10" patternUnits="userSpaceOnUse">
        <rect width="10" height="10" class="pt-ready" />
      </pattern>
      <pattern
        id={id('purging')}
        width="8"
        height="8"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <rect width="8" height="8" class="pt-water" />
        <rect width="3" height="8" class="pt-water-deep" />
      </pattern>
      <pattern id={id('hot')} width="9" height="9" patternUnits="userSpaceOnUse">
        <rect width="9" height="9" class="pt-glow" />
        <path d="M0 0 9 9M9 0 0 9" class="pt-ember" />
      </pattern>
      <pattern id={id('not-purged')} width="12" height="12" patternUnits="userSpaceOnUse">
        <path d="M0 0 12 12M12 0 0 12" class="pt-line" />
      </pattern>
      <pattern id={id('left-out')} width="10" height="10" patternUnits="userSpaceOnUse">
        <path d="M0 5H10" class="pt-line" />
      </pattern>
      <pattern id={id('done')} width="10" height="10" patternUnits="userSpaceOnUse">
        <rect width="10" height="10" class="pt-done" />
      </pattern>
      <pattern id={id('covered')} width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" class="pt-done" />
        <path d="M0 0H8M0 0V8" class="pt-line" />
      </pattern>
    </defs>
  );
}
