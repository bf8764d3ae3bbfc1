import type { TranslationOf } from '../../model/translation.ts';
import type { tops as english } from '../../english/custom/tops.ts';

/** Rows of the customs for counters and tables: why, what may change it, what is asked. */
export const tops: TranslationOf<typeof english> = {
  'custom.way.top-stone-passover.reason':
    'Encima se vertieron o derramaron comida y líquido calientes, así que la kasheriza el agua hirviendo vertida sobre cada punto.',
  'custom.way.top-stone-passover.would-change': 'Puede que su costumbre no cubra: pregunte.',
  'custom.way.top-stone-passover.ask': '¿Hay que cubrir la encimera para Pésaj después de verter?',
  'custom.way.top-stone-passover.why': 'En Pésaj muchos cubren incluso lo kasherizado.',
  'custom.way.top-stone-passover.until-then': 'Vierta, y después cubra.',
  'custom.way.top-stone-passover.answer-1': 'Basta verter.',
  'custom.way.top-stone-passover.answer-2': 'Verter, después cubrir.',
  'custom.way.top-stone.reason':
    'Encima se vertieron o derramaron comida y líquido calientes, así que la kasheriza el agua hirviendo vertida sobre cada punto.',
  'custom.way.top-stone.would-change': 'Avise si tiene grietas o absorbe agua.',
  'custom.way.top-glass.ashkenazic.reason': 'Según esta costumbre el vidrio no se kasheriza.',
  'custom.way.top-glass.ashkenazic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.top-clay.ashkenazic.reason':
    'La porcelana y el barro vidriado se juzgan como el barro, que no se kasheriza.',
  'custom.way.top-clay.ashkenazic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.top-enamel.ashkenazic.reason': 'Lo esmaltado no se kasheriza según esta costumbre.',
  'custom.way.top-enamel.ashkenazic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.top-made.ashkenazic.reason':
    'Los códigos no nombran este material y las autoridades posteriores difieren; la costumbre es cubrir.',
  'custom.way.top-made.ashkenazic.would-change':
    'Su rabino puede mandar verter antes: solo si el fabricante dice que soporta agua hirviendo.',
  'custom.way.top-tile.reason':
    'Las juntas entre azulejos retienen comida a la que ningún vertido llega, y los azulejos vidriados se juzgan como barro.',
  'custom.way.top-tile.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.counter-wood.ashkenazic.reason':
    'La madera lisa se kasheriza con agua hirviendo, según se usó; lije antes todos los cortes, y muchos la cubren después.',
  'custom.way.counter-wood.ashkenazic.would-change':
    'Avise si quedan cortes después de lijar, si está barnizada o si se amasó encima.',
  'custom.way.counter-wood.sephardic.reason':
    'La madera lisa se kasheriza con agua hirviendo, según se usó; lije antes todos los cortes.',
  'custom.way.counter-wood.sephardic.would-change':
    'Avise si quedan cortes después de lijar, o si está barnizada.',
  'custom.way.top-raw.reason':
    'La madera sin tratar absorbe agua y retiene comida en sus poros, que el agua no kasheriza.',
  'custom.way.top-raw.would-change': 'Sobre una superficie lisa y sin barniz se vierte.',
  'custom.way.counter-unknown.ashkenazic.reason':
    'No se sabe de qué es la encimera, así que se cubre.',
  'custom.way.counter-unknown.ashkenazic.would-change': 'Diga de qué material es.',
  'custom.way.counter-unknown.ashkenazic.ask': '¿De qué es esta encimera?',
  'custom.way.counter-unknown.ashkenazic.why':
    'La piedra y el metal se kasherizan vertiendo; lo demás se cubre.',
  'custom.way.counter-unknown.ashkenazic.until-then': 'Cúbrala.',
  'custom.way.counter-unknown.sephardic.reason':
    'No se sabe de qué es la encimera, así que se vierte y después se cubre.',
  'custom.way.counter-unknown.sephardic.would-change': 'Diga de qué material es.',
  'custom.way.counter-unknown.sephardic.ask': '¿De qué es esta encimera?',
  'custom.way.counter-unknown.sephardic.why':
    'La piedra y el metal se kasherizan vertiendo; por los materiales fabricados se pregunta.',
  'custom.way.counter-unknown.sephardic.until-then': 'Vierta, y después cubra.',
  'custom.way.table-wood.reason':
    'En una mesa se derrama sopa: la madera lisa se kasheriza vertiendo. Lije antes todos los cortes; muchos la cubren después.',
  'custom.way.table-wood.would-change':
    'Avise si quedan cortes después de lijar, si está barnizada o si se amasó encima.',
  'custom.way.table-pour.reason': 'En una mesa se derrama sopa: lo liso se kasheriza vertiendo.',
  'custom.way.table-pour.would-change':
    'Avise si tiene cortes o grietas, si está barnizada o si se le abre un ala.',
  'custom.way.table-other.reason':
    'Los códigos no nombran este material, y una mesa se cubre con facilidad.',
  'custom.way.table-other.would-change': 'Su rabino puede mandar verter.',
  'custom.way.table-unknown.reason':
    'No se sabe de qué es la mesa, y una mesa se cubre con facilidad.',
  'custom.way.table-unknown.would-change': 'Diga de qué material es.',
  'custom.way.table-unknown.ask': '¿De qué es esta mesa?',
  'custom.way.table-unknown.why': 'La madera lisa, la piedra y el metal se kasherizan vertiendo.',
  'custom.way.table-unknown.until-then': 'Cúbrala.',
  'custom.way.top-clay.sephardic.reason':
    'El barro vidriado se juzga como el barro, que no se kasheriza; autoridades posteriores de esta costumbre vierten tres veces.',
  'custom.way.top-clay.sephardic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.top-clay.sephardic.ask':
    '¿Se puede kasherizar vertiendo tres veces, o hace falta una cubierta?',
  'custom.way.top-clay.sephardic.why':
    'El código no kasheriza el barro vidriado; muchos vierten tres veces.',
  'custom.way.top-clay.sephardic.until-then': 'Vierta una vez, y después cubra.',
  'custom.way.top-clay.sephardic.answer-1': 'Verter tres veces; no hace falta cubierta.',
  'custom.way.top-clay.sephardic.answer-2': 'No se kasheriza: cubrir.',
  'custom.way.top-enamel.sephardic.reason':
    'Por el esmalte se pregunta: unos lo juzgan como metal, otros como vidrio, otros no lo kasherizan.',
  'custom.way.top-enamel.sephardic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.top-enamel.sephardic.ask':
    '¿Se puede kasherizar vertiendo tres veces, o hace falta una cubierta?',
  'custom.way.top-enamel.sephardic.why':
    'Muchos vierten tres veces sobre el esmalte; otros no lo kasherizan de ningún modo.',
  'custom.way.top-enamel.sephardic.until-then': 'Vierta una vez, y después cubra.',
  'custom.way.top-enamel.sephardic.answer-1': 'Verter tres veces; no hace falta cubierta.',
  'custom.way.top-enamel.sephardic.answer-2': 'No se kasheriza: cubrir.',
  'custom.way.top-glass.sephardic.reason':
    'El vidrio no absorbe: según esta costumbre basta enjuagarlo.',
  'custom.way.top-glass.sephardic.would-change': 'Avise si está agrietado o desconchado.',
  'custom.way.top-made.sephardic.reason':
    'Los códigos no nombran este material y las autoridades posteriores difieren.',
  'custom.way.top-made.sephardic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.top-made.sephardic.ask':
    '¿Se puede kasherizar esta encimera vertiendo, y hace falta una cubierta después?',
  'custom.way.top-made.sephardic.why':
    'Los códigos no nombran este material y las autoridades posteriores difieren.',
  'custom.way.top-made.sephardic.until-then': 'Vierta, y después cubra.',
  'custom.way.top-made.sephardic.answer-1': 'Verter; no hace falta cubierta.',
  'custom.way.top-made.sephardic.answer-2': 'Verter, después cubrir.',
  'custom.way.top-made.sephardic.answer-3': 'Cubrir sin verter.',
};
