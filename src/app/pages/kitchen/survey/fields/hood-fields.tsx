import { Show } from 'solid-js';
import type { HoodKind, Room } from '../../../../../core/kitchen/index.ts';
import { Pick } from './pick.tsx';
import { HoodPicture } from './pictures.tsx';
import type { SurveyController } from '../survey-controller.ts';
import { Typed } from './typed.tsx';
import { HOOD_WORDS } from './words.ts';

const FLOW_LS = { least: 0, most: 5000 } as const;
const HOODS: readonly HoodKind[] = ['none', 'recirculating', 'vented'];

/** Where the air over the stove goes: asked with the room, and at the hood itself. */
export function HoodFields(props: { survey: SurveyController }) {
  const { survey } = props;
  const room = () => survey.kitchen().room;
  const set = (change: Partial<Room>, what: string) =>
    survey.change({ ...survey.kitchen(), room: { ...room(), ...change } }, what);
  return (
    <>
      <Pick
        label="Over the stove there is"
        wide
        path="room.hood"
        value={room().hood.kind}
        choices={HOODS.map((id) => ({
          id,
          ...HOOD_WORDS[id],
          picture: () => <HoodPicture hood={id} />,
        }))}
        onPick={(kind) =>
          set(
            { hood: { kind, flowLS: kind === 'none' ? 0 : room().hood.flowLS } },
            HOOD_WORDS[kind].name,
          )
        }
      />
      <Show when={room().hood.kind !== 'none'}>
        <div class="typed-row">
          <Typed
            label="Flow by its manual"
            quantity="flow"
            path="room.hood.flowLS"
            value={room().hood.flowLS}
            allowed={FLOW_LS}
            onValue={(flowLS) => set({ hood: { ...room().hood, flowLS } }, 'Hood flow changed')}
          />
        </div>
      </Show>
    </>
  );
}
