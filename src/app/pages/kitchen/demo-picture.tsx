import { createEffect, createSignal, Show } from 'solid-js';
import { parseKitchen, type Kitchen } from '../../../core/kitchen/index.ts';
import { translator } from '../../context/language.ts';
import { RoomPicture } from './room/room-picture.tsx';
import { demoText } from './demos.ts';

/** Read once, however often its picture is shown. */
const read = new Map<string, Promise<Kitchen | undefined>>();

async function demoKitchen(id: string, language: string): Promise<Kitchen | undefined> {
  const outcome = parseKitchen((await demoText(id, language)) ?? '');
  return 'kitchen' in outcome ? outcome.kitchen : undefined;
}

/** A demo kitchen from above; its name stands beside it. */
export function DemoPicture(props: { id: string }) {
  const [kitchen, setKitchen] = createSignal<Kitchen>();
  createEffect(async () => {
    const { language } = translator();
    const key = `${language} ${props.id}`;
    const working = read.get(key) ?? demoKitchen(props.id, language);
    read.set(key, working);
    setKitchen(await working);
  });
  return <Show when={kitchen()}>{(now) => <RoomPicture kitchen={now()} />}</Show>;
}
