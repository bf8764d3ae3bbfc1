import type { shell as english } from '../../english/shell/shell.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** The frame of the app: pages, banners, what the device refuses, files. */
export const shell: TranslationOf<typeof english> = {
  'shell.title': 'Glowpour',
  'shell.pages': 'Rubriques',
  'shell.page.kitchen': 'Cuisine',
  'shell.page.plan': 'Plan',
  'shell.page.run': 'Chantier',
  'shell.page.record': 'Rapport',
  'shell.theme.night': 'Couleurs de nuit',
  'shell.theme.day': 'Couleurs de jour',

  'shell.reading': 'Lecture de ce qui est gardé ici …',
  'shell.save-run': 'Enregistrer le chantier dans un fichier',

  'shell.other-lead': 'Une autre page de cette tablette conduit le chantier.',
  'shell.other-lead.took-over': 'Une autre page a repris ce chantier.',
  'shell.other-lead.beating':
    'Elle conduit, écrit et sonne ; cette page-ci ne fait que montrer le chantier.',
  'shell.other-lead.unsure':
    'Elle n’a pas donné signe à l’instant ; cette page montre le chantier et sonne ce qui est dû.',
  'shell.other-lead.silent':
    'Elle ne répond plus. Cette page sonne ce qui est dû ; elle peut reprendre le chantier.',
  'shell.other-lead.arm': 'Touchez pour activer le son',
  'shell.other-lead.lead': 'Conduire d’ici',
  'shell.other-lead.only-shows':
    'Une autre page conduit le chantier ; celle-ci ne fait que le montrer. Prenez d’abord la conduite ici.',

  'shell.trouble.storage': 'Non enregistré.',
  'shell.trouble.read-only': 'Affichage seul.',
  'shell.trouble.taken-over': 'Affichage seul.',
  'shell.trouble.unreadable':
    'Ce qui est stocké est illisible pour l’instant. L’application n’a rien effacé.',
  'shell.broken': 'Cette partie de l’écran est en panne. Minuteurs et alarmes continuent.',
  'shell.broken.note': ({ part, why }) =>
    `L’écran n’a pas pu montrer une de ses parties (${part}) : ${why}`,
  'shell.failed.note': ({ why }) => `L’application a eu une panne : ${why}`,
  'shell.broken.again': 'L’afficher à nouveau',
  'shell.trouble.failed': 'L’application a eu une panne.',
  'shell.taken-over': 'Une autre page a repris ce chantier. Celle-ci ne fait que le montrer.',

  'shell.storage.full':
    'L’appareil est plein : libérez de la place ou enregistrez le chantier dans un fichier.',
  'shell.storage.refused':
    'Le navigateur ne laisse rien garder à cette page : quittez la navigation privée ou mettez à jour.',
  'shell.storage.blocked':
    'Un autre onglet retient une base plus ancienne : fermez-le, puis rechargez.',
  'shell.storage.held':
    'Une autre page de l’application est bloquée en pleine écriture ; rien ne peut être lu ni écrit à côté. Fermez-la, ou tout le navigateur, puis réessayez.',
  'shell.storage.timeout': 'L’appareil n’a pas répondu à temps : réessayez ou rechargez la page.',
  'shell.storage.lost': 'La base a été fermée de l’extérieur : réessayez ou rechargez la page.',
  'shell.storage.gone':
    'Le chantier stocké a disparu : les données du navigateur ont été effacées. Enregistrez maintenant le chantier dans un fichier.',
  'shell.storage.fenced':
    'Une autre page écrit maintenant le chantier. Celle-ci ne fait que le montrer.',
  'shell.storage.out-of-order':
    'Ce qui devait être écrit ne suit pas ce qui est stocké : rechargez la page.',
  'shell.storage.unknown': ({ why }) =>
    `L’appareil n’a pas pu écrire ou lire : réessayez ou enregistrez le chantier dans un fichier. (${why})`,
  'shell.failed': ({ why }) =>
    `L’application a échoué ici : réessayez ou rechargez la page. (${why})`,
  'shell.choice-not-kept': ({ why }, f) =>
    `Ce choix vaut jusqu’à la fermeture de la page ; il n’a pas pu être gardé. ${f.say(why)}`,
};
