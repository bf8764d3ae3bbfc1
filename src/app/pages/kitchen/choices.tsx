import { For } from 'solid-js';
import type { CustomId, Kitchen, LaneDirection, Purpose } from '../../../core/kitchen/index.ts';
import { CUSTOM_NAMES, PURPOSE_NAMES } from '../../labels/names.ts';

const PEOPLE = [1, 2, 3, 4, 5, 6, 7, 8];

/** What changes the whole plan, at hand beside the picture. */
export function Choices(props: { kitchen: Kitchen; onChange: (kitchen: Kitchen) => void }) {
  const household = () => props.kitchen.household;
  const set = (change: Partial<Kitchen['household']>) =>
    props.onChange({ ...props.kitchen, household: { ...household(), ...change } });
  return (
    <div class="choices">
      <label class="field">
        <span>Why</span>
        <select
          value={household().purpose}
          onChange={(e) => set({ purpose: e.currentTarget.value as Purpose })}
        >
          <For each={Object.entries(PURPOSE_NAMES)}>
            {([id, name]) => <option value={id}>{name}</option>}
          </For>
        </select>
      </label>
      <label class="field">
        <span>Custom</span>
        <select
          value={household().custom}
          onChange={(e) => set({ custom: e.currentTarget.value as CustomId })}
        >
          <For each={Object.entries(CUSTOM_NAMES)}>
            {([id, name]) => <option value={id}>{name}</option>}
          </For>
        </select>
      </label>
      <label class="field">
        <span>Lanes of a pour</span>
        <select
          value={household().laneDirection ?? 'back-to-front'}
          onChange={(e) => set({ laneDirection: e.currentTarget.value as LaneDirection })}
        >
          <option value="back-to-front">Back to front (custom)</option>
          <option value="shortest">The shortest way</option>
        </select>
      </label>
      <label class="field">
        <span>People working</span>
        <select
          value={String(household().people)}
          onChange={(e) => set({ people: Number(e.currentTarget.value) })}
        >
          <For each={PEOPLE}>{(n) => <option value={String(n)}>{n}</option>}</For>
        </select>
      </label>
    </div>
  );
}
