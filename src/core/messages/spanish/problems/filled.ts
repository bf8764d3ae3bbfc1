import type { TranslationOf } from '../../model/translation.ts';
import type { filled as english } from '../../english/problems/filled.ts';

/** Why a field that the file left out was filled as it was. */
export const filled: TranslationOf<typeof english> = {
  'problems.filled.not-told': 'sin indicar',
  'problems.filled.plan-asks': 'sin indicar: el plan pregunta',
  'problems.filled.designation': 'nadie ha dicho para qué será',
  'problems.filled.holes': 'no se dibujó ningún hueco',
  'problems.filled.back-edges': 'ningún borde da a una pared',
  'problems.filled.backsplash': 'no se indicó ningún salpicadero',
  'problems.filled.tap': 'lo habitual es una manija sin ducha extraíble',
  'problems.filled.drainboard': 'no se indicó ningún escurridor',
  'problems.filled.racks': 'las rejillas se sacan, salvo que el fabricante las permita dentro',
  'problems.filled.shelves': 'no se midió ningún estante',
  'problems.filled.own-rows': 'no se cambió ninguna fila',
  'problems.filled.people': 'trabaja una persona, salvo que se indiquen más',
  'problems.filled.rest-days': 'no se planifica nada en Shabat ni fiestas, salvo que se indique',
  'problems.filled.overrides': 'no se anotó ninguna respuesta de un rabino',
  'problems.filled.ceiling': 'una altura de techo habitual',
  'problems.filled.hood': 'no se indicó campana: cuenta como ninguna hasta que se indique',
  'problems.filled.kitchen-mains': 'la tensión de red de la cocina',
  'problems.filled.country-mains': 'la tensión de red del país',
  'problems.filled.vessel-power':
    'lo habitual para un hervidor eléctrico en este país; 0 para lo que va al fuego',
  'problems.filled.utensil-count': 'uno, salvo que se indiquen más',
  'problems.filled.vessel-count': 'uno, salvo que se indiquen más',
  'problems.filled.altitude': 'nivel del mar: en la montaña el agua hierve a menos temperatura',
  'problems.filled.tap-cold': 'lo habitual para agua de red y para ensayos de hervidores',
  'problems.filled.circuits': 'no se indicó ningún circuito',
  'problems.filled.vessels': 'no se indicó ningún hervidor',
};
