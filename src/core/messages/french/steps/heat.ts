import type { heat as english } from '../../english/steps/heat.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Burners and ovens. */
export const heat: TranslationOf<typeof english> = {
  'steps.heat.say-on': 'C’est allumé',
  'steps.heat.say-off': 'C’est éteint',
  'steps.heat.ask-stayed-on': 'Le foyer est-il resté allumé ?',

  'steps.burner.of': ({ cooktop, burner }) => `${cooktop}, foyer « ${burner} »`,
  'steps.glow.title': ({ cooktop, burner, lengthS }, f) =>
    `Portez au rouge et maintenez ${f.duration(lengthS)} : ${cooktop}, foyer « ${burner} ».`,
  'steps.glow.title-highest': ({ cooktop, burner, lengthS }, f) =>
    `Chauffez au maximum : ${cooktop}, foyer « ${burner} », ${f.duration(lengthS)}.`,
  'steps.glow.light-gas': ({ burner }) => `Allumez le foyer « ${burner} » à pleine flamme.`,
  'steps.glow.light-electric': ({ burner }) => `Réglez le foyer « ${burner} » au maximum.`,
  'steps.glow.light-clear': 'Hotte en marche, rien à proximité.',
  'steps.glow.light-order':
    'Les foyers du fond d’abord, pour ne passer le bras au-dessus d’aucun foyer chaud.',
  'steps.glow.light-gas-ready':
    'Chapeaux et supports en place et secs, manettes mises, robinet ouvert. Aucune odeur de gaz ; sinon ni flamme ni interrupteur : sortez et appelez.',
  'steps.glow.light-ask': 'Le foyer est-il allumé maintenant ?',
  'steps.glow.warm-up': 'Surveillez-le jusqu’à ce qu’il rougisse.',
  'steps.glow.visible.electric-coil':
    'Toute la spirale devient rouge sombre, puis orange. Une spirale récente à limiteur peut couper par cycles et ne jamais rougir à vide.',
  'steps.glow.visible.solid-plate':
    'Une plaque de fonte rougit à peine, dans le noir, si son limiteur le permet. Beaucoup, à point rouge, coupent avant de rougir.',
  'steps.glow.visible.radiant-glass':
    'Le ruban sous le verre rougit en quelques secondes ; un limiteur le coupe et le rallume, c’est normal. Le verre lui-même ne rougit pas.',
  'steps.glow.visible.gas-sealed':
    'Les pointes du support qui sont dans la flamme rougissent ; pas tout le support.',
  'steps.glow.visible.gas-open':
    'Les pointes du support qui sont dans la flamme rougissent ; pas tout le support.',
  'steps.glow.visible.gas-wok':
    'L’anneau du support, sur la flamme extérieure, rougit à ses pointes.',
  'steps.glow.visible.commercial-open':
    'Les gros bras de fonte rougissent où la flamme frappe ; laissez-leur plus de temps.',
  'steps.glow.visible.portable-plate':
    'Une spirale portable devient rouge sombre ; une plaque de fonte fermée ou à thermostat peut ne pas rougir du tout.',
  'steps.glow.may-stay-dark':
    'Celui-ci peut ne jamais rougir à vide : il détecte la casserole, ou reçoit trop peu de tension. Regardez dans le noir. S’il reste sombre, dites qu’il ne rougit pas.',
  'steps.glow.warm-up-say': 'Il est rouge',
  'steps.glow.expect': ({ isAhead }) =>
    isAhead ? 'Jusqu’au rouge (prévu)' : 'Rouge à peu près maintenant',
  'steps.glow.limit': 'Il devrait déjà être rouge',
  'steps.glow.hold': 'Laissez-le rouge sans interruption.',
  'steps.glow.hold-highest': 'Laissez-le au maximum sans interruption.',
  'steps.glow.hold-detail':
    'Restez auprès. Si la flamme ou le courant s’arrête, le temps recommence.',
  'steps.glow.hold-ask': 'Le foyer est-il resté rouge ?',
  'steps.glow.hold-timer': 'Au rouge',
  'steps.glow.look': 'Regardez le foyer',
  'steps.glow.off': ({ burner }) => `Éteignez le foyer « ${burner} ».`,
  'steps.glow.off-detail': 'N’y touchez pas et laissez-le sec.',
  'steps.glow.off-ask': 'Le foyer est-il éteint ?',
  'steps.glow.off-timer': 'Éteignez le foyer',
  'steps.glow.cool-safe': ({ burner }) =>
    `Tenez mains, torchons et enfants loin du foyer « ${burner} » jusqu’à ce qu’il ait refroidi.`,

  'steps.oven.look': 'Tout va bien avec le four ?',
  'steps.oven.clean.title': ({ oven }) => `Faites un cycle complet de pyrolyse : ${oven}.`,
  'steps.oven.clean.start': ({ oven }) =>
    `Fermez la porte et lancez le cycle complet de pyrolyse : ${oven}.`,
  'steps.oven.clean.racks-in': 'Les grilles restent dedans, comme sa notice le permet.',
  'steps.oven.clean.racks-out': 'Les grilles sont sorties.',
  'steps.oven.clean.hob-cold': 'Les foyers au-dessus restent éteints jusqu’au déverrouillage.',
  'steps.oven.clean.locks': 'La porte se verrouille seule quand le four est chaud.',
  'steps.oven.clean.start-say': 'Il tourne',
  'steps.oven.clean.start-ask': 'Le cycle tourne-t-il maintenant ?',
  'steps.oven.clean.cycle': 'Laissez le cycle aller jusqu’au bout.',
  'steps.oven.clean.cycle-detail':
    'Restez à la maison et éveillé ; tenez les enfants à l’écart. Si le courant s’arrête, le cycle recommence.',
  'steps.oven.clean.cycle-ask': 'Le cycle a-t-il continué sans interruption ?',
  'steps.oven.clean.cycle-timer': 'Cycle de pyrolyse',
  'steps.oven.clean.cool': 'Laissez la porte fermée jusqu’au déverrouillage.',
  'steps.oven.clean.cool-detail': 'Ne la forcez pas.',
  'steps.oven.clean.cool-timer': 'La porte se déverrouille',
  'steps.oven.clean.open':
    'Vérifiez que le cycle est fini et la porte déverrouillée, puis éteignez-le.',
  'steps.oven.clean.open-detail': 'L’intérieur est encore chaud : laissez-le fermé et sec.',
  'steps.oven.clean.open-say': 'Éteint et déverrouillé',
  'steps.oven.clean.open-ask': 'Le four est-il éteint et déverrouillé ?',
  'steps.oven.clean.open-timer': 'Vérifiez que le four est éteint',
  'steps.oven.clean.safe':
    'Gardez la porte fermée et éteignez le four à sa commande ou à son disjoncteur.',
  'steps.oven.title': ({ lengthS, oven }, f) =>
    `Chauffez au réglage maximal pendant ${f.duration(lengthS)} : ${oven}.`,
  'steps.oven.start': ({ oven }) => `Réglez au maximum, porte fermée : ${oven}.`,
  'steps.oven.start-detail': 'S’il a un gril, utilisez-le les dernières minutes.',
  'steps.oven.racks-in': 'Grilles dedans, propres et sèches.',
  'steps.oven.racks-out': 'Les anciennes grilles sont sorties.',
  'steps.oven.start-ask': 'Le four est-il allumé maintenant ?',
  'steps.oven.warm-up': 'Attendez qu’il ait atteint sa chaleur maximale.',
  'steps.oven.warm-up-say': 'Il est au maximum',
  'steps.oven.warm-up-ask': 'Le four est-il resté allumé ?',
  'steps.oven.expect': ({ isAhead }) =>
    isAhead ? 'Jusqu’au maximum (prévu)' : 'Au maximum à peu près maintenant',
  'steps.oven.hold': 'Laissez-le au maximum sans interruption.',
  'steps.oven.hold-detail': 'Si le courant ou la flamme s’arrête, le temps recommence.',
  'steps.oven.hold-ask': 'Le four est-il resté allumé sans interruption ?',
  'steps.oven.hold-timer': 'Chaleur maximale',
  'steps.oven.off': ({ oven }) => `Éteignez et laissez la porte fermée : ${oven}.`,
  'steps.oven.off-ask': 'Le four est-il éteint ?',
  'steps.oven.off-timer': 'Éteignez le four',
  'steps.oven.safe': 'Éteignez le four et gardez sa porte fermée.',
  'steps.oven.cool-safe': ({ oven }) =>
    `Porte fermée et enfants à l’écart jusqu’à ce qu’il ait refroidi : ${oven}.`,
  'steps.oven.picture.heat': 'Chauffe',
  'steps.oven.picture.hold': 'Maintien',
  'steps.oven.picture.cool': 'Refroidit',
  'steps.oven.picture.cool-locked': 'Refroidit, verrouillé',
};
