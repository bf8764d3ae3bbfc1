import { createSignal, Show, Suspense } from 'solid-js';
import type { Kitchen } from '../../../core/kitchen/index.ts';
import type { Plan, PlanOptions } from '../../../core/plan/index.ts';
import { lazyPage } from '../../context/language.ts';
import type { SaidChange } from './advice/index.ts';
import { AnswerSheet } from './answers/answer-sheet.tsx';

const WhatHelps = lazyPage(['advice'], async () => (await import('./advice/index.ts')).WhatHelps);

/** What would help, and the sheet that asks who decided it where somebody must. The page stands without. */
export function Advised(props: {
  plan: Plan;
  options: PlanOptions;
  kitchen: Kitchen;
  onKitchen: ((kitchen: Kitchen) => void) | undefined;
  begin: { startWallMs: number; onChange: (startWallMs: number) => void } | undefined;
  /** It is late: what helps is looked for without being asked, and told first. */
  isLate: boolean;
}) {
  const [saying, setSaying] = createSignal<SaidChange>();
  return (
    <>
      <Suspense>
        <WhatHelps {...props} onSay={setSaying} />
      </Suspense>
      <Show when={saying()}>
        {(change) => (
          <SayingSheet
            change={change()}
            plan={props.plan}
            kitchen={props.kitchen}
            onKitchen={(next) => props.onKitchen?.(next)}
            onClose={() => setSaying(undefined)}
          />
        )}
      </Show>
    </>
  );
}

/** Who decided what was only tried: the sheet of an answer, filled in as far as it is known. */
function SayingSheet(props: {
  change: SaidChange;
  plan: Plan;
  kitchen: Kitchen;
  onKitchen: (kitchen: Kitchen) => void;
  onClose: () => void;
}) {
  const fixture = () =>
    props.kitchen.fixtures.find(({ id }) => id === props.change.override.fixture);
  const question = () => {
    const { change, plan } = props;
    return change.kind === 'answer'
      ? plan.questions.find(({ id }) => id === change.question)
      : undefined;
  };
  const proposed = () => {
    const { change } = props;
    return change.kind === 'answer'
      ? change.answer
      : { method: change.override.method, cover: true };
  };
  return (
    <Show when={fixture()}>
      {(found) => (
        <AnswerSheet
          kitchen={props.kitchen}
          fixture={found()}
          question={question()}
          proposed={proposed()}
          onKitchen={props.onKitchen}
          onClose={props.onClose}
        />
      )}
    </Show>
  );
}
