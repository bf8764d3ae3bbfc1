import { createMemo, For, Show } from 'solid-js';
import { isGas, type Burner, type Cooktop, type Kitchen } from '../../core/kitchen/index.ts';
import { t } from '../context/language.ts';
import { frameOf, pathOf } from './kitchen-frame.ts';
import '../styles/pictures.css';

/** The cooktop with the burner of this step marked, and every one that is hot now. */
export function BurnerPicture(props: {
  kitchen: Kitchen;
  cooktop: string;
  burner: string;
  hot: readonly string[];
}) {
  const cooktop = createMemo(() =>
    props.kitchen.fixtures.find(
      (f): f is Cooktop => f.kind === 'cooktop' && f.id === props.cooktop,
    ),
  );
  const frame = createMemo(() => frameOf([cooktop()?.outline ?? []], 6));
  return (
    <svg
      class="burner-picture"
      viewBox={frame().viewBox}
      role="img"
      aria-label={t('run.picture.burner', {
        name: cooktop()?.burners.find((b) => b.id === props.burner)?.name ?? '',
      })}
    >
      <path class="kp-shape kp-shape--cooktop" d={pathOf(frame(), cooktop()?.outline ?? [])} />
      <For each={cooktop()?.burners ?? []}>
        {(burner) => (
          <BurnerShape
            burner={burner}
            at={frame().at(burner.at)}
            lit={props.hot.includes(burner.id)}
            mine={burner.id === props.burner}
          />
        )}
      </For>
    </svg>
  );
}

/** Flames round the head of a gas burner. */
const FLAMES = 12;

/** One burner from above: a gas burner has a head, flames and a grate; an electric one glows in rings. */
export function BurnerShape(props: {
  burner: Burner;
  at: readonly [number, number];
  lit: boolean;
  /** It is the one that the step is about. */
  mine?: boolean;
}) {
  const r = () => props.burner.diameterM * 50;
  const gas = () => isGas(props.burner.type);
  return (
    <g
      class="kp-burner"
      classList={{
        'kp-burner--lit': props.lit,
        'kp-burner--mine': props.mine ?? false,
        'kp-burner--gas': gas(),
      }}
      data-burner={props.burner.id}
      transform={`translate(${props.at.join(' ')})`}
    >
      <circle r={r()} />
      <Show
        when={gas()}
        fallback={
          <>
            <circle r={r() * 0.66} />
            <circle r={r() * 0.32} />
          </>
        }
      >
        <circle class="kp-head" r={r() * 0.3} />
        <For each={Array.from({ length: FLAMES }, (_, i) => (360 * i) / FLAMES)}>
          {(turn) => (
            <path
              class="kp-flame"
              d={`M0 ${-0.36 * r()}V${-0.6 * r()}`}
              transform={`rotate(${turn})`}
            />
          )}
        </For>
        <path
          class="kp-grate"
          d={`M${-r()} 0H${r() * -0.66}M${r() * 0.66} 0H${r()}M0 ${-r()}V${r() * -0.66}M0 ${r() * 0.66}V${r()}`}
        />
      </Show>
    </g>
  );
}
