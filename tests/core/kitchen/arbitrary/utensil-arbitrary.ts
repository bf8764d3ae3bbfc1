import * as fc from 'fast-check';
import {
  CONDITIONS,
  DESIGNATIONS,
  UTENSIL_KINDS,
  UTENSIL_MATERIALS,
  UTENSIL_METHODS,
  UTENSIL_USES,
  type Utensil,
} from '../../../../src/core/kitchen/index.ts';

const mm = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => n / 1000);

const size = fc
  .tuple(mm(20, 700), mm(5, 500), mm(2, 400))
  .map((sides) => sides.toSorted((a, b) => b - a))
  .map(([lengthM = 0, widthM = 0, heightM = 0]) => ({ lengthM, widthM, heightM }));

function utensil(id: string): fc.Arbitrary<Utensil> {
  return fc.record(
    {
      id: fc.constant(id),
      name: fc.constantFrom('the old ones', 'כפות'),
      kind: fc.constantFrom(...UTENSIL_KINDS),
      count: fc.integer({ min: 1, max: 40 }),
      material: fc.constantFrom(...UTENSIL_MATERIALS),
      use: fc.constantFrom(...UTENSIL_USES),
      condition: fc.constantFrom(...CONDITIONS),
      designation: fc.constantFrom(...DESIGNATIONS),
      was: fc.constantFrom(...DESIGNATIONS),
      closedJoints: fc.boolean(),
      size,
      massKg: mm(5, 5000),
      forMikveh: fc.boolean(),
      answer: fc.record({
        method: fc.constantFrom(...UTENSIL_METHODS),
        saidBy: fc.constant('our rabbi'),
        saidOn: fc.constant('2027-03-01'),
      }),
    },
    {
      requiredKeys: ['id', 'kind', 'count', 'material', 'use', 'condition', 'designation'],
    },
  );
}

/** Some lines of utensils, each with an id of its own. */
export function utensils(): fc.Arbitrary<readonly Utensil[]> {
  return fc
    .integer({ min: 0, max: 8 })
    .chain((count) =>
      fc.tuple(...Array.from({ length: count }, (_, i) => utensil(`utensil-${i}`))),
    );
}
