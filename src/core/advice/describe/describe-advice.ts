import { message, type Message, type Translator } from '../../messages/index.ts';
import { criticalChain, longestLinks, type Plan } from '../../plan/index.ts';
import type { AdviceList } from '../trying/advise.ts';
import { hoursOf } from '../margins/open-hours.ts';
import type { Sureness } from '../margins/sureness.ts';
import type { Triage } from '../trying/triage.ts';
import {
  changeMessage,
  inVainMessages,
  savingMessage,
  surenessMessages,
  triageMessages,
} from './messages.ts';

/** All that is told beside one plan. */
export type Told = AdviceList & { readonly sureness: Sureness; readonly triage?: Triage };

/** What decides the end of a plan, the longest first. */
function decidedBy(plan: Plan): readonly Message[] {
  const chain = criticalChain(plan.steps, plan.timetable.startS, hoursOf(plan).work);
  const links = longestLinks(chain, plan.steps);
  return links.length > 0 ? [message('advice.decided', { links })] : [];
}

/** Advice as plain text, for a terminal or for print; lines end in `\n`. */
export function describeAdvice(plan: Plan, told: Told, { t, say }: Translator): string {
  const { kitchen } = plan;
  const lines = told.advice.map(({ change, saving }, at) => {
    const line = { change: changeMessage(change, kitchen), saved: savingMessage(saving) };
    return `${at + 1}. ${t('advice.line', line)}`;
  });
  const section = (title: string, texts: readonly string[]): readonly string[] =>
    texts.length === 0 ? [] : ['', title, '-'.repeat(title.length), ...texts];
  return [
    t('advice.title', { kitchen: kitchen.name }),
    ...section(t('advice.sure.heading'), [
      ...surenessMessages(told.sureness, plan).map(say),
      t('advice.sure.rests-on', { plays: told.sureness.plays }),
      ...decidedBy(plan).map(say),
    ]),
    ...section(t('advice.heading'), [
      ...(lines.length > 0 ? [t('advice.about'), ...lines] : [t('advice.none')]),
      ...inVainMessages(told).map(say),
    ]),
    ...section(
      t('advice.triage.heading'),
      told.triage ? triageMessages(told.triage, plan).map(say) : [],
    ),
    '',
  ].join('\n');
}
