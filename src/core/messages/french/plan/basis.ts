import type { basis as english } from '../../english/plan/basis.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** What the figures of a plan rest on where no published figure holds them. */
export const basis: TranslationOf<typeof english> = {
  'plan.basis.title': 'Sur quoi cela repose',
  'plan.basis.about':
    'Points d’ébullition, eau, bouilloires, chaleur constante, air immobile, indice de chaleur et gaz sont comparés à des chiffres publiés ou à d’autres programmes, chacun avec sa tolérance. Ce qui suit ne l’est pas.',
  'plan.basis.kind.judgement': 'Jugement : aucun chiffre publié trouvé',
  'plan.basis.kind.computed':
    'Calculé deux fois : une formule publiée, sans chiffre publié pour la vérifier',
  'plan.basis.hand-speed': (_, f) =>
    `Jusqu’à quand on verse sur un point : la première eau, au point le plus mal placé, doit dépasser l’avis le plus élevé sur ce qui fait retirer la main, ${f.measure(71, '°C')}. Selon l’autre but, jusqu’à ce que la surface soit à un vingtième de l’eau. La pierre prend alors dix fois plus longtemps.`,
  'plan.basis.pour-litres':
    'Combien d’eau se perd, et de combien les bandes se recouvrent. Un dixième de perte en plus fait un dixième d’eau en plus.',
  'plan.basis.radial-film':
    'Comment le film sous le jet s’amincit vers l’extérieur. Il fixe la largeur de la bande, donc les litres.',
  'plan.basis.burner-bodies':
    'Taille, poids et part de chaleur des foyers, supports et verre sont de mémoire ; à un cinquième ou un quart près, une plaque portable jusqu’au double.',
  'plan.basis.glow-limit':
    'Ne pas rougir n’est un incident qu’après deux fois le temps le plus long attendu, jamais avant cinq minutes.',
  'plan.basis.touch-thresholds': (_, f) =>
    `La température à laquelle un contact d’une minute brûle (métal ${f.measure(51, '°C')}, verre ${f.measure(56, '°C')}) est citée de mémoire d’après l’ISO 13732-1.`,
  'plan.basis.oven-cooling':
    'Un four fermé perd deux tiers de sa chaleur en 70 à 115 minutes. Les notices disent environ une heure jusqu’au déverrouillage ; le calcul donne 30 à 72 minutes, et le minuteur prend les 72.',
  'plan.basis.highest-heat': (_, f) =>
    `Un four au maximum est supposé atteindre ${f.first(230, '°C')} à ${f.measure(290, '°C')} en 12 à 30 minutes et, fermé, perdre deux tiers en 40 à 90 minutes.`,
  'plan.basis.room-heat':
    'Combien de chaleur les murs absorbent. Cela déplace de plusieurs degrés le moment le plus chaud de la cuisine.',
  'plan.basis.air-curve':
    'À quelle vitesse les émissions d’un foyer se déposent sur les murs, et si la hotte les capte mal.',
  'plan.basis.burners-at-once':
    'Combien de foyers peuvent être allumés ensemble découle de la pièce et de l’air ci-dessus, à un ou deux près. Le second calcul s’en écartait d’un dixième.',
  'plan.basis.glow': (_, f) =>
    `Quand un foyer rougit. Des spirales vues à la caméra thermique restaient à ${f.measure(550, '°C')} à vide et ${f.measure(750, '°C')} couvertes ; la fourchette tient les deux.`,
  'plan.basis.safe-to-touch':
    'Quand on peut toucher : rayonnement et air immobile. Un second calcul s’en écartait de 12 à 22 % ; le minuteur prend le plus lent, et vous essayez avant de toucher.',
  'plan.basis.kettle-cooling':
    'À quelle vitesse l’eau bouillie refroidit dans la bouilloire : les pertes sont supposées, et vos propres relevés les remplacent.',
  'plan.basis.voltage': 'La puissance suit le carré de la tension.',
  'plan.basis.wetting': 'Le débit minimal qui garde une paroi mouillée.',
  'plan.basis.level-jump':
    'Jusqu’où va le film rapide du jet sur une surface plane : deux écoles, montrées ensemble comme fourchette.',
  'plan.basis.contact': 'Ce que deux corps partagent au premier contact.',
  'plan.basis.surface-after':
    'La chaleur d’une surface épaisse après quelques secondes sous l’eau.',
  'plan.basis.sheet': 'La chaleur d’une tôle mince sous une flaque.',
  'plan.basis.thermal-shock': 'Ce qu’un chaud ou un froid soudain peut fendre.',
  'plan.basis.window':
    'Combien d’air apporte une fenêtre ouverte : trois formules, du simple au double.',
  'plan.basis.admittance': 'Combien de chaleur un mur absorbe en quelques heures.',
  'plan.basis.air': 'Comment les émissions s’accumulent dans une pièce à l’air mélangé.',
  'plan.basis.poured-spot':
    'La chaleur de l’eau et de la surface où passe le jet. Un second calcul, sur du granit, donnait 2,5 K de moins.',
  'plan.basis.heated-through': 'Combien de temps il faut pour chauffer un point à cœur.',
  'plan.basis.jet-loss':
    'Ce que le jet perd en tombant. D’un demi-mètre, un jet lisse s’écartait d’un demi-kelvin du second calcul.',
};
