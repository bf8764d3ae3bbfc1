import type { damagedJournal as english } from '../../../english/run/sheets/journal.ts';
import type { TranslationOf } from '../../../model/translation.ts';

/** What is wrong with a journal, in the browser or in a file: said after the page has come. */
export const damagedJournal: TranslationOf<typeof english> = {
  'engine.journal.empty': 'Le journal n’a aucune ligne entière.',
  'engine.journal.corrupt': ({ seq }) =>
    `La ligne ${seq} est illisible, et d’autres suivent. Exportez le journal ; il s’ouvre en lecture seule.`,
  'engine.journal.altered': ({ seq }) =>
    `La ligne ${seq} a été modifiée après son écriture : sa somme ne correspond pas. Le journal s’ouvre en lecture seule.`,
  'engine.journal.broken-chain': ({ found, seq }) =>
    `La ligne ${found} se trouve où ${seq} devrait suivre la précédente. Une ligne manque ou est en double.`,
  'engine.journal.newer-version': ({ seq, version, newest }) =>
    `La ligne ${seq} a la version ${version} ; cette application lit jusqu’à ${newest}. Ouvrez-le avec l’application plus récente.`,
  'engine.journal.unknown-fact': ({ seq, kind }) =>
    `La ligne ${seq} rapporte « ${kind} », que cette application ne connaît pas. Ouvrez-le avec l’application plus récente.`,
  'engine.journal.does-not-fold': ({ why }) =>
    `Chaque ligne est bonne, mais ensemble elles sont impossibles : ${why}`,
  'engine.journal.file.long': ({ found, most }) =>
    `Le fichier a ${found} caractères ; admis : jusqu’à ${most}. Choisissez un fichier de journal.`,
  'engine.journal.file.not-json': ({ why }) =>
    `Le fichier n’est pas du JSON (${why}). Choisissez un fichier de journal.`,
  'engine.journal.file.format': ({ found, allowed }) =>
    `format vaut ${found} ; admis : "${allowed}". Choisissez un fichier de journal.`,
  'engine.journal.file.version': ({ found }) =>
    `version vaut ${found} ; admis : 1 ou 2. Ouvrez-le avec l’application qui l’a écrit.`,
  'engine.journal.file.entries': ({ field }) =>
    `${field} n’est pas une liste ; admis : une liste de lignes. Choisissez un fichier de journal.`,
};
