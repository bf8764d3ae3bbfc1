import { createSignal, onCleanup, onMount, Show } from 'solid-js';
import type { RunView } from '../../../core/run/index.ts';
import { say, t } from '../../context/language.ts';
import { wallZone } from '../../context/zone.ts';
import type { Ahead } from '../../controllers/rehearse/rehearsal.ts';
import { Action } from '../../parts/press/action.tsx';

/** How much faster than in about three minutes it is played. */
const SPEEDS = [0.25, 0.5, 1, 2, 4];
const USUAL = SPEEDS.indexOf(1);

/** Which of the speeds is played, and the next ones. */
export function createSpeed(onSpeed: (speed: number) => void) {
  const [at, setAt] = createSignal(USUAL);
  const by = (places: number) => SPEEDS[at() + places];
  return {
    speed: () => SPEEDS[at()] ?? 1,
    can: (places: number) => by(places) !== undefined,
    change(places: number): void {
      const next = by(places);
      if (next === undefined) return;
      setAt(at() + places);
      onSpeed(next);
    },
  };
}

type BandProps = {
  readonly view: RunView;
  readonly ahead: Ahead;
  readonly playing: boolean;
  readonly onPlay: (on: boolean) => void;
  readonly onStep: () => void;
  readonly speed: ReturnType<typeof createSpeed>;
  readonly hasSound: boolean;
  readonly onSound: (on: boolean) => void;
  readonly onLeave: () => void;
  /** How tall it stands, px. */
  readonly onHeight: (heightPx: number) => void;
};

/** What comes next of itself, in words. */
function aheadText(ahead: Ahead, view: RunView): string {
  if (ahead.kind === 'wait')
    return t('rehearse.ahead.wait', { wallMs: ahead.untilWallMs, zone: wallZone() });
  if (ahead.kind !== 'press') return t(`rehearse.ahead.${ahead.kind}`);
  const { kind } = ahead.request;
  if (kind === 'start-run') return t('rehearse.ahead.start-run');
  const of = view.steps.find(({ step }) => step.id === ahead.step);
  const isNamed =
    kind === 'start-step' ||
    kind === 'confirm' ||
    kind === 'answer-gate' ||
    kind === 'acknowledge-timer';
  if (!of || !isNamed) return t('rehearse.ahead.other');
  return t(`rehearse.ahead.${kind}`, { step: say(of.step.title) });
}

/** Over every screen and sheet of a rehearsal: what it is, what comes next, and how it is played. */
export function RehearsalBand(props: BandProps) {
  let band: HTMLElement | undefined;
  onMount(() => {
    if (!band) return;
    const watch = new ResizeObserver(() => band && props.onHeight(band.offsetHeight));
    watch.observe(band);
    onCleanup(() => watch.disconnect());
  });
  const canGoOn = () => props.ahead.kind === 'press' || props.ahead.kind === 'wait';
  return (
    <section
      class="rehearsal-band"
      ref={(element) => (band = element)}
      aria-label={t('rehearse.band')}
      data-rehearsal={props.ahead.kind}
    >
      <p class="rehearsal-words">
        <strong class="rehearsal-title">{t('rehearse.title')}</strong>{' '}
        <span>{t('rehearse.about')}</span>
      </p>
      <div class="rehearsal-controls">
        <Show when={props.ahead.kind !== 'over'}>
          <Action
            class="button"
            name="rehearse-play"
            disabled={!canGoOn()}
            onPress={() => props.onPlay(!props.playing)}
          >
            {t(props.playing ? 'rehearse.pause' : 'rehearse.play')}
          </Action>
          <Action class="button" name="rehearse-step" disabled={!canGoOn()} onPress={props.onStep}>
            {t('rehearse.step')}
          </Action>
          <Action
            class="button button--plain"
            name="rehearse-slower"
            disabled={!props.speed.can(-1)}
            onPress={() => props.speed.change(-1)}
          >
            {t('rehearse.slower')}
          </Action>
          <output data-speed={props.speed.speed()}>
            {t('rehearse.speed', { speed: props.speed.speed() })}
          </output>
          <Action
            class="button button--plain"
            name="rehearse-faster"
            disabled={!props.speed.can(1)}
            onPress={() => props.speed.change(1)}
          >
            {t('rehearse.faster')}
          </Action>
          <Action
            class="button button--plain"
            name="rehearse-sound"
            onPress={() => props.onSound(!props.hasSound)}
          >
            {t(props.hasSound ? 'rehearse.sound-off' : 'rehearse.sound-on')}
          </Action>
        </Show>
        <Action class="button button--ember" name="rehearse-leave" onPress={props.onLeave}>
          {t('rehearse.leave')}
        </Action>
      </div>
      <p class="rehearsal-ahead">{aheadText(props.ahead, props.view)}</p>
    </section>
  );
}
