import type { sinks as english } from '../../english/custom/sinks.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Rows of the customs for sinks: why, what may change it, what is asked. */
export const sinks: TranslationOf<typeof english> = {
  'custom.way.sink-metal-passover.reason':
    'Aliments et liquides chauds y ont été versés ou renversés : l’eau bouillante versée sur chaque point le cachérise.',
  'custom.way.sink-metal-passover.would-change':
    'Votre coutume peut ne rien ajouter au versement : demandez.',
  'custom.way.sink-metal-passover.ask':
    'Faut-il une grille ou une bassine dans l’évier pour Pessah après le versement ?',
  'custom.way.sink-metal-passover.why':
    'Certains en ajoutent une pour Pessah ; d’autres s’en tiennent au versement.',
  'custom.way.sink-metal-passover.until-then': 'Versez, puis mettez une grille dans chaque cuve.',
  'custom.way.sink-metal-passover.answer-1': 'Le versement suffit.',
  'custom.way.sink-metal-passover.answer-2': 'Versez, puis une grille ou une bassine.',
  'custom.way.sink-metal.reason':
    'Aliments et liquides chauds y ont été versés ou renversés : l’eau bouillante versée sur chaque point le cachérise.',
  'custom.way.sink-metal.would-change': 'Dites-nous s’il est fendu ou profondément rayé.',
  'custom.way.sink-stone.reason':
    'Aliments et liquides chauds y ont été versés ou renversés : l’eau bouillante versée sur chaque point le cachérise.',
  'custom.way.sink-stone.would-change': 'Dites-nous s’il est fendu ou boit l’eau.',
  'custom.way.sink-clay.ashkenazic.reason':
    'Porcelaine et argile émaillée sont jugées comme la terre cuite, qui n’est pas cachérisée : nettoyez-le, tapissez-le, et utilisez une bassine sur une grille.',
  'custom.way.sink-clay.ashkenazic.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.sink-enamel.ashkenazic.reason':
    'Ce qui est émaillé à l’intérieur n’est pas cachérisé selon cette coutume : nettoyez-le, tapissez-le, et utilisez une bassine sur une grille.',
  'custom.way.sink-enamel.ashkenazic.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.sink-glass.ashkenazic.reason': 'Selon cette coutume le verre n’est pas cachérisé.',
  'custom.way.sink-glass.ashkenazic.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.sink-made.ashkenazic.reason':
    'Les codes ne nomment pas cette matière et les décisionnaires ultérieurs diffèrent.',
  'custom.way.sink-made.ashkenazic.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.sink-made.ashkenazic.ask':
    'Un évier de cette matière peut-il être cachérisé par versement ?',
  'custom.way.sink-made.ashkenazic.why':
    'Les codes ne la nomment pas et les décisionnaires ultérieurs diffèrent.',
  'custom.way.sink-made.ashkenazic.until-then': 'Utilisez-le avec une bassine sur une grille.',
  'custom.way.sink-made.ashkenazic.answer-1': 'Versez ; pas besoin de bassine.',
  'custom.way.sink-made.ashkenazic.answer-2': 'Versez, puis une bassine sur une grille.',
  'custom.way.sink-made.ashkenazic.answer-3':
    'Non cachérisé : utilisez une bassine sur une grille.',
  'custom.way.sink-made.sephardic.reason':
    'Les codes ne nomment pas cette matière et les décisionnaires ultérieurs diffèrent.',
  'custom.way.sink-made.sephardic.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.sink-made.sephardic.ask':
    'Un évier de cette matière peut-il être cachérisé par versement ?',
  'custom.way.sink-made.sephardic.why':
    'Les codes ne la nomment pas et les décisionnaires ultérieurs diffèrent.',
  'custom.way.sink-made.sephardic.until-then':
    'Versez, puis utilisez-le avec une bassine sur une grille.',
  'custom.way.sink-made.sephardic.answer-1': 'Versez ; pas besoin de bassine.',
  'custom.way.sink-made.sephardic.answer-2': 'Versez, puis une bassine sur une grille.',
  'custom.way.sink-made.sephardic.answer-3': 'Non cachérisé : utilisez une bassine sur une grille.',
  'custom.way.sink-wood.reason':
    'Le bois lisse est cachérisé par l’eau bouillante, comme il a servi ; ensuite une bassine s’y tient.',
  'custom.way.sink-wood.would-change': 'Dites-nous s’il est entaillé, fendu ou verni.',
  'custom.way.sink-raw.reason':
    'Le bois brut boit l’eau et retient des aliments dans ses pores, que l’eau ne cachérise pas.',
  'custom.way.sink-raw.would-change': 'Un évier lisse et non verni est ébouillanté.',
  'custom.way.sink-unknown.ashkenazic.reason':
    'La matière de l’évier n’est pas connue : il s’utilise avec une bassine.',
  'custom.way.sink-unknown.ashkenazic.would-change': 'Dites-nous en quelle matière c’est.',
  'custom.way.sink-unknown.ashkenazic.ask': 'En quelle matière est cet évier ?',
  'custom.way.sink-unknown.ashkenazic.why':
    'Le métal est cachérisé par versement ; l’argile n’est pas cachérisée.',
  'custom.way.sink-unknown.ashkenazic.until-then': 'Utilisez-le avec une bassine sur une grille.',
  'custom.way.sink-unknown.sephardic.reason':
    'La matière de l’évier n’est pas connue : il est ébouillanté, puis utilisé avec une bassine.',
  'custom.way.sink-unknown.sephardic.would-change': 'Dites-nous en quelle matière c’est.',
  'custom.way.sink-unknown.sephardic.ask': 'En quelle matière est cet évier ?',
  'custom.way.sink-unknown.sephardic.why':
    'Le métal est cachérisé par versement ; pour l’argile et les matières fabriquées, on demande.',
  'custom.way.sink-unknown.sephardic.until-then':
    'Versez, puis utilisez-le avec une bassine sur une grille.',
  'custom.way.sink-clay.sephardic.reason':
    'L’argile émaillée est jugée comme la terre cuite, qui n’est pas cachérisée ; des décisionnaires ultérieurs de cette coutume versent trois fois.',
  'custom.way.sink-clay.sephardic.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.sink-clay.sephardic.ask':
    'Cet évier peut-il être cachérisé en versant trois fois, ou faut-il une bassine ?',
  'custom.way.sink-clay.sephardic.why':
    'Le code ne cachérise pas l’argile émaillée ; beaucoup versent trois fois.',
  'custom.way.sink-clay.sephardic.until-then':
    'Versez une fois, puis utilisez-le avec une bassine sur une grille.',
  'custom.way.sink-clay.sephardic.answer-1': 'Versez trois fois, sans bassine.',
  'custom.way.sink-clay.sephardic.answer-2': 'Non cachérisé : utilisez une bassine sur une grille.',
  'custom.way.sink-enamel.sephardic.reason':
    'L’émail fait question : certains le jugent comme métal, certains comme verre, certains ne le cachérisent pas.',
  'custom.way.sink-enamel.sephardic.would-change': 'La parole de votre rabbin peut le changer.',
  'custom.way.sink-enamel.sephardic.ask':
    'Cet évier peut-il être cachérisé en versant trois fois, ou faut-il une bassine ?',
  'custom.way.sink-enamel.sephardic.why':
    'Beaucoup versent trois fois sur l’émail ; d’autres ne le cachérisent pas du tout.',
  'custom.way.sink-enamel.sephardic.until-then':
    'Versez une fois, puis utilisez-le avec une bassine sur une grille.',
  'custom.way.sink-enamel.sephardic.answer-1': 'Versez trois fois, sans bassine.',
  'custom.way.sink-enamel.sephardic.answer-2':
    'Non cachérisé : utilisez une bassine sur une grille.',
  'custom.way.sink-glass.sephardic.reason':
    'Le verre n’absorbe pas : rincer suffit selon cette coutume.',
  'custom.way.sink-glass.sephardic.would-change': 'Dites-nous s’il est fendu ou ébréché.',
};
