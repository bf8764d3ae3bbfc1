import type { frame as english } from '../../english/shell/frame.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Round the pages, where no run is open: what is told above them, and what stands in their place. */
export const frame: TranslationOf<typeof english> = {
  'shell.open-run': 'Un chantier est ouvert ; ses minuteurs continuent.',
  'shell.open-run.back': 'Retour au chantier',
  'shell.update': 'Une version plus récente est prête.',
  'shell.update.take': 'L’utiliser maintenant',
  'shell.update.run-open':
    'Un chantier est ouvert sur cette tablette. La version plus récente pourra servir une fois qu’il sera clos.',
  'shell.lost-run': ({ name, when }, f) =>
    `Le chantier « ${name} » de ${f.say(when)} a disparu de ce navigateur.`,
  'shell.lost-run.about':
    'Le navigateur a vidé ce qu’il gardait pour l’application. Si le chantier est dans un fichier, rouvrez-le sous Rapport. Sinon, notez maintenant ce qui est fait et quand chaque repos a commencé.',
  'shell.lost-run.dismiss': 'J’ai lu',
  'shell.put-aside.about':
    'Ce chantier ne peut pas continuer ici. Enregistrez-le d’abord dans un fichier. Mis de côté, il compte comme terminé par un incident : ce qui en est écrit reste tel quel, sous Rapport, et un nouveau chantier peut commencer.',
  'shell.put-aside.hot':
    'Éteignez à la main tout ce qui est chaud : feux, four, bouilloires. Aucun appui n’est pris ici, pas même Arrêt ; une fois mis de côté, plus rien ne dit ce qui est chaud et aucun minuteur n’appelle.',
  'shell.put-aside': 'Mettre ce chantier de côté',
  'shell.put-aside.sure': 'Mettre ce chantier de côté ? Il ne sera plus conduit ici.',
  'shell.put-aside.keep': 'Le laisser ouvert',
  'shell.put-aside.do': 'Le mettre de côté',
  'shell.working': 'Calcul du plan …',
  'shell.working.here': 'La page peut rester figée un instant.',
  'shell.no-page.kitchen': 'Pas encore de cuisine',
  'shell.no-page.kitchen.about': 'Choisissez d’abord une cuisine ; son plan est calculé aussitôt.',
  'shell.no-page.kitchen.go': 'Aller à la cuisine',
  'shell.no-page.run': 'Pas encore de chantier',
  'shell.no-page.run.about': 'Un chantier commence à partir du plan d’une cuisine.',
  'shell.no-page.run.go': 'Aller au plan',
};
