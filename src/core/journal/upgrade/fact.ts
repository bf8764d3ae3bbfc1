import { isFactKind, type Fact, type FactBody } from '../../run/index.ts';
import type { Fact1, FactBody1 } from './fact-1.ts';
import { upgradePlan } from './plan.ts';
import { upgradeStep } from './step.ts';

/** Did version 1 know this kind? Every kind of it lives on, one under another name. */
export function isFactKind1(kind: string): boolean {
  return kind === 'doubt-reported' || isFactKind(kind);
}

function upgradeBody(body: FactBody1): FactBody {
  switch (body.kind) {
    case 'drafted':
      return { ...body, plan: upgradePlan(body.plan) };
    case 'plan-amended':
      return { ...body, steps: body.steps.map(upgradeStep) };
    case 'doubt-reported':
      return { ...body, kind: 'recheck-reported' };
    default:
      // `reason` and `text` are English or a person's words in both versions.
      // When the engine gives its reasons as messages, they are turned here.
      return body;
  }
}

/** A fact of version 1 as version 2 tells it. @throws TypeError when its plan or steps have not the form that version 1 wrote */
export function upgradeFact({ body, ...same }: Fact1): Fact {
  return { ...same, body: upgradeBody(body) };
}
