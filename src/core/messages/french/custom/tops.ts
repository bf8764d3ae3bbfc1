import type { tops as english } from '../../english/custom/tops.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Rows of the customs for counters and tables: why, what may change it, what is asked. */
export const tops: TranslationOf<typeof english> = {
  'custom.way.top-stone-passover.reason':
    'Aliments et liquides chauds y ont été versés ou renversés : l’eau bouillante versée sur chaque point le cachérise.',
  'custom.way.top-stone-passover.would-change': 'Votre coutume peut ne pas couvrir : demandez.',
  'custom.way.top-stone-passover.ask':
    'Le plan de travail doit-il être couvert pour Pessah après le versement ?',
  'custom.way.top-stone-passover.why': 'Beaucoup couvrent pour Pessah même ce qui a été cachérisé.',
  'custom.way.top-stone-passover.until-then': 'Versez, puis couvrez.',
  'custom.way.top-stone-passover.answer-1': 'Le versement suffit.',
  'custom.way.top-stone-passover.answer-2': 'Versez, puis couvrez.',
  'custom.way.top-stone.reason':
    'Aliments et liquides chauds y ont été versés ou renversés : l’eau bouillante versée sur chaque point le cachérise.',
  'custom.way.top-stone.would-change': 'Dites-nous s’il est fendu ou boit l’eau.',
  'custom.way.top-glass.ashkenazic.reason': 'Selon cette coutume le verre n’est pas cachérisé.',
  'custom.way.top-glass.ashkenazic.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.top-clay.ashkenazic.reason':
    'Porcelaine et argile émaillée sont jugées comme la terre cuite, qui n’est pas cachérisée.',
  'custom.way.top-clay.ashkenazic.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.top-enamel.ashkenazic.reason':
    'Ce qui est émaillé n’est pas cachérisé selon cette coutume.',
  'custom.way.top-enamel.ashkenazic.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.top-made.ashkenazic.reason':
    'Les codes ne nomment pas cette matière et les décisionnaires ultérieurs diffèrent ; la coutume est de couvrir.',
  'custom.way.top-made.ashkenazic.would-change':
    'Votre rabbin peut le faire ébouillanter d’abord : seulement si le fabricant admet l’eau bouillante.',
  'custom.way.top-tile.reason':
    'Les joints du carrelage retiennent des aliments qu’aucun versement n’atteint, et les carreaux émaillés sont jugés comme l’argile.',
  'custom.way.top-tile.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.counter-wood.ashkenazic.reason':
    'Le bois lisse est cachérisé par l’eau bouillante, comme il a servi ; poncez d’abord chaque entaille, et beaucoup couvrent ensuite.',
  'custom.way.counter-wood.ashkenazic.would-change':
    'Dites-nous s’il reste des entailles après ponçage, s’il est verni, ou si l’on y a pétri de la pâte.',
  'custom.way.counter-wood.sephardic.reason':
    'Le bois lisse est cachérisé par l’eau bouillante, comme il a servi ; poncez d’abord chaque entaille.',
  'custom.way.counter-wood.sephardic.would-change':
    'Dites-nous s’il reste des entailles après ponçage, ou s’il est verni.',
  'custom.way.top-raw.reason':
    'Le bois brut boit l’eau et retient des aliments dans ses pores, que l’eau ne cachérise pas.',
  'custom.way.top-raw.would-change': 'Un dessus lisse et non verni est ébouillanté.',
  'custom.way.counter-unknown.ashkenazic.reason':
    'La matière du plan de travail n’est pas connue : il est couvert.',
  'custom.way.counter-unknown.ashkenazic.would-change': 'Dites-nous en quelle matière c’est.',
  'custom.way.counter-unknown.ashkenazic.ask': 'En quelle matière est ce plan de travail ?',
  'custom.way.counter-unknown.ashkenazic.why':
    'Pierre et métal sont cachérisés par versement ; le reste est couvert.',
  'custom.way.counter-unknown.ashkenazic.until-then': 'Couvrez-le.',
  'custom.way.counter-unknown.sephardic.reason':
    'La matière du plan de travail n’est pas connue : il est ébouillanté, puis couvert.',
  'custom.way.counter-unknown.sephardic.would-change': 'Dites-nous en quelle matière c’est.',
  'custom.way.counter-unknown.sephardic.ask': 'En quelle matière est ce plan de travail ?',
  'custom.way.counter-unknown.sephardic.why':
    'Pierre et métal sont cachérisés par versement ; pour les matières fabriquées, on demande.',
  'custom.way.counter-unknown.sephardic.until-then': 'Versez, puis couvrez.',
  'custom.way.table-wood.reason':
    'De la soupe se renverse sur une table : le bois lisse est cachérisé par versement. Poncez d’abord chaque entaille ; beaucoup couvrent ensuite.',
  'custom.way.table-wood.would-change':
    'Dites-nous s’il reste des entailles après ponçage, si elle est vernie, ou si l’on y a pétri de la pâte.',
  'custom.way.table-pour.reason':
    'De la soupe se renverse sur une table : ce qui est lisse est cachérisé par versement.',
  'custom.way.table-pour.would-change':
    'Dites-nous si elle est entaillée, fendue ou vernie, ou si elle a une rallonge qui s’ouvre.',
  'custom.way.table-other.reason':
    'Les codes ne nomment pas cette matière, et une table se couvre facilement.',
  'custom.way.table-other.would-change': 'Votre rabbin peut la faire ébouillanter.',
  'custom.way.table-unknown.reason':
    'La matière de la table n’est pas connue, et une table se couvre facilement.',
  'custom.way.table-unknown.would-change': 'Dites-nous en quelle matière c’est.',
  'custom.way.table-unknown.ask': 'En quelle matière est cette table ?',
  'custom.way.table-unknown.why': 'Bois lisse, pierre et métal sont cachérisés par versement.',
  'custom.way.table-unknown.until-then': 'Couvrez-la.',
  'custom.way.top-clay.sephardic.reason':
    'L’argile émaillée est jugée comme la terre cuite, qui n’est pas cachérisée ; des décisionnaires ultérieurs de cette coutume versent trois fois.',
  'custom.way.top-clay.sephardic.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.top-clay.sephardic.ask':
    'Peut-on le cachériser en versant trois fois, ou faut-il une couverture ?',
  'custom.way.top-clay.sephardic.why':
    'Le code ne cachérise pas l’argile émaillée ; beaucoup versent trois fois.',
  'custom.way.top-clay.sephardic.until-then': 'Versez une fois, puis couvrez.',
  'custom.way.top-clay.sephardic.answer-1': 'Versez trois fois ; pas besoin de couverture.',
  'custom.way.top-clay.sephardic.answer-2': 'Non cachérisé : couvrez-le.',
  'custom.way.top-enamel.sephardic.reason':
    'L’émail fait question : certains le jugent comme métal, certains comme verre, certains ne le cachérisent pas.',
  'custom.way.top-enamel.sephardic.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.top-enamel.sephardic.ask':
    'Peut-on le cachériser en versant trois fois, ou faut-il une couverture ?',
  'custom.way.top-enamel.sephardic.why':
    'Beaucoup versent trois fois sur l’émail ; d’autres ne le cachérisent pas du tout.',
  'custom.way.top-enamel.sephardic.until-then': 'Versez une fois, puis couvrez.',
  'custom.way.top-enamel.sephardic.answer-1': 'Versez trois fois ; pas besoin de couverture.',
  'custom.way.top-enamel.sephardic.answer-2': 'Non cachérisé : couvrez-le.',
  'custom.way.top-glass.sephardic.reason':
    'Le verre n’absorbe pas : rincer suffit selon cette coutume.',
  'custom.way.top-glass.sephardic.would-change': 'Dites-nous s’il est fendu ou ébréché.',
  'custom.way.top-made.sephardic.reason':
    'Les codes ne nomment pas cette matière et les décisionnaires ultérieurs diffèrent.',
  'custom.way.top-made.sephardic.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.top-made.sephardic.ask':
    'Ce plan de travail peut-il être cachérisé par versement, et faut-il une couverture ensuite ?',
  'custom.way.top-made.sephardic.why':
    'Les codes ne nomment pas cette matière et les décisionnaires ultérieurs diffèrent.',
  'custom.way.top-made.sephardic.until-then': 'Versez, puis couvrez.',
  'custom.way.top-made.sephardic.answer-1': 'Versez ; pas besoin de couverture.',
  'custom.way.top-made.sephardic.answer-2': 'Versez, puis couvrez.',
  'custom.way.top-made.sephardic.answer-3': 'Couvrez-le sans verser.',
};
