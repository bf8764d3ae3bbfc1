import { createSignal, For, Show } from 'solid-js';
import { say, t, written } from '../../../context/language.ts';
import {
  answerAs,
  chooseMethod,
  withAnswer,
  type ChosenQuestion,
  type RowAnswer,
} from '../../../../core/custom/index.ts';
import { methodsForFixture, type Fixture, type Kitchen } from '../../../../core/kitchen/index.ts';
import { dayOf, endsCovered, minutesOf, missingIn, type SaidWay } from '../../custom/way.ts';
import { MethodFields, SaidFields } from '../../custom/way-fields.tsx';
import { Action } from '../../../parts/press/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';

/** What is planned now, or was said before: where the person starts from. */
function startingFrom(fixture: Fixture, kitchen: Kitchen, question?: ChosenQuestion): SaidWay {
  const said = kitchen.household.overrides.findLast(
    (one) =>
      one.fixture === fixture.id &&
      one.part === question?.part &&
      (question === undefined || one.row === question.row),
  );
  const chosen = chooseMethod(fixture, kitchen).method;
  const part = chosen.parts?.find((one) => one.part === question?.part);
  const { method, minutes } = part ?? chosen;
  const cover = part === undefined && chosen.cover;
  return {
    method,
    minutes: minutes === undefined ? '' : String(minutes),
    cover,
    saidBy: said?.saidBy ?? kitchen.household.overrides.at(-1)?.saidBy ?? '',
    saidOn: said?.saidOn ?? dayOf(new Date()),
    words: said?.text ?? '',
  };
}

/** A way that may be said; in words where it is a known answer. */
type Proposed = Pick<RowAnswer, 'method' | 'cover'> & Partial<RowAnswer>;

function sameWay(answer: RowAnswer, way: SaidWay): boolean {
  return way.words === say(answer.text) && way.method === answer.method;
}

/** "Our rabbi said otherwise", or the answer to a question: it becomes the method of the fixture. */
export function AnswerSheet(props: {
  kitchen: Kitchen;
  fixture: Fixture;
  question?: ChosenQuestion | undefined;
  /** What was tried, to begin with: nobody said it yet. */
  proposed?: Proposed | undefined;
  onKitchen: (kitchen: Kitchen) => void;
  onClose: () => void;
}) {
  const [way, setWay] = createSignal<SaidWay>(
    startingFrom(props.fixture, props.kitchen, props.question),
  );
  /** Counts and choices that the fields do not show: those of the answer that was pressed. */
  const [chosen, setChosen] = createSignal<Proposed>();
  const change = (part: Partial<SaidWay>) => setWay((was) => ({ ...was, ...part }));
  const methods = () => {
    const answers = props.question?.answers?.map(({ method }) => method) ?? [];
    const usual =
      props.question?.part === undefined ? methodsForFixture(props.fixture) : [...new Set(answers)];
    return usual.includes(way().method) ? usual : [way().method, ...usual];
  };
  const missing = () => missingIn(way(), false);
  const missingText = () => {
    const what = missing();
    return what && say(what);
  };
  const keep = () => {
    const { method, saidBy, saidOn, words } = way();
    const minutes = minutesOf(way());
    const answer = chosen();
    const { times, rest, stone, upwards } = answer?.method === method ? answer : {};
    const about = props.question ?? { fixture: props.fixture.id };
    props.onKitchen(
      withAnswer(
        props.kitchen,
        answerAs(
          about,
          { method, cover: endsCovered(way()), minutes, times, rest, stone, upwards },
          {
            saidBy: saidBy.trim(),
            saidOn,
            ...(words.trim() !== '' && { text: words.trim() }),
          },
        ),
      ),
    );
    props.onClose();
  };
  const choose = (answer: Proposed) => {
    const { text, method, cover, minutes } = answer;
    setChosen(answer);
    change({
      ...(text && { words: say(text) }),
      method,
      cover,
      ...(minutes !== undefined && { minutes: String(minutes) }),
    });
  };
  if (props.proposed) choose(props.proposed);
  return (
    <Sheet
      label={t('plan-page.answer.about', { fixture: props.fixture.name })}
      onClose={props.onClose}
    >
      <h2>{written(props.fixture.name)}</h2>
      <Show when={props.question} fallback={<p>{t('plan-page.answer.what-said')}</p>}>
        {(question) => (
          <>
            <p class="answer-ask">{say(question().ask)}</p>
            <p class="quiet">{say(question().why)}</p>
            <div class="answer-list" role="group" aria-label={t('plan-page.answer.given')}>
              <For each={question().answers ?? []}>
                {(answer) => (
                  <button
                    type="button"
                    class="answer-choice"
                    aria-pressed={sameWay(answer, way())}
                    onClick={() => choose(answer)}
                  >
                    {say(answer.text)}
                  </button>
                )}
              </For>
            </div>
            <p class="quiet">{t('plan-page.answer.own-way')}</p>
          </>
        )}
      </Show>
      <MethodFields way={way()} methods={methods()} onChange={change} />
      <SaidFields way={way()} wordsLabel={t('plan-page.answer.in-words')} onChange={change} />
      <p class="quiet" role="status">
        {missingText() ?? t('plan-page.answer.replaces-row')}
      </p>
      <div class="button-row">
        <Action class="button button--ember" disabled={missing() !== undefined} onPress={keep}>
          {t('plan-page.answer.keep')}
        </Action>
        <Action class="button button--plain" onPress={props.onClose}>
          {t('plan-page.back')}
        </Action>
      </div>
    </Sheet>
  );
}
