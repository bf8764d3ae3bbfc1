import { For } from 'solid-js';
import { message } from '../../core/messages/index.ts';
import type { Picture } from '../../core/plan/index.ts';
import { t } from '../context/language.ts';
import '../styles/pictures.css';

type Batch = Extract<Picture, { kind: 'batch' }>;
type Kind = Batch['items'][number]['kind'];

/** The inside of the pot in the drawing: from left to right, from its rim to its floor. */
const POT = { left: 30, right: 190, rim: 34, floor: 134 } as const;

/** Things by their outline, round the middle of a field of 32 by 44. */
const GLYPHS: Readonly<Record<Kind, string>> = {
  pot: 'M-14 -8h28v20a4 4 0 0 1-4 4h-20a4 4 0 0 1-4-4zM-14 -2h-5M14 -2h5',
  lid: 'M-15 6a15 9 0 0 1 30 0zM-3 -5h6',
  pan: 'M-16 -2h20v6a5 5 0 0 1-5 5h-10a5 5 0 0 1-5-5zM4 0h13',
  tray: 'M-16 -6h32l-4 10h-24z',
  rack: 'M-15 -10h30v20h-30zM-9 -10v20M-3 -10v20M3 -10v20M9 -10v20',
  cutlery: 'M-7 18v-20M-11 -18v10a4 6 0 0 0 8 0v-10M-7 -18v10M7 18v-18a5 8 0 1 1 1 0',
  knife: 'M0 18v-14M-3 4v-22q8 8 6 22z',
  ladle: 'M8 -18v22a8 8 0 0 1-16 0h16',
  'wooden-spoon': 'M0 18v-20a5 8 0 1 1 1 0',
  board: 'M-12 -16h24v32h-24z',
  plate: 'M-16 0a16 16 0 1 0 32 0a16 16 0 1 0-32 0M-9 0a9 9 0 1 0 18 0a9 9 0 1 0-18 0',
  mug: 'M-10 -10h18v20h-18zM8 -5h6v10h-6',
  glass: 'M-9 -14h18l-3 28h-12z',
  silver: 'M-10 -14h20v8a10 10 0 0 1-20 0zM0 4v10M-8 14h16',
  sieve: 'M-13 -6a13 13 0 0 0 26 0zM13 -6h5M-6 -6v10M0 -6v12M6 -6v10',
  gadget: 'M-4 16v-20l-6-10M4 16v-20l6-10M-4 -4h8',
};

/** Where each kind hangs in the water, side by side. */
function placed(items: Batch['items']): readonly { item: Batch['items'][number]; x: number }[] {
  const fieldW = (POT.right - POT.left) / Math.max(1, items.length);
  return items.map((item, at) => ({ item, x: POT.left + fieldW * (at + 0.5) }));
}

/** A pot from the side with what goes into it at once: in its net, or held by tongs. */
export function BatchPicture(props: { picture: Batch }) {
  const topY = () => POT.floor - (POT.floor - POT.rim) * Math.min(1, props.picture.waterShare);
  const named = () =>
    props.picture.items.map(({ count, name }) => message('utensils.count', { count, name }));
  return (
    <svg
      class="batch-picture"
      viewBox="0 0 220 150"
      role="img"
      aria-label={t('run.picture.batch', { items: named() })}
      data-hold={props.picture.hold}
    >
      <path
        class="kettle-water"
        d={`M${POT.left} ${topY()}V126a8 8 0 0 0 8 8h144a8 8 0 0 0 8-8V${topY()}z`}
      />
      <path class="kettle-body" d="M30 26v100a8 8 0 0 0 8 8h144a8 8 0 0 0 8-8v-100" />
      <path class="kettle-body" d="M30 44h-12v14h12M190 44h12v14h-12" />
      {props.picture.hold === 'net' ? (
        <path class="batch-net" d="M40 22v66q0 34 70 34t70-34v-66" />
      ) : (
        <path class="batch-tongs" d="M104 4 106 50M116 4 114 50" />
      )}
      <For each={placed(props.picture.items)}>
        {({ item, x }) => (
          <g transform={`translate(${x} ${props.picture.byHalves ? 66 : 80})`}>
            <path class="batch-thing" d={GLYPHS[item.kind]} />
            <text class="kettle-word" y="36" text-anchor="middle">
              {t('run.picture.batch.count', { count: item.count })}
            </text>
          </g>
        )}
      </For>
    </svg>
  );
}
