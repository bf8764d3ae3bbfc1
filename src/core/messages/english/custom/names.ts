import type { Section } from '../../model/message.ts';

/** Purposes, customs, materials, their condition and burners by name: words of rows, answers and surveys; an open run says none of them. */
export const names = {
  'common.purpose.new-kitchen': 'a kitchen taken over',
  'common.purpose.passover': 'Passover',
  'common.purpose.mix-up': 'after a mix-up',

  'common.custom.sephardic': 'Sephardic custom',
  'common.custom.ashkenazic': 'Ashkenazic custom',

  'common.material.stainless-steel': 'Stainless steel',
  'common.material.cast-iron': 'Cast iron',
  'common.material.enamelled-steel': 'Enamelled steel',
  'common.material.porcelain': 'Porcelain',
  'common.material.ceramic': 'Ceramic',
  'common.material.glass': 'Glass',
  'common.material.glass-ceramic': 'Glass-ceramic',
  'common.material.granite': 'Granite',
  'common.material.marble': 'Marble',
  'common.material.soapstone': 'Soapstone',
  'common.material.concrete': 'Concrete',
  'common.material.quartz-composite': 'Quartz composite',
  'common.material.acrylic': 'Acrylic',
  'common.material.laminate': 'Laminate',
  'common.material.wood': 'Wood, sealed',
  'common.material.raw-wood': 'Wood, raw',
  'common.material.tile': 'Tile',
  'common.material.plastic': 'Plastic',
  'common.material.silicone': 'Silicone',
  'common.material.unknown': 'I cannot tell',

  'common.condition.smooth': 'Smooth',
  'common.condition.scratched': 'Scratched',
  'common.condition.cracked': 'Cracked',
  'common.condition.porous': 'Porous',
  'common.condition.unknown': 'Not looked at',

  'common.burner.electric-coil': 'Electric coil',
  'common.burner.solid-plate': 'Solid plate',
  'common.burner.radiant-glass': 'Radiant under glass',
  'common.burner.induction': 'Induction',
  'common.burner.gas-sealed': 'Gas, sealed',
  'common.burner.gas-open': 'Gas, open',
  'common.burner.gas-wok': 'Gas, wok',
  'common.burner.commercial-open': 'Commercial open',
  'common.burner.portable-plate': 'Portable plate',
} satisfies Section;
