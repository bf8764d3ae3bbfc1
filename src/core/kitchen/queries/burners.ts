import type { Burner, BurnerType, Cooktop, Kitchen } from '../model/kitchen.ts';

/** Whether a burner has a flame. */
export function isGas(type: BurnerType): boolean {
  return type.startsWith('gas') || type === 'commercial-open';
}

/** Every burner with its cooktop and its path in the file, in the order of the file. */
export function burnerPlaces(
  kitchen: Kitchen,
): readonly { readonly burner: Burner; readonly cooktop: Cooktop; readonly path: string }[] {
  return kitchen.fixtures.flatMap((cooktop, i) =>
    cooktop.kind === 'cooktop'
      ? cooktop.burners.map((burner, j) => ({
          burner,
          cooktop,
          path: `fixtures[${i}].burners[${j}]`,
        }))
      : [],
  );
}

/** All burners of a kitchen, in the order of the file. */
export function burnersOf(kitchen: Kitchen): readonly Burner[] {
  return burnerPlaces(kitchen).map(({ burner }) => burner);
}
