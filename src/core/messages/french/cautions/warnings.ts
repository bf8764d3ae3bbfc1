import type { warnings as english } from '../../english/cautions/warnings.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** The cautions of shared/cautions.json: what to do and why, what a gate asks, how it is made safe. */
export const warnings: TranslationOf<typeof english> = {
  'cautions.child-pet.say':
    'Enfants et animaux hors de la cuisine, ou gardés par un second adulte : l’eau bouillante brûle en quelques secondes.',
  'cautions.child-pet.ask':
    'Enfants et animaux sont-ils dehors, derrière une porte fermée ou avec un autre adulte ?',
  'cautions.child-pet.make-safe': 'Éteignez ce qui est chaud et faites-les sortir.',
  'cautions.scald-dress.say':
    'Chaussures fermées, manches longues, gants anti-chaleur, sol sec : l’eau bouillante coule où vous ne regardez pas.',
  'cautions.scald-dress.ask':
    'Chaussures fermées, manches longues et gants anti-chaleur mis, sol sec, passage libre ?',
  'cautions.scald-dress.make-safe': 'Posez la bouilloire.',
  'cautions.scald-carry.say': (_, f) =>
    `Remplie au repère au plus, portée bas, bec loin de vous, une à la fois : au-delà de ${f.measure(60, '°C')} l’eau brûle en quelques secondes.`,
  'cautions.pour-stance.say':
    'L’eau chaude coule par l’avant : pieds loin du bord, versez bas et lentement.',
  'cautions.splash.say':
    'Tenez-vous droit, bec loin de vous, versez bas et lentement : l’eau bouillante rejaillit.',
  'cautions.hot-refill.say':
    'Ouvrez une bouilloire chaude loin de vous et remplissez-la lentement, hors de son socle : la vapeur en jaillit.',
  'cautions.steam-leap.say':
    'Tasse à moitié, bâtonnet dedans, laissez reposer avant de la lever : l’eau immobile jaillit, une tasse pleine déborde.',
  'cautions.pour-power.say':
    'Débranchez et déplacez les appareils ; pas d’eau dans prises, interrupteurs, lampes ni joint de la plaque : une prise mouillée peut tuer.',
  'cautions.pour-power.ask':
    'Appareils débranchés et déplacés, pas d’eau près des prises, lampes ou joints de plaque, circuit des prises exposées coupé ?',
  'cautions.pour-power.make-safe': 'Posez la bouilloire et coupez le circuit.',
  'cautions.pour-material.say':
    'Essayez d’abord un coin caché ; rien sur fissure, verre de plaque ou surface froide : la chaleur subite fend ou décolle.',
  'cautions.pour-material.ask':
    'Coin caché essayé, pas de fissure, pas froid, et le fabricant ne l’interdit pas ?',
  'cautions.pour-material.make-safe': 'Posez la bouilloire.',
  'cautions.pour-drain.say':
    'Faites suivre de l’eau froide dans la bonde après chaque bouilloire : les siphons en plastique ramollissent à l’eau chaude.',
  'cautions.tap-chrome.say':
    'Frappez sur le robinet, et demandez d’abord s’il sonne le plastique : son chrome s’écaille sous l’eau bouillante.',
  'cautions.cold-where.say':
    'Eau froide seulement où l’on vient de verser bouillant, jamais sur verre chaud, porte de four, plaque, foyer ou émail : ils peuvent éclater.',
  'cautions.cold-where.ask': 'Eau froide prête, et rien d’autre de chaud où elle coulera ?',
  'cautions.cold-where.make-safe': 'Posez le broc.',
  'cautions.wet-floor.say':
    'Épongez maintenant : le sol est mouillé où vous porterez la prochaine bouilloire.',
  'cautions.burner-clear.say':
    'Éloignez torchons, papier, rideaux et aérosols, extincteur ou couvercle à portée : ce qui est près prendra feu.',
  'cautions.burner-clear.ask':
    'Rien d’inflammable près, filtres de hotte dégraissés, extincteur ou couvercle à portée, détecteur de fumée en marche ?',
  'cautions.burner-clear.make-safe': 'Éteignez les foyers.',
  'cautions.burner-air.say':
    'Hotte vers l’extérieur au maximum, fenêtre ouverte, détecteur de CO en marche : en cuisine fermée, la flamme de gaz émet des gaz qui tuent.',
  'cautions.burner-air.ask':
    'Hotte vers l’extérieur au maximum, fenêtre ouverte, détecteur de CO en marche, personne d’étourdi ni nauséeux ?',
  'cautions.burner-air.say-hood':
    'Hotte vers l’extérieur au maximum, détecteur de CO en marche : en cuisine fermée, la flamme de gaz émet des gaz qui tuent.',
  'cautions.burner-air.ask-hood':
    'Hotte vers l’extérieur au maximum, détecteur de CO en marche, personne d’étourdi ni nauséeux ?',
  'cautions.burner-air.say-window':
    'Fenêtre grande ouverte, détecteur de CO en marche : en cuisine fermée, la flamme de gaz émet des gaz qui tuent.',
  'cautions.burner-air.ask-window':
    'Fenêtre grande ouverte, détecteur de CO en marche, personne d’étourdi ni nauséeux ?',
  'cautions.burner-air.say-way-out':
    'D’abord une sortie pour l’air et un détecteur de CO en marche : en cuisine fermée, la flamme de gaz émet des gaz qui tuent.',
  'cautions.burner-air.ask-way-out':
    'Une sortie d’air vers l’extérieur, ouverte et qui tire, détecteur de CO en marche, personne d’étourdi ni nauséeux ?',
  'cautions.burner-air.make-safe':
    'Éteignez tout, tout le monde dehors à l’air frais, puis appelez les secours.',
  'cautions.heat-air.say':
    'Hotte en marche et fenêtre ouverte : poussière et graisse chaudes fument, et la pièce chauffe.',
  'cautions.heat-air.ask':
    'Hotte en marche ou fenêtre ouverte, et personne d’étourdi ni nauséeux ?',
  'cautions.heat-air.say-hood':
    'Hotte en marche : poussière et graisse chaudes fument, et la pièce chauffe.',
  'cautions.heat-air.ask-hood': 'Hotte en marche, et personne d’étourdi ni nauséeux ?',
  'cautions.heat-air.say-window':
    'Ouvrez la fenêtre : poussière et graisse chaudes fument, et la pièce chauffe.',
  'cautions.heat-air.ask-window': 'Fenêtre ouverte, et personne d’étourdi ni nauséeux ?',
  'cautions.heat-air.say-way-out':
    'Donnez à l’air une sortie vers l’extérieur : poussière et graisse chaudes fument, et la pièce chauffe.',
  'cautions.heat-air.ask-way-out':
    'Une sortie d’air vers l’extérieur, et personne d’étourdi ni nauséeux ?',
  'cautions.heat-air.make-safe': 'Éteignez tout, tout le monde dehors à l’air frais.',
  'cautions.burner-attend.say':
    'Restez auprès, n’allumez pas plus de foyers que prévu, ne vous penchez pas : un foyer rouge met le feu aux manches.',
  'cautions.burner-sheet.say':
    'Tôle sur les foyers : seulement sur une cuisinière en métal, si le fabricant le permet, avec passages d’air. Elle étouffe les flammes et fend le verre.',
  'cautions.burner-sheet.ask':
    'Pas de tôle sur les foyers, ou une que le fabricant permet, avec passages d’air ?',
  'cautions.burner-sheet.make-safe': 'Éteignez les foyers et laissez la tôle où elle est.',
  'cautions.glass-top.say':
    'Laissez le verre sec, sans toucher : une zone s’allume et s’éteint seule, et le verre reste chaud même sombre.',
  'cautions.hot-after.say':
    'Sec et sans toucher jusqu’à la fin du minuteur : il brûle la main bien après avoir l’air froid, et l’eau peut le fendre.',
  'cautions.oven-pre.say':
    'Essuyez-le, rincez le produit, sortez grilles, papier d’aluminium, plats, sonde et tapis, sauf avis de la notice : ce qui reste brûle.',
  'cautions.oven-pre.ask':
    'Essuyé, aucun reste de produit, vidé selon la notice, tiroir du bas vide, joint non frotté ?',
  'cautions.oven-pre.make-safe': 'Laissez la porte fermée et éteignez le four.',
  'cautions.oven-birds.say':
    'Oiseaux hors du logement, rien d’antiadhésif sur la cuisinière : les revêtements chauffés émettent des vapeurs qui tuent les oiseaux et blessent les poumons.',
  'cautions.oven-birds.ask':
    'Oiseaux hors du logement, rien d’antiadhésif dans ou sur la cuisinière, nourrissons et malades des poumons ailleurs ?',
  'cautions.oven-birds.make-safe': 'Éteignez le four, aérez la pièce, sortez personnes et oiseaux.',
  'cautions.oven-attend.say':
    'Restez à la maison, éveillé. S’il fume, éteignez-le à sa commande ou au disjoncteur : porte fermée, l’air nourrit le feu.',
  'cautions.oven-late.say':
    'Gardez un jour entre pyrolyse et échéance, aucune la nuit : verrous et coupe-circuits lâchent ensuite, et réparer prend des jours.',
  'cautions.chem-mix.say':
    'Un produit à la fois, gants, lunettes, air frais, rincé avant toute chauffe : javel avec acide ou ammoniaque dégage un gaz toxique.',
  'cautions.chem-mix.ask':
    'Un produit à la fois, jamais javel avec acide ou ammoniaque, gants mis, fenêtre ouverte ?',
  'cautions.chem-mix.say-hood':
    'Un produit à la fois, gants, lunettes, hotte en marche, rincé avant toute chauffe : javel avec acide ou ammoniaque dégage un gaz toxique.',
  'cautions.chem-mix.ask-hood':
    'Un produit à la fois, jamais javel avec acide ou ammoniaque, gants mis, hotte en marche ?',
  'cautions.chem-mix.say-way-out':
    'Un produit à la fois, gants, lunettes, arrivée d’air frais, rincé avant toute chauffe : javel avec acide ou ammoniaque dégage un gaz toxique.',
  'cautions.chem-mix.ask-way-out':
    'Un produit à la fois, jamais javel avec acide ou ammoniaque, gants mis, air frais qui entre ?',
  'cautions.chem-mix.make-safe': 'Quittez la pièce et aérez-la.',
  'cautions.wash-unplugged.say':
    'Débranchez-le, ou coupez son circuit, avant de le laver : l’eau sur des pièces sous tension tue.',
  'cautions.sand-dust.say':
    'Masque pour poncer, air frais, puis aspirez et essuyez : la fine poussière de bois blesse les poumons.',
  'cautions.range-move.say':
    'Robinet de gaz fermé, à deux pour tirer, ménagez le tuyau, remettez la patte de fixation : un tuyau arraché remplit la maison de gaz.',
  'cautions.range-move.ask':
    'Laissée en place, ou robinet de gaz fermé, deux personnes, et patte de fixation remise ensuite ?',
  'cautions.range-move.make-safe':
    'Si vous sentez le gaz : ni flamme, ni interrupteur, tout le monde dehors, appelez.',
  'cautions.range-tip.say':
    'À deux pour la tirer, patte de fixation remise avant d’ouvrir sa porte : une cuisinière bascule sur qui s’y appuie.',
  'cautions.range-tip.ask':
    'Laissée en place, ou à deux pour la déplacer, et patte remise avant d’ouvrir la porte ?',
  'cautions.range-tip.make-safe': 'Lâchez-la, gardez la porte fermée et écartez-vous de l’avant.',
  'cautions.electric-load.say':
    'Chaque bouilloire directement sur la prise du plan, sans adaptateur ni rallonge légère : deux chauffes sur un circuit le surchauffent ou le font sauter.',
  'cautions.electric-load.ask':
    'Bouilloires branchées directement sur les prises du plan, rien d’autre dessus ?',
  'cautions.electric-load.make-safe': 'Éteignez les bouilloires.',
  'cautions.climb.say':
    'Où vous n’atteignez pas, montez sur un escabeau, pas sur une chaise : mains mouillées et étagères hautes font tomber.',
  'cautions.heat-stress.say':
    'Buvez, reposez-vous au frais, arrêtez si vous faiblissez ou ne transpirez plus : le plan prévoit une cuisine chaude.',
  'cautions.alone.say':
    'Dites à quelqu’un ce que vous faites et gardez le téléphone à portée : seul, personne d’autre n’appellera.',
  'cautions.labels.say':
    'Plus rien de chaud avec, dès maintenant : un seul usage à chaud, et son repos recommence.',
};
