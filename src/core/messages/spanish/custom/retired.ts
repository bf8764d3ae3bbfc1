import type { TranslationOf } from '../../model/translation.ts';
import type { retired as english } from '../../english/custom/retired.ts';
import { UNCHANGED } from '../../english/custom/unchanged.ts';
import { appliances } from './appliances.ts';
import { fire } from './fire.ts';
import { rules } from './rules.ts';
import { sinks } from './sinks.ts';
import { tops } from './tops.ts';

const TODAY = { ...sinks, ...tops, ...fire, ...appliances, ...rules };

type Unchanged = { readonly [K in (typeof UNCHANGED)[number] as `custom.row.${K}`]: string };

const GLASS_AS_CLAY = 'Según esta costumbre el vidrio se juzga como el barro, que no se kasheriza.';
const ZONE_GLOWS =
  'En la zona se quemó comida al fuego, así que la zona se calienta hasta que esté al rojo.';
const NO_CYCLE =
  'No tiene un ciclo de autolimpieza que queme (la limpieza con vapor o catalítica no kasheriza), así que se calienta al máximo.';

/**
 * Sentences that no plan is made with any more and that journals of older runs
 * still name: a record is told in the words it was written in. A test holds
 * them to the letter: when a row of today is said otherwise, its sentence of
 * before moves to the list below.
 */
export const retired: TranslationOf<typeof english> = {
  ...(Object.fromEntries(
    UNCHANGED.map((row) => [`custom.row.${row}`, TODAY[`custom.way.${row}`]]),
  ) as Unchanged),
  'custom.row.sink-clay.ashkenazic.reason':
    'La porcelana, el barro vidriado y el esmalte se juzgan como el barro, que no se kasheriza: límpielo, fórrelo y use un barreño sobre una rejilla.',
  'custom.row.sink-glass.ashkenazic.reason': GLASS_AS_CLAY,
  'custom.row.sink-wood.reason': 'La madera se kasheriza según se usó.',
  'custom.row.top-glass.ashkenazic.reason': GLASS_AS_CLAY,
  'custom.row.top-tile.reason':
    'Las juntas entre azulejos retienen comida a la que ningún vertido llega.',
  'custom.row.counter-wood.ashkenazic.reason':
    'La madera lisa se kasheriza según se usó; lije antes todos los cortes, y muchos la cubren después.',
  'custom.row.top-raw.reason': 'La madera sin tratar bebe agua y retiene comida.',
  'custom.row.table-pour.reason':
    'Encima estuvo y se derramó comida caliente: la madera lisa, la piedra o el metal se kasherizan vertiendo.',
  'custom.row.table-other.reason':
    'Este material no se kasheriza con seguridad, y una mesa se cubre con facilidad.',
  'custom.row.burner-induction.reason':
    'La inducción calienta la olla y no a sí misma: nunca se pone al rojo, y su vidrio absorbió lo que rebosó al hervir.',
  'custom.row.burner-induction.ask': '¿Cómo se puede kasherizar una placa de inducción?',
  'custom.row.burner-induction.until-then': 'Límpiela y no la use.',
  'custom.row.burner-glass.ashkenazic.reason': ZONE_GLOWS,
  'custom.row.burner-glass.ashkenazic.ask': '¿Cómo se trata el vidrio entre las zonas?',
  'custom.row.burner-glass.ashkenazic.until-then':
    'Que ninguna olla, cuchara ni comida toque el vidrio entre las zonas.',
  'custom.row.burner-fire.reason':
    'En la espiral se quemó comida al fuego y sin líquido, así que se calienta hasta que esté al rojo.',
  'custom.row.oven-pyrolytic.reason':
    'En sus paredes se quemó comida sin líquido; el ciclo completo de autolimpieza la quema del todo.',
  'custom.row.oven-plain.ashkenazic.reason': NO_CYCLE,
  'custom.row.oven-plain.ashkenazic.ask':
    '¿Cuánto tiempo al máximo, y lo acepta su costumbre sin ponerlo al rojo?',
  'custom.row.oven-plain.ashkenazic.until-then':
    'Caliéntelo al máximo dos horas, y ponga dentro la comida solo tapada o en un inserto.',
  'custom.row.microwave.reason':
    'Absorbió con vapor, así que lo kasheriza el vapor de agua hirviendo dentro.',
  'custom.row.microwave.until-then': 'Vapor durante 20 minutos, y no use el plato de vidrio.',
  'custom.row.sink-wood-open.reason':
    'Las grietas y la veta abierta retienen lo que ni el lijado ni el agua alcanzan: no se vierte, se usa con un barreño.',
  'custom.row.wood-open.reason':
    'Las grietas y la veta abierta retienen lo que ni el lijado ni el agua alcanzan: no se vierte, se cubre.',
  'custom.row.sink-broken.reason':
    'Una grieta o un poro retiene lo que ningún frotado alcanza, así que después se usa un barreño.',
  'custom.row.top-worn.reason':
    'Las superficies viejas, rayadas o porosas retienen comida: verter, después cubrir con plástico grueso.',
  'custom.row.sink-clay.sephardic.reason':
    'Muchos juzgan el barro vidriado como el barro, que no se kasheriza; por el esmalte se pregunta.',
  'custom.row.sink-clay.sephardic.until-then':
    'Vierta, y después úselo con un barreño sobre una rejilla.',
  'custom.row.counter-wood.sephardic.reason':
    'La madera lisa se kasheriza según se usó; lije antes todos los cortes.',
  'custom.row.burner-glass.sephardic.reason': ZONE_GLOWS,
  'custom.row.oven-plain.sephardic.reason': NO_CYCLE,
  'custom.row.oven-plain.sephardic.ask': '¿Cuánto tiempo al máximo: una hora o dos?',
  'custom.row.oven-plain.sephardic.until-then': 'Caliéntelo al máximo dos horas.',
  'sources.oc-451-3-8': 'Shulján Aruj, Oraj Jaim 451:3-8',
};
