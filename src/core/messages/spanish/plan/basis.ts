import type { TranslationOf } from '../../model/translation.ts';
import type { basis as english } from '../../english/plan/basis.ts';

/** What the figures of a plan rest on where no published figure holds them. */
export const basis: TranslationOf<typeof english> = {
  'plan.basis.title': 'En qué se apoya esto',
  'plan.basis.about':
    'Puntos de ebullición, agua, hervidores, calor constante, aire quieto, índice de calor y gas se comparan, cada uno con su tolerancia, con cifras publicadas o programas ajenos. Lo que sigue, no.',
  'plan.basis.kind.judgement': 'Criterio propio: no se encontró ninguna cifra publicada',
  'plan.basis.kind.computed':
    'Calculado dos veces: una fórmula publicada, sin cifra publicada con que compararla',
  'plan.basis.hand-speed': (_, f) =>
    `Hasta cuándo se vierte en un punto: hasta que la primera agua, en su punto peor situado, supera la opinión más alta sobre el calor del que la mano se retira, ${f.measure(71, '°C')}. Con el otro objetivo, hasta que la superficie se acerca al agua a una vigésima parte. La piedra tarda entonces diez veces más.`,
  'plan.basis.pour-litres':
    'Cuánta agua se pierde y cuánto se solapan las franjas. Una décima más de pérdida es una décima más de agua.',
  'plan.basis.radial-film':
    'Cómo se adelgaza hacia fuera la película bajo el chorro. Fija el ancho de la franja, y con él los litros.',
  'plan.basis.burner-bodies':
    'Tamaño, peso y parte del calor de quemadores, parrillas y vidrio son de memoria; con un error de un quinto a un cuarto, en una placa portátil hasta el doble.',
  'plan.basis.glow-limit':
    'No ponerse al rojo no se llama fallo hasta el doble de lo más tarde previsto, y nunca antes de cinco minutos.',
  'plan.basis.touch-thresholds': (_, f) =>
    `La temperatura a la que quema un toque de un minuto (metal ${f.measure(51, '°C')}, vidrio ${f.measure(56, '°C')}) se cita de memoria de ISO 13732-1.`,
  'plan.basis.oven-cooling':
    'Un horno cerrado pierde dos tercios de su calor en 70 a 115 minutos. Los manuales dicen cerca de una hora hasta que se abre el bloqueo; esto da de 30 a 72 minutos, y el reloj toma los 72.',
  'plan.basis.highest-heat': (_, f) =>
    `Se supone que un horno al máximo llega a entre ${f.first(230, '°C')} y ${f.measure(290, '°C')} en 12 a 30 minutos, y que cerrado pierde dos tercios en 40 a 90 minutos.`,
  'plan.basis.room-heat':
    'Cuánto calor absorben las paredes. Cambia en varios grados el momento más caluroso de la cocina.',
  'plan.basis.air-curve':
    'Con qué rapidez lo que desprende un quemador se deposita en las paredes, y lo poco que puede captar la campana.',
  'plan.basis.burners-at-once':
    'Cuántos quemadores pueden estar encendidos a la vez depende del local y del aire de arriba, y cambia con ellos en uno o dos. El segundo cálculo difería en una décima.',
  'plan.basis.glow': (_, f) =>
    `Cuándo se pone al rojo un quemador. Unas espirales vistas con cámara térmica quedaron en ${f.measure(550, '°C')} descubiertas y ${f.measure(750, '°C')} cubiertas; el margen se hizo para abarcar ambas.`,
  'plan.basis.safe-to-touch':
    'Cuándo se puede tocar: radiación y aire quieto. Un segundo cálculo difería entre 12 y 22 %; el reloj toma el extremo lento, y usted comprueba antes de tocar.',
  'plan.basis.kettle-cooling':
    'Con qué rapidez se enfría el agua hervida en el hervidor: las pérdidas se estiman, y sus propios avisos las reemplazan.',
  'plan.basis.voltage': 'La potencia va con el cuadrado de la tensión.',
  'plan.basis.wetting': 'El caudal mínimo que mantiene mojada una pared.',
  'plan.basis.level-jump':
    'Hasta dónde llega la película rápida del chorro en una superficie horizontal: dos escuelas, ambas mostradas como margen.',
  'plan.basis.contact': 'Qué temperatura comparten dos cuerpos en el primer contacto.',
  'plan.basis.surface-after':
    'Cuánto se calienta una superficie gruesa tras unos segundos bajo el agua.',
  'plan.basis.sheet': 'Cuánto se calienta una chapa fina bajo un charco.',
  'plan.basis.thermal-shock': 'Qué puede agrietar el calor o el frío repentino.',
  'plan.basis.window':
    'Cuánto aire trae una ventana abierta: tres fórmulas, que difieren hasta el doble.',
  'plan.basis.admittance': 'Cuánto calor absorbe una pared en horas.',
  'plan.basis.air': 'Cómo se acumula lo que se desprende en un local de aire mezclado.',
  'plan.basis.poured-spot':
    'Cuánto se calientan el agua y la superficie donde pasa el chorro. Un segundo cálculo de una encimera de granito dio 2,5 K menos.',
  'plan.basis.heated-through': 'Cuánto tarda un punto en calentarse en todo su espesor.',
  'plan.basis.jet-loss':
    'Lo que pierde el chorro al caer. Desde medio metro, un chorro liso difería medio kelvin del segundo cálculo.',
};
