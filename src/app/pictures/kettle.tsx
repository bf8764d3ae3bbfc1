import { t } from '../context/language.ts';
import type { Picture } from '../../core/plan/index.ts';
import '../styles/pictures.css';

type KettlePicture = Extract<Picture, { kind: 'kettle' }>;

/** How far to fill: a jug with its water line, never past the mark. */
export function KettleFill(props: { picture: KettlePicture }) {
  const share = () => Math.min(1, props.picture.litres / props.picture.maxFillL);
  const level = () => 96 - 62 * share();
  return (
    <svg
      class="kettle-fill"
      viewBox="0 0 140 120"
      role="img"
      aria-label={t('run.picture.kettle', {
        litres: props.picture.litres,
        markLitres: props.picture.maxFillL,
      })}
    >
      <clipPath id="kettle-inside">
        <path d="M32 26h56l6 74a6 6 0 0 1-6 6H32a6 6 0 0 1-6-6z" />
      </clipPath>
      <rect
        class="kettle-water"
        x="20"
        y={level()}
        width="80"
        height="110"
        clip-path="url(#kettle-inside)"
      />
      <path class="kettle-body" d="M32 26h56l6 74a6 6 0 0 1-6 6H32a6 6 0 0 1-6-6z" />
      <path
        class="kettle-body"
        d="M32 40 14 30l4 22 11 6M90 34c26-4 32 46 4 52M44 26c0-10 32-10 32 0"
      />
      <path class="kettle-mark" d="M40 34h22" />
      <text class="kettle-word" x="60" y={level() + 16} text-anchor="middle">
        {t('run.picture.kettle.litres', { litres: props.picture.litres })}
      </text>
    </svg>
  );
}
