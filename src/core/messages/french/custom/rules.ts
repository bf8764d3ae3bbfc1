import type { rules as english } from '../../english/custom/rules.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** What the state of a surface, or what it was used for, changes about the row of a fixture. */
export const rules: TranslationOf<typeof english> = {
  'custom.way.wood-scratched.reason':
    'Des entailles qu’on ne peut poncer retiennent des aliments : versez, puis couvrez.',
  'custom.way.sink-scratched.reason': 'Les rayures sont d’abord bien récurées.',
  'custom.way.sink-scratched.ask':
    'Les rayures de l’évier sont-elles si profondes que des aliments y restent après récurage ?',
  'custom.way.sink-scratched.why':
    'Fines, elles sont usuelles et cachérisées avec l’acier ; profondes, elles retiennent des aliments.',
  'custom.way.sink-scratched.until-then': 'Versez, puis mettez une grille dans chaque cuve.',
  'custom.way.sink-scratched.answer-1': 'Elles sont fines : le versement suffit.',
  'custom.way.sink-scratched.answer-2':
    'Elles sont profondes : une grille dans chaque cuve après le versement.',
  'custom.way.sink-broken.reason':
    'Une fente qu’on ne peut nettoyer n’est pas cachérisée par l’eau : on utilise une bassine.',
  'custom.way.sink-porous.reason':
    'Ce qui boit l’eau retient ce qu’aucun récurage n’atteint : on utilise une bassine.',
  'custom.way.top-worn.reason':
    'Un dessus vieux et rayé retient des aliments : versez, puis couvrez de plastique épais.',
  'custom.way.top-broken.reason':
    'Une fente qu’on ne peut nettoyer n’est pas cachérisée par l’eau : il est couvert et non ébouillanté.',
  'custom.way.top-porous.reason':
    'Ce qui boit l’eau retient ce qu’aucun récurage n’atteint : il est couvert et non ébouillanté.',
  'custom.way.sink-unseen.reason': 'Son état n’est pas connu.',
  'custom.way.sink-unseen.ask': 'Est-il lisse, ou rayé, fendu, poreux ? Passez l’ongle dessus.',
  'custom.way.sink-unseen.why':
    'Une surface lisse est cachérisée par le seul versement ; une surface fendue n’est pas ébouillantée.',
  'custom.way.sink-unseen.until-then':
    'Nettoyez-le, ou versez où la méthode le dit, puis mettez une grille dans chaque cuve.',
  'custom.way.unseen.reason': 'Son état n’est pas connu.',
  'custom.way.unseen.ask': 'Est-il lisse, ou rayé, fendu, poreux ? Passez l’ongle dessus.',
  'custom.way.unseen.why':
    'Une surface lisse est cachérisée par le seul versement ; une surface fendue n’est pas ébouillantée.',
  'custom.way.unseen.until-then': 'Nettoyez-le, ou versez où la méthode le dit, puis couvrez.',
  'custom.way.shelf-worn.reason':
    'Des étagères usées ou poreuses retiennent les miettes : elles sont tapissées.',
  'custom.way.shelf-unseen.reason': 'Leur état n’est pas connu.',
  'custom.way.shelf-unseen.ask': 'Les étagères sont-elles lisses et protégées ?',
  'custom.way.shelf-unseen.why':
    'Lisses, elles sont seulement nettoyées ; usées, elles sont tapissées.',
  'custom.way.shelf-unseen.until-then': 'Nettoyez-les et tapissez-les.',
  'custom.way.sink-varnished.reason':
    'Le bois verni est jugé comme l’argile, qui n’est pas cachérisée : utilisez une bassine.',
  'custom.way.sink-varnished-unseen.reason': 'On ne sait pas s’il est verni.',
  'custom.way.sink-varnished-unseen.ask':
    'Le bois est-il verni ou laqué ? Une goutte d’eau reste sur le vernis et s’enfonce dans le bois huilé.',
  'custom.way.sink-varnished-unseen.why':
    'Le bois verni est jugé comme l’argile, qui n’est pas cachérisée.',
  'custom.way.sink-varnished-unseen.until-then': 'Utilisez-le avec une bassine sur une grille.',
  'custom.way.varnished.reason':
    'Le bois verni est jugé comme l’argile, qui n’est pas cachérisée : couvrez-le.',
  'custom.way.varnished-unseen.reason': 'On ne sait pas s’il est verni.',
  'custom.way.varnished-unseen.ask':
    'Le bois est-il verni ou laqué ? Une goutte d’eau reste sur le vernis et s’enfonce dans le bois huilé.',
  'custom.way.varnished-unseen.why':
    'Le bois verni est jugé comme l’argile, qui n’est pas cachérisée.',
  'custom.way.varnished-unseen.until-then': 'Couvrez-le.',
  'custom.way.kneaded.reason':
    'On y a pétri de la pâte : par coutume il ne sert pas à Pessah, même cachérisé ; il est couvert.',
  'custom.way.kneaded-unseen.reason': 'On ne sait pas si de la pâte y a été pétrie.',
  'custom.way.kneaded-unseen.ask': 'A-t-on pétri de la pâte directement dessus ?',
  'custom.way.kneaded-unseen.why':
    'Par coutume, les planches à pâte ne servent pas à Pessah, même cachérisées.',
  'custom.way.kneaded-unseen.until-then': 'Couvrez-le.',
  'custom.way.hot-food.reason': 'Des aliments chauds ont été posés directement dessus.',
  'custom.way.hot-food.ask':
    'Des aliments chauds ont été posés directement dessus. Faut-il une pierre chaude, ou de l’acier chaud, pendant le versement ?',
  'custom.way.hot-food.why':
    'Une pierre chaude, ou de l’acier, déplacée partout pendant le versement fait comme si c’était sur le feu. Le seul versement sert après coup.',
  'custom.way.hot-food.until-then': 'Versez, puis couvrez.',
  'custom.way.hot-food.answer-1': 'Versez, avec de l’acier chaud déplacé sur chaque point.',
  'custom.way.hot-food.answer-2': 'Le versement seul suffit.',
  'custom.way.hot-food.answer-3': 'Versez, puis couvrez.',
  'custom.way.hot-food-unseen.reason':
    'On ne sait pas si des aliments chauds ont été posés directement dessus.',
  'custom.way.hot-food-unseen.ask':
    'A-t-on posé des aliments chauds directement dessus, sans assiette ni dessous-de-plat ?',
  'custom.way.hot-food-unseen.why':
    'Ce qui a porté des aliments chauds demande plus qu’un versement.',
  'custom.way.hot-food-unseen.until-then': 'Versez, puis couvrez.',
  'custom.way.shelf-hot.reason':
    'Des aliments chauds y ont été rangés : on verse dessus de l’eau bouillante, et il est tapissé.',
};
