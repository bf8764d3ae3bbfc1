import { Show } from 'solid-js';
import type { FixturePhase } from '../../core/run/index.ts';
import { CM_PER_M, type Frame, type PlacedWord } from './kitchen-frame.ts';

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

type Drawn = Exclude<FixturePhase, 'untouched'>;

/** Lines in a square of 24: bucket, hourglass, arrow, drop, flame, cross, dash, tick, sheet. */
const FIGURES: Readonly<Record<Drawn, string>> = {
  'to-clean': 'M5 9h14l-2 11H7zM5 9c0-8 14-8 14 0',
  resting: 'M7 4h10M7 20h10M8 4c0 5 8 6 8 16M16 4c0 5-8 6-8 16',
  ready: 'M8 5v14l11-7z',
  purging: 'M12 3c5 6 6 8 6 11a6 6 0 0 1-12 0c0-3 1-5 6-11z',
  hot: 'M12 2c1 5 6 7 6 13a6 6 0 0 1-12 0c0-3 2-4 2-7 2 1 3 2 3 4 2-3 2-6 1-10z',
  'not-purged': 'M6 6l12 12M18 6L6 18',
  'left-out': 'M5 12h14',
  done: 'M4 13l5 6L20 6',
  covered: 'M4 6h16v12H4zM4 12h16M12 6v12',
};

/** The state of a place as a figure on a round ground; `size`: its whole width, in units of the drawing. */
export function PhaseFigure(props: { phase: FixturePhase; size: number }) {
  return (
    <Show when={props.phase !== 'untouched' && FIGURES[props.phase]}>
      {(lines) => (
        <g
          class={`phase-figure phase-figure--${props.phase}`}
          transform={`scale(${props.size / 32})`}
        >
          <circle r="16" />
          <path d={lines()} transform="translate(-12 -12)" />
        </g>
      )}
    </Show>
  );
}

/** The figure of a state, and beside it the number of its fixture. */
export function Mark(props: {
  frame: Frame;
  word: PlacedWord | undefined;
  phase: FixturePhase;
  number: number | undefined;
  /** What lies under something else is pressed at its mark. */
  onPress?: (() => void) | undefined;
}) {
  return (
    <Show when={props.word}>
      {(word) => {
        const size = () => word().sizeM * CM_PER_M;
        const both = () => props.number !== undefined && props.phase !== 'untouched';
        return (
          <g
            class="kp-mark"
            classList={{ 'kp-mark--press': props.onPress !== undefined }}
            onClick={() => props.onPress?.()}
            aria-hidden="true"
            transform={`translate(${props.frame.at(word().at).join(' ')})`}
          >
            <g transform={`translate(${both() ? size() * -0.62 : 0} 0)`}>
              <PhaseFigure phase={props.phase} size={size() * 1.28} />
            </g>
            <Show when={props.number}>
              <text
                class="kp-word"
                x={both() ? size() * 0.65 : 0}
                text-anchor="middle"
                dominant-baseline="central"
                font-size={String(size())}
              >
                {props.number}
              </text>
            </Show>
          </g>
        );
      }}
    </Show>
  );
}
