import * as fc from 'fast-check';
import type { Household } from '../../../../src/core/kitchen/index.ts';

/** Random households; now and then one with a rabbi's answer about a fixture. */
export function households(fixture: string): fc.Arbitrary<Household> {
  return fc.record(
    {
      purpose: fc.constantFrom('new-kitchen', 'passover', 'mix-up'),
      custom: fc.constantFrom('sephardic', 'ashkenazic'),
      people: fc.integer({ min: 1, max: 8 }),
      names: fc.constantFrom(['Noa'], ['Noa', 'Eli'], ['נועה', 'D’Arcy']),
      keepsRestDays: fc.boolean(),
      laneDirection: fc.constantFrom('back-to-front', 'shortest'),
      // Until heated through, a stone top takes hundreds of kettles: planned where it is tested.
      pourUntil: fc.constant('reached'),
      units: fc.constantFrom('metric', 'us-customary'),
      comment: fc.constant('Kept by the same household since 2019.'),
      ownCustom: fc.constantFrom(
        { name: 'Our custom', basedOn: 'sephardic', changedRows: [] } as const,
        {
          name: 'As at home',
          basedOn: 'ashkenazic',
          changedRows: [
            {
              row: 'burner-fire',
              method: 'glow',
              minutes: 15,
              cover: false,
              why: 'So it was always done.',
              saidBy: 'our rabbi',
              saidOn: '2028-02-29',
            },
          ],
        } as const,
      ),
      overrides: fc.constantFrom([], [
        { fixture, method: 'cover', cover: true, saidBy: 'our rabbi', saidOn: '2028-02-29' },
      ] as const),
    },
    { requiredKeys: ['purpose', 'custom', 'people', 'keepsRestDays', 'overrides'] },
  );
}
