/** The plan as version 1 wrote it down. Frozen, like its steps. */
import type { CustomId, Kitchen, MethodId, Purpose } from '../../kitchen/index.ts';
import type { Band } from '../../units/index.ts';
import type { FaultKind1, Step1 } from './step-1.ts';

export type Method1 = {
  readonly fixture: string;
  readonly method: MethodId;
  readonly cover: boolean;
  readonly minutes?: number;
  readonly reason: string;
  readonly term?: string;
  readonly source: string;
  readonly checked: boolean;
  readonly overriddenBy?: string;
  readonly ownRow?: string;
  readonly wouldChange: string;
  readonly question?: string;
};

export type Resource1 = {
  readonly id: string;
  readonly name: string;
  readonly capacity: number;
  readonly unit: string;
};

type Signal1 = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE';

export type Gate1 = {
  readonly id: string;
  readonly kind: 'caution' | 'condition';
  readonly signal: Signal1;
  readonly ask: string;
  readonly say: string;
  readonly scope: 'run' | 'fixture' | 'step';
  readonly lapsesS?: number;
  readonly trippedBy: readonly FaultKind1[];
  readonly settleS: number;
  readonly makeSafe: string;
};

type Lesson1 = { readonly mean: number; readonly spread: number; readonly n: number };
type LessonsById1 = Readonly<Record<string, Lesson1>>;

/** What earlier runs had taught. */
type Learned1 = {
  readonly boil?: LessonsById1;
  readonly glow?: LessonsById1;
  readonly heatUp?: LessonsById1;
  readonly cool?: LessonsById1;
  readonly flowLMin?: Lesson1;
  readonly reach?: Lesson1;
};

type Days1 = {
  readonly startWallMs: number;
  readonly restDays: readonly {
    readonly name: string;
    readonly fromWallMs: number;
    readonly toWallMs: number;
  }[];
  readonly deadline?: { readonly name: string; readonly atWallMs: number };
};

export type Plan1 = {
  readonly format: 'glowpour-plan';
  readonly version: 1;
  /** The kitchen file has a format and versions of its own. */
  readonly kitchen: Kitchen;
  readonly purpose: Purpose;
  readonly custom: CustomId;
  readonly boilingC: number;
  readonly methods: readonly Method1[];
  readonly steps: readonly Step1[];
  readonly resources: readonly Resource1[];
  readonly gates: readonly Gate1[];
  readonly cautions: readonly {
    readonly id: string;
    readonly signal: Signal1;
    readonly hazard: string;
    readonly say: string;
    readonly source: string;
  }[];
  readonly faults: readonly {
    readonly kind: FaultKind1;
    readonly name: string;
    readonly policy: 'stop-run' | 'suspend' | 'note';
    readonly doThis: readonly string[];
  }[];
  readonly questions: readonly {
    readonly id: string;
    readonly fixture: string;
    readonly ask: string;
    readonly why: string;
    readonly untilThen: string;
  }[];
  readonly shopping: readonly {
    readonly id: string;
    readonly name: string;
    readonly amount: string;
    readonly why: string;
  }[];
  readonly totals: {
    readonly hotL: Band;
    readonly coldL: Band;
    readonly kettles: Band;
    readonly electricityKWh: number;
    readonly gasKWh: number;
    readonly handsOnS: number;
  };
  readonly timetable: {
    readonly startS: Readonly<Record<string, number>>;
    readonly finishS: number;
    readonly lowerBoundS: number;
  };
  readonly notices: readonly string[];
  readonly days?: Days1;
  readonly learned?: Learned1;
};
