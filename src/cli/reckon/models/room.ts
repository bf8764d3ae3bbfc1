import { roomNeedOf } from '../../../core/plan/index.ts';
import { number, Refusal, type Model } from '../model/model.ts';
import { kitchenOf } from './pour-need.ts';
import { physicsSources } from '../model/sources.ts';

export const ROOM: Model = {
  name: 'room',
  about: 'Air of a kitchen while its strongest burners are lit together.',
  inputs: [
    { name: 'kitchen', kind: 'text', unit: 'path of a kitchen file' },
    number('burners', '1', [1, 24], 2),
    number('minutes', 'min', [1, 600], 40),
  ],
  results: { peakC: '°C', burnerW: 'W', curve: 's, °C, %, °C' },
  sources: physicsSources('warren-parkins-1984', 'nws-heat-index'),
  evaluate: (values) => {
    const kitchen = kitchenOf(String(values['kitchen']));
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
