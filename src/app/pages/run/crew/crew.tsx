import '../../../styles/crew.css';
import { createMemo, createSignal, For, Index, onMount, Show } from 'solid-js';
import { personName } from '../../../../core/kitchen/index.ts';
import {
  crewNow,
  signed,
  type PersonNow,
  type TakenOver,
} from '../../../../core/run/crew/index.ts';
import type { Request, RunView, StepView } from '../../../../core/run/index.ts';
import { createRunNote, type RunMemory } from '../../../controllers/run/run-note.ts';
import { say, t, written } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { countdown } from '../../../parts/time/countdown-digits.ts';
import { leadTimer, mainAction } from '../step/main-action.ts';
import { fixtureName, placeOf, sentenceOf } from '../step/step-text.ts';
import { openLines } from '../step/lists/ticks.ts';

/** Who took what over, as stored; what names no person hands nothing on. */
function readTaken(stored: unknown): TakenOver {
  if (typeof stored !== 'object' || stored === null) return {};
  return Object.fromEntries(
    Object.entries(stored).filter(([, person]) => Number.isInteger(person) && person >= 0),
  ) as TakenOver;
}

type CrewProps = {
  view: RunView;
  /** The step that is shown large. */
  current: string | undefined;
  memory: RunMemory | undefined;
  send: (request: Request) => void;
  onChoose: (stepId: string) => void;
  /** Told how a request is signed with the one at whose card its step is. */
  onSign: (sign: (request: Request) => Request) => void;
};

/** Each of those who work: what they do, where, and the one thing they press. */
export function Crew(props: CrewProps) {
  const [taken, setTaken] = createRunNote(() => props.memory, 'crew', readTaken);
  const people = createMemo(() => crewNow(props.view, taken()));
  onMount(() => props.onSign((request) => signed(request, people())));
  const take = (step: string, person: number) => setTaken({ ...taken(), [step]: person });
  return (
    <section class="crew" aria-label={t('crew.now')}>
      <Index each={people()}>{(one) => <Person {...props} one={one()} take={take} />}</Index>
    </section>
  );
}

type PersonProps = CrewProps & {
  one: PersonNow;
  take: (step: string, person: number) => void;
};

function Person(props: PersonProps) {
  const step = () => props.one.step;
  const [giving, setGiving] = createSignal<string>();
  const [isOpen, setIsOpen] = createSignal(false);
  const isShown = () => step() !== undefined && step()?.step.id === props.current;
  const name = () => say(personName(props.view.plan.kitchen.household, props.one.person));
  return (
    <article
      class="crew-person"
      classList={{ 'crew-person--shown': isShown(), 'crew-person--open': isOpen() }}
      data-person={props.one.person}
      data-step={step()?.step.id}
      data-state={props.one.state}
      aria-label={name()}
      aria-current={isShown() ? 'true' : undefined}
    >
      <Action
        class="crew-line"
        name="crew-open"
        pressed={isOpen()}
        onPress={() => setIsOpen(!isOpen())}
      >
        <Line {...props} name={name()} />
      </Action>
      <header class="crew-head">
        <strong>{written(name())}</strong>
        <Show when={step()}>
          {(now) => (
            <>
              <span class="quiet">{placeOf(props.view, now())}</span>
              <Action class="word-button" name="hand-on" onPress={() => setGiving(now().step.id)}>
                {t('crew.give')}
              </Action>
            </>
          )}
        </Show>
      </header>
      <Show when={step()} fallback={<Idle one={props.one} />}>
        {(now) => (
          <Show
            when={giving() === now().step.id}
            fallback={
              <>
                <Doing {...props} step={now()} />
                <Press {...props} step={now()} isShown={isShown()} />
              </>
            }
          >
            <Give
              {...props}
              onGive={(person) => {
                if (person !== undefined) props.take(now().step.id, person);
                setGiving(undefined);
              }}
            />
          </Show>
        )}
      </Show>
    </article>
  );
}

