import type { TranslationOf } from '../../model/translation.ts';
import type { appliances as english } from '../../english/custom/appliances.ts';

/** Rows of the customs for appliances and cupboards: why, what may change it, what is asked. */
export const appliances: TranslationOf<typeof english> = {
  'custom.way.hood.reason': 'Solo le llegan vapor y grasa, y en ella no se cocina comida.',
  'custom.way.hood.would-change': 'Avise si de ella goteó algo en las ollas.',
  'custom.way.hood.note': 'No la use sin los filtros.',
  'custom.way.microwave.reason':
    'Absorbió vapor, y el vapor de agua hirviendo dentro es la respuesta habitual. Ningún código lo nombra, y uno pide un recipiente hirviendo donde hubo vapor.',
  'custom.way.microwave.would-change':
    'Avise si su revestimiento está agrietado o si tiene resistencia para dorar.',
  'custom.way.microwave.ask': '¿Se puede kasherizar el microondas con vapor, y cuántos minutos?',
  'custom.way.microwave.why': 'Ningún código lo nombra. Las opiniones van de 10 a 20 minutos.',
  'custom.way.microwave.until-then': 'Vapor durante 20 minutos.',
  'custom.way.microwave.answer-1': 'Vapor durante 10 minutos.',
  'custom.way.microwave.answer-2': 'Vapor durante 20 minutos.',
  'custom.way.dishwasher.reason':
    'El agua caliente con comida corre por la cuba, las cestas y la bomba, y las opiniones difieren sobre si un ciclo los kasheriza.',
  'custom.way.dishwasher.would-change': 'La palabra de su rabino puede cambiarlo.',
  'custom.way.dishwasher.ask': '¿Se puede kasherizar este lavavajillas, y con qué ciclo?',
  'custom.way.dishwasher.why':
    'Las cubas de metal se juzgan de otro modo que las de plástico, y por las cestas y el filtro se pregunta aparte.',
  'custom.way.dishwasher.until-then': 'Límpielo y no lo use.',
  'custom.way.dishwasher.answer-1':
    'Limpiarlo y ponerlo en marcha vacío, con el ciclo más caliente.',
  'custom.way.dishwasher.answer-2': 'Solo limpiarlo.',
  'custom.way.dishwasher.answer-3': 'No se usa.',
  'custom.way.warming-drawer.reason':
    'No llega a un calor que kasherice, así que se limpia y se forra.',
  'custom.way.warming-drawer.would-change':
    'Avise si su manual dice que llega al calor de un horno.',
  'custom.way.warming-drawer.ask': '¿Se puede kasherizar el cajón calientaplatos, y cómo?',
  'custom.way.warming-drawer.why':
    'Calienta comida tapada y rara vez llega a un calor que kasherice.',
  'custom.way.warming-drawer.until-then': 'Fórrelo, y ponga dentro solo comida tapada.',
  'custom.way.warming-drawer.answer-1': 'Calentarlo al máximo.',
  'custom.way.warming-drawer.answer-2': 'Forrarlo.',
  'custom.way.cold-passover.reason':
    'Se usó solo en frío: basta la limpieza, y muchos forran los estantes en Pésaj.',
  'custom.way.cold-passover.would-change':
    'Puede que su costumbre no forre: pregunte. Avise si se pusieron dentro ollas calientes, o si hubo líquido derramado un día entero.',
  'custom.way.cold.reason':
    'Se usó solo en frío, así que bastan una limpieza a fondo y un enjuague.',
  'custom.way.cold.would-change':
    'Avise si se pusieron dentro ollas calientes, o si hubo líquido derramado un día entero.',
  'custom.way.shelf-raw.reason':
    'La madera sin tratar retiene migas y humedad, así que se limpia y se forra; no se usó en caliente.',
  'custom.way.shelf-raw.would-change': 'Avise si se guardó encima comida caliente.',
  'custom.way.shelf-unknown.reason':
    'No se sabe de qué son los estantes, así que se limpian y se forran.',
  'custom.way.shelf-unknown.would-change': 'Diga de qué material es.',
  'custom.way.shelf-unknown.ask': '¿De qué son estos estantes?',
  'custom.way.shelf-unknown.why':
    'La madera sin tratar retiene migas; las superficies cerradas solo se limpian.',
  'custom.way.shelf-unknown.until-then': 'Límpielos y fórrelos.',
  'custom.way.shelf.reason': 'Se usó solo en frío, así que basta una limpieza a fondo.',
  'custom.way.shelf.would-change': 'Avise si se guardó dentro comida caliente.',
};
