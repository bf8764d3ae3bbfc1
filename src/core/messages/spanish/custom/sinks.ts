import type { TranslationOf } from '../../model/translation.ts';
import type { sinks as english } from '../../english/custom/sinks.ts';

/** Rows of the customs for sinks: why, what may change it, what is asked. */
export const sinks: TranslationOf<typeof english> = {
  'custom.way.sink-metal-passover.reason':
    'Sobre él se vertieron o derramaron comida y líquido calientes, así que lo kasheriza el agua hirviendo vertida sobre cada punto.',
  'custom.way.sink-metal-passover.would-change':
    'Puede que su costumbre no añada nada al vertido: pregunte.',
  'custom.way.sink-metal-passover.ask':
    '¿Hace falta una rejilla o un barreño en el fregadero para Pésaj después de verter?',
  'custom.way.sink-metal-passover.why':
    'Algunos lo añaden en Pésaj; otros se apoyan en el vertido.',
  'custom.way.sink-metal-passover.until-then': 'Vierta, y después ponga una rejilla en cada seno.',
  'custom.way.sink-metal-passover.answer-1': 'Basta verter.',
  'custom.way.sink-metal-passover.answer-2': 'Verter, después una rejilla o un barreño.',
  'custom.way.sink-metal.reason':
    'Sobre él se vertieron o derramaron comida y líquido calientes, así que lo kasheriza el agua hirviendo vertida sobre cada punto.',
  'custom.way.sink-metal.would-change': 'Avise si tiene grietas o rayas hondas.',
  'custom.way.sink-stone.reason':
    'Sobre él se vertieron o derramaron comida y líquido calientes, así que lo kasheriza el agua hirviendo vertida sobre cada punto.',
  'custom.way.sink-stone.would-change': 'Avise si tiene grietas o absorbe agua.',
  'custom.way.sink-clay.ashkenazic.reason':
    'La porcelana y el barro vidriado se juzgan como el barro, que no se kasheriza: límpielo, fórrelo y use un barreño sobre una rejilla.',
  'custom.way.sink-clay.ashkenazic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.sink-enamel.ashkenazic.reason':
    'Lo esmaltado por dentro no se kasheriza según esta costumbre: límpielo, fórrelo y use un barreño sobre una rejilla.',
  'custom.way.sink-enamel.ashkenazic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.sink-glass.ashkenazic.reason': 'Según esta costumbre el vidrio no se kasheriza.',
  'custom.way.sink-glass.ashkenazic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.sink-made.ashkenazic.reason':
    'Los códigos no nombran este material y las autoridades posteriores difieren.',
  'custom.way.sink-made.ashkenazic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.sink-made.ashkenazic.ask':
    '¿Se puede kasherizar vertiendo un fregadero de este material?',
  'custom.way.sink-made.ashkenazic.why':
    'Los códigos no lo nombran y las autoridades posteriores difieren.',
  'custom.way.sink-made.ashkenazic.until-then': 'Úselo con un barreño sobre una rejilla.',
  'custom.way.sink-made.ashkenazic.answer-1': 'Verter; no hace falta barreño.',
  'custom.way.sink-made.ashkenazic.answer-2': 'Verter, y después un barreño sobre una rejilla.',
  'custom.way.sink-made.ashkenazic.answer-3': 'No se kasheriza: usar un barreño sobre una rejilla.',
  'custom.way.sink-made.sephardic.reason':
    'Los códigos no nombran este material y las autoridades posteriores difieren.',
  'custom.way.sink-made.sephardic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.sink-made.sephardic.ask':
    '¿Se puede kasherizar vertiendo un fregadero de este material?',
  'custom.way.sink-made.sephardic.why':
    'Los códigos no lo nombran y las autoridades posteriores difieren.',
  'custom.way.sink-made.sephardic.until-then':
    'Vierta, y después úselo con un barreño sobre una rejilla.',
  'custom.way.sink-made.sephardic.answer-1': 'Verter; no hace falta barreño.',
  'custom.way.sink-made.sephardic.answer-2': 'Verter, y después un barreño sobre una rejilla.',
  'custom.way.sink-made.sephardic.answer-3': 'No se kasheriza: usar un barreño sobre una rejilla.',
  'custom.way.sink-wood.reason':
    'La madera lisa se kasheriza con agua hirviendo, según se usó; después lleva un barreño.',
  'custom.way.sink-wood.would-change': 'Avise si tiene cortes o grietas, o si está barnizada.',
  'custom.way.sink-raw.reason':
    'La madera sin tratar absorbe agua y retiene comida en sus poros, que el agua no kasheriza.',
  'custom.way.sink-raw.would-change': 'Sobre un fregadero liso y sin barniz se vierte.',
  'custom.way.sink-unknown.ashkenazic.reason':
    'No se sabe de qué es el fregadero, así que se usa con un barreño.',
  'custom.way.sink-unknown.ashkenazic.would-change': 'Diga de qué material es.',
  'custom.way.sink-unknown.ashkenazic.ask': '¿De qué es este fregadero?',
  'custom.way.sink-unknown.ashkenazic.why':
    'El metal se kasheriza vertiendo; el barro no se kasheriza.',
  'custom.way.sink-unknown.ashkenazic.until-then': 'Úselo con un barreño sobre una rejilla.',
  'custom.way.sink-unknown.sephardic.reason':
    'No se sabe de qué es el fregadero, así que se vierte y después se usa con un barreño.',
  'custom.way.sink-unknown.sephardic.would-change': 'Diga de qué material es.',
  'custom.way.sink-unknown.sephardic.ask': '¿De qué es este fregadero?',
  'custom.way.sink-unknown.sephardic.why':
    'El metal se kasheriza vertiendo; por el barro y los materiales fabricados se pregunta.',
  'custom.way.sink-unknown.sephardic.until-then':
    'Vierta, y después úselo con un barreño sobre una rejilla.',
  'custom.way.sink-clay.sephardic.reason':
    'El barro vidriado se juzga como el barro, que no se kasheriza; autoridades posteriores de esta costumbre vierten tres veces.',
  'custom.way.sink-clay.sephardic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.sink-clay.sephardic.ask':
    '¿Se puede kasherizar este fregadero vertiendo tres veces, o hace falta un barreño?',
  'custom.way.sink-clay.sephardic.why':
    'El código no kasheriza el barro vidriado; muchos vierten tres veces.',
  'custom.way.sink-clay.sephardic.until-then':
    'Vierta una vez, y después úselo con un barreño sobre una rejilla.',
  'custom.way.sink-clay.sephardic.answer-1': 'Verter tres veces, sin barreño.',
  'custom.way.sink-clay.sephardic.answer-2': 'No se kasheriza: usar un barreño sobre una rejilla.',
  'custom.way.sink-enamel.sephardic.reason':
    'Por el esmalte se pregunta: unos lo juzgan como metal, otros como vidrio, otros no lo kasherizan.',
  'custom.way.sink-enamel.sephardic.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.sink-enamel.sephardic.ask':
    '¿Se puede kasherizar este fregadero vertiendo tres veces, o hace falta un barreño?',
  'custom.way.sink-enamel.sephardic.why':
    'Muchos vierten tres veces sobre el esmalte; otros no lo kasherizan de ningún modo.',
  'custom.way.sink-enamel.sephardic.until-then':
    'Vierta una vez, y después úselo con un barreño sobre una rejilla.',
  'custom.way.sink-enamel.sephardic.answer-1': 'Verter tres veces, sin barreño.',
  'custom.way.sink-enamel.sephardic.answer-2':
    'No se kasheriza: usar un barreño sobre una rejilla.',
  'custom.way.sink-glass.sephardic.reason':
    'El vidrio no absorbe: según esta costumbre basta enjuagarlo.',
  'custom.way.sink-glass.sephardic.would-change': 'Avise si está agrietado o desconchado.',
};
