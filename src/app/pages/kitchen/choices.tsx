import { For } from 'solid-js';
import {
  CUSTOMS,
  LANE_DIRECTIONS,
  LIMITS,
  POUR_UNTIL,
  PURPOSES,
  UNIT_SYSTEMS,
  unitsOf,
  type CustomId,
  type Kitchen,
  type LaneDirection,
  type PourUntil,
  type Purpose,
} from '../../../core/kitchen/index.ts';
import type { UnitSystem } from '../../../core/units/index.ts';
import { t } from '../../context/language.ts';

const { least, most } = LIMITS.people;
const PEOPLE = Array.from({ length: most - least + 1 }, (_, i) => least + i);

/** What changes the whole plan, at hand beside the picture. */
export function Choices(props: { kitchen: Kitchen; onChange: (kitchen: Kitchen) => void }) {
  const household = () => props.kitchen.household;
  const set = (change: Partial<Kitchen['household']>) =>
    props.onChange({ ...props.kitchen, household: { ...household(), ...change } });
  return (
    <div class="choices">
      <label class="field">
        <span>{t('kitchen.choices.why')}</span>
        <select
          value={household().purpose}
          onChange={(e) => set({ purpose: e.currentTarget.value as Purpose })}
        >
          <For each={PURPOSES}>
            {(id) => <option value={id}>{t(`kitchen.purpose.${id}`)}</option>}
          </For>
        </select>
      </label>
      <label class="field">
        <span>{t('kitchen.choices.custom')}</span>
        <select
          value={household().custom}
          onChange={(e) => set({ custom: e.currentTarget.value as CustomId })}
        >
          <For each={CUSTOMS}>{(id) => <option value={id}>{t(`common.custom.${id}`)}</option>}</For>
        </select>
      </label>
      <label class="field">
        <span>{t('kitchen.choices.lanes')}</span>
        <select
          value={household().laneDirection ?? 'back-to-front'}
          onChange={(e) => set({ laneDirection: e.currentTarget.value as LaneDirection })}
        >
          <For each={LANE_DIRECTIONS}>
            {(id) => <option value={id}>{t(`kitchen.lanes.${id}`)}</option>}
          </For>
        </select>
      </label>
      <label class="field">
        <span>{t('kitchen.choices.pour-until')}</span>
        <select
          value={household().pourUntil ?? 'reached'}
          onChange={(e) => set({ pourUntil: e.currentTarget.value as PourUntil })}
        >
          <For each={POUR_UNTIL}>
            {(id) => <option value={id}>{t(`kitchen.pour-until.${id}`)}</option>}
          </For>
        </select>
      </label>
      <label class="field">
        <span>{t('kitchen.choices.people')}</span>
        <select
          value={String(household().people)}
          onChange={(e) => set({ people: Number(e.currentTarget.value) })}
        >
          <For each={PEOPLE}>{(n) => <option value={String(n)}>{n}</option>}</For>
        </select>
      </label>
      <label class="field">
        <span>{t('kitchen.choices.units')}</span>
        <select
          value={unitsOf(props.kitchen)}
          onChange={(e) => set({ units: e.currentTarget.value as UnitSystem })}
        >
          <For each={UNIT_SYSTEMS}>
            {(id) => <option value={id}>{t(`kitchen.units.${id}`)}</option>}
          </For>
        </select>
      </label>
    </div>
  );
}
