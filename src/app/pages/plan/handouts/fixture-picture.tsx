import { createMemo, createUniqueId, Show } from 'solid-js';
import { frameOf, outlineOf } from '../../../pictures/kitchen-frame.ts';
import { Burners, FixtureShape, kindWord } from '../../../pictures/kitchen-plan.tsx';
import { PhasePatterns } from '../../../pictures/phase-patterns.tsx';
import type { Fixture } from '../../../../core/kitchen/index.ts';
import { say } from '../../../context/language.ts';

/** Round the fixture, cm. */
const MARGIN_CM = 4;

/** One fixture from above; what is not drawn in the kitchen is named by its kind. */
export function FixturePicture(props: { fixture: Fixture }) {
  const ids = createUniqueId();
  const outline = () => outlineOf(props.fixture);
  const frame = createMemo(() => frameOf([outline() ?? []], MARGIN_CM));
  const top = () => (props.fixture.kind === 'cooktop' ? props.fixture : undefined);
  return (
    <div class="fixture-picture" aria-hidden="true">
      <Show when={outline()} fallback={<FixtureKindWord fixture={props.fixture} />}>
        <svg viewBox={frame().viewBox}>
          <PhasePatterns prefix={ids} />
          <FixtureShape frame={frame()} fixture={props.fixture} phase="untouched" prefix={ids} />
          <Show when={top()}>
            {(cooktop) => <Burners frame={frame()} cooktop={cooktop()} lit={[]} />}
          </Show>
        </svg>
      </Show>
    </div>
  );
}

function FixtureKindWord(props: { fixture: Fixture }) {
  return <Show when={kindWord(props.fixture)}>{(word) => <span>{say(word())}</span>}</Show>;
}
