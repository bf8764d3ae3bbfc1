import type { CustomRow } from '../../../core/custom/index.ts';
import type { MethodId } from '../../../core/kitchen/index.ts';
import { message, type Message } from '../../../core/messages/index.ts';

/** What a row is about: "Sink of stainless steel, cast iron, for Passover". */
export function rowName({
  kinds,
  materials = [],
  burners = [],
  cleaning,
  purposes = [],
}: Pick<CustomRow, 'kinds' | 'materials' | 'burners' | 'cleaning' | 'purposes'>): Message {
  const cleans = cleaning?.includes('none') ? 'does-not' : 'burns-out';
  return message('kitchen.custom.row', {
    kinds: kinds.map((kind) => message(`common.fixture-kind.${kind}`)),
    materials: materials.map((material) => message(`kitchen.custom.material.${material}`)),
    anyMaterial: materials.includes('unknown'),
    burners: burners.map((burner) => message(`kitchen.custom.burner.${burner}`)),
    cleaning: cleaning ? cleans : 'any',
    purposes: purposes.map((purpose) => message(`kitchen.custom.purpose.${purpose}`)),
  });
}

type Way = { readonly method: MethodId; readonly minutes?: number; readonly cover?: boolean };

/** What is done: "Pour boiling water, then cover", "Heat to glow, 30 min". */
export function wayMessage({ method: id, minutes, cover }: Way): Message {
  const method = message(`common.method.${id}`);
  const thenCover = cover === true && id !== 'cover' && id !== 'line';
  return minutes === undefined
    ? message('kitchen.custom.way', { method, thenCover })
    : message('kitchen.custom.timed-way', { method, minutes, thenCover });
}
