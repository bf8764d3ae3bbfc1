import type { TranslationOf } from '../../model/translation.ts';
import type { ask as english } from '../../english/survey/ask.ts';

/** What is still to tell, and why the plan wants to know. */
export const ask: TranslationOf<typeof english> = {
  'survey.ask.material': ({ fixture }) => `${fixture}: ¿de qué material es?`,
  'survey.ask.material.why': 'De eso depende si se puede kasherizar, y cómo.',
  'survey.ask.lining': ({ fixture }) => `${fixture}: ¿con qué está revestido por dentro?`,
  'survey.ask.lining.why': 'De eso depende si se puede kasherizar.',
  'survey.ask.condition': ({ fixture }) => `${fixture}: ¿es liso al pasar la uña?`,
  'survey.ask.condition.why':
    'El agua no llega a grietas y rayas profundas; el plan pregunta hasta que se indique.',
  'survey.ask.cycle': ({ fixture }) => `${fixture}: ¿cuántos minutos dura su ciclo de limpieza?`,
  'survey.ask.cycle.why': 'Está en el manual; hasta entonces se planifica una duración habitual.',
  'survey.ask.circuit': ({ fixture }) => `${fixture}: ¿qué circuito lo alimenta?`,
  'survey.ask.circuit.why': 'Su carga no se vigila hasta que se conozca el interruptor automático.',
  'survey.ask.vessels': '¿Con qué se hierve el agua?',
  'survey.ask.vessels.why': 'Sin hervidor, termo de agua u olla no se puede verter nada.',
  'survey.ask.burner': ({ vessel }) => `${vessel}: ¿sobre qué quemador se pone?`,
  'survey.ask.burner.why': 'Hierve tan rápido como calienta su quemador.',
  'survey.ask.sockets': ({ vessel }) => `${vessel}: ¿en qué tomas se enchufa?`,
  'survey.ask.sockets.why': 'Dos hervidores potentes en un interruptor automático lo hacen saltar.',
  'survey.ask.place': '¿Dónde está la cocina?',
  'survey.ask.place.why':
    'En la montaña el agua hierve a menos temperatura, y el día tiene sus horas.',
  'survey.ask.hood': ({ hood }) => `${hood}: ¿expulsa el aire al exterior?`,
  'survey.ask.hood.why':
    'Del aire depende cuántos quemadores pueden estar al rojo a la vez; hasta entonces cuenta como sin campana.',
  'survey.ask.any-hood': '¿Hay una campana sobre los quemadores, y expulsa al exterior?',
  'survey.ask.window': '¿Hay una ventana que se abra?',
  'survey.ask.window.why':
    'Hasta que se indique, el plan no cuenta con ninguna, y puede encontrar el local demasiado caluroso o su aire demasiado malo.',
  'survey.ask.hood-flow': '¿Cuánto aire mueve la campana?',
  'survey.ask.hood-flow.why': 'Está en el manual; hasta entonces cuenta como sin campana.',
  'survey.ask.open-sides': ({ fixture }) => `${fixture}: ¿en qué lados puede ponerse usted?`,
  'survey.ask.open-sides.why':
    'Desde ahí se vierte; hasta entonces todos sus lados cuentan como libres.',
  'survey.ask.fixtures': '¿Qué hay en la cocina?',
  'survey.ask.fixtures.why': 'Todavía no hay nada que kasherizar.',
};
