import type { files as english } from '../../english/problems/files.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Files, imports and kept kitchens that cannot be read: told on the pages beside the run. */
export const files: TranslationOf<typeof english> = {
  'shell.calibration-not-read': ({ why }, f) =>
    `Ce qu’ont appris les chantiers précédents n’a pas pu être lu ; le plan fait sans. ${f.say(why)}`,
  'shell.kitchens-not-read': ({ why }, f) =>
    `Les cuisines gardées ici n’ont pas pu être lues. ${f.say(why)}`,

  'shell.unread': 'Pas encore connu',
  'shell.unread.about':
    'Un chantier est peut-être gardé ici : il reprendra de lui-même dès qu’il pourra être lu. Si cela dure, fermez les autres pages de l’application, puis redémarrez le navigateur et la tablette. On peut planifier une cuisine en attendant, mais rien n’en est gardé.',

  'shell.file.too-large': ({ name, bytes, mostBytes }) =>
    `${name} a ${bytes} octets ; admis : jusqu’à ${mostBytes}. Choisissez un fichier plus petit.`,
  'shell.file.unreadable': ({ name, why }) =>
    `${name} est illisible (${why}). Choisissez-le à nouveau.`,
  'shell.import.not-whole': ({ seq, problem }, f) =>
    `Rien n’a été repris : le fichier n’est pas entier à la ligne ${seq}. ${f.say(problem)} Enregistrez à nouveau le chantier sur l’autre tablette, et choisissez ce fichier.`,
  'shell.import.no-plan': 'Le fichier ne commence pas par un plan. Choisissez-en un autre.',
  'shell.import.plan': ({ problem }) =>
    `Le plan du fichier n’est pas sûr à suivre : ${problem}. Refaites le plan.`,
  'shell.import.amendment':
    'Une modification du plan dans le fichier est illisible. Refaites le plan.',
  'shell.import.records': ({ found, most }, f) =>
    `Le fichier a ${f.number(found)} lignes ; admis : jusqu’à ${f.number(most)}. Choisissez un fichier enregistré par cette application.`,
  'shell.import.steps': ({ found, most }, f) =>
    `Le plan du fichier a ${f.number(found)} étapes ; admis : jusqu’à ${f.number(most)}. Refaites le plan.`,
  'shell.import.more': ({ more }, f) =>
    `Le plan du fichier a ${f.number(more)} autres défauts de ce genre.`,
  'shell.import.stranger': ({ seq, name }) =>
    `La ligne ${seq} du fichier parle de « ${name} », que son chantier n’a pas. Enregistrez à nouveau le chantier sur l’autre tablette, et choisissez ce fichier.`,
  'shell.import.open-run': ({ open }) =>
    `Le chantier du fichier n’est pas clos, et le chantier « ${open} » est ouvert ici ; admis : un seul ouvert. Fermez-le d’abord, puis reprenez le fichier.`,
  'shell.kitchen.both-kept': ({ name, copy }) =>
    `« ${name} » a été modifiée entre-temps sur une autre page ; cela reste. Ce qui a été modifié ici est gardé sous « ${copy} ».`,
  'shell.recheck.run-open':
    'Un chantier est ouvert. Signalez-le là, avec « Il s’est passé quelque chose », ou fermez-le d’abord.',
  'shell.plan.beyond-models': ({ why }) => `Aucun plan ne peut être fait : ${why}`,
};
