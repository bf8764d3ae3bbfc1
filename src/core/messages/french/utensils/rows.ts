import type { rows as english } from '../../english/utensils/rows.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Rows of the table of utensils by their id: why, and what is asked. */
export const rows: TranslationOf<typeof english> = {
  'utensils.row.sieve.reason':
    'Ce qui se cache dans les trous ne peut être nettoyé : tamis et râpes ne sont pas cachérisés.',
  'utensils.row.dough-board.reason':
    'Par coutume, une planche où l’on a pétri de la pâte ne sert pas, même cachérisée.',
  'utensils.row.earthenware.reason': 'La terre cuite qui a servi à chaud n’est pas cachérisée.',
  'utensils.row.porcelain.reason':
    'Porcelaine et vaisselle émaillée sont jugées comme la terre cuite, qui n’est pas cachérisée.',
  'utensils.row.enamel.reason':
    'Le code ne cachérise pas ce qui est émaillé à l’intérieur ; les décisionnaires ultérieurs diffèrent.',
  'utensils.row.enamel.ask': 'Peut-on immerger du métal émaillé dans l’eau bouillante ?',
  'utensils.row.nonstick.reason':
    'Les codes ne nomment pas les revêtements ; un revêtement supporte l’eau bouillante, jamais d’être porté au rouge.',
  'utensils.row.nonstick.ask': 'Une poêle revêtue peut-elle être cachérisée par l’eau bouillante ?',
  'utensils.row.made.reason':
    'Les codes ne nomment pas les plastiques, et les décisionnaires ultérieurs diffèrent.',
  'utensils.row.made.ask': 'Peut-on immerger plastique ou silicone dans l’eau bouillante ?',
  'utensils.row.unknown-material.reason': 'Sa matière n’est pas connue : il reste hors d’usage.',
  'utensils.row.unknown-material.ask': 'En quelle matière est-ce ?',
  'utensils.row.glass-rinse.reason': 'Selon cette coutume le verre n’absorbe rien : il est rincé.',
  'utensils.row.glass-drink.reason':
    'Selon cette coutume le verre est jugé comme la terre cuite. Beaucoup trempent trois jours les verres qui ont servi à froid, l’eau changée toutes les 24 heures.',
  'utensils.row.glass-drink.ask':
    'Les verres qui ont servi à froid sont-ils trempés pour Pessah, ou seulement lavés ?',
  'utensils.row.glass-hot.reason':
    'Selon cette coutume le verre qui a servi à chaud est jugé comme la terre cuite, qui n’est pas cachérisée.',
  'utensils.row.glass-hot.ask':
    'Le verre qui a servi à chaud peut-il tout de même être cachérisé ?',
  'utensils.row.cold.reason':
    'Il n’a servi qu’à froid : frotter et rincer suffisent. Un liquide resté un jour, ou un aliment piquant, compte comme chaud.',
  'utensils.row.wood-fire.reason':
    'Ce qui a servi sur le feu est cachérisé par le feu, que le bois ne supporte pas.',
  'utensils.row.wood-joints.reason':
    'Des aliments restent dans les joints qu’on ne peut ouvrir, et ce qu’on ne peut nettoyer n’est pas cachérisé par l’eau.',
  'utensils.row.wood-open.reason':
    'Fentes, creux et endroits rugueux ne peuvent être nettoyés, et ce qu’on ne peut nettoyer n’est pas cachérisé par l’eau.',
  'utensils.row.wood-open.ask': 'Est-il lisse partout, ou peut-on le poncer ?',
  'utensils.row.wood-smooth.reason':
    'Bois lisse et pierre sont cachérisés dans l’eau bouillante, comme le métal.',
  'utensils.row.stone-fire.reason':
    'Ce qui a servi sur le feu est cachérisé par le feu, et la pierre se fendrait.',
  'utensils.row.mix-up-fire.reason':
    'Il a servi sur le feu sans liquide. La chaleur légère sert si ce qu’il a absorbé était alors permis ; un mélange peut ne pas l’avoir été.',
  'utensils.row.mix-up-fire.ask': 'La chaleur légère suffit-elle pour ce mélange ?',
  'utensils.row.soft-metal-fire.reason':
    'Il a servi sur le feu et demande la chaleur, mais ce métal fond ou se voile avant de rougir.',
  'utensils.row.soft-metal-fire.ask': 'La chaleur légère lui suffit-elle ?',
  'utensils.row.leaven-pan.reason':
    'Une poêle sert avec peu de graisse ou sans. La chaleur est la manière stricte ; pour le hamets, beaucoup font plus léger.',
  'utensils.row.leaven-pan.ask':
    'Une poêle est-elle cachérisée pour Pessah par la chaleur, la chaleur légère ou l’eau ?',
  'utensils.row.pan.reason':
    'Une poêle qui a servi à du non cacher est cachérisée par la chaleur ; l’eau ne la cachériserait pas pour un usage à chaud.',
  'utensils.row.tray.reason':
    'Ce sur quoi l’on a cuit est cachérisé par la chaleur, graissé ou non. Le remplacer peut être plus simple.',
  'utensils.row.fire.reason':
    'Comme il a absorbé, ainsi il rejette : utilisé sur le feu, cachérisé par le feu.',
  'utensils.row.gadget.reason':
    'Où joints et manche collé ne s’ouvrent pas, des aliments restent dedans, et l’eau ne cachérise que ce qui est propre.',
  'utensils.row.gadget.ask': 'Peut-on le démonter et le nettoyer partout, manche compris ?',
  'utensils.row.joints.reason':
    'Des aliments restent dans les joints qu’on ne peut ouvrir. La chaleur légère les y brûle et sert partout où l’eau suffirait.',
  'utensils.row.cracks.reason':
    'Fentes, creux et rouille ne peuvent être nettoyés. La chaleur légère brûle ce qu’ils tiennent et sert partout où l’eau suffirait.',
  'utensils.row.liquid.reason':
    'Comme il a absorbé, ainsi il rejette : utilisé avec liquide sur le feu, cachérisé dans l’eau bouillante.',
  'utensils.row.poured.reason':
    'On y a versé des aliments chauds. L’ébouillanter le cachériserait ; immerger fait plus et n’oublie aucun point.',
};
