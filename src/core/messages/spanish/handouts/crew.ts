import type { TranslationOf } from '../../model/translation.ts';
import type { crewSheets as english } from '../../english/handouts/crew.ts';

/** A sheet a person, of what the plan gives them. */
export const crewSheets: TranslationOf<typeof english> = {
  'handouts.crew.about':
    'Una hoja para cada persona que trabaja, según el plan. Lo que dice la tableta va primero.',
  'handouts.crew.title': ({ name, kitchen }) => `${name}: ${kitchen}`,
  'handouts.crew.first':
    'Según el plan: la tableta dice cuándo es de verdad, y pregunta antes lo que hay que preguntar. Una quemadura: enseguida 20 minutos de agua corriente fresca.',
  'handouts.crew.nothing': 'El plan no le da nada que hacer a esta persona.',
};
