import type { TranslationOf } from '../../model/translation.ts';
import type { warnings as english } from '../../english/cautions/warnings.ts';

/** The cautions of shared/cautions.json: what to do and why, what a gate asks, how it is made safe. */
export const warnings: TranslationOf<typeof english> = {
  'cautions.child-pet.say':
    'Niños y animales fuera de la cocina, o al cuidado de otro adulto: una escaldadura ocurre en segundos.',
  'cautions.child-pet.ask':
    '¿Están fuera los niños y los animales, tras una puerta cerrada o con otro adulto?',
  'cautions.child-pet.make-safe': 'Apague lo que esté caliente y sáquelos.',
  'cautions.scald-dress.say':
    'Lleve zapatos cerrados, mangas largas y guantes resistentes al calor, y suelo seco: el agua hirviendo corre adonde usted no mira.',
  'cautions.scald-dress.ask':
    '¿Zapatos cerrados, mangas largas y guantes resistentes al calor puestos, suelo seco, paso libre?',
  'cautions.scald-dress.make-safe': 'Deje el hervidor.',
  'cautions.scald-carry.say': (_, f) =>
    `Llene como mucho hasta la marca, llévelo bajo, con el pico lejos de usted, uno cada vez: el agua a más de ${f.measure(60, '°C')} quema en segundos.`,
  'cautions.pour-stance.say':
    'El agua caliente cae por delante: pies lejos del borde, vierta bajo y despacio.',
  'cautions.splash.say':
    'De pie y derecho, el pico lejos de usted, vierta bajo y despacio: el agua hirviendo salpica.',
  'cautions.hot-refill.say':
    'Abra un hervidor caliente lejos de usted y llénelo despacio, fuera de su base: el vapor sale de golpe.',
  'cautions.steam-leap.say':
    'Media taza de agua, el palito dentro, y espere antes de levantarla: el agua quieta salta, una taza llena se desborda.',
  'cautions.pour-power.say':
    'Desenchufe y aparte lo que haya ahí. Que no entre agua en tomas, interruptores, luces ni en la junta de la placa: una toma mojada puede matar.',
  'cautions.pour-power.ask':
    '¿Aparatos desenchufados y apartados, agua lejos de tomas, luces y juntas de la placa, y cortado el circuito de las tomas donde pueda salpicar?',
  'cautions.pour-power.make-safe': 'Deje el hervidor y corte el circuito.',
  'cautions.pour-material.say':
    'Pruebe primero en un rincón oculto. No vierta sobre grietas, vidrio de la placa ni nada frío: el calor repentino puede agrietarlo o levantarlo.',
  'cautions.pour-material.ask':
    '¿Rincón oculto probado, sin grietas, no está frío y el fabricante no lo prohíbe?',
  'cautions.pour-material.make-safe': 'Deje el hervidor.',
  'cautions.pour-drain.say':
    'Eche agua fría al desagüe después de cada hervidor: los sifones de plástico se ablandan con agua caliente.',
  'cautions.tap-chrome.say':
    'Golpee el grifo con los nudillos y pregunte antes si suena a plástico: el cromado se desprende con agua hirviendo.',
  'cautions.cold-where.say':
    'Vierta agua fría solo donde acaba de verter agua hirviendo, nunca sobre vidrio, puerta de horno, placa, quemador o esmalte calientes: pueden estallar.',
  'cautions.cold-where.ask': '¿Agua fría lista, y nada más caliente por donde va a correr?',
  'cautions.cold-where.make-safe': 'Deje la jarra.',
  'cautions.wet-floor.say':
    'Seque ahora el suelo: está mojado por donde pasará el próximo hervidor.',
  'cautions.burner-clear.say':
    'Aleje bien paños, papel, cortinas y aerosoles; tenga a mano un extintor o una tapa: lo que está cerca prende.',
  'cautions.burner-clear.ask':
    '¿Nada inflamable cerca, filtros de la campana sin grasa, extintor o tapa a mano, alarma de humo en servicio?',
  'cautions.burner-clear.make-safe': 'Apague los quemadores.',
  'cautions.burner-air.say':
    'Campana al exterior al máximo, ventana abierta, alarma de CO en servicio: la llama de gas llena una cocina cerrada de gases que matan.',
  'cautions.burner-air.ask':
    '¿Campana al exterior al máximo, ventana abierta, alarma de CO en servicio, nadie mareado ni con náuseas?',
  'cautions.burner-air.say-hood':
    'Campana al exterior al máximo, alarma de CO en servicio: la llama de gas llena una cocina cerrada de gases que matan.',
  'cautions.burner-air.ask-hood':
    '¿Campana al exterior al máximo, alarma de CO en servicio, nadie mareado ni con náuseas?',
  'cautions.burner-air.say-window':
    'Ventana abierta del todo, alarma de CO en servicio: la llama de gas llena una cocina cerrada de gases que matan.',
  'cautions.burner-air.ask-window':
    '¿Ventana abierta del todo, alarma de CO en servicio, nadie mareado ni con náuseas?',
  'cautions.burner-air.say-way-out':
    'Primero una salida para el aire y una alarma de CO en servicio: la llama de gas llena una cocina cerrada de gases que matan.',
  'cautions.burner-air.ask-way-out':
    '¿Salida del aire al exterior, abierta y con tiro, alarma de CO en servicio, nadie mareado ni con náuseas?',
  'cautions.burner-air.make-safe':
    'Apague el calor, todos fuera al aire libre, y después pida ayuda.',
  'cautions.heat-air.say':
    'Encienda la campana y abra una ventana: el polvo y la grasa calientes humean, y el lugar se calienta.',
  'cautions.heat-air.ask': '¿Campana en marcha o ventana abierta, y nadie mareado ni con náuseas?',
  'cautions.heat-air.say-hood':
    'Encienda la campana: el polvo y la grasa calientes humean, y el lugar se calienta.',
  'cautions.heat-air.ask-hood': '¿Campana en marcha, y nadie mareado ni con náuseas?',
  'cautions.heat-air.say-window':
    'Abra la ventana: el polvo y la grasa calientes humean, y el lugar se calienta.',
  'cautions.heat-air.ask-window': '¿Ventana abierta, y nadie mareado ni con náuseas?',
  'cautions.heat-air.say-way-out':
    'Dé al aire una salida al exterior: el polvo y la grasa calientes humean, y el lugar se calienta.',
  'cautions.heat-air.ask-way-out':
    '¿Tiene el aire salida al exterior, y no hay nadie mareado ni con náuseas?',
  'cautions.heat-air.make-safe': 'Apague el calor, todos fuera al aire libre.',
  'cautions.burner-attend.say':
    'Quédese al lado, no encienda más quemadores que los del plan y no se incline encima: un quemador al rojo prende las mangas.',
  'cautions.burner-sheet.say':
    'Ponga una lámina sobre los quemadores solo en una superficie de metal, si el fabricante lo permite, con paso de aire: ahoga la llama y agrieta el vidrio.',
  'cautions.burner-sheet.ask':
    '¿Sin lámina sobre los quemadores, o una que el fabricante permite, con paso de aire?',
  'cautions.burner-sheet.make-safe': 'Apague los quemadores y deje la lámina donde está.',
  'cautions.glass-top.say':
    'Deje el vidrio seco y sin tocar: la zona se enciende y se apaga sola, y sigue caliente cuando ya se ve oscura.',
  'cautions.hot-after.say':
    'No lo toque ni lo moje hasta que termine el reloj: quema la mano mucho después de parecer frío, y el agua puede agrietarlo.',
  'cautions.oven-pre.say':
    'Límpielo por dentro y quite todo limpiador. Saque rejillas, papel de aluminio, recipientes, sonda y forros, salvo lo que el manual deje dentro: lo que queda arde.',
  'cautions.oven-pre.ask':
    '¿Limpio, sin limpiador dentro, vaciado como dice el manual, cajón de abajo vacío, junta sin frotar?',
  'cautions.oven-pre.make-safe': 'Deje la puerta cerrada y apague el horno.',
  'cautions.oven-birds.say':
    'Saque las aves de la casa y retire todo lo antiadherente del horno y los quemadores: el revestimiento caliente da gases que matan aves y dañan los pulmones.',
  'cautions.oven-birds.ask':
    '¿Aves fuera de la casa, nada antiadherente en el horno ni en los quemadores, bebés y enfermos de los pulmones en otro lugar?',
  'cautions.oven-birds.make-safe': 'Apague el horno, ventile y saque a las personas y a las aves.',
  'cautions.oven-attend.say':
    'Quédese en casa y despierto. Si echa humo, apáguelo en su mando o su interruptor automático: puerta cerrada, el aire aviva el fuego.',
  'cautions.oven-late.say':
    'Deje un día libre entre la autolimpieza y cualquier plazo, y ninguna de noche: después fallan bloqueos y limitadores, y la reparación tarda días.',
  'cautions.chem-mix.say':
    'Un solo limpiador cada vez, guantes, gafas, ventilación, y enjuagado antes de calentar: lejía (cloro) con ácido o amoníaco da gas venenoso.',
  'cautions.chem-mix.ask':
    '¿Un solo limpiador, nunca lejía (cloro) con ácido o amoníaco, guantes puestos, ventana abierta?',
  'cautions.chem-mix.say-hood':
    'Un solo limpiador cada vez, guantes, gafas, campana, y enjuagado antes de calentar: lejía (cloro) con ácido o amoníaco da gas venenoso.',
  'cautions.chem-mix.ask-hood':
    '¿Un solo limpiador, nunca lejía (cloro) con ácido o amoníaco, guantes puestos, campana en marcha?',
  'cautions.chem-mix.say-way-out':
    'Un solo limpiador cada vez, guantes, gafas, aire fresco, y enjuagado antes de calentar: lejía (cloro) con ácido o amoníaco da gas venenoso.',
  'cautions.chem-mix.ask-way-out':
    '¿Un solo limpiador, nunca lejía (cloro) con ácido o amoníaco, guantes puestos, entra aire fresco?',
  'cautions.chem-mix.make-safe': 'Salga del lugar y ventílelo.',
  'cautions.wash-unplugged.say':
    'Desenchúfelo, o corte su circuito, antes de lavarlo: el agua sobre partes con corriente mata.',
  'cautions.sand-dust.say':
    'Lije con mascarilla y aire fresco; después aspire y pase un paño: el polvo fino de madera daña los pulmones.',
  'cautions.range-move.say':
    'Cierre la llave del gas, saque el aparato entre dos, cuide la manguera y reponga el soporte antivuelco: una manguera rota llena la casa de gas.',
  'cautions.range-move.ask':
    '¿Se queda en su sitio, o llave del gas cerrada, dos personas, y se repondrá el soporte antivuelco?',
  'cautions.range-move.make-safe':
    'Si huele a gas: ni llama, ni interruptor, todos fuera, y llame.',
  'cautions.range-tip.say':
    'Saque el aparato entre dos y reponga el soporte antivuelco antes de abrir su puerta: se vuelca sobre quien se apoya en ella.',
  'cautions.range-tip.ask':
    '¿Se queda en su sitio, o dos personas para moverlo, y el soporte antivuelco puesto antes de abrir su puerta?',
  'cautions.range-tip.make-safe': 'Suéltelo, mantenga la puerta cerrada y apártese de delante.',
  'cautions.electric-load.say':
    'Enchufe cada hervidor directo en la toma del plan, sin adaptador ni cable fino: dos aparatos de calor en un circuito lo sobrecalientan o lo hacen saltar.',
  'cautions.electric-load.ask':
    '¿Hervidores enchufados directo en las tomas del plan, y nada más en ellas?',
  'cautions.electric-load.make-safe': 'Apague los hervidores.',
  'cautions.climb.say':
    'Donde no llegue, súbase a una escalera, no a una silla: manos mojadas y estantes altos hacen caer.',
  'cautions.heat-stress.say':
    'Beba, descanse en un lugar más fresco y pare si se siente débil o deja de sudar: el plan cuenta con una cocina calurosa.',
  'cautions.alone.say':
    'Diga a alguien lo que hace y tenga el teléfono a mano: a solas, nadie más puede llamar.',
  'cautions.labels.say':
    'Desde ahora no lo use para nada caliente: un uso en caliente, y su reposo empieza de nuevo.',
};
