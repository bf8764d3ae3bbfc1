import { For, type JSX, Match, Switch } from 'solid-js';
import type {
  Condition,
  FixtureKind,
  HoodKind,
  OpeningKind,
} from '../../../../../core/kitchen/index.ts';

/** Small line drawings, 64 × 48: flat things from above, tall things from the front. */
function Small(props: { children: JSX.Element }) {
  return (
    <svg class="small-picture" viewBox="0 0 64 48" aria-hidden="true">
      {props.children}
    </svg>
  );
}

/** Rings of the burners of an offer, as its id names them: "gas", "coil", "glass", … */
function CooktopPicture(props: { offer: string }) {
  const has = (word: string) => props.offer.includes(word);
  const spots = () => {
    if (has('portable')) return [[32, 24]];
    const xs = has('commercial') || has('6') ? [16, 32, 48] : [22, 42];
    return xs.flatMap((x) => [
      [x, 15],
      [x, 33],
    ]);
  };
  const r = () => (spots().length > 4 ? 6 : 7);
  return (
    <Small>
      <rect
        x="5"
        y="4"
        width="54"
        height="40"
        rx="3"
        classList={{ dark: has('radiant') || has('induction') }}
      />
      <For each={spots()}>
        {([x = 0, y = 0]) => (
          <>
            <circle
              cx={x}
              cy={y}
              r={r()}
              classList={{ solid: has('plates'), lit: has('radiant') }}
              stroke-dasharray={has('induction') ? '3 2.4' : undefined}
            />
            <Switch>
              <Match when={has('coil') || has('portable')}>
                <circle cx={x} cy={y} r={r() * 0.64} />
                <circle cx={x} cy={y} r={r() * 0.28} />
              </Match>
              <Match when={has('gas') || has('commercial')}>
                <path d={`M${x - 9} ${y}h5m8 0h5M${x} ${y - 8}v4m0 8v4`} />
              </Match>
            </Switch>
          </>
        )}
      </For>
    </Small>
  );
}

function OvenPicture(props: { offer: string }) {
  const has = (word: string) => props.offer.includes(word);
  return (
    <Small>
      <rect x="10" y="3" width="44" height="42" rx="3" />
      <path d="M16 11h32" class="thick" />
      <rect x="16" y="17" width="32" height="21" rx="2" classList={{ glow: has('pyro') }} />
      <Switch>
        <Match when={has('pyro')}>
          <path d="M22 34c0-5 4-5 4-10 4 3 4 6 3 10m6 0c0-5 4-5 4-10 4 3 4 6 3 10" class="ember" />
        </Match>
        <Match when={has('steam')}>
          <path
            d="M24 22q-3 5 0 7 3-2 0-7m8 3q-3 5 0 7 3-2 0-7m8-3q-3 5 0 7 3-2 0-7"
            class="water"
          />
        </Match>
        <Match when={has('catalytic')}>
          <path
            d="M21 22h.1M27 22h.1M33 22h.1M39 22h.1M45 22h.1M24 27h.1M30 27h.1M36 27h.1M42 27h.1M21 32h.1M27 32h.1M33 32h.1M39 32h.1M45 32h.1"
            class="thick"
          />
        </Match>
      </Switch>
    </Small>
  );
}

function SinkPicture(props: { offer: string }) {
  const bowls = () => (/2|two|double/.test(props.offer) ? [8, 34] : [13]);
  const width = () => (bowls().length === 2 ? 22 : 38);
  return (
    <Small>
      <rect x="3" y="6" width="58" height="38" rx="4" />
      <For each={bowls()}>
        {(x) => (
          <>
            <rect x={x} y="16" width={width()} height="23" rx="5" class="filled-water" />
            <circle cx={x + width() / 2} cy="28" r="2.4" />
          </>
        )}
      </For>
      <path d="M32 8v12" class="thick" />
    </Small>
  );
}

