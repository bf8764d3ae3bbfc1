import type { TranslationOf } from '../../model/translation.ts';
import type { rules as english } from '../../english/custom/rules.ts';

/** What the state of a surface, or what it was used for, changes about the row of a fixture. */
export const rules: TranslationOf<typeof english> = {
  'custom.way.wood-scratched.reason':
    'Los cortes que no se quitan lijando retienen comida: verter, después cubrir.',
  'custom.way.sink-scratched.reason': 'Antes se limpian las rayas a fondo, frotando.',
  'custom.way.sink-scratched.ask':
    '¿Son las rayas del fregadero tan hondas que queda comida en ellas después de frotar?',
  'custom.way.sink-scratched.why':
    'Las rayas finas son habituales en el acero y se kasherizan con él; las hondas retienen comida.',
  'custom.way.sink-scratched.until-then': 'Vierta, y después ponga una rejilla en cada seno.',
  'custom.way.sink-scratched.answer-1': 'Son finas: basta verter.',
  'custom.way.sink-scratched.answer-2': 'Son hondas: una rejilla en cada seno después de verter.',
  'custom.way.sink-broken.reason':
    'Una grieta que no se puede limpiar no se kasheriza con agua, así que se usa un barreño.',
  'custom.way.sink-porous.reason':
    'Lo que absorbe agua retiene lo que ningún frotado alcanza, así que se usa un barreño.',
  'custom.way.top-worn.reason':
    'Las superficies viejas y rayadas retienen comida: verter, después cubrir con plástico grueso.',
  'custom.way.top-broken.reason':
    'Una grieta que no se puede limpiar no se kasheriza con agua, así que se cubre y no se vierte.',
  'custom.way.top-porous.reason':
    'Lo que absorbe agua retiene lo que ningún frotado alcanza, así que se cubre y no se vierte.',
  'custom.way.sink-unseen.reason': 'No se sabe en qué estado está.',
  'custom.way.sink-unseen.ask':
    '¿Es liso, o está rayado, agrietado o poroso? Pase la uña por encima.',
  'custom.way.sink-unseen.why':
    'Una superficie lisa se kasheriza solo con el vertido; sobre una agrietada no se vierte.',
  'custom.way.sink-unseen.until-then':
    'Límpielo, o vierta donde lo dice el método, y después ponga una rejilla en cada seno.',
  'custom.way.unseen.reason': 'No se sabe en qué estado está.',
  'custom.way.unseen.ask': '¿Es liso, o está rayado, agrietado o poroso? Pase la uña por encima.',
  'custom.way.unseen.why':
    'Una superficie lisa se kasheriza solo con el vertido; sobre una agrietada no se vierte.',
  'custom.way.unseen.until-then': 'Límpielo, o vierta donde lo dice el método, y después cubra.',
  'custom.way.shelf-worn.reason':
    'Los estantes gastados o porosos retienen migas, así que se forran.',
  'custom.way.shelf-unseen.reason': 'No se sabe en qué estado están.',
  'custom.way.shelf-unseen.ask': '¿Son los estantes lisos y están sellados?',
  'custom.way.shelf-unseen.why': 'Los estantes lisos solo se limpian; los gastados se forran.',
  'custom.way.shelf-unseen.until-then': 'Límpielos y fórrelos.',
  'custom.way.sink-varnished.reason':
    'La madera barnizada se juzga como barro, que no se kasheriza: use un barreño.',
  'custom.way.sink-varnished-unseen.reason': 'No se sabe si está barnizada.',
  'custom.way.sink-varnished-unseen.ask':
    '¿Está la madera barnizada o lacada? Una gota de agua queda sobre el barniz y entra en la madera aceitada.',
  'custom.way.sink-varnished-unseen.why':
    'La madera barnizada se juzga como barro, que no se kasheriza.',
  'custom.way.sink-varnished-unseen.until-then': 'Úselo con un barreño sobre una rejilla.',
  'custom.way.varnished.reason':
    'La madera barnizada se juzga como barro, que no se kasheriza: cúbrala.',
  'custom.way.varnished-unseen.reason': 'No se sabe si está barnizada.',
  'custom.way.varnished-unseen.ask':
    '¿Está la madera barnizada o lacada? Una gota de agua queda sobre el barniz y entra en la madera aceitada.',
  'custom.way.varnished-unseen.why':
    'La madera barnizada se juzga como barro, que no se kasheriza.',
  'custom.way.varnished-unseen.until-then': 'Cúbrala.',
  'custom.way.kneaded.reason':
    'Encima se amasó: por costumbre no se usa en Pésaj ni kasherizada, así que se cubre.',
  'custom.way.kneaded-unseen.reason': 'No se sabe si se amasó encima.',
  'custom.way.kneaded-unseen.ask': '¿Se amasó directamente encima?',
  'custom.way.kneaded-unseen.why':
    'Por costumbre las tablas de amasar no se usan en Pésaj ni kasherizadas.',
  'custom.way.kneaded-unseen.until-then': 'Cúbrala.',
  'custom.way.hot-food.reason': 'Encima se puso directamente comida caliente.',
  'custom.way.hot-food.ask':
    'Encima se puso directamente comida caliente. ¿Hace falta una piedra caliente, o acero caliente, al verter?',
  'custom.way.hot-food.why':
    'Una piedra caliente, o acero, que se pasa por toda la superficie mientras se vierte hace como si estuviera al fuego. El vertido por sí solo sirve a posteriori.',
  'custom.way.hot-food.until-then': 'Vierta, y después cubra.',
  'custom.way.hot-food.answer-1': 'Verter, pasando acero caliente por cada punto.',
  'custom.way.hot-food.answer-2': 'Basta verter.',
  'custom.way.hot-food.answer-3': 'Verter, después cubrir.',
  'custom.way.hot-food-unseen.reason': 'No se sabe si se puso comida caliente directamente encima.',
  'custom.way.hot-food-unseen.ask':
    '¿Se puso comida caliente directamente encima, sin plato ni salvamanteles?',
  'custom.way.hot-food-unseen.why': 'Donde estuvo comida caliente hace falta más que un vertido.',
  'custom.way.hot-food-unseen.until-then': 'Vierta, y después cubra.',
  'custom.way.shelf-hot.reason':
    'Dentro se guardó comida caliente: se vierte encima agua hirviendo y se forra.',
};
