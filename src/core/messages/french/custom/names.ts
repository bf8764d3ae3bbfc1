import type { names as english } from '../../english/custom/names.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Purposes, customs, materials, their condition and burners by name: words of rows, answers and surveys; an open run says none of them. */
export const names: TranslationOf<typeof english> = {
  'common.purpose.new-kitchen': 'cuisine reprise',
  'common.purpose.passover': 'Pessah',
  'common.purpose.mix-up': 'après un mélange',

  'common.custom.sephardic': 'Coutume séfarade',
  'common.custom.ashkenazic': 'Coutume ashkénaze',

  'common.material.stainless-steel': 'Acier inoxydable',
  'common.material.cast-iron': 'Fonte',
  'common.material.enamelled-steel': 'Acier émaillé',
  'common.material.porcelain': 'Porcelaine',
  'common.material.ceramic': 'Céramique',
  'common.material.glass': 'Verre',
  'common.material.glass-ceramic': 'Vitrocéramique',
  'common.material.granite': 'Granit',
  'common.material.marble': 'Marbre',
  'common.material.soapstone': 'Stéatite',
  'common.material.concrete': 'Béton',
  'common.material.quartz-composite': 'Composite de quartz',
  'common.material.acrylic': 'Acrylique',
  'common.material.laminate': 'Stratifié',
  'common.material.wood': 'Bois, protégé',
  'common.material.raw-wood': 'Bois, brut',
  'common.material.tile': 'Carrelage',
  'common.material.plastic': 'Plastique',
  'common.material.silicone': 'Silicone',
  'common.material.unknown': 'Je ne sais pas',

  'common.condition.smooth': 'Lisse',
  'common.condition.scratched': 'Rayé',
  'common.condition.cracked': 'Fendu',
  'common.condition.porous': 'Poreux',
  'common.condition.unknown': 'Non regardé',

  'common.burner.electric-coil': 'Spirale électrique',
  'common.burner.solid-plate': 'Plaque de fonte',
  'common.burner.radiant-glass': 'Radiant sous verre',
  'common.burner.induction': 'Induction',
  'common.burner.gas-sealed': 'Gaz, fermé',
  'common.burner.gas-open': 'Gaz, ouvert',
  'common.burner.gas-wok': 'Gaz, wok',
  'common.burner.commercial-open': 'Professionnel ouvert',
  'common.burner.portable-plate': 'Plaque portable',
};
