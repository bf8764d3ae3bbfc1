import type { byHand as english } from '../../english/steps/by-hand.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Steam, and what a household's answer asks for that is done by hand. */
export const byHand: TranslationOf<typeof english> = {
  'steps.steam.title': ({ lengthS, fixture }, f) =>
    `Faites bouillir de l’eau dedans ${f.duration(lengthS)} : ${fixture}.`,
  'steps.steam.start':
    'Remplissez à moitié une tasse large, mettez-y un bâtonnet de bois, placez-la dedans et allumez.',
  'steps.steam.cup-on': 'Posez la tasse sur du neuf : un essuie-tout plié en quatre.',
  'steps.steam.start-detail':
    'Le bâtonnet la fait bouillir calmement : une eau immobile peut jaillir de la tasse quand on la déplace.',
  'steps.steam.start-ask': 'Est-il allumé maintenant ?',
  'steps.steam.hold': 'Laissez-le se remplir de vapeur.',
  'steps.steam.hold-detail':
    'Ne laissez jamais la tasse à sec : un micro-ondes vide brûle. Pour ajouter de l’eau : éteint, fermé une minute, gants mis ; puis changez la tasse de place.',
  'steps.steam.hold-ask': 'L’eau a-t-elle continué de bouillir ?',
  'steps.steam.timer': 'Vapeur',
  'steps.steam.top-up': 'Reste-t-il de l’eau dans la tasse ?',
  'steps.steam.open':
    'Éteignez-le et laissez-le fermé cinq minutes ; puis essuyez-le à l’eau froide.',
  'steps.steam.open-detail':
    'Ouvrez loin de vous, gants mis, la tasse d’abord. Plateau et anneau reviennent secs.',
  'steps.steam.open-say': 'Essuyé',
  'steps.steam.open-ask': 'Est-il éteint et essuyé ?',
  'steps.steam.off-timer': 'Éteignez-le',
  'steps.steam.safe': 'Éteignez-le et laissez-le fermé.',

  'steps.by-hand.pour': ({ fixture }) =>
    `Versez de l’eau bouillante sur chaque point, à la main : ${fixture}.`,
  'steps.by-hand.pour-kettle': 'Directement de la bouilloire qui a bouilli, à gros bouillons.',
  'steps.by-hand.pour-stream': 'Chaque point touché par le jet lui-même, une bouilloire à la fois.',
  'steps.by-hand.pour-say': 'Chaque point a reçu l’eau',
  'steps.by-hand.pour-ask': 'L’eau bouillante a-t-elle atteint chaque point ?',
  'steps.by-hand.immerse': ({ fixture }) =>
    `Immergez dans l’eau bouillante, pièce par pièce : ${fixture}.`,
  'steps.by-hand.immerse-boils': 'L’eau bout avant, et tant que chaque pièce y est.',
  'steps.by-hand.immerse-under': 'Chaque pièce entièrement sous l’eau.',
  'steps.by-hand.immerse-say': 'Toutes les pièces y sont passées',
  'steps.by-hand.immerse-ask': 'Toutes les pièces sont-elles passées dans l’eau bouillante ?',
  'steps.by-hand.cold': 'Rincez aussitôt chaque pièce à l’eau froide.',
  'steps.by-hand.heat': ({ lengthS, fixture }, f) =>
    `Chauffez comme le dit votre réponse, ${f.duration(lengthS)} : ${fixture}.`,
  'steps.by-hand.run-empty': ({ lengthS, fixture }, f) =>
    `Faites-le tourner à vide, cycle le plus chaud, ${f.duration(lengthS)} : ${fixture}.`,
  'steps.by-hand.heat-say': 'Le temps est écoulé',
  'steps.by-hand.heat-ask': 'La chauffe a-t-elle duré sans interruption ?',
  'steps.by-hand.heat-timer': 'Chauffe',
  'steps.by-hand.look': 'Regardez ce qui chauffe',
  'steps.by-hand.off': 'Éteignez et n’y touchez plus avant refroidissement.',
  'steps.by-hand.off-say': 'C’est éteint et froid',
  'steps.by-hand.off-ask': 'La chauffe est-elle éteinte ?',
  'steps.by-hand.off-timer': 'Éteignez la chauffe',
  'steps.by-hand.safe': 'Éteignez et tenez tout le monde à l’écart.',
};
