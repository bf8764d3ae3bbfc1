import { createMemo, createSignal, For, Show } from 'solid-js';
import {
  calibrationFrom,
  type CalibrationRow,
  type LeftOutMeasurements,
} from '../../../core/calibration/index.ts';
import { message } from '../../../core/messages/index.ts';
import type { Fact } from '../../../core/run/index.ts';
import { Action } from '../../parts/press/action.tsx';
import { say, t } from '../../context/language.ts';

/** "Steel kettle: boils in 8 min 40 s (planned 8 min 20 s)". */
function sentence({ what, name, estimate, plannedS = 0, estimatedS = 0 }: CalibrationRow): string {
  const { mean } = estimate;
  switch (what) {
    case 'pour':
      return t('record-page.calibration.pour', { flowLMin: mean });
    case 'reach':
      return t('record-page.calibration.reach', { percent: mean * 100 });
    default:
      return t(`record-page.calibration.${what}`, {
        name: say(name),
        takesS: mean * estimatedS,
        plannedS,
      });
  }
}

function grounds({ estimate, what }: CalibrationRow): string {
  const { n: count, spread, outliers } = estimate;
  const from =
    what === 'cool'
      ? message('record-page.calibration.grounds-longest', { count })
      : message('record-page.calibration.grounds', { count, spreadPercent: spread * 100 });
  return outliers.length > 0
    ? t('record-page.calibration.set-apart', { grounds: from, count: outliers.length })
    : say(from);
}

/** What the reports of this run say about the household's hardware; the last report of each can be left out. */
export function CalibrationList(props: {
  facts: readonly Fact[];
  /** Reports not to be counted, where they are kept; else only this page knows. */
  leftOut?: LeftOutMeasurements | undefined;
  onLeftOut?: ((next: LeftOutMeasurements) => void) | undefined;
}) {
  const [own, setOwn] = createSignal<LeftOutMeasurements>({});
  const leftOut = () => props.leftOut ?? own();
  const rows = createMemo(() => calibrationFrom(props.facts, leftOut()));
  const toggle = ({ id, reports }: CalibrationRow) => {
    const { [id]: had, ...others } = leftOut();
    const next = had ? others : { ...others, [id]: [reports - 1] };
    setOwn(next);
    props.onLeftOut?.(next);
  };
  return (
    <Show when={rows().length > 0}>
      <section aria-label={t('record-page.calibration.title')}>
        <h2>{t('record-page.calibration.title')}</h2>
        <p class="quiet">
          {props.onLeftOut
            ? t('record-page.calibration.used')
            : t('record-page.calibration.not-used')}
        </p>
        <ul class="learned">
          <For each={rows()}>
            {(one) => (
              <li>
                <span>
                  <strong>{sentence(one)}</strong>
                  <span class="quiet learned-grounds">{grounds(one)}</span>
                </span>
                <Action class="button button--plain" onPress={() => toggle(one)}>
                  {leftOut()[one.id]
                    ? t('record-page.calibration.count')
                    : t('record-page.calibration.leave-out')}
                </Action>
              </li>
            )}
          </For>
        </ul>
      </section>
    </Show>
  );
}
