import type { walls as english } from '../../english/survey/walls.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Walls, doors and windows, and one wall seen from the front. */
export const walls: TranslationOf<typeof english> = {
  'survey.face': 'Vue',
  'survey.face.above': 'D’en haut',
  'survey.face.far': 'Mur du fond',
  'survey.face.near': 'Mur proche',
  'survey.face.left': 'Mur de gauche',
  'survey.face.right': 'Mur de droite',
  'survey.face.numbered': ({ wall, number }, f) => `${f.say(wall)} ${f.number(number)}`,
  'survey.face.push': ({ wall, length }, f) =>
    `Poussez le mur : ${f.say(wall)}, long de ${f.say(length)}`,

  'survey.editor.keys': (_, f) =>
    `Les flèches déplacent de ${f.measure(5, 'cm')}, avec Maj elles changent la taille. T tourne, Suppr retire, Entrée va aux champs, Échap quitte.`,
  'survey.editor.lengths': 'Longueurs',
  'survey.editor.names': 'Noms',
  'survey.editor.walls': 'Murs',

  'survey.front.label': ({ wall }, f) => `${f.say(wall)}, vu de face`,
  'survey.front.spoken': ({ name, left, from, to }, f) =>
    `${name}, à ${f.say(left)} de la gauche, de ${f.say(from)} à ${f.say(to)} au-dessus du sol`,
  'survey.front.heights': ({ from, to }, f) => `${f.say(from)} – ${f.say(to)}`,
  'survey.front.untold': 'Traits interrompus : hauteur non indiquée, l’habituelle est dessinée.',
  'survey.front.unhung': 'Pas encore dessiné. Appuyez pour le mettre à ce mur :',

  'survey.opening.door': 'Porte',
  'survey.opening.door.tells': 'Avec le sens où elle s’ouvre',
  'survey.opening.window': 'Fenêtre',
  'survey.opening.window.tells': 'Au-dessus d’un plan de travail ou non',
  'survey.opening.passage': 'Passage',
  'survey.opening.passage.tells': 'Une ouverture sans porte',
  'survey.opening.spoken': ({ name, wall, left, width }, f) =>
    `${f.say(name)}, ${f.say(wall)}, à ${f.say(left)} de son bout gauche, large de ${f.say(width)}`,
  'survey.opening.width': 'Largeur',
  'survey.opening.from-left': 'Depuis le bout gauche du mur',
  'survey.opening.turn': 'Tourner la porte',
  'survey.offers.openings': 'Dans les murs',
  'survey.wall-place': 'Au mur',
  'survey.heights.from': 'Bord inférieur au-dessus du sol',
  'survey.heights.to': 'Bord supérieur au-dessus du sol',
  'survey.heights.hint': 'Pour l’image seulement.',

  'survey.done.walls': 'Murs déplacés',
  'survey.done.hung': ({ fixture }) => `${fixture} : mis au mur`,
  'survey.what.heights': 'hauteurs',
  'survey.what.wall-place': 'place au mur',
};
