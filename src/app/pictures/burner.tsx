import { createMemo, For } from 'solid-js';
import type { Cooktop, Kitchen } from '../../core/kitchen/index.ts';
import { t } from '../context/language.ts';
import { frameOf, pathOf } from './kitchen-frame.ts';

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
        {(burner) => {
          const at = () => frame().at(burner.at);
          const r = () => burner.diameterM * 50;
          const mine = () => burner.id === props.burner;
          return (
            <g
              class="kp-burner"
              classList={{
                'kp-burner--lit': props.hot.includes(burner.id),
                'kp-burner--mine': mine(),
              }}
            >
              <circle cx={at()[0]} cy={at()[1]} r={r()} />
              <circle cx={at()[0]} cy={at()[1]} r={r() * 0.66} />
              <circle cx={at()[0]} cy={at()[1]} r={r() * 0.32} />
            </g>
          );
        }}
      </For>
    </svg>
  );
}
