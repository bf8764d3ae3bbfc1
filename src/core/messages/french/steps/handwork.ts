import type { handwork as english } from '../../english/steps/handwork.ts';
import type { TranslationOf } from '../../model/translation.ts';
import type { Formatter, Message } from '../../model/message.ts';

function untilText(until: Message | undefined, f: Pick<Formatter, 'say'>): string {
  return until ? ` jusqu’à ${f.say(until)}` : '';
}

/** Cleaning, resting, covering, marking: what is done without heat. */
export const handwork: TranslationOf<typeof english> = {
  'steps.clean.title': ({ name }, f) => `Nettoyez : ${f.say(name)}.`,
  'steps.clean.title-vessel': ({ name }, f) => `Nettoyez et détartrez : ${f.say(name)}.`,
  'steps.clean.cold-only': 'Eau froide seulement, pas de vapeur : le repos court déjà.',
  'steps.clean.sand': 'Poncez chaque entaille et chaque rayure.',
  'steps.clean.rinse-vessel': 'Rincez bien, couvercle et bec compris.',
  'steps.clean.say': 'C’est propre',

  'steps.unplug.title': ({ name }, f) => `Videz et débranchez : ${f.say(name)}.`,
  'steps.unplug.food':
    'Les aliments en glacière avec des accumulateurs de froid ; gardez-la fermée.',
  'steps.unplug.plug': 'Mains sèches, fiche débranchée, câble suspendu où l’eau ne coule pas.',
  'steps.unplug.towels': 'Serviettes et plateau dessous.',
  'steps.unplug.say': 'C’est débranché',
  'steps.thaw.title': ({ name }, f) => `Laissez fondre la glace : ${f.say(name)}.`,
  'steps.thaw.open': 'Porte ouverte ; essorez les serviettes de temps en temps.',
  'steps.thaw.no-tools': 'Ôtez la glace à la main seulement : ni couteau, ni flamme, ni chauffage.',
  'steps.thaw.say': 'La glace est partie',
  'steps.thaw.timer': ({ name }, f) => `Regardez la glace : ${f.say(name)}`,
  'steps.switch-on.title': ({ name }, f) => `Rebranchez : ${f.say(name)}.`,
  'steps.switch-on.dry': 'Essuyez l’intérieur, séchez-vous les mains, puis branchez.',
  'steps.switch-on.chilled': (_, f) =>
    `Les aliments reviennent quand un thermomètre dedans indique ${f.measure(5, '°C')} ou moins.`,
  'steps.switch-on.frozen': (_, f) =>
    `Les aliments reviennent quand un thermomètre dedans indique ${f.measure(-15, '°C')} ou moins.`,
  'steps.switch-on.say': 'Il marche',

  'steps.rest.title-nothing-hot': ({ name, until }, f) =>
    `${f.say(name)} : rien de chaud dedans ni dessus${untilText(until, f)}.`,
  'steps.rest.title-sink': ({ name, until }, f) =>
    `${f.say(name)} : eau froide seulement${untilText(until, f)}.`,
  'steps.rest.label': ({ until }, f) =>
    `Affichez : AU REPOS, ne pas chauffer${until ? `, jusqu’à ${f.say(until)}` : ''}.`,
  'steps.rest.detail':
    'Aucun usage ni nettoyage à chaud avant la fin du temps. Dans le doute, dites-le : le repos recommence.',
  'steps.rest.from-last-hot': ({ wallMs, zone }, f) =>
    `Prévu depuis son dernier usage à chaud, ${f.moment(wallMs, zone)} : à confirmer pendant le chantier. D’ici là, le repos entier compte depuis le nettoyage.`,
  'steps.rest.timer': ({ name }, f) => `Repos : ${f.say(name)}`,
  'steps.rest.timer-short': 'Repos',

  'steps.cool.title': ({ name }, f) => `Laissez refroidir sans toucher : ${f.say(name)}.`,
  'steps.cool.wait': ({ name }, f) => `Jusqu’à pouvoir toucher sans danger : ${f.say(name)}`,
  'steps.cool.wait-short': 'Chaud : jusqu’à pouvoir toucher sans danger',
  'steps.cool.slow-end':
    'Le minuteur prend le temps le plus long possible. À lui seul, il ne prouve rien.',
  'steps.cool.test.lamp':
    'Regardez ensuite le témoin de chaleur résiduelle : il doit être éteint. Tenez le dos de la main au-dessus, sans toucher.',
  'steps.cool.test.drop':
    'Tenez ensuite le dos de la main au-dessus, sans toucher. Laissez tomber une goutte d’eau : elle ne doit pas grésiller.',
  'steps.cool.test.drop-in-oven':
    'Ouvrez ensuite la porte, restez de côté, dos de la main à l’intérieur sans toucher. Laissez tomber une goutte d’eau sur la sole : elle ne doit pas grésiller.',
  'steps.cool.not-over':
    'Pas tant qu’un foyer devant lui est allumé ou chaud : essayez d’abord celui-là.',
  'steps.cool.lamp-dead':
    'Un témoin qui ne s’est jamais allumé ne prouve rien. Laissez tomber une goutte d’eau sur le verre, elle ne doit pas grésiller. Écrivez une note.',
  'steps.cool.still-hot.lamp':
    'Témoin allumé, ou chaleur sentie ? Ajoutez du temps au minuteur et n’y touchez pas.',
  'steps.cool.still-hot.drop':
    'Grésillement, ou chaleur sentie ? Ajoutez du temps au minuteur et n’y touchez pas.',
  'steps.cool.say.lamp': 'Témoin éteint, aucune chaleur',
  'steps.cool.say.drop': 'Pas de grésillement, aucune chaleur',
  'steps.cool.say.drop-in-oven': 'Pas de grésillement, aucune chaleur dedans',

  'steps.parts.take-out': ({ parts }, f) =>
    `À retirer pour de bon, des neufs à la fin : ${f.list(parts.map((one) => f.say(one)))}.`,
  'steps.parts.until-new': ({ part }, f) =>
    `À nettoyer et remettre pour la chauffe, du neuf ensuite : ${f.say(part)}.`,
  'steps.parts.pour-over': ({ part }, f) => `Avec : ${f.say(part)}.`,
  'steps.parts.into-cycle': ({ part, fixture }, f) =>
    `À laisser dedans, si le fabricant le permet : ${f.say(part)} (${fixture}).`,
  'steps.parts.heat': ({ lengthS, part, fixture }, f) =>
    `Chauffez au réglage maximal, ${f.duration(lengthS)} : ${f.say(part)} (${fixture}).`,
  'steps.parts.fire': ({ lengthS, part, fixture }, f) =>
    `Portez au rouge par le feu et maintenez ${f.duration(lengthS)} : ${f.say(part)} (${fixture}).`,
  'steps.parts.boiling': ({ part, fixture }, f) =>
    `Eau bouillante sur chaque point : ${f.say(part)} (${fixture}).`,
  'steps.parts.title': ({ fixture }) => `Posez les pièces neuves : ${fixture}.`,
  'steps.parts.title-cover': ({ fixture }) => `Couvrez le reste : ${fixture}.`,
  'steps.parts.new': ({ part }, f) => `Neuf : ${f.say(part)}.`,
  'steps.parts.cover': ({ part }, f) => `À couvrir : ${f.say(part)}.`,
  'steps.parts.cold': 'Seulement quand tout est froid au toucher.',
  'steps.parts.say': 'Elles sont posées',

  'steps.cover.title': ({ fixture }) => `Couvrez : ${fixture}.`,
  'steps.line.title': ({ fixture }) => `Tapissez : ${fixture}.`,
  'steps.cover.with': ({ material }, f) => `Avec : ${f.say(material)}.`,
  'steps.cover.with-area': ({ material, areaM2 }, f) =>
    `Avec : ${f.say(material)}. Environ ${f.shortMeasure(areaM2, 'm²')}.`,
  'steps.cover.put-in': 'D’abord propre, sec et froid.',
  'steps.cover.taped':
    'D’abord propre, sec et froid ; collez les bords pour que rien ne glisse dessous.',
  'steps.cover.say': 'C’est couvert',

  'steps.mark.title': 'Marquez les endroits viande, lait et neutre.',
  'steps.mark.meat': ({ fixture }) => `${fixture} : viande`,
  'steps.mark.dairy': ({ fixture }) => `${fixture} : lait`,
  'steps.mark.pareve': ({ fixture }) => `${fixture} : parvé (neutre)`,
  'steps.mark.undecided': ({ fixture }) => `${fixture} : viande, lait ou neutre ?`,
  'steps.mark.out-of-use': ({ fixture }) => `${fixture} : ne pas utiliser avant d’avoir demandé`,
  'steps.mark.say': 'Tout est marqué',

  'steps.open-question': ({ ask, untilThen }, f) =>
    `Pas encore répondu : ${f.say(ask)} D’ici là : ${f.say(untilThen)}`,
};
