import type { Burner, Fixture, FixtureKind, Kitchen, Polygon } from '../kitchen/index.ts';
import { freeId, freeName, idsOf } from './names.ts';
import { tidyPoint } from './plane.ts';
import type { Spot } from './spots.ts';
import { NEW_KITCHEN, sizesIn, USUAL, type Usual } from './usual.ts';

/** One thing that can be added. */
export type Offer = {
  readonly id: string;
  readonly kind: FixtureKind;
  readonly name: string;
  /** A few words that tell it from its neighbours: "Stainless, one bowl". */
  readonly tells: string;
};

/** What can be added, in the order a person walks a kitchen. */
export function offersOf(_country: string): readonly Offer[] {
  return USUAL.map(({ id, kind, name, tells }) => ({ id, kind, name, tells }));
}

/** Places of the usual burners in an outline whose first edge runs along its length. */
function burnersFor(
  kitchen: Kitchen,
  usual: Usual,
  id: string,
  outline: Polygon,
): readonly Burner[] {
  const taken = new Set([...idsOf(kitchen), id]);
  const [from = [0, 0], along = from, , across = from] = outline;
  return (usual.burners?.[sizesIn(kitchen.country)] ?? []).map((burner) => {
    const burnerId = freeId(taken, `${id}-${burner.name.replaceAll(' ', '-')}`);
    taken.add(burnerId);
    const { alongShare: s, acrossShare: t } = burner;
    const at = tidyPoint([
      from[0] + (along[0] - from[0]) * s + (across[0] - from[0]) * t,
      from[1] + (along[1] - from[1]) * s + (across[1] - from[1]) * t,
    ]);
    const { name, diameterM, ratedW } = burner;
    return { id: burnerId, name, type: usual.burnerType ?? 'gas-sealed', at, diameterM, ratedW };
  });
}

/** The outline with the edge nearest the cook first, so that "front" is in front. */
export function frontFirst({ outline, backEdge }: Spot): Polygon {
  const front = backEdge === undefined ? 0 : (backEdge + 2) % outline.length;
  return [...outline.slice(front), ...outline.slice(0, front)];
}

/** The fixture of an offer, at a spot; without one it is not drawn. */
export function fixtureFrom(kitchen: Kitchen, usual: Usual, spot?: Spot): Fixture {
  const sizes = sizesIn(kitchen.country);
  const id = freeId(idsOf(kitchen), usual.kind === 'counter' ? usual.id : usual.kind);
  const name = freeName(
    kitchen.fixtures.map((fixture) => fixture.name),
    usual.name,
  );
  const base = { id, name, designation: 'undecided' } as const;
  const material = usual.material ?? 'unknown';
  const outline = spot?.outline ?? [];
  const drawn = spot && { outline: spot.outline };
  switch (usual.kind) {
    case 'counter': {
      const back = spot?.backEdge;
      return {
        kind: usual.kind,
        ...base,
        outline,
        holes: [],
        backEdges: back === undefined ? [] : [[back, (back + 1) % outline.length]],
        material,
        condition: 'unknown',
        backsplashHeightM: back === undefined ? 0 : NEW_KITCHEN.backsplashHeightM,
      };
    }
    case 'sink':
      return {
        kind: usual.kind,
        ...base,
        outline,
        material,
        condition: 'unknown',
        bowls: usual.bowls?.[sizes] ?? [],
        rimWidthM: usual.rimWidthM ?? 0,
        tap: { handles: 1, sprayer: false },
        drainboard: false,
      };
    case 'cooktop': {
      const burners = burnersFor(kitchen, usual, id, spot ? frontFirst(spot) : outline);
      return { kind: usual.kind, ...base, outline, surface: usual.surface ?? 'metal', burners };
    }
    case 'oven':
      return {
        kind: usual.kind,
        ...base,
        outline,
        cleaning: usual.cleaning ?? 'none',
        heat: 'electric',
        ratedW: usual.ratedW?.[sizes] ?? 0,
        racksStayInCycle: false,
      };
    case 'table':
      return { kind: usual.kind, ...base, outline, material, condition: 'unknown' };
    case 'cupboard':
    case 'drawer': {
      const shelves = usual.shelves?.[sizes] ?? [];
      return { kind: usual.kind, ...base, ...drawn, material, condition: 'unknown', shelves };
    }
    default: {
      const ratedW = usual.ratedW && { ratedW: usual.ratedW[sizes] };
      return { kind: usual.kind, ...base, ...drawn, ...ratedW, material };
    }
  }
}
