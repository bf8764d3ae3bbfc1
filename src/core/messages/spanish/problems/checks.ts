import type { TranslationOf } from '../../model/translation.ts';
import type { checks as english } from '../../english/problems/checks.ts';

/** Fields that are each in order and do not fit together. */
export const checks: TranslationOf<typeof english> = {
  'problems.mains.found': ({ country }) =>
    `nada, y ninguna tensión de red habitual para "${country}"`,
  'problems.mains.allowed': ({ least, most, countries }) =>
    `un número de ${least} a ${most}, o uno de los países ${countries}`,
  'problems.mains.advice': 'Escriba la tensión de la red, como 120 o 230.',
  'problems.vessel-power.none': 'ninguna potencia (0 o falta)',
  'problems.vessel-power.allowed': ({ leastW }) => `al menos ${leastW} W para uno eléctrico`,
  'problems.vessel-power.advice': 'Lea los vatios en la placa de datos de debajo.',

  'problems.reference.circuit.none': 'la id de un circuito; este archivo no tiene ninguno',
  'problems.reference.burner.none': 'la id de un quemador; este archivo no tiene ninguno',
  'problems.reference.cooktop.none': 'la id de una placa; este archivo no tiene ninguna',
  'problems.reference.part.none': 'una parte del elemento; este no tiene ninguna',
  'problems.reference.part.describe': 'Quite la parte: la respuesta es para todo el elemento.',
  'problems.reference.part.allowed': ({ ids }, f) => `una parte del elemento: ${f.say(ids)}`,
  'problems.reference.fixture.none': 'la id de un elemento; este archivo no tiene ninguno',
  'problems.reference.circuit.describe': 'Describa primero el circuito.',
  'problems.reference.burner.describe': 'Describa primero el quemador.',
  'problems.reference.cooktop.describe': 'Describa primero la placa.',
  'problems.reference.fixture.describe': 'Describa primero el elemento.',
  'problems.reference.circuit.allowed': ({ ids }, f) => `la id de un circuito: ${f.say(ids)}`,
  'problems.reference.burner.allowed': ({ ids }, f) => `la id de un quemador: ${f.say(ids)}`,
  'problems.reference.cooktop.allowed': ({ ids }, f) => `la id de una placa: ${f.say(ids)}`,
  'problems.reference.fixture.allowed': ({ ids }, f) => `la id de un elemento: ${f.say(ids)}`,
  'problems.reference.use-one': 'Use una de estas id.',

  'problems.id-twice.found': ({ id, earlier }) => `"${id}", que ya tiene ${earlier}`,
  'problems.id-twice.allowed': 'una id que nada más tenga en el archivo',
  'problems.id-twice.advice': ({ example }) => `Dele otra id, como "${example}".`,

  'problems.stove.burners': ({ ids }, f) => `la id del quemador sobre el que va: ${f.say(ids)}`,
  'problems.stove.no-burners': 'la id del quemador sobre el que va: no hay ninguno descrito',
  'problems.stove.name': 'Nombre el quemador en el que se calienta.',
  'problems.stove.circuit': ({ kind }) => `un circuito para uno de fogón (${kind})`,
  'problems.stove.no-circuit': 'ningún circuito',
  'problems.stove.advice': 'Quite el circuito, o ponga "electric-kettle" o "urn".',
  'problems.electric.burner': ({ kind }) => `un quemador para uno eléctrico (${kind})`,
  'problems.electric.no-burner': 'ningún quemador',
  'problems.electric.advice': 'Quite el quemador, o ponga "stove-kettle" o "pot".',

  'problems.answers.found': ({ fixture, earlier }) =>
    `una segunda respuesta sobre "${fixture}" (la primera es overrides[${earlier}])`,
  'problems.answers.allowed': 'una respuesta por elemento',
  'problems.answers.advice': 'Conserve solo la última respuesta.',

  'problems.own-row.sephardic': ({ rows }, f) => `una fila de la costumbre sefardí: ${f.say(rows)}`,
  'problems.own-row.ashkenazic': ({ rows }, f) =>
    `una fila de la costumbre askenazí: ${f.say(rows)}`,
  'problems.own-row.use-one': 'Use una de estas filas.',
  'problems.own-row.use-method': 'Use uno de estos métodos para esta fila.',
  'problems.own-row-twice.found': ({ row, earlier }) =>
    `"${row}" por segunda vez (la primera es changedRows[${earlier}])`,
  'problems.own-row-twice.allowed': 'cada fila una vez',
  'problems.own-row-twice.advice': 'Conserve solo el último cambio.',
  'problems.own-cover.allowed': ({ method }) => `true junto al método "${method}"`,
  'problems.own-cover.advice': 'Quite "cover", o elija otro método.',

  'problems.corner-twice.found': ({ corner, next }) =>
    `las esquinas ${corner} y ${next} en un mismo lugar`,
  'problems.corner-twice.allowed': 'cada esquina una vez',
  'problems.corner-twice.closes': 'Quite la última esquina: el contorno se cierra solo.',
  'problems.corner-twice.take-out': ({ corner }) => `Quite la esquina ${corner}.`,
  'problems.spike.found': ({ corner }) =>
    `un contorno que vuelve sobre sí mismo en la esquina ${corner}`,
  'problems.spike.allowed': 'las esquinas en orden, una vez alrededor de la superficie',
  'problems.spike.advice': ({ corner }) => `Mire la esquina ${corner} y las de al lado.`,
  'problems.crossing.found': ({ first, second }) =>
    `bordes desde la esquina ${first} y desde la esquina ${second} que se cruzan o se tocan`,
  'problems.crossing.allowed': 'un contorno que no se cruza a sí mismo',
  'problems.crossing.advice':
    'Ponga las esquinas en el orden en que aparecen al rodear la superficie.',
  'problems.surface.found': ({ surfaceM2 }, f) =>
    `una superficie de ${f.measure(surfaceM2, 'm²', 4)}`,
  'problems.surface.allowed': ({ leastM2 }, f) =>
    `al menos ${f.shortMeasure(leastM2, 'm²', 4, 'up')}`,
  'problems.surface.advice':
    'Las medidas van en metros y las esquinas dan una vuelta a la superficie.',

  'problems.box': ({ xMinM, xMaxM, yMinM, yMaxM }, f) =>
    `x de ${f.tape(xMinM, { decimals: 3, isShort: true })} a ${f.tape(xMaxM, { decimals: 3, isShort: true })}, y de ${f.tape(yMinM, { decimals: 3, isShort: true })} a ${f.tape(yMaxM, { decimals: 3, isShort: true })}`,
  'problems.hole.found': ({ box }, f) => `un hueco en ${f.say(box)}`,
  'problems.hole.allowed': ({ box }, f) => `dentro del contorno de la encimera (${f.say(box)})`,
  'problems.hole.advice': 'Mídalo desde la misma esquina que la encimera.',
  'problems.holes-overlap.found': ({ earlier }) => `un hueco que se solapa con holes[${earlier}]`,
  'problems.holes-overlap.allowed': 'huecos separados entre sí',
  'problems.holes-overlap.advice': 'Dibuje un solo hueco para ambos.',
  'problems.back-edge.corners': ({ last }) => `números de esquina de 0 a ${last}`,
  'problems.back-edge.first': 'La primera esquina del contorno es la 0.',
  'problems.back-edge.neighbours': 'dos esquinas vecinas del contorno',
  'problems.back-edge.next': ({ from, next }) =>
    `Después de la esquina ${from} viene la esquina ${next}.`,
  'problems.bowls.found': ({ bowlsM2 }, f) => `senos de ${f.measure(bowlsM2, 'm²', 2)} en total`,
  'problems.bowls.allowed': ({ outlineM2 }, f) =>
    `no más que el contorno del fregadero, ${f.measure(outlineM2, 'm²', 2)}`,
  'problems.bowls.advice': 'Mida de nuevo los senos y el contorno, en metros.',
  'problems.burner-place.allowed': ({ box }, f) => `un punto de la placa (${f.say(box)})`,
  'problems.burner-place.advice':
    'Mida el centro del quemador en la misma vista desde arriba que la placa.',
  'problems.heights.allowed': ({ fromM }, f) => `más de ${f.tape(fromM)}, su borde inferior`,
  'problems.heights.advice': 'Mida los dos bordes desde el suelo.',
  'problems.wall.needs-outline': 'una pared de room.outline, que no está indicado',
  'problems.wall.tell-outline':
    'Indique en room.outline las esquinas de la habitación, o quite esto.',
  'problems.wall.fits': ({ leftM, lengthM, atM }, f) =>
    `como mucho ${f.tape(leftM)}: la pared mide ${f.tape(lengthM)}, y esto empieza en ${f.tape(atM)}`,
  'problems.wall.shorten':
    'Mida desde el extremo izquierdo de la pared, tal como la ve desde dentro.',

  'problems.lon-zone.found': ({ lonDeg, zone }) => `${lonDeg} con la zona "${zone}"`,
  'problems.lon-zone.allowed': 'una longitud dentro de su zona, este positivo, oeste negativo',
  'problems.lon-zone.advice': ({ meaning }, f) => `${f.say(meaning)} Revise su signo y la zona.`,
  'problems.lon-zone.wrong-hour': 'Los días de descanso empezarían a una hora equivocada.',
  'problems.lon-zone.sabbath': ({ wallMs, zone }, f) =>
    `Shabat empezaría ${f.shortMoment(wallMs, zone)}.`,
};
