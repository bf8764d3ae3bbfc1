import { nearest, type Kitchen } from '../../../core/kitchen/index.ts';
import { pourNeedOf } from '../../../core/plan/index.ts';
import { readKitchenFile } from '../../input/kitchen-file.ts';
import { Refusal, type Model } from '../model/model.ts';
import { physicsSources } from '../model/sources.ts';

/**
 * The kitchen of a file.
 * @throws Refusal with the first problem
 */
export function kitchenOf(path: string): Kitchen {
  const read = readKitchenFile(path);
  if (!('problems' in read)) return read.kitchen;
  const [first] = read.problems;
  throw new Refusal(
    'kitchen',
    `${path}, ${first?.path}: ${first?.found}`,
    first?.allowed ?? 'a kitchen file',
    first?.text ?? '',
  );
}

export const POUR_NEED: Model = {
  name: 'pour-need',
  about: 'Boiling water and kettles that one fixture of a kitchen takes, as the plan pours it.',
  inputs: [
    { name: 'kitchen', kind: 'text', unit: 'path of a kitchen file' },
    { name: 'fixture', kind: 'text', unit: 'id of a counter, sink or table' },
  ],
  results: { litres: 'L', kettles: '1', pourS: 's', filledL: 'L' },
  sources: physicsSources('bohr-1993', 'bhagat-2018'),
  evaluate: (values) => {
    const kitchen = kitchenOf(String(values['kitchen']));
    const fixture = String(values['fixture']);
    const need = pourNeedOf(kitchen, fixture);
    if (need) return need;
    const poured = kitchen.fixtures
      .filter(({ kind }) => kind === 'counter' || kind === 'sink' || kind === 'table')
      .map(({ id }) => id);
    const near = nearest(fixture, poured);
    throw new Refusal(
      'fixture',
      fixture,
      poured.join(', '),
      near === undefined ? 'Only counters, sinks and tables are poured.' : `Did you mean ${near}?`,
    );
  },
};
