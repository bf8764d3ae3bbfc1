import type { TranslationOf } from '../../model/translation.ts';
import type { page as english } from '../../english/run/page.ts';

/** Round the step: what the device promises, and what else can be pressed. */
export const page: TranslationOf<typeof english> = {
  'run.light.sound.armed': 'Sonido listo',
  'run.light.sound.touch-to-arm': 'Toque para activar el sonido',
  'run.light.sound.blocked': 'Sonido bloqueado',
  'run.light.sound.unknown': 'Sonido sin probar',
  'run.light.sound.elsewhere': 'El sonido sale de la otra página',
  'run.light.wake.held': 'Pantalla encendida',
  'run.light.wake.lost': 'La pantalla puede apagarse',
  'run.light.wake.not-supported': 'Ponga el bloqueo automático en Nunca mientras trabaja',
  'run.light.other-lead': 'Otra página dirige este trabajo',
  'run.arm': 'Toque para activar el sonido',
  'run.arm.region': 'Sonido',
  'run.arm.about': 'Tras reiniciarse, la tableta no suena hasta que se toca una vez.',
  'run.arm.calling': ({ timer, state }, f) => `${f.say(timer)}, ${f.say(state)}`,

  'run.side': 'Al lado del paso',
  'run.pause': 'Pausa',
  'run.resume': 'Continuar',
  'run.ran-out': 'Se acabó aquí',
  'run.happened': 'Pasó algo',
  'run.steps': ({ done, of }) => `Pasos ${done}/${of}`,
  'run.settings': 'Ajustes',
  'run.until-when': 'Hasta cuándo',
  'run.back': 'Volver',
  'run.alarm-failed': ({ timer }, f) =>
    `No se pudo hacer sonar la alarma de “${f.say(timer)}”: mire la pantalla.`,

  'run.alarm-failed.no-audio': 'Este navegador no tiene reloj de audio.',
  'run.alarm-failed.no-gesture':
    'Nadie ha tocado la página desde que se abrió, y el navegador no permite el sonido.',
  'run.alarm-failed.no-sounds': 'No se pudieron cargar los sonidos.',
  'run.alarm-failed.interrupted': 'Una llamada u otra aplicación ocupa el altavoz.',
  'run.alarm-failed.suspended': 'El dispositivo detuvo el sonido.',
  'run.alarm-failed.stuck': 'El reloj de audio está parado.',
  'run.alarm-failed.other': 'No se pudo producir el sonido.',
  'run.written-anew':
    'El diario guardado se borró desde fuera durante el trabajo. Esta página lo escribió de nuevo, entero, con lo que tenía en memoria.',
};
