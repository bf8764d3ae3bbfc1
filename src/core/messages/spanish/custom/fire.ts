import type { TranslationOf } from '../../model/translation.ts';
import type { fire as english } from '../../english/custom/fire.ts';

/** Rows of the customs for hobs and ovens: why, what may change it, what is asked. */
export const fire: TranslationOf<typeof english> = {
  'custom.way.burner-induction.ashkenazic.reason':
    'La inducción calienta la olla y no a sí misma: nunca se pone al rojo, y según esta costumbre su vidrio no se kasheriza con agua.',
  'custom.way.burner-induction.ashkenazic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.burner-induction.ashkenazic.ask': '¿Cómo se puede kasherizar una placa de inducción?',
  'custom.way.burner-induction.ashkenazic.why':
    'No se pone al rojo. Unos vierten sobre el vidrio frío si el fabricante lo permite, otros cubren las zonas.',
  'custom.way.burner-induction.ashkenazic.until-then': 'Límpiela y no la use.',
  'custom.way.burner-induction.ashkenazic.answer-1':
    'Verter sobre el vidrio frío, si el fabricante lo permite.',
  'custom.way.burner-induction.ashkenazic.answer-2': 'Limpiarla y cubrir las zonas.',
  'custom.way.burner-induction.ashkenazic.answer-3': 'No se usa.',
  'custom.way.burner-induction.sephardic.reason':
    'La inducción calienta la olla y no a sí misma: nunca se pone al rojo. Según esta costumbre el vidrio no absorbe; si eso vale para una placa, se pregunta.',
  'custom.way.burner-induction.sephardic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.burner-induction.sephardic.ask':
    '¿El vidrio de una placa de inducción se enjuaga como otro vidrio, o se vierte sobre él?',
  'custom.way.burner-induction.sephardic.why':
    'Según esta costumbre el vidrio se enjuaga. Ningún código nombra un vidrio sobre un calentador, y lo que se frió encima estuvo al fuego.',
  'custom.way.burner-induction.sephardic.until-then': 'Límpiela y no la use.',
  'custom.way.burner-induction.sephardic.answer-1': 'Limpiarla y enjuagarla como otro vidrio.',
  'custom.way.burner-induction.sephardic.answer-2':
    'Verter sobre el vidrio frío, si el fabricante lo permite.',
  'custom.way.burner-induction.sephardic.answer-3': 'No se usa.',
  'custom.way.burner-mix-up.reason':
    'Encima se quemó comida al fuego y sin líquido. Si esa comida era en sí permitida, basta un calor más ligero.',
  'custom.way.burner-mix-up.would-change': 'Diga qué se derramó encima.',
  'custom.way.burner-mix-up.ask':
    '¿Era la comida permitida por sí misma (carne en un lugar lácteo, o lácteo en un lugar de carne), o prohibida?',
  'custom.way.burner-mix-up.why':
    'Lo absorbido cuando era permitido se kasheriza con calor ligero; lo prohibido necesita ponerse al rojo.',
  'custom.way.burner-mix-up.until-then': 'Póngalo al rojo.',
  'custom.way.burner-mix-up.answer-1':
    'Era permitida: calor máximo, 30 minutos, sin llegar al rojo.',
  'custom.way.burner-mix-up.answer-2': 'Era prohibida, o nadie lo sabe: al rojo.',
  'custom.way.burner-glass.reason':
    'En la zona se quemó comida al fuego, así que se pone al rojo la cinta de debajo.',
  'custom.way.burner-glass.would-change': 'Su rabino puede indicar otros minutos.',
  'custom.way.burner-gas.sephardic.reason':
    'En la parrilla se quemó comida al fuego y sin líquido: se kasheriza con la llama al máximo, hasta el rojo donde llega la llama.',
  'custom.way.burner-gas.sephardic.would-change':
    'Su rabino puede indicar otros minutos. Por las parrillas se pregunta aparte.',
  'custom.way.burner-gas.sephardic.note':
    'Parrillas y cabezas: llama al máximo, al rojo donde llega la llama.',
  'custom.way.burner-gas.ashkenazic.reason':
    'En la parrilla se quemó comida al fuego y sin líquido: se kasheriza con la llama al máximo, hasta el rojo donde llega la llama.',
  'custom.way.burner-gas.ashkenazic.would-change':
    'Su rabino puede indicar otros minutos. Por las parrillas se pregunta aparte.',
  'custom.way.burner-gas.ashkenazic.note':
    'Parrillas y cabezas: llama al máximo, al rojo donde llega la llama. Muchos ponen una lámina de metal sobre los quemadores para repartir el calor: solo sobre un aparato de metal cuyo fabricante lo permita.',
  'custom.way.burner-plate.reason':
    'En el disco se quemó comida al fuego y sin líquido, así que se pone al rojo. Muchos discos se cortan antes de enrojecer.',
  'custom.way.burner-plate.would-change': 'Diga si enrojece en un lugar oscuro.',
  'custom.way.burner-plate.ask':
    'Un disco cerrado a menudo no enrojece. ¿Basta con su calor máximo?',
  'custom.way.burner-plate.why':
    'Los códigos piden ponerlo al rojo; muchos de estos discos no pueden.',
  'custom.way.burner-plate.until-then':
    'Póngalo al rojo en un lugar oscuro; un disco que no enrojece no se usa.',
  'custom.way.burner-plate.answer-1': 'Basta el calor máximo durante 30 minutos.',
  'custom.way.burner-plate.answer-2': 'Debe enrojecer; el que no lo hace no se usa.',
  'custom.way.burner-plate.answer-3': 'Basta el calor máximo durante 15 minutos.',
  'custom.way.burner-fire.reason':
    'En la espiral se quemó comida al fuego y sin líquido, así que se pone al rojo.',
  'custom.way.burner-fire.would-change': 'Su rabino puede indicar otros minutos.',
  'custom.way.burner-fire.ask': '¿Cuántos minutos debe estar al rojo una espiral?',
  'custom.way.burner-fire.why':
    'Los códigos piden ponerla al rojo y no dicen minutos; se hacen de 5 a 30.',
  'custom.way.burner-fire.until-then': 'Téngala al rojo 30 minutos.',
  'custom.way.burner-fire.answer-1': '30 minutos.',
  'custom.way.burner-fire.answer-2': '15 minutos.',
  'custom.way.burner-fire.answer-3': '5 minutos.',
  'custom.way.oven-pyrolytic.reason':
    'En sus paredes se quemó comida sin líquido; el ciclo completo de autolimpieza la quema del todo. Ningún código lo nombra: un horno se kasheriza con calor hasta que saltan chispas.',
  'custom.way.oven-pyrolytic.would-change':
    'Avise si su manual prohíbe el ciclo. Un ciclo interrumpido no cuenta.',
  'custom.way.oven-pyrolytic.note': 'Las rejillas entran solo si el manual las deja dentro.',
  'custom.way.oven-new.reason':
    'No tiene un ciclo de autolimpieza que queme (la limpieza con vapor o catalítica no kasheriza). Ningún código nombra la posición máxima de un horno: piden calor hasta que salten chispas. En una cocina que no era kosher, el calor ligero no sirve donde hace falta fuego.',
  'custom.way.oven-new.would-change': 'Su rabino puede indicar otras horas.',
  'custom.way.oven-new.ask': '¿Basta la posición máxima sin ponerlo al rojo, y cuánto tiempo?',
  'custom.way.oven-new.why':
    'Las opiniones van de una hora a dos; algunos piden ponerlo al rojo, y un horno así no llega.',
  'custom.way.oven-new.until-then':
    'Caliéntelo al máximo dos horas, y ponga dentro la comida solo tapada o en un inserto.',
  'custom.way.oven-new.answer-1': 'Basta una hora.',
  'custom.way.oven-new.answer-2': 'Bastan dos horas.',
  'custom.way.oven-new.answer-3': 'Dos horas, y la comida solo tapada o en un inserto.',
  'custom.way.oven-new.answer-4':
    'Debe ponerse al rojo, y este horno no puede: la comida solo tapada o en un inserto.',
  'custom.way.oven-plain.reason':
    'No tiene un ciclo de autolimpieza que queme (la limpieza con vapor o catalítica no kasheriza). Ningún código nombra la posición máxima de un horno: piden calor hasta que salten chispas.',
  'custom.way.oven-plain.would-change': 'Su rabino puede indicar otras horas.',
  'custom.way.oven-plain.ask': '¿Basta la posición máxima sin ponerlo al rojo, y cuánto tiempo?',
  'custom.way.oven-plain.why':
    'Las opiniones van de una hora a dos; algunos piden ponerlo al rojo, y un horno así no llega.',
  'custom.way.oven-plain.until-then':
    'Caliéntelo al máximo dos horas, y ponga dentro la comida solo tapada o en un inserto.',
  'custom.way.oven-plain.answer-1': 'Basta una hora.',
  'custom.way.oven-plain.answer-2': 'Bastan dos horas.',
  'custom.way.oven-plain.answer-3': 'Dos horas, y la comida solo tapada o en un inserto.',
  'custom.way.oven-plain.answer-4':
    'Debe ponerse al rojo, y este horno no puede: la comida solo tapada o en un inserto.',
  'custom.way.oven-mix-up.reason':
    'Dentro se quemó comida sin líquido. Si esa comida era en sí permitida, basta un calor más ligero.',
  'custom.way.oven-mix-up.would-change': 'Diga qué se derramó dentro.',
  'custom.way.oven-mix-up.ask':
    '¿Era la comida permitida por sí misma (carne en un lugar lácteo, o lácteo en un lugar de carne), o prohibida?',
  'custom.way.oven-mix-up.why': 'Lo absorbido cuando era permitido se kasheriza con calor ligero.',
  'custom.way.oven-mix-up.until-then':
    'Caliéntelo al máximo dos horas, y ponga dentro la comida solo tapada o en un inserto.',
  'custom.way.oven-mix-up.answer-1': 'Era permitida: una hora al máximo.',
  'custom.way.oven-mix-up.answer-2':
    'Era prohibida, o nadie lo sabe: dos horas, y la comida solo tapada o en un inserto.',
};
