import { Show } from 'solid-js';
import { t } from '../../context/language.ts';
import { tabletZone, wallZone } from '../../context/zone.ts';
import { localDateTime } from './local-date-time.ts';

/** Said once where it matters: the kitchen's clock is not the tablet's. */
export function OtherZone(props: { nowMs: number }) {
  const shown = (zone: string) => localDateTime(props.nowMs, zone);
  return (
    <Show when={shown(wallZone()) !== shown(tabletZone())}>
      <p class="days-zone quiet">
        {t('common.other-zone', {
          wallMs: props.nowMs,
          zone: wallZone(),
          tabletZone: tabletZone(),
        })}
      </p>
    </Show>
  );
}
