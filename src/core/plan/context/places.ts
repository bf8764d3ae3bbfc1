import type { Cooktop, Fixture, Kitchen, Oven } from '../../kitchen/index.ts';
import { gapM, overlap } from '../../geometry/index.ts';
import type { PlanContext } from './plan-context.ts';

// What may not be at one place, or under one pair of eyes, at one time.

/** Nothing that burns, glows or cleans itself is nearer to a pour than this, m: common practice, no published source. */
const BESIDE_M = 0.1;
/** All of a place, or of a person's eyes; each heat near it takes one share. More than are ever lit at once. */
export const WHOLE = 100;
export const WATCH = 'watch';

export function placeResource(fixture: string): string {
  return `place-${fixture}`;
}

function isPoured({ choices }: Pick<PlanContext, 'choices'>, { id }: Fixture): boolean {
  return choices.get(id)?.method.method === 'pour';
}

/** Outline of a fixture, where it has a place of its own in the kitchen. */
function outlineOf(fixture: Fixture) {
  return 'outline' in fixture ? fixture.outline : undefined;
}

/** While a pour lasts nothing is hot beside it, nothing runs on it, and one person has no eyes for a burner. */
export function pourDemand(fixture: Fixture): Readonly<Record<string, number>> {
  return { [placeResource(fixture.id)]: WHOLE, [WATCH]: WHOLE };
}

/** Poured fixtures beside something hot: each has a share of its place taken, from lighting until it is cool. */
export function besideDemand(
  context: PlanContext,
  hot: Cooktop | Oven,
): Readonly<Record<string, number>> {
  const beside = context.kitchen.fixtures.filter((one) => {
    const outline = outlineOf(one);
    return (
      one.id !== hot.id &&
      isPoured(context, one) &&
      outline &&
      gapM(outline, hot.outline) <= BESIDE_M
    );
  });
  return Object.fromEntries(beside.map(({ id }) => [placeResource(id), 1]));
}

/** Hobs and ovens that a fixture touches, holds, or lies beside. */
export function hotBeside(
  kitchen: Kitchen,
  { id, ...fixture }: Fixture,
): readonly (Cooktop | Oven)[] {
  const outline = 'outline' in fixture ? fixture.outline : undefined;
  return kitchen.fixtures.filter(
    (one): one is Cooktop | Oven =>
      (one.kind === 'cooktop' || one.kind === 'oven') &&
      one.id !== id &&
      outline !== undefined &&
      gapM(outline, one.outline) <= BESIDE_M,
  );
}

/** A kettle that boils on a burner is heat beside what is poured there, as a glow is. */
export function boilBeside(
  context: PlanContext,
  burner: string | undefined,
): Readonly<Record<string, number>> {
  const hob = context.kitchen.fixtures.find(
    (one) => one.kind === 'cooktop' && one.burners.some(({ id }) => id === burner),
  );
  return burner !== undefined && hob?.kind === 'cooktop' ? besideDemand(context, hob) : {};
}

/** A burner that glows has somebody's eyes. */
export const WATCHED_HEAT: Readonly<Record<string, number>> = { [WATCH]: 1 };

/** What stands on a fixture: an appliance whose place lies over it. */
export function standingOn(kitchen: Kitchen, under: Fixture): readonly Fixture[] {
  if (under.kind !== 'counter' && under.kind !== 'table') return [];
  return kitchen.fixtures.filter(
    (one) =>
      (one.kind === 'microwave' || one.kind === 'warming-drawer') &&
      one.outline !== undefined &&
      overlap(one.outline, under.outline),
  );
}

/** Places that an appliance stands on and that are poured: it does not run there meanwhile. */
export function standDemand(
  context: PlanContext,
  appliance: Fixture,
): Readonly<Record<string, number>> {
  const under = context.kitchen.fixtures.filter(
    (one) =>
      isPoured(context, one) &&
      standingOn(context.kitchen, one).some(({ id }) => id === appliance.id),
  );
  return Object.fromEntries(under.map(({ id }) => [placeResource(id), 1]));
}
