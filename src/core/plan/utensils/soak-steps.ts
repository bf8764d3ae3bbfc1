import { citation } from '../../custom/index.ts';
import { message } from '../../messages/index.ts';
import { exactly, SECONDS_PER_HOUR } from '../../units/index.ts';
import { stage, stepDraft, type StepDraft } from '../context/step-draft.ts';
import { changeId, cleanId, soakId } from '../context/step-ids.ts';
import { handworkS } from '../context/work-times.ts';
import { UTENSILS, type UtensilItem, type Work } from '../model/index.ts';
import { counted } from './clean-and-rest.ts';
import { itemsBy, type UtensilWork } from './utensil-work.ts';

type Soak = {
  readonly items: readonly UtensilItem[];
  readonly day: number;
  readonly of: number;
};

function workOn(items: readonly UtensilItem[]): Work {
  return { on: 'utensils', items, method: 'soak' };
}

/** A clock: nobody is needed until the water is changed. No rest: nothing dates it back. */
function soakDraft({ items, day, of }: Soak, hours: number): StepDraft {
  const title = message('utensils.step.soak', { day, of });
  const lengthS = hours * SECONDS_PER_HOUR;
  return stepDraft(
    {
      id: soakId(day),
      kind: 'dry',
      phase: 'purge',
      work: workOn(items),
      title,
      reason: message('utensils.rule.soak'),
      stages: [
        stage('rest', title, {
          detail: [...counted(items), message('utensils.step.soak-under')],
          timers: [
            {
              id: 'rest',
              role: 'hold',
              purpose: 'at-least',
              lengthS,
              label: message('utensils.step.soak-timer', { day, of }),
            },
          ],
        }),
      ],
      durationS: exactly(lengthS),
    },
    {
      sources: [citation('later-authorities')],
      attention: 'none',
      startsBy: 'chain',
      needs: [{ step: day === 1 ? cleanId(UTENSILS) : changeId(day - 1) }],
    },
  );
}

/** The water changed, or after the last day what is taken out of it. */
function changeDraft({ items, day, of }: Soak): StepDraft {
  const title = message(day < of ? 'utensils.step.change' : 'utensils.step.soaked');
  return stepDraft(
    {
      id: changeId(day),
      kind: 'dry',
      phase: 'purge',
      work: workOn(items),
      title,
      reason: message('utensils.rule.soak'),
      stages: [
        stage('do', title, {
          detail: counted(items),
          say: message(day < of ? 'utensils.step.change-say' : 'utensils.step.soaked-say'),
        }),
      ],
      durationS: handworkS('open'),
    },
    { sources: [citation('later-authorities')], needs: [{ step: soakId(day) }] },
  );
}

/** Cold water for three days, changed each day, where the custom knows it. */
export function soakSteps(work: UtensilWork): readonly StepDraft[] {
  const { soak } = work.utensils.plan;
  const items = itemsBy(work, 'soak');
  if (!soak || items.length === 0) return [];
  const { hours, times: of } = soak;
  return Array.from({ length: of }, (_, at) => ({ items, day: at + 1, of })).flatMap((one) => [
    soakDraft(one, hours),
    changeDraft(one),
  ]);
}
