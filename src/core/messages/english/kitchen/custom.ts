import type { Message, Section } from '../../model/message.ts';

type Name = { name: string };
type Custom = { custom: Message };

/** A custom of the household's own, and what a person fills in about one answer. */
export const custom = {
  'kitchen.custom.title': 'A custom of your own',
  'kitchen.custom.first-name': 'Our custom',
  'kitchen.custom.make': 'Make a custom of our own',
  'kitchen.custom.about': ({ custom: base }: Custom, f) =>
    `It starts as a copy of the ${f.say(base)}. You change the rows that are otherwise with you, each with who said it, when and why. It is kept in the kitchen file and goes with it.`,
  'kitchen.custom.resting': ({ name, custom: base }: Name & Custom, f) =>
    `“${name}”, copied from the ${f.say(base)}, is kept and not used now. A new copy takes its place.`,
  'kitchen.custom.called': 'What you call it',
  'kitchen.custom.copy': ({ custom: base }: Custom, f) => `Copy the ${f.say(base)}`,
  'kitchen.custom.back': 'Back',
  'kitchen.custom.copied': (
    { custom: base, changed, rows }: Custom & { changed: number; rows: number },
    f,
  ) =>
    `Copied from the ${f.say(base)}; ${changed === 0 ? 'no row is changed yet' : `${f.number(changed)} of ${f.number(rows)} rows changed`}. An answer about one fixture goes before it. What cracks and scratches change stays as it is.`,
  'kitchen.custom.done': 'Done',
  'kitchen.custom.delete': 'Delete this custom',
  'kitchen.custom.delete-sure': ({ name }: Name) => `Yes, delete “${name}”`,
  'kitchen.custom.keep': 'Keep it',
  'kitchen.custom.change': 'Change',
  'kitchen.custom.back-to-row': 'Back to the custom’s row',
  'kitchen.custom.own-way': ({ way }: { way: Message }, f) => `${f.say(way)}.`,
  'kitchen.custom.said': ({
    why,
    saidBy,
    saidOn,
  }: {
    why: string;
    saidBy: string;
    saidOn: string;
  }) => `${why} (${saidBy}, ${saidOn})`,
  'kitchen.custom.change-row': ({ row }: { row: Message }, f) => `Change the row: ${f.say(row)}`,
  'kitchen.custom.base-has': ({ way, reason }: { way: Message; reason: Message }, f) =>
    `The custom has: ${f.say(way)}. ${f.say(reason)}`,
  'kitchen.custom.follows': 'Every fixture this row is about follows it.',
  'kitchen.custom.keep-row': 'Keep the row',

  /** What a row is about: "Sink of stainless steel, cast iron, for Passover". */
  'kitchen.custom.row': (
    {
      kinds,
      materials,
      anyMaterial,
      burners,
      cleaning,
      purposes,
    }: {
      kinds: readonly Message[];
      materials: readonly Message[];
      anyMaterial: boolean;
      burners: readonly Message[];
      cleaning: 'any' | 'burns-out' | 'does-not';
      purposes: readonly Message[];
    },
    f,
  ) => {
    const what = [
      kinds.map(f.say).join(', '),
      ...(anyMaterial ? ['of a material not known'] : []),
      ...(!anyMaterial && materials.length > 0 ? [`of ${materials.map(f.say).join(', ')}`] : []),
      ...(burners.length > 0 ? [`with ${burners.map(f.say).join(', ')}`] : []),
      ...(cleaning === 'does-not' ? ['without a self-clean that burns out'] : []),
      ...(cleaning === 'burns-out' ? ['that burns itself out'] : []),
    ].join(' ');
    const when = purposes.length > 0 ? `, ${purposes.map(f.say).join(' or ')}` : '';
    return f.capital(what) + when;
  },
  // As they stand inside the sentence about a row.
  'kitchen.custom.material.stainless-steel': 'stainless steel',
  'kitchen.custom.material.cast-iron': 'cast iron',
  'kitchen.custom.material.enamelled-steel': 'enamelled steel',
  'kitchen.custom.material.porcelain': 'porcelain',
  'kitchen.custom.material.ceramic': 'ceramic',
  'kitchen.custom.material.glass': 'glass',
  'kitchen.custom.material.glass-ceramic': 'glass-ceramic',
  'kitchen.custom.material.granite': 'granite',
  'kitchen.custom.material.marble': 'marble',
  'kitchen.custom.material.soapstone': 'soapstone',
  'kitchen.custom.material.concrete': 'concrete',
  'kitchen.custom.material.quartz-composite': 'quartz composite',
  'kitchen.custom.material.acrylic': 'acrylic',
  'kitchen.custom.material.laminate': 'laminate',
  'kitchen.custom.material.wood': 'wood',
  'kitchen.custom.material.raw-wood': 'raw wood',
  'kitchen.custom.material.tile': 'tile',
  'kitchen.custom.material.plastic': 'plastic',
  'kitchen.custom.material.silicone': 'silicone',
  'kitchen.custom.material.unknown': 'unknown',
  'kitchen.custom.burner.electric-coil': 'electric coil',
  'kitchen.custom.burner.solid-plate': 'solid plate',
  'kitchen.custom.burner.radiant-glass': 'radiant glass',
  'kitchen.custom.burner.induction': 'induction',
  'kitchen.custom.burner.gas-sealed': 'gas sealed',
  'kitchen.custom.burner.gas-open': 'gas open',
  'kitchen.custom.burner.gas-wok': 'gas wok',
  'kitchen.custom.burner.commercial-open': 'commercial open',
  'kitchen.custom.burner.portable-plate': 'portable plate',
  'kitchen.custom.purpose.new-kitchen': 'in a new kitchen',
  'kitchen.custom.purpose.passover': 'for Passover',
  'kitchen.custom.purpose.mix-up': 'after a mix-up',
  /** What is done: "Pour boiling water, then cover", "Heat to glow, 30 min". */
  'kitchen.custom.way': ({ method, thenCover }: { method: Message; thenCover: boolean }, f) =>
    `${f.say(method)}${thenCover ? ', then cover' : ''}`,
  'kitchen.custom.timed-way': (
    { method, minutes, thenCover }: { method: Message; minutes: number; thenCover: boolean },
    f,
  ) => `${f.say(method)}, ${f.shortNumber(minutes)} min${thenCover ? ', then cover' : ''}`,

  'kitchen.custom.way.method': 'What is done',
  'kitchen.custom.way.minutes': 'Minutes',
  'kitchen.custom.way.cover': 'Covered after it?',
  'kitchen.custom.way.cover.yes': 'Yes',
  'kitchen.custom.way.cover.no': 'No',
  'kitchen.custom.way.said-by': 'Who said it',
  'kitchen.custom.way.said-on': 'On which day',
  'kitchen.custom.way.why': 'Why',
  'kitchen.custom.missing.minutes': ({ least, most }: { least: number; most: number }, f) =>
    `Minutes: from ${f.number(least)} to ${f.number(most)}.`,
  'kitchen.custom.missing.said-by': 'Write who said it.',
  'kitchen.custom.missing.said-on': 'Choose the day it was said.',
  'kitchen.custom.missing.why': 'Write why.',
} satisfies Section;