const PLAIN: Readonly<Record<string, () => JSX.Element>> = {
  counter: () => (
    <>
      <path d="M2 9h60" class="thick" />
      <rect x="4" y="11" width="56" height="24" class="deep" />
    </>
  ),
  island: () => <rect x="10" y="11" width="44" height="26" rx="2" class="deep" />,
  table: () => (
    <>
      <path d="M14 16h42l-7 10H6z" class="deep" />
      <path d="M7 27v16M48 27v16M55 17v14" />
    </>
  ),
  cupboard: () => (
    <>
      <rect x="8" y="4" width="48" height="40" rx="1" class="deep" />
      <path d="M32 4v40M28 22v6M36 22v6" />
    </>
  ),
  drawer: () => (
    <>
      <rect x="8" y="8" width="48" height="32" rx="1" class="deep" />
      <path d="M8 24h48M26 16h12M26 32h12" />
    </>
  ),
  fridge: () => (
    <>
      <rect x="17" y="2" width="30" height="44" rx="3" />
      <path d="M17 17h30M22 8v5M22 22v9" />
    </>
  ),
  freezer: () => (
    <>
      <rect x="17" y="2" width="30" height="44" rx="3" />
      <path d="M22 8v9M32 22v16M25 26l14 8M39 26l-14 8" />
    </>
  ),
  microwave: () => (
    <>
      <rect x="5" y="10" width="54" height="29" rx="3" />
      <rect x="10" y="15" width="32" height="19" rx="2" />
      <path d="M48 17h6M48 23h6M48 29h6" />
    </>
  ),
  dishwasher: () => (
    <>
      <rect x="12" y="4" width="40" height="40" rx="2" />
      <path d="M12 12h40M18 32a6 6 0 0 1 12 0M34 32a6 6 0 0 1 12 0M16 34h32" />
    </>
  ),
  'warming-drawer': () => (
    <>
      <rect x="8" y="14" width="48" height="22" rx="2" />
      <path d="M24 20h16M18 29q3-3 6 0t6 0 6 0 6 0" class="ember" />
    </>
  ),
  hood: () => <path d="M24 4h16v12l16 16v8H8v-8l16-16zM8 32h48" />,
};

/** What an offer looks like; its id tells the variant. */
export function OfferPicture(props: { kind: FixtureKind; offer: string }) {
  return (
    <Switch
      fallback={<Small>{PLAIN[props.offer.includes('island') ? 'island' : props.kind]?.()}</Small>}
    >
      <Match when={props.kind === 'cooktop'}>
        <CooktopPicture offer={props.offer} />
      </Match>
      <Match when={props.kind === 'oven'}>
        <OvenPicture offer={props.offer} />
      </Match>
      <Match when={props.kind === 'sink'}>
        <SinkPicture offer={props.offer} />
      </Match>
    </Switch>
  );
}

const IN_WALLS: Readonly<Record<OpeningKind, () => JSX.Element>> = {
  door: () => (
    <>
      <path d="M4 40h14M46 40h14" class="thick" />
      <path d="M18 40V12M18 12a28 28 0 0 1 28 28" />
    </>
  ),
  window: () => (
    <>
      <rect x="12" y="6" width="40" height="34" class="filled-water" />
      <path d="M32 6v34M12 20h40M8 42h48" />
    </>
  ),
  passage: () => (
    <>
      <path d="M4 40h14M46 40h14" class="thick" />
      <path d="M18 40V8h28v32" stroke-dasharray="4 4" />
    </>
  ),
};

/** What can be in a wall: doors from above, a window from the front. */
export function OpeningPicture(props: { kind: OpeningKind }) {
  return <Small>{IN_WALLS[props.kind]()}</Small>;
}

const SURFACE = 'M4 20q8-2 16 0t16 0 16 0 8-1';
const CONDITIONS: Readonly<Record<Condition, () => JSX.Element>> = {
  smooth: () => <path d="M4 26h56" class="thick" />,
  scratched: () => <path d="M4 26h12l2 3 2-3h10l2 4 2-4h26M12 16l10-6M30 16l14-8" />,
  cracked: () => <path d="M4 26h24l3 9-4 6M60 26H31l3 8" />,
  porous: () => (
    <>
      <path d="M4 24h8q3 6 6 0h8q3 7 6 0h8q3 5 6 0h14" />
      <path d="M16 36h.1M28 38h.1M40 35h.1M50 37h.1M22 42h.1M36 43h.1" class="thick" />
    </>
  ),
  unknown: () => <path d={SURFACE} stroke-dasharray="4 4" />,
};

/** A cut through the surface, as a fingernail feels it. */
export function ConditionPicture(props: { condition: Condition }) {
  return <Small>{CONDITIONS[props.condition]()}</Small>;
}

type ToldHood = Exclude<HoodKind, 'unknown'>;

const HOODS: Readonly<Record<ToldHood, () => JSX.Element>> = {
  none: () => <path d="M10 40h44" class="thick" />,
  recirculating: () => (
    <>
      <path d="M22 12h20l12 14v6H10v-6z" />
      <path d="M14 40q4-4 8 0M50 40q-4-4-8 0M12 12c-4-4 2-8 6-5M52 12c4-4-2-8-6-5" class="water" />
    </>
  ),
  vented: () => (
    <>
      <path d="M26 2h12v14l14 12v6H12v-6l14-12z" />
      <path d="M32 44V8m-4 5 4-5 4 5" class="water" />
    </>
  ),
};

export function HoodPicture(props: { hood: ToldHood }) {
  return <Small>{HOODS[props.hood]()}</Small>;
}
