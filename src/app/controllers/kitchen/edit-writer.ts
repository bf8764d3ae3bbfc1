import type { Kitchen } from '../../../core/kitchen/index.ts';
import { message, type Message } from '../../../core/messages/index.ts';
import type { SavedKitchen } from '../../../host/kitchens/index.ts';
import { reasonOf } from '../failures/reason.ts';
import type { KitchenLibrary } from './kitchen-library.ts';
import { latestWriter, type WriteState } from './latest-writer.ts';

type Edited = { readonly id: string; readonly kitchen: Kitchen };
type Copy = Pick<SavedKitchen, 'id' | 'name'>;

/**
 * Writes each edit of a kept kitchen. Where another page changed or deleted it since it was read
 * here, that stays as it is, and what was changed here becomes a kitchen of its own.
 */
export function createEditWriter(
  { newId, tell }: { readonly newId: () => string; readonly tell: (message: Message) => void },
  library: KitchenLibrary,
  desk: {
    /** The kitchen with this id is another one from now on, if it is the open one. */
    readonly part: (id: string, copy: Copy) => void;
    readonly onState: (state: WriteState) => void;
  },
) {
  /** What became a kitchen of its own, by the id it had: edits that were waiting belong to it. */
  const parted = new Map<string, Copy>();
  const write = async ({ id, kitchen }: Edited): Promise<void> => {
    const own = parted.get(id);
    if (await library.save(own?.id ?? id, own ? { ...kitchen, name: own.name } : kitchen)) return;
    await library.refresh();
    const copy = { id: newId(), name: library.freeName(kitchen.name) };
    await library.save(copy.id, { ...kitchen, name: copy.name });
    parted.set(id, copy);
    desk.part(id, copy);
    tell(message('shell.kitchen.both-kept', { name: kitchen.name, copy: copy.name }));
  };
  const writer = latestWriter(write, desk.onState, (error) => tell(reasonOf(error)));
  return {
    ...writer,
    /** It was opened as it is kept now: edits are of itself again. */
    opened: (id: string): void => void parted.delete(id),
  };
}
