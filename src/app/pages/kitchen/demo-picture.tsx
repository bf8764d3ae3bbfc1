import { createSignal, onMount, Show } from 'solid-js';
import { parseKitchen, type Kitchen } from '../../../core/kitchen/index.ts';
import { RoomPicture } from './room/room-picture.tsx';
import { demoText } from './demos.ts';

/** Read once, however often its picture is shown. */
const read = new Map<string, Promise<Kitchen | undefined>>();

async function demoKitchen(id: string): Promise<Kitchen | undefined> {
  const outcome = parseKitchen((await demoText(id)) ?? '');
  return 'kitchen' in outcome ? outcome.kitchen : undefined;
}

/** A demo kitchen from above; its name stands beside it. */
export function DemoPicture(props: { id: string }) {
  const [kitchen, setKitchen] = createSignal<Kitchen>();
  onMount(async () => {
    const working = read.get(props.id) ?? demoKitchen(props.id);
    read.set(props.id, working);
    setKitchen(await working);
  });
  return <Show when={kitchen()}>{(now) => <RoomPicture kitchen={now()} />}</Show>;
}
