import { createEffect, createSignal, onCleanup, onMount, Show } from 'solid-js';
import type { Plan } from '../../../core/plan/index.ts';
import type { Request, RunView, StepView } from '../../../core/run/index.ts';
import { chooseLanguage, translator } from '../../context/language.ts';
import type { Theme } from '../../context/theme.ts';
import { unitsOf } from '../../../core/kitchen/index.ts';
import { followUnits } from '../../context/units.ts';
import { followZone } from '../../context/zone.ts';
import { createRehearsal } from '../../controllers/rehearse/rehearsal.ts';
import { createRehearsedSound } from '../../controllers/rehearse/rehearsed-sound.ts';
import { createRunChoices } from '../../controllers/run/run-choices.ts';
import { BrokenPart } from '../../parts/guarded.tsx';
import { SheetTop } from '../../parts/sheets/sheet-corner.ts';
import { prefersStill } from '../../parts/still.ts';
import { RunPage } from '../run/run-page.tsx';
import { forgetTicks } from '../run/step/lists/ticks.ts';
import '../../styles/run/rehearse.css';
import { createSpeed, RehearsalBand } from './rehearsal-band.tsx';

/** Between two looks at the clock, ms. */
const BEAT_MS = 100;

/** What was pressed here is of the rehearsal: theme, language and ticks go back to what they were. */
function createPassing(themeBefore: () => Theme) {
  const [theme, setTheme] = createSignal(themeBefore());
  createEffect(() => (document.documentElement.dataset['theme'] = theme()));
  const languageBefore = translator().language;
  const speak = (tag: string): void => void chooseLanguage([tag]).catch(() => undefined);
  onCleanup(() => {
    forgetTicks();
    document.documentElement.dataset['theme'] = themeBefore();
    if (translator().language !== languageBefore) speak(languageBefore);
  });
  return {
    theme,
    toggleTheme: () => setTheme(theme() === 'day' ? 'night' : 'day'),
    speak,
    choices: createRunChoices(() => undefined),
  };
}

/** The real screens of a run, played by the plan over a journal that is kept nowhere. */
export function RehearsalPage(props: {
  plan: Plan;
  theme: Theme;
  onLeave: () => void;
  /** The water of a pour gave out: what is left is shared out anew. */
  ranOut: (
    send: (request: Request) => Promise<boolean>,
    view: RunView,
    step: StepView,
    share: number,
  ) => void;
}) {
  const still = prefersStill();
  const rehearsal = createRehearsal(props.plan, {
    readMs: () => performance.now(),
    nowWallMs: () => Date.now(),
    isStill: still,
  });
  const sound = createRehearsedSound();
  const passing = createPassing(() => props.theme);
  const speed = createSpeed(rehearsal.setSpeed);
  const [bandPx, setBandPx] = createSignal(0);
  onCleanup(followZone(() => props.plan.kitchen.place?.zone));
  onCleanup(followUnits(() => unitsOf(props.plan.kitchen)));
  onMount(() => {
    void rehearsal.open();
    const beats = setInterval(() => void rehearsal.beat(), BEAT_MS);
    onCleanup(() => clearInterval(beats));
  });
  createEffect(() => sound.follow(rehearsal.playing() ? rehearsal.view() : undefined));
  const atStep = () => {
    const ahead = rehearsal.ahead();
    return ahead.kind === 'press' ? ahead.step : undefined;
  };
  /** Made once for the page and once for each sheet: a button lives longer than a view. */
  const band = (view: () => RunView) => (
    <RehearsalBand
      view={view()}
      ahead={rehearsal.ahead()}
      playing={rehearsal.playing()}
      onPlay={rehearsal.play}
      onStep={() => void rehearsal.step()}
      speed={speed}
      hasSound={sound.isOn()}
      onSound={(on) => void sound.turn(on)}
      onLeave={props.onLeave}
      onHeight={setBandPx}
    />
  );
  return (
    // What breaks here stands in no record.
    <BrokenPart.Provider value={() => undefined}>
      <Show when={rehearsal.view()}>
        {(view) => (
          <SheetTop.Provider value={() => band(view)}>
            <div
              class="rehearsal"
              style={{ '--cooling': `${bandPx()}px` }}
              data-presses={rehearsal.ahead().kind === 'press' ? '' : undefined}
            >
              {band(view)}
              <RunPage
                view={view()}
                nowMs={rehearsal.nowMs()}
                // Nothing is promised of the device: the row of lights is not shown.
                lights={{ sound: 'elsewhere', wake: 'held', writer: true }}
                trouble={undefined}
                refusal={rehearsal.refusal()}
                theme={passing.theme()}
                onTheme={passing.toggleTheme}
                choices={passing.choices.choices()}
                onChoice={passing.choices.choose}
                onLanguage={passing.speak}
                send={(request) => void rehearsal.send(request)}
                playTest={sound.playTest}
                kept="unknown"
                arm={() => undefined}
                exportRun={() => undefined}
                lead={undefined}
                atStep={atStep()}
                ranOut={(step, share) => props.ranOut(rehearsal.send, view(), step, share)}
              />
            </div>
          </SheetTop.Provider>
        )}
      </Show>
    </BrokenPart.Provider>
  );
}
