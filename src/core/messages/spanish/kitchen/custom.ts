import type { TranslationOf } from '../../model/translation.ts';
import type { custom as english } from '../../english/kitchen/custom.ts';

/** A custom of the household's own, and what a person fills in about one answer. */
export const custom: TranslationOf<typeof english> = {
  'kitchen.custom.title': 'Una costumbre propia',
  'kitchen.custom.first-name': 'Nuestra costumbre',
  'kitchen.custom.make': 'Hacer una costumbre propia',
  'kitchen.custom.about': ({ custom: base }, f) =>
    `Empieza como copia de: ${f.say(base)}. Usted cambia las filas que en su casa son distintas, cada una con quién lo dijo, cuándo y por qué. Se guarda en el archivo de la cocina y va con él.`,
  'kitchen.custom.resting': ({ name, custom: base }, f) =>
    `“${name}”, copiada de: ${f.say(base)}, se guarda y ahora no se usa. Una copia nueva ocupa su lugar.`,
  'kitchen.custom.called': 'Cómo la llaman',
  'kitchen.custom.copy': ({ custom: base }, f) => `Copiar: ${f.say(base)}`,
  'kitchen.custom.back': 'Volver',
  'kitchen.custom.copied': ({ custom: base, changed, rows }, f) =>
    `Copia de: ${f.say(base)}; ${changed === 0 ? 'ninguna fila cambiada todavía' : `filas cambiadas: ${f.number(changed)} de ${f.number(rows)}`}. Una respuesta sobre un elemento va antes que ella. Lo que cambian grietas y rayas queda como está.`,
  'kitchen.custom.done': 'Listo',
  'kitchen.custom.delete': 'Borrar esta costumbre',
  'kitchen.custom.delete-sure': ({ name }) => `Sí, borrar “${name}”`,
  'kitchen.custom.keep': 'Conservarla',
  'kitchen.custom.change': 'Cambiar',
  'kitchen.custom.back-to-row': 'Volver a la fila de la costumbre',
  'kitchen.custom.own-way': ({ way }, f) => `${f.say(way)}.`,
  'kitchen.custom.said': ({ why, saidBy, saidOn }) => `${why} (${saidBy}, ${saidOn})`,
  'kitchen.custom.change-row': ({ row }, f) => `Cambiar la fila: ${f.say(row)}`,
  'kitchen.custom.base-has': ({ way, reason }, f) =>
    `La costumbre dice: ${f.say(way)}. ${f.say(reason)}`,
  'kitchen.custom.follows': 'La siguen todos los elementos de los que trata esta fila.',
  'kitchen.custom.keep-row': 'Guardar la fila',

  'kitchen.custom.row': ({ kinds, materials, anyMaterial, burners, cleaning, purposes }, f) => {
    const what = [
      kinds.map(f.say).join(', '),
      ...(anyMaterial ? ['de material desconocido'] : []),
      ...(!anyMaterial && materials.length > 0 ? [`de ${materials.map(f.say).join(', ')}`] : []),
      ...(burners.length > 0 ? [`con ${burners.map(f.say).join(', ')}`] : []),
      ...(cleaning === 'does-not' ? ['sin autolimpieza que queme'] : []),
      ...(cleaning === 'burns-out' ? ['con autolimpieza que quema'] : []),
    ].join(' ');
    const when = purposes.length > 0 ? `, ${purposes.map(f.say).join(' o ')}` : '';
    return f.capital(what) + when;
  },
  'kitchen.custom.material.stainless-steel': 'acero inoxidable',
  'kitchen.custom.material.cast-iron': 'hierro fundido',
  'kitchen.custom.material.enamelled-steel': 'acero esmaltado',
  'kitchen.custom.material.porcelain': 'porcelana',
  'kitchen.custom.material.ceramic': 'cerámica',
  'kitchen.custom.material.glass': 'vidrio',
  'kitchen.custom.material.glass-ceramic': 'vitrocerámica',
  'kitchen.custom.material.granite': 'granito',
  'kitchen.custom.material.marble': 'mármol',
  'kitchen.custom.material.soapstone': 'esteatita',
  'kitchen.custom.material.concrete': 'hormigón (concreto)',
  'kitchen.custom.material.quartz-composite': 'compuesto de cuarzo',
  'kitchen.custom.material.acrylic': 'acrílico',
  'kitchen.custom.material.laminate': 'laminado',
  'kitchen.custom.material.wood': 'madera',
  'kitchen.custom.material.raw-wood': 'madera sin tratar',
  'kitchen.custom.material.tile': 'azulejo',
  'kitchen.custom.material.plastic': 'plástico',
  'kitchen.custom.material.silicone': 'silicona',
  'kitchen.custom.material.unknown': 'material desconocido',
  'kitchen.custom.burner.electric-coil': 'espiral eléctrica',
  'kitchen.custom.burner.solid-plate': 'disco macizo',
  'kitchen.custom.burner.radiant-glass': 'vitrocerámica radiante',
  'kitchen.custom.burner.induction': 'inducción',
  'kitchen.custom.burner.gas-sealed': 'gas sellado',
  'kitchen.custom.burner.gas-open': 'gas abierto',
  'kitchen.custom.burner.gas-wok': 'gas wok',
  'kitchen.custom.burner.commercial-open': 'industrial abierto',
  'kitchen.custom.burner.portable-plate': 'placa portátil',
  'kitchen.custom.purpose.new-kitchen': 'en una cocina nueva',
  'kitchen.custom.purpose.passover': 'para Pésaj',
  'kitchen.custom.purpose.mix-up': 'tras una mezcla por error',
  'kitchen.custom.way': ({ method, thenCover }, f) =>
    `${f.say(method)}${thenCover ? ', después cubrir' : ''}`,
  'kitchen.custom.timed-way': ({ method, minutes, thenCover }, f) =>
    `${f.say(method)}, ${f.shortNumber(minutes)} min${thenCover ? ', después cubrir' : ''}`,

  'kitchen.custom.way.method': 'Qué se hace',
  'kitchen.custom.way.minutes': 'Minutos',
  'kitchen.custom.way.cover': '¿Se cubre después?',
  'kitchen.custom.way.cover.yes': 'Sí',
  'kitchen.custom.way.cover.no': 'No',
  'kitchen.custom.way.said-by': 'Quién lo dijo',
  'kitchen.custom.way.said-on': 'Qué día',
  'kitchen.custom.way.why': 'Por qué',
  'kitchen.custom.missing.minutes': ({ least, most }, f) =>
    `Minutos: de ${f.number(least)} a ${f.number(most)}.`,
  'kitchen.custom.missing.said-by': 'Escriba quién lo dijo.',
  'kitchen.custom.missing.said-on': 'Elija el día en que se dijo.',
  'kitchen.custom.missing.why': 'Escriba por qué.',
};
