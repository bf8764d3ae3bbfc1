import { Show } from 'solid-js';
import { t } from '../../context/language.ts';
import { tabletZone, wallZone } from '../../context/zone.ts';
import { localDateTime } from './local-date-time.ts';

/** Said once where it matters: the kitchen's clock is not the tablet's. */
export function OtherZone(props: {
  nowMs: number;
  /** Of the kitchen that is told about; else of the run on the screen. */
  zone?: string;
}) {
  const kitchenZone = () => props.zone ?? wallZone();
  const shown = (zone: string) => localDateTime(props.nowMs, zone);
  return (
    <Show when={shown(kitchenZone()) !== shown(tabletZone())}>
      <p class="days-zone quiet">
        {t('common.other-zone', {
          wallMs: props.nowMs,
          zone: kitchenZone(),
          tabletZone: tabletZone(),
        })}
      </p>
    </Show>
  );
}
