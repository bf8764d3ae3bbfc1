import type { Room } from '../../../../../core/kitchen/index.ts';
import { HoodFields } from '../fields/hood-fields.tsx';
import type { SurveyController } from '../survey-controller.ts';
import { Typed } from '../fields/typed.tsx';

const FLOOR_M2 = { least: 1, most: 1000 } as const;
const HEIGHT_M = { least: 1.8, most: 10 } as const;
const WINDOW_M2 = { least: 0, most: 50 } as const;
const WINDOW_M = { least: 0, most: 6 } as const;

/** Room, hood and window: how hot and how stuffy the purge gets, and how many burners may glow at once. */
export function AirChapter(props: { survey: SurveyController }) {
  const { survey } = props;
  const room = () => survey.kitchen().room;
  const set = (change: Partial<Room>, what: string) =>
    survey.change({ ...survey.kitchen(), room: { ...room(), ...change } }, what);
  return (
    <div class="chapter chapter--two">
      <section aria-label="Hood">
        <h2>Where does the air go?</h2>
        <HoodFields survey={survey} />
      </section>
      <section aria-label="Room and window">
        <h2>How large is the room?</h2>
        <div class="typed-row">
          <Typed
            label="Floor"
            quantity="area"
            path="room.floorAreaM2"
            value={room().floorAreaM2}
            allowed={FLOOR_M2}
            hint="With whatever is open to it."
            onValue={(floorAreaM2) => set({ floorAreaM2 }, 'Floor changed')}
          />
          <Typed
            label="Ceiling"
            quantity="length"
            path="room.heightM"
            value={room().heightM}
            allowed={HEIGHT_M}
            onValue={(heightM) => set({ heightM }, 'Ceiling changed')}
          />
        </div>
        <h3>The window</h3>
        <p class="tell">Only what opens counts. None: write 0.</p>
        <div class="typed-row">
          <Typed
            label="Opening"
            quantity="area"
            path="room.window"
            value={room().window.areaM2}
            allowed={WINDOW_M2}
            onValue={(areaM2) => set({ window: { ...room().window, areaM2 } }, 'Window changed')}
          />
          <Typed
            label="Its height"
            quantity="length"
            value={room().window.heightM}
            allowed={WINDOW_M}
            onValue={(heightM) => set({ window: { ...room().window, heightM } }, 'Window changed')}
          />
        </div>
      </section>
    </div>
  );
}
