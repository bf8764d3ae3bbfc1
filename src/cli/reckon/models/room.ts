import { burnersNeedOf, roomNeedOf } from '../../../core/plan/index.ts';
import type { Kitchen } from '../../../core/kitchen/index.ts';
import { number, optional, Refusal, type Model } from '../model/model.ts';
import { kitchenOf } from './pour-need.ts';
import { physicsSources } from '../model/sources.ts';

/** The kitchen with the air outside that was typed. */
function outsideOf(kitchen: Kitchen, outdoorC: unknown): Kitchen {
  return typeof outdoorC === 'number'
    ? { ...kitchen, room: { ...kitchen.room, outdoorC } }
    : kitchen;
}

/** Days of the year to a moment of it; the year itself does not matter. */
function momentOf(dayOfYear: unknown): number | undefined {
  return typeof dayOfYear === 'number' ? Date.UTC(2025, 0, dayOfYear) : undefined;
}

export const BURNERS_AT_ONCE: Model = {
  name: 'burners-at-once',
  about:
    'Burners of a kitchen that the plan lights together, with what else heats the room before and beside them; air at the bad corner, heat as expected.',
  inputs: [
    { name: 'kitchen', kind: 'text', unit: 'path of a kitchen file' },
    optional({
      ...number('outdoorC', '°C', [-40, 50]),
      about: 'instead of what the kitchen file, its place and season say',
    }),
    optional({
      ...number('dayOfYear', '1', [1, 365]),
      about: 'when the work begins; absent: the warmest of the year, or Passover',
    }),
  ],
  results: {
    atOnce: '1',
    limitedBy: 'burners, usual, heat, air or circuit',
    withinLimits: 'true or false',
    hot: 'true or false',
    peakC: '°C',
    outdoorC: '°C',
  },
  sources: physicsSources(
    'climate-fit',
    'cibse-admittance',
    'singer-hoods',
    'lebel-2022',
    'epa-naaqs',
    'who-air',
    'nws-heat-index',
  ),
  evaluate: (values) => {
    const kitchen = outsideOf(kitchenOf(String(values['kitchen'])), values['outdoorC']);
    return { ...burnersNeedOf(kitchen, momentOf(values['dayOfYear'])) };
  },
};

export const ROOM: Model = {
  name: 'room',
  about: 'Air of a kitchen while its strongest burners are lit together.',
  inputs: [
    { name: 'kitchen', kind: 'text', unit: 'path of a kitchen file' },
    number('burners', '1', [1, 24], 2),
    number('minutes', 'min', [1, 600], 40),
    optional({
      ...number('outdoorC', '°C', [-40, 50]),
      about: 'instead of what the kitchen file, its place and season say',
    }),
  ],
  results: { peakC: '°C', burnerW: 'W', curve: 's, °C, %, °C' },
  sources: physicsSources(
    'warren-parkins-1984',
    'degids-phaff-1982',
    'cibse-admittance',
    'climate-fit',
    'nws-heat-index',
  ),
  evaluate: (values) => {
    const kitchen = outsideOf(kitchenOf(String(values['kitchen'])), values['outdoorC']);
    const need = roomNeedOf(
      kitchen,
      Math.round(Number(values['burners'])),
      Number(values['minutes']),
    );
    if (need) return need;
    throw new Refusal(
      'kitchen',
      kitchen.name,
      'a kitchen with a cooktop',
      'Choose another kitchen.',
    );
  },
};
