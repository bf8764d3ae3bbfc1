import { message, type Message, type Translator } from '../../messages/index.ts';
import type { Batch, UtensilChoice, UtensilPlan } from '../model/types.ts';

type Line = { readonly depth: 0 | 1; readonly text: Message };
type SectionId = 'methods' | 'questions' | 'rules' | 'batches' | 'put-away' | 'mikveh';
type Told = { readonly id: SectionId; readonly lines: readonly Line[] };

const INDENT = '  ';

function top(text: Message): Line {
  return { depth: 0, text };
}

function below(text: Message): Line {
  return { depth: 1, text };
}

function whatOf({ count, name }: Pick<UtensilChoice, 'count' | 'name'>): Message {
  return message('utensils.count', { count, name });
}

function methodLines({ choices }: UtensilPlan, { say }: Translator): readonly Line[] {
  return choices.flatMap((choice) => {
    const { method, reason, source, sourceState, term, useAssumed } = choice;
    return [
      top(
        message('utensils.line', {
          what: whatOf(choice),
          method: message(`utensils.method.${method}`),
          term: term === undefined ? '' : say(term),
        }),
      ),
      below(
        message('utensils.why', {
          reason,
          source,
          state: message(`custom.state.${sourceState}`),
        }),
      ),
      ...(useAssumed ? [below(message('utensils.use-assumed'))] : []),
    ];
  });
}

function questionLines({ choices }: UtensilPlan): readonly Line[] {
  return choices.flatMap((choice) => {
    const { question } = choice;
    if (!question) return [];
    const answers = question.answers.map(({ text }) => text);
    return [
      top(message('utensils.question', { what: whatOf(choice), ask: question.ask })),
      below(message('utensils.answers', { answers })),
    ];
  });
}

/** One batch: what goes in, then how, and the wait until the water boils again. */
export function batchMessages(batch: Batch): {
  readonly what: Message;
  readonly how: readonly Message[];
} {
  const { number, group, items, fillL, hold, dips, mixedC, recoverS } = batch;
  const halves = items.some(({ way }) => way === 'by-halves');
  return {
    what: message('utensils.batch', {
      number,
      group: message(`common.designation.${group}`),
      items: items.map(whatOf),
      fillL,
    }),
    how: [
      halves
        ? message('utensils.batch.halves', { dips })
        : hold === 'tongs'
          ? message('utensils.batch.tongs', { dips })
          : message('utensils.batch.net'),
      message('utensils.batch.wait', { mixedC, recoverS }),
    ],
  };
}

function batchLines(batch: Batch): readonly Line[] {
  const { what, how } = batchMessages(batch);
  return [
    ...(batch.freshWater ? [top(message('utensils.fresh-water'))] : []),
    top(what),
    ...how.map(below),
  ];
}

/** The pot with its water, before anything goes in; none where no pot boils. */
export function potMessage({ pot, firstBoilS, boilingC }: UtensilPlan): Message | undefined {
  if (!pot || !firstBoilS) return undefined;
  const { name, volumeL } = pot;
  return message('utensils.pot', { name, volumeL, boilingC, firstS: firstBoilS });
}

/** What goes under water in no pot that is told, and what it needs instead. */
export function outsideMessages({ pot, unfit, choices }: UtensilPlan): readonly Message[] {
  const counts = new Map(choices.map(({ utensil, count }) => [utensil, count]));
  const outside = unfit.map(({ utensil, name, leastPotL, boilsOver }) => {
    const told = { what: whatOf({ count: counts.get(utensil) ?? 1, name }), leastPotL };
    if (!pot) return message('utensils.pot-needed', told);
    return message(boilsOver ? 'utensils.boil-over' : 'utensils.unfit', told);
  });
  return pot || outside.length === 0 ? outside : [message('utensils.no-pot'), ...outside];
}

function potLines(plan: UtensilPlan): readonly Line[] {
  const pot = potMessage(plan);
  return [
    ...(pot ? [top(pot), ...plan.batches.flatMap(batchLines)] : []),
    ...outsideMessages(plan).map(top),
  ];
}

/** All that is told of utensils, in its order; a section may be empty. */
export function utensilSections(plan: UtensilPlan, translator: Translator): readonly Told[] {
  const { rules, putAway, mikveh } = plan;
  return [
    { id: 'methods', lines: methodLines(plan, translator) },
    { id: 'questions', lines: questionLines(plan) },
    {
      id: 'rules',
      lines: rules.map((rule) => top(message('utensils.rule', rule))),
    },
    { id: 'batches', lines: potLines(plan) },
    {
      id: 'put-away',
      lines: putAway.map((choice) => top(whatOf(choice))),
    },
    {
      id: 'mikveh',
      lines: mikveh.map((choice) => top(whatOf(choice))),
    },
  ];
}

/** The utensils as plain text, for a terminal or for print. */
export function describeUtensils(
  plan: UtensilPlan,
  kitchen: string,
  translator: Translator,
): string {
  const { say, t } = translator;
  const told = utensilSections(plan, translator).filter(({ lines }) => lines.length > 0);
  return [
    t('utensils.title', { kitchen }),
    '',
    t('plan.customs-differ'),
    ...(plan.choices.length === 0 ? ['', t('utensils.none')] : []),
    ...told.flatMap(({ id, lines }) => {
      const title = t(`utensils.section.${id}`);
      const print = ({ depth, text }: Line) => `${INDENT.repeat(depth)}${say(text)}`;
      return ['', title, '-'.repeat(title.length), ...lines.map(print)];
    }),
    '',
  ].join('\n');
}
