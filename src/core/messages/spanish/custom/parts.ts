import type { TranslationOf } from '../../model/translation.ts';
import type { parts as english } from '../../english/custom/parts.ts';

/** Parts of fixtures: how each is treated, what is asked. */
export const parts: TranslationOf<typeof english> = {
  'custom.part.racks-in-cycle.reason':
    'Quedan dentro durante el ciclo, como permite el manual, y se kasherizan con el horno.',
  'custom.part.racks-new.reason':
    'Encima se quema comida sin líquido, así que necesitan fuego, o ser nuevas.',
  'custom.part.racks-new.ask': '¿Las rejillas del horno se reemplazan, o se kasherizan con fuego?',
  'custom.part.racks-new.why':
    'Aquello sobre lo que se hornea masa debe ponerse al rojo; el calor de un horno no las pone al rojo.',
  'custom.part.racks-new.until-then': 'Compre rejillas nuevas; las viejas quedan fuera.',
  'custom.part.racks-new.answer-1': 'Rejillas nuevas.',
  'custom.part.racks-new.answer-2': 'Las pone al rojo alguien que tiene el fuego para ello.',
  'custom.part.racks.reason':
    'Encima se quema comida sin líquido, así que necesitan fuego, o ser nuevas.',
  'custom.part.racks.ask': '¿Las rejillas del horno se reemplazan, o se kasherizan con fuego?',
  'custom.part.racks.why':
    'Aquello sobre lo que se hornea masa debe ponerse al rojo. A algunos les basta el calor máximo del horno.',
  'custom.part.racks.until-then': 'Compre rejillas nuevas; las viejas quedan fuera.',
  'custom.part.racks.answer-1': 'Rejillas nuevas.',
  'custom.part.racks.answer-2': 'Las pone al rojo alguien que tiene el fuego para ello.',
  'custom.part.racks.answer-3': 'Basta una hora en el horno al máximo.',
  'custom.part.side-rails.reason': 'Se tratan como las rejillas.',
  'custom.part.trays.reason':
    'Aquello sobre lo que se hornea debe ponerse al rojo, y una chapa fina no lo aguanta: compre nuevas.',
  'custom.part.door-rim.reason': 'No toca comida: se limpia hasta el metal.',
  'custom.part.grates-new.reason':
    'Encima se quemó comida sin líquido: llama al máximo hasta que estén al rojo donde llega la llama.',
  'custom.part.grates-new.ask': '¿Cómo se kasherizan las parrillas de los quemadores de gas?',
  'custom.part.grates-new.why':
    'Pueden ponerse al rojo en la llama, pasar por la autolimpieza de un horno si el fabricante lo permite, o reemplazarse. En una cocina que no era kosher el calor ligero no sirve.',
  'custom.part.grates-new.until-then':
    'Llama al máximo hasta que estén al rojo donde llega la llama.',
  'custom.part.grates-new.answer-1': 'Al rojo en la llama.',
  'custom.part.grates-new.answer-2': 'En el ciclo de autolimpieza del horno.',
  'custom.part.grates-new.answer-3': 'Parrillas nuevas.',
  'custom.part.grates.reason':
    'Encima se quemó comida sin líquido: llama al máximo hasta que estén al rojo donde llega la llama.',
  'custom.part.grates.ask': '¿Cómo se kasherizan las parrillas de los quemadores de gas?',
  'custom.part.grates.why':
    'Pueden ponerse al rojo en la llama, pasar por la autolimpieza de un horno si el fabricante lo permite, o reemplazarse. A la Mishná Berurá le basta el calor ligero.',
  'custom.part.grates.until-then': 'Llama al máximo hasta que estén al rojo donde llega la llama.',
  'custom.part.grates.answer-1': 'Al rojo en la llama.',
  'custom.part.grates.answer-2': 'En el ciclo de autolimpieza del horno.',
  'custom.part.grates.answer-3': 'Parrillas nuevas.',
  'custom.part.grates.answer-4': 'Calor ligero: llama al máximo durante 30 minutos.',
  'custom.part.grates.answer-5': 'Calor ligero: llama al máximo durante 15 minutos.',
  'custom.part.caps.reason': 'Quedan en su sitio y reciben la llama al máximo con su quemador.',
  'custom.part.drip-bowls.reason':
    'Dentro se quema comida, y unas nuevas cuestan menos que el trabajo.',
  'custom.part.surface-glass-rinsed.reason':
    'El vidrio no absorbe: según esta costumbre basta enjuagarlo.',
  'custom.part.surface-glass.reason':
    'El vidrio entre las zonas queda más frío que ellas y no se kasheriza.',
  'custom.part.surface-glass.ask': '¿Cómo se trata el vidrio entre las zonas?',
  'custom.part.surface-glass.why': 'Unos lo cubren con la placa fría, otros no ponen nada encima.',
  'custom.part.surface-glass.until-then':
    'No ponga ollas, cucharas ni comida en el vidrio entre las zonas.',
  'custom.part.surface-glass.answer-1': 'No poner nada encima.',
  'custom.part.surface-glass.answer-2': 'Cubrirlo con la placa fría.',
  'custom.part.surface-sephardic.reason':
    'Lo derramado se fríe en la superficie alrededor de los quemadores: límpiela y no ponga nada encima.',
  'custom.part.surface.reason':
    'La superficie de cocción se juzga como barro: límpiela y no ponga nada encima. Se permite una lámina de metal entre medias si el fabricante deja ponerla ahí.',
  'custom.part.knobs.reason': 'No tocan comida: se sacan, se remojan y se secan.',
  'custom.part.hood-filter.reason':
    'Grasa y vapor quedan en su malla, que se juzga como un colador: compre uno nuevo.',
  'custom.part.sieve.reason': 'Un colador no se kasheriza: compre uno nuevo.',
  'custom.part.not-reached.reason':
    'Su elemento no se kasheriza con calor ni con agua, así que solo se limpia.',
  'custom.part.overflow.reason': 'Al verter en el fregadero, el chorro se dirige a su boca.',
  'custom.part.sprayer-hose.reason':
    'Por dentro solo corrió agua limpia; una manguera estrecha no se kasheriza con agua.',
  'custom.part.sprayer-hose.ask': '¿Basta el exterior de la ducha extraíble, o se reemplaza?',
  'custom.part.sprayer-hose.why':
    'Por dentro solo corrió agua limpia. Lo que tiene cuello estrecho o tubos no se kasheriza.',
  'custom.part.sprayer-hose.until-then': 'No la use, o ponga una nueva.',
  'custom.part.sprayer-hose.answer-1': 'Verter por fuera sobre su cabezal y su manguera.',
  'custom.part.sprayer-hose.answer-2': 'Ducha y manguera nuevas.',
  'custom.part.instant-hot-tap.reason':
    'Por dentro solo corrió agua limpia; los tubos estrechos no se kasherizan con agua.',
  'custom.part.instant-hot-tap.ask':
    '¿Se puede verter sobre el caño del grifo de agua caliente, o no se usa?',
  'custom.part.instant-hot-tap.why':
    'Por dentro solo corrió agua limpia. Al caño le llegó por fuera vapor de comida.',
  'custom.part.instant-hot-tap.until-then': 'No lo use.',
  'custom.part.instant-hot-tap.answer-1': 'Verter por fuera sobre su caño.',
  'custom.part.instant-hot-tap.answer-2': 'Uno nuevo.',
  'custom.part.instant-hot-tap.answer-3': 'No se usa.',
  'custom.part.disposer.reason':
    'Su goma antisalpicaduras retiene comida entre las hojas: compre una nueva. Del triturador mismo no se come nada.',
  'custom.part.plate-rinsed.reason': 'El vidrio no absorbe: según esta costumbre basta enjuagarlo.',
  'custom.part.plate.reason':
    'Según esta costumbre el vidrio no se kasheriza: compre un plato nuevo.',
  'custom.part.plate-ring.reason': 'No toca comida: lávelo.',
};
