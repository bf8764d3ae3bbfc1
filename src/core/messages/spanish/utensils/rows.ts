import type { TranslationOf } from '../../model/translation.ts';
import type { rows as english } from '../../english/utensils/rows.ts';

/** Rows of the table of utensils by their id: why, and what is asked. */
export const rows: TranslationOf<typeof english> = {
  'utensils.row.sieve.reason':
    'Lo que se esconde en los agujeros no se puede limpiar, así que coladores y ralladores no se kasherizan.',
  'utensils.row.dough-board.reason':
    'Por costumbre, una tabla en la que se amasó no se usa, ni kasherizada.',
  'utensils.row.earthenware.reason': 'El barro que se usó en caliente no se kasheriza.',
  'utensils.row.porcelain.reason':
    'La loza y lo vidriado se juzgan como el barro, que no se kasheriza.',
  'utensils.row.enamel.reason':
    'El código no kasheriza lo esmaltado por dentro; las autoridades posteriores difieren.',
  'utensils.row.enamel.ask': '¿Se puede sumergir en agua hirviendo el metal esmaltado?',
  'utensils.row.nonstick.reason':
    'Los códigos no nombran los revestimientos; un revestimiento soporta agua hirviendo, nunca ponerse al rojo.',
  'utensils.row.nonstick.ask':
    '¿Se puede kasherizar con agua hirviendo una sartén con revestimiento?',
  'utensils.row.made.reason':
    'Los códigos no nombran los plásticos, y las autoridades posteriores difieren.',
  'utensils.row.made.ask': '¿Se puede sumergir en agua hirviendo el plástico o la silicona?',
  'utensils.row.unknown-material.reason': 'No se sabe de qué es, así que no se usa.',
  'utensils.row.unknown-material.ask': '¿De qué material es?',
  'utensils.row.glass-rinse.reason': 'Según esta costumbre el vidrio no absorbe nada: se enjuaga.',
  'utensils.row.glass-drink.reason':
    'Según esta costumbre el vidrio se juzga como el barro; muchos remojan tres días los vasos usados en frío, cambiando el agua cada 24 horas.',
  'utensils.row.glass-drink.ask':
    '¿Los vasos usados en frío se remojan para Pésaj, o solo se lavan?',
  'utensils.row.glass-hot.reason':
    'Según esta costumbre el vidrio usado en caliente se juzga como el barro, que no se kasheriza.',
  'utensils.row.glass-hot.ask': '¿Se puede kasherizar a pesar de todo el vidrio usado en caliente?',
  'utensils.row.cold.reason':
    'Se usó solo en frío: basta frotar y enjuagar. Un líquido que estuvo dentro un día, o comida fuerte, cuenta como caliente.',
  'utensils.row.wood-fire.reason':
    'Lo que se usó al fuego se kasheriza con fuego, y la madera no lo aguanta.',
  'utensils.row.wood-joints.reason':
    'Queda comida en juntas que no se abren, y lo que no se puede limpiar no se kasheriza con agua.',
  'utensils.row.wood-open.reason':
    'Grietas, hoyos y partes ásperas no se pueden limpiar, y lo que no se puede limpiar no se kasheriza con agua.',
  'utensils.row.wood-open.ask': '¿Es liso por todas partes, o se puede lijar hasta que lo sea?',
  'utensils.row.wood-smooth.reason':
    'La madera lisa y la piedra se kasherizan en agua hirviendo, como el metal.',
  'utensils.row.stone-fire.reason':
    'Lo que se usó al fuego se kasheriza con fuego, y la piedra se agrietaría.',
  'utensils.row.mix-up-fire.reason':
    'Se usó al fuego sin líquido. El calor ligero sirve si lo absorbido era entonces permitido; en una mezcla por error puede no serlo.',
  'utensils.row.mix-up-fire.ask': '¿Basta el calor ligero para esta mezcla por error?',
  'utensils.row.soft-metal-fire.reason':
    'Se usó al fuego y necesita calor, pero este metal se funde o se deforma antes de ponerse al rojo.',
  'utensils.row.soft-metal-fire.ask': '¿Le basta el calor ligero?',
  'utensils.row.leaven-pan.reason':
    'Una sartén se usa con poca grasa o ninguna. El calor es el modo estricto; por jametz muchos la kasherizan de forma más ligera.',
  'utensils.row.leaven-pan.ask':
    '¿Una sartén se kasheriza para Pésaj con calor, con calor ligero o con agua?',
  'utensils.row.pan.reason':
    'Una sartén usada para lo que no era kosher se kasheriza con calor; en agua no quedaría kasherizada para uso en caliente.',
  'utensils.row.tray.reason':
    'Aquello en que se horneó comida se kasheriza con calor, engrasado o no. Puede ser más sencillo reemplazarlo.',
  'utensils.row.fire.reason': 'Como absorbió, así expulsa: usado al fuego, se kasheriza con fuego.',
  'utensils.row.gadget.reason':
    'Donde juntas o un mango pegado no se abren, queda comida dentro, y el agua kasheriza solo lo limpio.',
  'utensils.row.gadget.ask': '¿Se puede desmontar y limpiar por todas partes, también el mango?',
  'utensils.row.joints.reason':
    'Queda comida en juntas que no se abren. El calor ligero la quema ahí y sirve donde bastaría el agua.',
  'utensils.row.cracks.reason':
    'Grietas, hoyos y óxido no se pueden limpiar. El calor ligero quema lo que hay en ellos y sirve donde bastaría el agua.',
  'utensils.row.liquid.reason':
    'Como absorbió, así expulsa: usado con líquido al fuego, se kasheriza en agua hirviendo.',
  'utensils.row.poured.reason':
    'Se le echó comida caliente. Verter lo kasherizaría; sumergir hace más y no deja ningún punto.',
};
