import type { TranslationOf } from '../../model/translation.ts';
import type { names as english } from '../../english/custom/names.ts';

/** Purposes, customs, materials, their condition and burners by name: words of rows, answers and surveys; an open run says none of them. */
export const names: TranslationOf<typeof english> = {
  'common.purpose.new-kitchen': 'una cocina que era de otros',
  'common.purpose.passover': 'Pésaj',
  'common.purpose.mix-up': 'tras una mezcla por error',

  'common.custom.sephardic': 'Costumbre sefardí',
  'common.custom.ashkenazic': 'Costumbre askenazí',

  'common.material.stainless-steel': 'Acero inoxidable',
  'common.material.cast-iron': 'Hierro fundido',
  'common.material.enamelled-steel': 'Acero esmaltado',
  'common.material.porcelain': 'Porcelana',
  'common.material.ceramic': 'Cerámica',
  'common.material.glass': 'Vidrio',
  'common.material.glass-ceramic': 'Vitrocerámica',
  'common.material.granite': 'Granito',
  'common.material.marble': 'Mármol',
  'common.material.soapstone': 'Esteatita',
  'common.material.concrete': 'Hormigón (concreto)',
  'common.material.quartz-composite': 'Compuesto de cuarzo',
  'common.material.acrylic': 'Acrílico',
  'common.material.laminate': 'Laminado',
  'common.material.wood': 'Madera, sellada',
  'common.material.raw-wood': 'Madera, sin tratar',
  'common.material.tile': 'Azulejo',
  'common.material.plastic': 'Plástico',
  'common.material.silicone': 'Silicona',
  'common.material.unknown': 'No lo sé',

  'common.condition.smooth': 'Liso',
  'common.condition.scratched': 'Rayado',
  'common.condition.cracked': 'Agrietado',
  'common.condition.porous': 'Poroso',
  'common.condition.unknown': 'Sin mirar',

  'common.burner.electric-coil': 'Espiral eléctrica',
  'common.burner.solid-plate': 'Disco macizo',
  'common.burner.radiant-glass': 'Radiante bajo vidrio',
  'common.burner.induction': 'Inducción',
  'common.burner.gas-sealed': 'Gas, sellado',
  'common.burner.gas-open': 'Gas, abierto',
  'common.burner.gas-wok': 'Gas, wok',
  'common.burner.commercial-open': 'Industrial abierto',
  'common.burner.portable-plate': 'Placa portátil',
};
