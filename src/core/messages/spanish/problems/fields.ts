import type { TranslationOf } from '../../model/translation.ts';
import type { fields as english } from '../../english/problems/fields.ts';

/** Where a problem stands, what a value is and what one field may hold. Numbers are as the file writes them. */
export const fields: TranslationOf<typeof english> = {
  'problems.told': ({ where, found, allowed, advice }, f) =>
    `${f.say(where)}: hay ${f.say(found)}; permitido: ${f.say(allowed)}. ${f.say(advice)}`,
  'problems.where.file': 'archivo',
  'problems.where.field': ({ path }) => path,
  'problems.where.line': ({ line, field }, f) => `Línea ${line}, ${f.say(field)}`,
  'problems.where.letter': ({ line, column }) => `línea ${line}, columna ${column}`,

  'problems.value': ({ json }) => json,
  'problems.found.missing': 'nada (falta)',
  'problems.found.none': 'ninguno',
  'problems.found.list': ({ count }) => `una lista de ${count}`,
  'problems.found.object': 'un objeto en { }',
  'problems.did-you-mean': ({ name }) => `¿Quiso decir "${name}"?`,

  'problems.number.allowed': ({ least, most }) => `un número de ${least} a ${most}`,
  'problems.number.bare':
    'Escriba el número sin comillas y sin unidad, con punto para los decimales.',
  'problems.number.add': 'Añada este campo.',
  'problems.number.plain': 'Escriba un número simple.',
  'problems.number.more': ({ least, most }) =>
    `Ponga más, en la unidad del final del nombre (de ${least} a ${most}).`,
  'problems.number.less': ({ least, most }) =>
    `Ponga menos, en la unidad del final del nombre (de ${least} a ${most}).`,
  'problems.whole.allowed': ({ least, most }) => `un número entero de ${least} a ${most}`,
  'problems.whole.round': ({ to }) => `Redondéelo: ${to}.`,
  'problems.text.allowed': ({ least, most }) =>
    `un texto de ${least} a ${most} letras entre comillas`,
  'problems.text.seen': 'un texto sin códigos de control ni signos que inviertan o apilen letras',
  'problems.text.look': 'Se ha leído sin ellos: compruebe que dice lo que debe.',
  'problems.text.write': 'Escriba unas palabras entre comillas.',
  'problems.text.shorten': ({ by }, f) =>
    `Acórtelo en ${by} ${f.plural(by, { one: 'letra', other: 'letras' })}.`,
  'problems.text.blank': 'Escriba algo aquí.',
  'problems.choice.advice': 'Elija uno de estos.',
  'problems.yes-no.allowed': 'true o false',
  'problems.yes-no.advice': 'Escriba true o false, sin comillas.',
  'problems.unknown-field.found': ({ name }) => `el campo desconocido "${name}"`,
  'problems.unknown-field.more': ({ more }, f) =>
    `${f.number(more)} ${f.plural(more, { one: 'campo desconocido más', other: 'campos desconocidos más' })}`,
  'problems.unknown-field.allowed': ({ names }) => `los campos ${names}`,
  'problems.unknown-field.advice': 'Quítelo; las palabras libres van en un campo de comentario.',
  'problems.object.allowed': ({ names }) => `un objeto en { } con ${names}`,
  'problems.object.advice': 'Escriba los campos entre { y }.',
  'problems.list.allowed': ({ least, most }) => `una lista en [ ] de ${least} a ${most}`,
  'problems.list.wrap': 'Póngalo entre [ y ].',
  'problems.list.write': 'Escriba una lista en [ ].',
  'problems.list.add': ({ count }) => `Añada ${count} más.`,
  'problems.list.take-out': 'Quite algunos.',
  'problems.pair.advice': 'Escriba dos números entre corchetes: [1, 2].',
  'problems.kind.object': 'un objeto en { } con su clase (kind)',
  'problems.kind.wrap': 'Escríbalo entre { y }.',
  'problems.kind.advice': 'Diga qué es con una de estas palabras.',
  'problems.id.allowed': ({ least, most }) =>
    `de ${least} a ${most} letras de la a a la z, cifras, - o _, entre comillas`,
  'problems.id.advice': 'Use un nombre corto sin espacios, como "sink-left".',
  'problems.date.allowed': 'una fecha como "aaaa-mm-dd"',
  'problems.date.advice': 'Escriba el año, el mes y el día, como "2026-03-29".',
  'problems.date.days': ({ last }) => `del día 1 al ${last} en ese mes`,
  'problems.date.look-up': 'Busque la fecha otra vez.',
  'problems.local-time.allowed':
    'un día y una hora locales como "aaaa-mm-ddThh:mm", de los años 1950 a 2099',
  'problems.local-time.advice':
    'Escriba el día y la hora del reloj de la cocina, como "2026-03-29T20:00".',
  'problems.point.allowed': 'una esquina [x, y] en metros',
  'problems.edge.allowed': 'dos números de esquinas vecinas [desde, hasta], contados desde 0',
  'problems.country.allowed': 'un país con dos letras mayúsculas (ISO 3166-1)',
  'problems.country.advice': 'Escriba el código de dos letras, como "US", "GB" o "IL".',
  'problems.zone.quoted': 'un nombre de zona horaria IANA entre comillas',
  'problems.zone.allowed': 'un nombre de zona horaria IANA',
  'problems.zone.advice': 'Escríbalo como "Europe/Paris": región, barra, ciudad.',
  'problems.format.advice':
    'Esto marca un archivo de cocina; sin ello el archivo es de otra clase.',
  'problems.version.advice': ({ version }) => `Escriba ${version}: la versión de este formato.`,
};
