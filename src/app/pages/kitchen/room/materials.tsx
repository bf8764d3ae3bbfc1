import type { JSX } from 'solid-js';
import { For } from 'solid-js';
import type { Fixture, Material } from '../../../../core/kitchen/index.ts';

/** Surfaces that look alike from a metre away. */
type Look =
  'wood' | 'stone' | 'marble' | 'steel' | 'iron' | 'tile' | 'glass' | 'laminate' | 'plain';

const LOOKS: Readonly<Record<Material, Look | undefined>> = {
  'stainless-steel': 'steel',
  'cast-iron': 'iron',
  'enamelled-steel': 'plain',
  porcelain: 'plain',
  ceramic: 'tile',
  glass: 'glass',
  'glass-ceramic': 'iron',
  granite: 'stone',
  marble: 'marble',
  soapstone: 'stone',
  concrete: 'stone',
  'quartz-composite': 'stone',
  acrylic: 'laminate',
  laminate: 'laminate',
  wood: 'wood',
  'raw-wood': 'wood',
  tile: 'tile',
  plastic: 'plain',
  silicone: 'plain',
  unknown: undefined,
};

/** One tile of a texture, cm. */
type Tile = {
  readonly widthCm: number;
  readonly heightCm: number;
  readonly draw: () => JSX.Element;
};

const TILES: Readonly<Record<Look, Tile>> = {
  wood: {
    widthCm: 48,
    heightCm: 14,
    draw: () => (
      <path d="M0 13.5h48M0 3.5q12-2 24 0t24 0M0 8q10 2.5 22 0t26 0M14 5.6q6-1.4 12 0-6 1.6-12 0" />
    ),
  },
  stone: {
    widthCm: 26,
    heightCm: 22,
    draw: () => (
      <path
        class="rm-grains"
        d="M3 4h.1M9 2h.1M16 6h.1M23 3h.1M6 10h.1M13 12h.1M20 11h.1M2 16h.1M10 18h.1M17 17h.1M24 19h.1M7 21h.1"
      />
    ),
  },
  marble: {
    widthCm: 60,
    heightCm: 44,
    draw: () => <path d="M0 12q14 10 26 4t34 10M18 44q4-16 16-20t12-24M0 34q8-4 12 2" />,
  },
  steel: { widthCm: 22, heightCm: 6, draw: () => <path d="M0 1.5h13M8 3.5h14M2 5.4h9" /> },
  iron: { widthCm: 8, heightCm: 8, draw: () => <path class="rm-grains" d="M2 2h.1M6 6h.1" /> },
  tile: { widthCm: 15, heightCm: 15, draw: () => <path d="M0 0H15V15" /> },
  glass: { widthCm: 26, heightCm: 26, draw: () => <path d="M4 18 18 4M12 20l6-6" /> },
  laminate: {
    widthCm: 18,
    heightCm: 12,
    draw: () => <path d="M2 3h3M11 1.5h2M8 7h3M15 9.5h3M1 10.5h2" />,
  },
  plain: { widthCm: 20, heightCm: 20, draw: () => null },
};

/** Textures of the materials, for a picture in centimetres; `prefix` keeps those of two pictures apart. */
export function MaterialPatterns(props: { prefix: string }) {
  return (
    <defs>
      <For each={Object.entries(TILES)}>
        {([look, { widthCm, heightCm, draw }]) => (
          <pattern
            id={`${props.prefix}-${look}`}
            width={widthCm}
            height={heightCm}
            patternUnits="userSpaceOnUse"
          >
            <rect class={`rm-ground rm-ground--${look}`} width={widthCm} height={heightCm} />
            <g class="rm-texture">{draw()}</g>
          </pattern>
        )}
      </For>
    </defs>
  );
}

/** Paint of what one sees of a fixture; undefined where nobody told what it is made of. */
export function paintOf(fixture: Fixture, prefix: string): string | undefined {
  const look =
    fixture.kind === 'cooktop'
      ? fixture.surface === 'glass-ceramic'
        ? 'iron'
        : fixture.surface === 'metal'
          ? 'steel'
          : 'plain'
      : 'material' in fixture
        ? LOOKS[fixture.material]
        : 'plain';
  return look && `url(#${prefix}-${look})`;
}
