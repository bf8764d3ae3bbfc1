import { Show } from 'solid-js';
import type { FixturePhase } from '../../core/run/index.ts';
import { CM_PER_M, type Frame, type PlacedWord } from './kitchen-frame.ts';
import { PHASE_MOTIFS } from './motifs/motifs.ts';
import { Patterns } from './motifs/patterns.tsx';

/** One fill pattern a phase. */
export function PhasePatterns(props: { prefix: string }) {
  return <Patterns prefix={props.prefix} motifs={PHASE_MOTIFS} />;
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
