import type { CustomRow } from '../../../core/custom/index.ts';
import type { MethodId } from '../../../core/kitchen/index.ts';

const PURPOSES: Readonly<Record<string, string>> = {
  'new-kitchen': 'in a new kitchen',
  passover: 'for Passover',
  'mix-up': 'after a mix-up',
};

function listed(words: readonly string[]): string {
  return words.map((word) => word.replaceAll('-', ' ')).join(', ');
}

function upperFirst(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function materialWords(materials: readonly string[]): string {
  return materials.includes('unknown') ? 'of a material not known' : `of ${listed(materials)}`;
}

/** What a row is about: "Sink of stainless steel, cast iron, for Passover". */
export function rowName({
  kinds,
  materials,
  burners,
  cleaning,
  purposes,
}: Pick<CustomRow, 'kinds' | 'materials' | 'burners' | 'cleaning' | 'purposes'>): string {
  const parts = [
    listed(kinds),
    ...(materials ? [materialWords(materials)] : []),
    ...(burners ? [`with ${listed(burners)}`] : []),
    ...(cleaning
      ? [
          cleaning.includes('none')
            ? 'without a self-clean that burns out'
            : 'that burns itself out',
        ]
      : []),
  ].join(' ');
  const when = purposes ? `, ${purposes.map((one) => PURPOSES[one] ?? one).join(' or ')}` : '';
  return upperFirst(parts) + when;
}

/** What is done: "Pour boiling water, then cover", "Heat to glow, 30 min". */
export function wayWords(
  way: { readonly method: MethodId; readonly minutes?: number; readonly cover?: boolean },
  names: Readonly<Record<MethodId, string>>,
): string {
  const minutes = way.minutes === undefined ? '' : `, ${way.minutes} min`;
  const covered = way.cover === true && way.method !== 'cover' && way.method !== 'line';
  return `${upperFirst(names[way.method])}${minutes}${covered ? ', then cover' : ''}`;
}
