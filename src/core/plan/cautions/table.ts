import { message } from '../../messages/index.ts';
import cautions from '../../../../shared/cautions.json';
import faults from '../../../../shared/fault-policies.json';
import type {
  BurnerType,
  CustomId,
  FixtureKind,
  Material,
  MethodId,
  VesselKind,
} from '../../kitchen/index.ts';
import type { Fuel } from '../context/purging.ts';
import type { FaultKind, FaultPolicy, SignalWord, StepKind } from '../model/index.ts';
import { faultLine } from './messages.ts';

/** Holds for a step when every field of it holds. */
export type Trigger = {
  readonly steps: readonly StepKind[];
  readonly fixtures?: readonly FixtureKind[];
  readonly materials?: readonly Material[];
  readonly burners?: readonly BurnerType[];
  readonly surfaces?: readonly string[];
  readonly vessels?: readonly VesselKind[];
  readonly customs?: readonly CustomId[];
  readonly fuel?: Fuel;
  /** The fixture rests after this step. */
  readonly rests?: boolean;
  /** It stands under a counter. */
  readonly low?: boolean;
  /** Oven and cooktop in one appliance, which can be pulled out. */
  readonly inRange?: boolean;
  /** Of the fixture of the step. */
  readonly methods?: readonly MethodId[];
  /** It is about utensils, which belong to no fixture. */
  readonly utensils?: boolean;
  /** The room is expected to get hot. */
  readonly hotRoom?: boolean;
  /** At most this many people work. */
  readonly mostPeople?: number;
};

export type CautionKind = 'gate' | 'standing' | 'after' | 'timer' | 'plan';

/** Its words are in the catalogue, under its id. */
export type CautionRow = {
  readonly id: string;
  /** Absent: of every plan there was. Else no plan is held to it that has none of this edition. */
  readonly edition?: 2;
  readonly signal: SignalWord;
  readonly kinds: readonly CautionKind[];
  /** Key of a source. */
  readonly source: string;
  /** Any of them attaches the caution. */
  readonly on: readonly Trigger[];
  readonly scope?: 'run' | 'fixture' | 'step';
  readonly lapsesMin?: number;
  readonly gateKind?: 'caution' | 'condition';
  readonly trippedBy?: readonly FaultKind[];
  readonly settleMin?: number;
};

export const CAUTIONS = cautions.rows as readonly CautionRow[];

type FaultRow = {
  readonly kind: FaultKind;
  readonly policy: FaultPolicy['policy'];
  readonly lines: number;
};

export const FAULTS: readonly FaultPolicy[] = (faults.rows as readonly FaultRow[]).map(
  ({ kind, policy, lines }) => ({
    kind,
    policy,
    name: message(`cautions.fault.${kind}.name`),
    doThis: Array.from({ length: lines }, (_, at) => faultLine(kind, at + 1)),
  }),
);
