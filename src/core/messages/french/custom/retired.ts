import type { retired as english } from '../../english/custom/retired.ts';
import { UNCHANGED } from '../../english/custom/unchanged.ts';
import type { TranslationOf } from '../../model/translation.ts';
import { appliances } from './appliances.ts';
import { fire } from './fire.ts';
import { rules } from './rules.ts';
import { sinks } from './sinks.ts';
import { tops } from './tops.ts';

const TODAY = { ...sinks, ...tops, ...fire, ...appliances, ...rules };

type Unchanged = { readonly [K in (typeof UNCHANGED)[number] as `custom.row.${K}`]: string };

const GLASS_AS_CLAY =
  'Selon cette coutume le verre est jugé comme la terre cuite, qui n’est pas cachérisée.';
const ZONE_GLOWS =
  'Des aliments ont brûlé sur la zone, sur le feu : la zone est chauffée jusqu’au rouge.';
const NO_CYCLE =
  'Il n’a pas de pyrolyse (vapeur et catalyse ne cachérisent pas) : il est chauffé au réglage maximal.';

/** Sentences that no plan is made with any more and that journals of older runs still name. */
export const retired: TranslationOf<typeof english> = {
  ...(Object.fromEntries(
    UNCHANGED.map((row) => [`custom.row.${row}`, TODAY[`custom.way.${row}`]]),
  ) as Unchanged),
  'custom.row.sink-clay.ashkenazic.reason':
    'Porcelaine, argile émaillée et émail sont jugés comme la terre cuite, qui n’est pas cachérisée : nettoyez-le, tapissez-le, et utilisez une bassine sur une grille.',
  'custom.row.sink-glass.ashkenazic.reason': GLASS_AS_CLAY,
  'custom.row.sink-wood.reason': 'Le bois est cachérisé de la manière dont il a servi.',
  'custom.row.top-glass.ashkenazic.reason': GLASS_AS_CLAY,
  'custom.row.top-tile.reason':
    'Les joints du carrelage retiennent des aliments qu’aucun versement n’atteint.',
  'custom.row.counter-wood.ashkenazic.reason':
    'Le bois lisse est cachérisé de la manière dont il a servi ; poncez d’abord chaque entaille, et beaucoup couvrent ensuite.',
  'custom.row.top-raw.reason': 'Le bois brut boit l’eau et retient des aliments.',
  'custom.row.table-pour.reason':
    'Des aliments chauds y ont été posés et renversés : bois lisse, pierre ou métal sont cachérisés par versement.',
  'custom.row.table-other.reason':
    'Cette matière n’est pas cachérisée avec certitude, et une table se couvre facilement.',
  'custom.row.burner-induction.reason':
    'L’induction chauffe la casserole et non elle-même : elle ne rougit jamais, et son verre a absorbé ce qui a débordé.',
  'custom.row.burner-induction.ask': 'Comment une plaque à induction peut-elle être cachérisée ?',
  'custom.row.burner-induction.until-then': 'Nettoyez-la et gardez-la hors d’usage.',
  'custom.row.burner-glass.ashkenazic.reason': ZONE_GLOWS,
  'custom.row.burner-glass.ashkenazic.ask': 'Comment traiter le verre entre les zones ?',
  'custom.row.burner-glass.ashkenazic.until-then':
    'Ni casserole, ni cuillère, ni aliment sur le verre entre les zones.',
  'custom.row.burner-fire.reason':
    'Des aliments ont brûlé sur l’élément, sur le feu, sans liquide : il est chauffé jusqu’au rouge.',
  'custom.row.oven-pyrolytic.reason':
    'Des aliments ont brûlé sur ses parois sans liquide ; le cycle complet de pyrolyse les consume.',
  'custom.row.oven-plain.ashkenazic.reason': NO_CYCLE,
  'custom.row.oven-plain.ashkenazic.ask':
    'Combien de temps au réglage maximal, et votre coutume l’admet-elle sans aller au rouge ?',
  'custom.row.oven-plain.ashkenazic.until-then':
    'Chauffez-le au réglage maximal deux heures, et n’y mettez d’aliments que couverts ou sur un insert.',
  'custom.row.microwave.reason':
    'Il a absorbé par la vapeur : la vapeur d’eau bouillante dedans le cachérise.',
  'custom.row.microwave.until-then':
    'Vapeur pendant 20 minutes, et le plateau de verre reste hors d’usage.',
  'custom.row.sink-wood-open.reason':
    'Fentes et veines ouvertes retiennent ce que ni ponçage ni eau n’atteignent : il n’est pas ébouillanté mais utilisé avec une bassine.',
  'custom.row.wood-open.reason':
    'Fentes et veines ouvertes retiennent ce que ni ponçage ni eau n’atteignent : il n’est pas ébouillanté mais couvert.',
  'custom.row.sink-broken.reason':
    'Une fente ou un pore retient ce qu’aucun récurage n’atteint : on utilise ensuite une bassine.',
  'custom.row.top-worn.reason':
    'Un dessus vieux, rayé ou poreux retient des aliments : versez, puis couvrez de plastique épais.',
  'custom.row.sink-clay.sephardic.reason':
    'L’argile émaillée est jugée par beaucoup comme la terre cuite, qui n’est pas cachérisée ; pour l’émail, on demande.',
  'custom.row.sink-clay.sephardic.until-then':
    'Versez, puis utilisez-le avec une bassine sur une grille.',
  'custom.row.counter-wood.sephardic.reason':
    'Le bois lisse est cachérisé de la manière dont il a servi ; poncez d’abord chaque entaille.',
  'custom.row.burner-glass.sephardic.reason': ZONE_GLOWS,
  'custom.row.oven-plain.sephardic.reason': NO_CYCLE,
  'custom.row.oven-plain.sephardic.ask':
    'Combien de temps au réglage maximal : une heure ou deux ?',
  'custom.row.oven-plain.sephardic.until-then': 'Chauffez-le au réglage maximal deux heures.',
  'sources.oc-451-3-8': 'Choulhan Aroukh, Orah Haïm 451:3-8',
};
