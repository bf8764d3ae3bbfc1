import { unkeyed } from '../../messages/temporary.ts';
import cautions from '../../../../shared/cautions.json';
import faults from '../../../../shared/fault-policies.json';
import type {
  BurnerType,
  CustomId,
  FixtureKind,
  Material,
  VesselKind,
} from '../../kitchen/index.ts';
import type { FaultKind, FaultPolicy, SignalWord, StepKind } from '../model/types.ts';

/** Holds for a step when every field of it holds. */
export type Trigger = {
  readonly steps: readonly StepKind[];
  readonly fixtures?: readonly FixtureKind[];
  readonly materials?: readonly Material[];
  readonly burners?: readonly BurnerType[];
  readonly surfaces?: readonly string[];
  readonly vessels?: readonly VesselKind[];
  readonly customs?: readonly CustomId[];
  readonly fuel?: 'gas' | 'electric';
  /** The fixture rests after this step. */
  readonly rests?: boolean;
  /** The room is expected to get hot. */
  readonly hotRoom?: boolean;
  /** At most this many people work. */
  readonly mostPeople?: number;
};

export type CautionKind = 'gate' | 'standing' | 'after' | 'clock' | 'plan';

export type CautionRow = {
  readonly id: string;
  readonly signal: SignalWord;
  readonly hazard: string;
  readonly kinds: readonly CautionKind[];
  readonly say: string;
  /** Key of a source. */
  readonly source: string;
  /** Any of them attaches the caution. */
  readonly on: readonly Trigger[];
  readonly ask?: string;
  readonly scope?: 'run' | 'fixture' | 'step';
  readonly lapsesMin?: number;
  readonly gateKind?: 'caution' | 'condition';
  readonly trippedBy?: readonly FaultKind[];
  readonly settleMin?: number;
  readonly makeSafe?: string;
};

export const CAUTIONS = cautions.rows as readonly CautionRow[];

export const FAULTS: readonly FaultPolicy[] = (
  faults.rows as readonly {
    readonly kind: FaultKind;
    readonly name: string;
    readonly policy: FaultPolicy['policy'];
    readonly doThis: readonly string[];
  }[]
).map(({ kind, name, policy, doThis }) => ({
  kind,
  policy,
  name: unkeyed(name),
  doThis: doThis.map(unkeyed),
}));
