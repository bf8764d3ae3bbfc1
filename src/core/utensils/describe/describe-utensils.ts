import { message, type Message, type Translator } from '../../messages/index.ts';
import type { Batch, UtensilChoice, UtensilPlan } from '../model/types.ts';

type Line = { readonly depth: 0 | 1; readonly text: Message };
type Told = { readonly heading: Message; readonly lines: readonly Line[] };

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

function batchLines(batch: Batch): readonly Line[] {
  const { number, group, items, fillL, hold, dips, mixedC, recoverS, freshWater } = batch;
  const halves = items.some(({ way }) => way === 'by-halves');
  return [
    ...(freshWater ? [top(message('utensils.fresh-water'))] : []),
    top(
      message('utensils.batch', {
        number,
        group: message(`common.designation.${group}`),
        items: items.map(whatOf),
        fillL,
      }),
    ),
    below(
      halves
        ? message('utensils.batch.halves', { dips })
        : hold === 'tongs'
          ? message('utensils.batch.tongs', { dips })
          : message('utensils.batch.net'),
    ),
    below(message('utensils.batch.wait', { mixedC, recoverS })),
  ];
}

function potLines(plan: UtensilPlan): readonly Line[] {
  const { pot, firstBoilS, boilingC, batches, unfit, choices } = plan;
  const counts = new Map(choices.map(({ utensil, count }) => [utensil, count]));
  const outside = unfit.map(({ utensil, name, leastPotL, boilsOver }) => {
    const told = { what: whatOf({ count: counts.get(utensil) ?? 1, name }), leastPotL };
    if (!pot) return top(message('utensils.pot-needed', told));
    return top(message(boilsOver ? 'utensils.boil-over' : 'utensils.unfit', told));
  });
  if (!pot || !firstBoilS)
    return outside.length > 0 ? [top(message('utensils.no-pot')), ...outside] : [];
  const { name, volumeL } = pot;
  return [
    top(message('utensils.pot', { name, volumeL, boilingC, firstS: firstBoilS })),
    ...batches.flatMap(batchLines),
    ...outside,
  ];
}

function sectionsOf(plan: UtensilPlan, translator: Translator): readonly Told[] {
  const { rules, putAway, mikveh } = plan;
  return [
    { heading: message('utensils.section.methods'), lines: methodLines(plan, translator) },
    { heading: message('utensils.section.questions'), lines: questionLines(plan) },
    {
      heading: message('utensils.section.rules'),
      lines: rules.map((rule) => top(message('utensils.rule', rule))),
    },
    { heading: message('utensils.section.batches'), lines: potLines(plan) },
    {
      heading: message('utensils.section.put-away'),
      lines: putAway.map((choice) => top(whatOf(choice))),
    },
    {
      heading: message('utensils.section.mikveh'),
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
  const told = sectionsOf(plan, translator).filter(({ lines }) => lines.length > 0);
  return [
    t('utensils.title', { kitchen }),
    '',
    t('plan.customs-differ'),
    ...(plan.choices.length === 0 ? ['', t('utensils.none')] : []),
    ...told.flatMap(({ heading, lines }) => {
      const title = say(heading);
      const print = ({ depth, text }: Line) => `${INDENT.repeat(depth)}${say(text)}`;
      return ['', title, '-'.repeat(title.length), ...lines.map(print)];
    }),
    '',
  ].join('\n');
}
