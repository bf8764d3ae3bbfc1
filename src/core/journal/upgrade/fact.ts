import { asWritten } from '../../messages/index.ts';
import { isFactKind, type Fact, type FactBody } from '../../run/index.ts';
import type { Fact1, FactBody1 } from './fact-1.ts';
import type { Plan1 } from './plan-1.ts';
import { upgradePlan } from './plan.ts';
import { upgradeStep } from './step.ts';
import type { Step1 } from './step-1.ts';

/** Did version 1 know this kind? Every kind of it lives on, one under another name. */
export function isFactKind1(kind: string): boolean {
  return kind === 'doubt-reported' || isFactKind(kind);
}

/** The plan with some steps in place of those of the same id, and the others after all. */
function amended(plan: Plan1, steps: readonly Step1[]): Plan1 {
  const byId = new Map([...plan.steps, ...steps].map((step) => [step.id, step]));
  return { ...plan, steps: [...byId.values()] };
}

/**
 * Turns the facts of one journal into version 2, in their order: what an
 * amendment says is only to be understood beside the plan it amends.
 */
export class FactUpgrader {
  #plan: Plan1 | undefined;

  /** @throws TypeError when its plan or steps have not the form that version 1 wrote */
  upgrade({ body, ...same }: Fact1): Fact {
    return { ...same, body: this.#body(body) };
  }

  #body(body: FactBody1): FactBody {
    switch (body.kind) {
      case 'drafted':
        this.#plan = body.plan;
        return { ...body, plan: upgradePlan(body.plan) };
      case 'plan-amended': {
        if (!this.#plan) throw new TypeError('an amendment comes before any plan');
        const plan = amended(this.#plan, body.steps);
        this.#plan = plan;
        const { reason } = body;
        return {
          ...body,
          reason: asWritten(reason),
          steps: body.steps.map((step) => upgradeStep(plan, step)),
        };
      }
      case 'doubt-reported':
        return { ...body, kind: 'recheck-reported' };
      case 'closing-begun':
      case 'run-closed':
      case 'stage-restarted':
      case 'step-unwinding':
      case 'step-settled':
      case 'step-repeated':
        return { ...body, reason: asWritten(body.reason) };
      default:
        // What people wrote stays as it is.
        return body;
    }
  }
}