/** All of a card in one line, where there is no room for cards: who, what, how long still. */
function Line(props: { one: PersonNow; name: string }) {
  const timer = () => props.one.step && leadTimer(props.one.step);
  return (
    <>
      <strong>{props.name}</strong>
      <span class="crew-line-what">
        {props.one.step ? say(sentenceOf(props.one.step)) : t('crew.free')}
      </span>
      <Show when={timer()}>
        {(one) => (
          <b class="crew-left" classList={{ 'crew-left--calls': one().alerting }}>
            {say(countdown(one().leftS))}
          </b>
        )}
      </Show>
    </>
  );
}

/** Nothing for these hands: what comes to them next, and what it waits for. */
function Idle(props: { one: PersonNow }) {
  return (
    <p class="crew-what">
      {t('crew.free')}
      <Show when={props.one.later}>
        {(later) => (
          <small class="quiet">
            {t('crew.later', { step: later().step.title })}{' '}
            <Show when={later().blockedBy[0]}>{(why) => say(why())}</Show>
          </small>
        )}
      </Show>
    </p>
  );
}

function Doing(props: PersonProps & { step: StepView }) {
  /** By the places alone, each once: what is done there is told by its own card when it calls. */
  const others = () => [
    ...new Set(
      props.one.watches.map(({ step }) => fixtureName(props.view, step.fixture) ?? say(step.title)),
    ),
  ];
  return (
    <p class="crew-what">
      <Show when={props.one.state === 'begin'}>
        <small class="crew-offer">{t('crew.begin-next')}</small>
      </Show>
      <Show when={props.one.state === 'help'}>
        <small class="crew-offer">{t('crew.helps')}</small>
      </Show>
      {say(sentenceOf(props.step))}
      <Show when={leadTimer(props.step)}>
        {(timer) => (
          <>
            {' '}
            <b class="crew-left">{say(countdown(timer().leftS))}</b>
          </>
        )}
      </Show>
      <Show when={others().length > 0}>
        <small class="crew-watches quiet">{t('crew.watches', { what: others() })}</small>
      </Show>
    </p>
  );
}

/**
 * The one thing this person presses. What begins, and what has a list or a gate, is shown first,
 * with its cautions; what stands large on the screen is pressed there.
 */
function Press(props: PersonProps & { step: StepView; isShown: boolean }) {
  const word = () => {
    const action = mainAction(props.view, props.step);
    const isOwn = props.one.state === 'doing' && action.kind === 'press';
    const isRun = isOwn && action.request.kind !== 'resume';
    return isRun && openLines(props.step).length === 0 ? action : undefined;
  };
  const show = () => {
    const { id } = props.step.step;
    if (props.one.state !== 'doing') props.take(id, props.one.person);
    props.onChoose(id);
  };
  return (
    <Show when={!props.isShown}>
      <Show
        when={word()}
        fallback={
          <Action class="button button--plain" name="crew-show" onPress={show}>
            {t('crew.show')}
          </Action>
        }
      >
        {(action) => (
          <Action
            class={`button${action().urgent ? ' button--ember' : ''}`}
            name="crew-press"
            onPress={() => props.send(signed(action().request, [props.one]))}
          >
            {say(action().label)}
          </Action>
        )}
      </Show>
    </Show>
  );
}

/** To whom it is handed on. */
function Give(props: PersonProps & { onGive: (person: number | undefined) => void }) {
  const others = () =>
    Array.from({ length: props.view.plan.kitchen.household.people }, (_, at) => at).filter(
      (at) => at !== props.one.person,
    );
  return (
    <div class="crew-give" role="group" aria-label={t('crew.give-to')}>
      <span>{t('crew.give-to')}</span>
      <For each={others()}>
        {(at) => (
          <Action class="button" name="give" onPress={() => props.onGive(at)}>
            {say(personName(props.view.plan.kitchen.household, at))}
          </Action>
        )}
      </For>
      <Action class="button button--plain" name="keep" onPress={() => props.onGive(undefined)}>
        {t('crew.keep')}
      </Action>
    </div>
  );
}
