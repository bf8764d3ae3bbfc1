import type { faultLines as english } from '../../english/cautions/fault-lines.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** What to do about each fault (shared/fault-policies.json). */
export const faultLines: TranslationOf<typeof english> = {
  'cautions.fault.no-glow.line-1':
    'Faites le noir et regardez encore : le rouge se voit tard dans une cuisine claire.',
  'cautions.fault.no-glow.line-2':
    'Sous verre, la zone s’allume et s’éteint seule : c’est normal, attendez.',
  'cautions.fault.no-glow.line-3': 'Vérifiez : réglage au maximum, branché, gaz à fond.',
  'cautions.fault.no-glow.line-4':
    'Spirale qui détecte la casserole, plaque à point rouge, cuisinière sous-alimentée : toutes peuvent ne jamais rougir à vide. Ce n’est pas une panne.',
  'cautions.fault.no-glow.line-5':
    'S’il reste sombre, éteignez-le et sautez-le : il n’est pas cachérisé. Demandez comment faire ; d’ici la réponse il reste hors d’usage.',
  'cautions.fault.flame-out.line-1': 'Fermez la manette.',
  'cautions.fault.flame-out.line-2': 'Aérez cinq minutes avant de rallumer.',
  'cautions.fault.flame-out.line-3': 'Rallumez : le maintien recommence.',
  'cautions.fault.power-cut.line-1':
    'Coupez tous les boutons et manettes, pour que rien ne se rallume seul.',
  'cautions.fault.power-cut.line-2':
    'Au retour du courant, recommencez chaque maintien interrompu.',
  'cautions.fault.smoke.line-1': 'Éteignez ce qui fume. Gardez la porte du four fermée.',
  'cautions.fault.smoke.line-2': 'Hotte en marche, fenêtres ouvertes, sortez de la fumée.',
  'cautions.fault.smoke.line-3':
    'Si elle ne diminue pas, tout le monde dehors et appelez les pompiers.',
  'cautions.fault.fire.line-1':
    'Four : porte fermée, éteignez-le. Poêle ou foyer : éteignez, posez un couvercle. Jamais d’eau sur la graisse.',
  'cautions.fault.fire.line-2':
    'Tout le monde dehors et appelez les pompiers s’il ne s’éteint pas aussitôt.',
  'cautions.fault.co-alarm.line-1': 'Éteignez tout ce qui chauffe.',
  'cautions.fault.co-alarm.line-2':
    'Tout le monde dehors à l’air frais, et appelez le numéro d’urgence.',
  'cautions.fault.co-alarm.line-3': 'Ne rentrez que si les secours le disent.',
  'cautions.fault.gas-smell.line-1': 'Ni flamme, ni interrupteur, ni téléphone à l’intérieur.',
  'cautions.fault.gas-smell.line-2':
    'Fermez le robinet s’il est à portée, tout le monde dehors, et appelez du dehors.',
  'cautions.fault.unwell.line-1': 'Éteignez tout ce qui chauffe.',
  'cautions.fault.unwell.line-2': 'Aidez d’abord la personne : air frais, assise ou couchée.',
  'cautions.fault.unwell.line-3':
    'Appelez le numéro d’urgence si c’est grave ou ne passe pas aussitôt.',
  'cautions.fault.kettle-failed.line-1':
    'Débranchez-la et laissez-la fermée jusqu’à ce qu’elle soit froide.',
  'cautions.fault.kettle-failed.line-2':
    'Continuez avec une autre bouilloire, ou refaites bouillir : on ne verse pas une eau refroidie.',
  'cautions.fault.oven-lock.line-1': 'Attendez qu’il soit froid : le verrou s’ouvre tard.',
  'cautions.fault.oven-lock.line-2':
    'Coupez le disjoncteur une minute, puis réessayez. Ne forcez pas la porte.',
  'cautions.fault.oven-lock.line-3': 'Faites réparer, ou sautez-le et demandez.',
  'cautions.fault.breaker-tripped.line-1': 'Éteignez tout sur ce circuit.',
  'cautions.fault.breaker-tripped.line-2':
    'Déplacez un appareil chauffant sur un autre circuit, puis réarmez une seule fois.',
  'cautions.fault.breaker-tripped.line-3':
    'S’il saute encore, laissez-le coupé et appelez un électricien.',
  'cautions.fault.cracked.line-1': 'Cessez d’y verser et écartez-vous.',
  'cautions.fault.cracked.line-2': 'Laissez refroidir seul, sans eau.',
  'cautions.fault.cracked.line-3':
    'Marquez-le, demandez comment le traiter, et sautez ce qui ne peut se faire.',
  'cautions.fault.undefined.line-1': 'Éteignez ce qui est chaud.',
  'cautions.fault.undefined.line-2': 'Notez ce qui s’est passé.',
  'cautions.fault.undefined.line-3': 'Reprenez quand c’est réglé.',
};
