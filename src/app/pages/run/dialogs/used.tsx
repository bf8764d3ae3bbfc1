import { createMemo, createSignal, For, Show } from 'solid-js';
import { asWritten, message, type Message } from '../../../../core/messages/index.ts';
import { UTENSILS, type VesselUnit } from '../../../../core/plan/index.ts';
import type { Request, RunView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { KitchenPlan } from '../../../pictures/kitchen-plan.tsx';
import { Action } from '../../../parts/press/action.tsx';
import { WordsField } from '../../../parts/words-field.tsx';
import { restAgain, stepsDoneAgain } from './used-effect.ts';

type UsedProps = {
  readonly view: RunView;
  readonly nowMs: number;
  readonly send: (request: Request) => void;
  readonly onBack: () => void;
  readonly onClose: () => void;
};

type Thing = { readonly id: string; readonly name: Message };

/** Kettles of the plan, purged by it or not. */
function vesselsOf(view: RunView): readonly VesselUnit[] {
  const vessels = view.plan.steps.flatMap(({ work }) =>
    work.on === 'vessel' || work.on === 'kettle' ? [work.vessel] : [],
  );
  return vessels.filter(({ id }, at) => vessels.findIndex((one) => one.id === id) === at);
}

/** What can have been used: fixtures that the plan works on, its kettles, and utensils that rest. */
function thingsOf(view: RunView): readonly Thing[] {
  const { fixtures } = view.plan.kitchen;
  const rest = view.plan.steps.some(
    ({ kind, work }) => kind === 'rest' && work.on === 'utensils' && work.method === undefined,
  );
  return [
    ...view.plan.methods.flatMap(({ fixture }) =>
      fixtures
        .filter(({ id }) => id === fixture)
        .map(({ id, name }) => ({ id, name: asWritten(name) })),
    ),
    ...vesselsOf(view),
    ...(rest ? [{ id: UTENSILS, name: message('utensils.all') }] : []),
  ];
}

/** Which one first, on the picture or by name; then what telling it does; words only if one has some. */
export function Used(props: UsedProps) {
  const [chosen, setChosen] = createSignal<string>();
  const [told, setTold] = createSignal(false);
  const things = createMemo(() => thingsOf(props.view));
  const thing = () => things().find(({ id }) => id === chosen());
  const choose = (id: string): void => {
    if (!told() && things().some((one) => one.id === id)) setChosen(id);
  };
  const tell = (fixture: string, text: string): void => {
    props.send({ kind: 'report-recheck', fixture, text });
    setTold(true);
  };
  const [undone, setUndone] = createSignal(false);
  const takeBack = (fixture: string): void => {
    props.send({ kind: 'withdraw-recheck', fixture });
    setUndone(true);
  };
  const numbers = createMemo(() =>
    Object.fromEntries(
      things()
        .filter(({ id }) => props.view.plan.kitchen.fixtures.some((one) => one.id === id))
        .map(({ id }, i) => [id, i + 1]),
    ),
  );
  return (
    <>
      <div class="used">
        <div class="used-picture">
          <KitchenPlan
            kitchen={props.view.plan.kitchen}
            selected={chosen()}
            numbers={numbers()}
            onSelect={choose}
          />
        </div>
        <Show
          when={thing()}
          fallback={<Names things={things()} numbers={numbers()} onChoose={choose} />}
        >
          {(one) => (
            <Effect
              view={props.view}
              nowMs={props.nowMs}
              thing={one()}
              told={told()}
              undone={undone()}
              onTell={(text) => tell(one().id, text)}
              onUndo={() => takeBack(one().id)}
            />
          )}
        </Show>
      </div>
      <div class="button-row">
        <Action
          class="button button--plain"
          name="back"
          onPress={() => {
            if (told()) props.onClose();
            else if (chosen() === undefined) props.onBack();
            else setChosen(undefined);
          }}
        >
          {t('run.back')}
        </Action>
      </div>
    </>
  );
}

/** The same places by their numbers and names, for keys and for what is in no picture. */
function Names(props: {
  readonly things: readonly Thing[];
  readonly numbers: Readonly<Record<string, number>>;
  readonly onChoose: (id: string) => void;
}) {
  return (
    <div class="used-effect">
      <p class="used-says">{t('run.used.which')}</p>
      <div class="used-names" role="group" aria-label={t('run.used.which')}>
        <For each={props.things}>
          {({ id, name }) => (
            <Action class="used-name" name={`used-${id}`} onPress={() => props.onChoose(id)}>
              <strong>{props.numbers[id]}</strong> {say(name)}
            </Action>
          )}
        </For>
      </div>
    </div>
  );
}

/** Before the press what it will do, after it what it did. */
function Effect(props: {
  readonly view: RunView;
  readonly nowMs: number;
  readonly thing: Thing;
  readonly told: boolean;
  /** It was taken back again. */
  readonly undone: boolean;
  readonly onTell: (text: string) => void;
  readonly onUndo: () => void;
}) {
  const [text, setText] = createSignal('');
  const rest = () =>
    props.undone
      ? message('run.used.taken-back', { name: props.thing.name })
      : restAgain(props.view, props.thing, props.nowMs, props.told);
  // Counted before it is told: after that they are no longer done.
  const again = createMemo<number>((before) =>
    props.told ? (before ?? 0) : stepsDoneAgain(props.view, props.thing.id),
  );
  return (
    <div class="used-effect" aria-live="polite" data-told={props.told ? 'told' : 'not-yet'}>
      <p class="used-says">{say(rest())}</p>
      <Show when={props.told && !props.undone && props.view.usedToTakeBack === props.thing.id}>
        <Action class="button button--big" name="undo-used" onPress={props.onUndo}>
          {t('run.used.take-back')}
        </Action>
      </Show>
      <Show when={again() > 0 && !props.undone}>
        <p>{say(message('run.used.done-again', { steps: again() }))}</p>
      </Show>
      <Show when={!props.told}>
        <WordsField label={t('run.used.words')} name="what" words={text()} onWords={setText} />
        <Action
          class="button button--ember button--big"
          name="tell-used"
          onPress={() => props.onTell(text().trim())}
        >
          {t('run.used.press', { name: props.thing.name })}
        </Action>
      </Show>
    </div>
  );
}
