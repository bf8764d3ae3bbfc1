import type { BurnerType, Kitchen, VesselKind } from '../../../../../core/kitchen/index.ts';
import { changeVessel } from '../../../../../core/editing/index.ts';

const PLUGGED: readonly VesselKind[] = ['electric-kettle', 'urn'];
export const BURNS_GAS: readonly BurnerType[] = [
  'gas-sealed',
  'gas-open',
  'gas-wok',
  'commercial-open',
];

export function isElectric(kind: VesselKind): boolean {
  return PLUGGED.includes(kind);
}

/** A vessel on another burner; the empty name takes it off. */
export function onBurner(kitchen: Kitchen, id: string, burner: string): Kitchen {
  if (burner !== '') return changeVessel(kitchen, id, { burner });
  return {
    ...kitchen,
    vessels: kitchen.vessels.map((v) => {
      if (v.id !== id) return v;
      const { burner: _, ...rest } = v;
      return rest;
    }),
  };
}

export type Thing = { readonly kind: 'vessel' | 'fixture'; readonly id: string };

/** What hangs on a wire: plugged vessels, ovens, appliances; a cooktop by all its burners. */
export function thingsOf(kitchen: Kitchen): readonly (Thing & { name: string; circuit: string })[] {
  const vessels = kitchen.vessels
    .filter((v) => isElectric(v.kind))
    .map((v) => ({ kind: 'vessel' as const, id: v.id, name: v.name, circuit: v.circuit ?? '' }));
  const fixtures = kitchen.fixtures.flatMap((f) => {
    const thing = { kind: 'fixture' as const, id: f.id, name: f.name };
    if (f.kind === 'oven' && f.heat === 'electric') return [{ ...thing, circuit: f.circuit ?? '' }];
    if (f.kind === 'cooktop' && !f.burners.every((b) => BURNS_GAS.includes(b.type)))
      return [{ ...thing, circuit: f.burners[0]?.circuit ?? '' }];
    return 'ratedW' in f && f.kind !== 'oven' ? [{ ...thing, circuit: f.circuit ?? '' }] : [];
  });
  return [...vessels, ...fixtures];
}

/** The kitchen with a thing on another circuit, or on none that is told. */
export function onCircuit(kitchen: Kitchen, thing: Thing, circuit: string | undefined): Kitchen {
  const put = <T extends { readonly circuit?: string }>(one: T): T => {
    const { circuit: _, ...rest } = one;
    return (circuit === undefined ? rest : { ...rest, circuit }) as T;
  };
  if (thing.kind === 'vessel')
    return { ...kitchen, vessels: kitchen.vessels.map((v) => (v.id === thing.id ? put(v) : v)) };
  return {
    ...kitchen,
    fixtures: kitchen.fixtures.map((f) => {
      if (f.id !== thing.id) return f;
      if (f.kind === 'cooktop') return { ...f, burners: f.burners.map(put) };
      return put(f as typeof f & { readonly circuit?: string });
    }),
  };
}
