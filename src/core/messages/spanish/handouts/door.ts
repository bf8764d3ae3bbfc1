import type { TranslationOf } from '../../model/translation.ts';
import type { door as english } from '../../english/handouts/door.ts';

/** One page for the door of the kitchen: what to do when something happens later. */
export const door: TranslationOf<typeof english> = {
  'handouts.door.title': ({ kitchen }) => `Cuando pasa algo en la cocina: ${kitchen}`,
  'handouts.door.about':
    'Para todos los que usan la cocina. No dicta normas: pare, déjelo como está, anótelo, pregunte.',
  'handouts.door.danger': 'Alguien está en peligro',
  'handouts.door.call': ({ number }) => `Llame al ${number}`,
  'handouts.door.call-local': 'Llame al número local de emergencias:',
  'handouts.door.later': 'Le pasó algo a un lugar o a un objeto',
  'handouts.door.case.hot': 'Lo tocó algo caliente que no le corresponde',
  'handouts.door.case.hot.1': 'Deje de usarlo. Nada caliente encima, nada de lavado caliente.',
  'handouts.door.case.hot.2': 'Déjelo enfriar, quite la comida, pase un paño con agua fría.',
  'handouts.door.case.hot.3': 'Ponga un cartel, anótelo abajo y pregunte.',
  'handouts.door.case.cold': 'Lo tocó algo frío',
  'handouts.door.case.cold.1': 'Recójalo y lave el lugar con agua fría y jabón.',
  'handouts.door.case.cold.2':
    'Pregunte si era fuerte (cebolla, ajo, encurtidos), o un líquido que estuvo ahí un día: eso cuenta como caliente.',
  'handouts.door.case.mixed': 'Se usó algo de carne para lácteo, o al revés',
  'handouts.door.case.mixed.1': 'Apártelo, y también lo que tocó en caliente. No los lave juntos.',
  'handouts.door.case.mixed.2': 'Guarde la comida aparte y no la coma todavía.',
  'handouts.door.case.mixed.3':
    'Anote qué era, cuánto quemaba, y cuándo se usó cada cosa en caliente por última vez. Pregunte.',
  'handouts.door.case.resting': 'Se usó en caliente algo que está en reposo',
  'handouts.door.case.resting.1':
    'Dígalo en la tableta, en “Pasó algo”: su reposo empieza de nuevo.',
  'handouts.door.case.cover': 'Una cubierta está rota, levantada o mojada por debajo',
  'handouts.door.case.cover.1': 'No ponga nada caliente ahí hasta que se arregle o se cambie.',
  'handouts.door.case.cover.2': 'Si algo caliente entró debajo, es como el primer caso.',
  'handouts.door.case.crack': 'Se ve una grieta, un desconchado o rayas hondas',
  'handouts.door.case.crack.1':
    'Cubra el lugar y no ponga comida caliente encima. Pregunte antes de usarlo otra vez.',
  'handouts.door.case.leaven': 'Se encuentra jametz en Pésaj',
  'handouts.door.case.leaven.1': 'No lo coma ni lo toque. Tápelo con un bol y pregunte enseguida.',
  'handouts.door.case.leaven.2': 'Lo que tocó no se usa hasta que haya respuesta.',
  'handouts.door.ask': 'Preguntamos a:',
  'handouts.door.phone': 'Teléfono:',
  'handouts.door.log.when': 'Cuándo',
  'handouts.door.log.where': 'Qué lugar u objeto',
  'handouts.door.log.what': 'Qué, cuánto quemaba, cuánto tiempo',
  'handouts.door.log.answer': 'Respuesta, y de quién',
};
