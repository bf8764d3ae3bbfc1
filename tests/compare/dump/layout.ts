/**
 * The layout of plan, facts and views in version 1, as far as two versions are
 * compared by it. It is pinned here and does not follow the code: an adapter
 * brings what its version has into this layout, and the type checker tells
 * where that no longer fits.
 */
type BandOne = { readonly low: number; readonly typical: number; readonly high: number };

type TimerOne = {
  readonly id: string;
  readonly role: string;
  readonly purpose: string;
  readonly lengthS: number;
  readonly label: string;
  readonly repeats?: boolean;
  readonly fault?: string;
};

export type StageOne = {
  readonly id: string;
  readonly title: string;
  readonly detail: readonly string[];
  readonly say?: string;
  readonly timers: readonly TimerOne[];
  readonly resumption: string;
  readonly reviewAsk?: string;
  readonly hazards: readonly string[];
};

type StretchOne = {
  readonly kettle: number;
  readonly points: readonly unknown[];
  readonly litres: number;
  readonly lengthM: number;
};

/** Of all kinds of pictures, what is a number or a name. */
export type PictureOne = {
  readonly kind: string;
  readonly kettle?: number;
  readonly stretches?: readonly StretchOne[];
  readonly parts?: readonly { readonly name: string; readonly kettle: number }[];
  readonly stages?: readonly { readonly lengthS: number; readonly tempC: number }[];
  readonly vessel?: string;
  readonly litres?: number;
  readonly maxFillL?: number;
  readonly cooktop?: string;
  readonly burner?: string;
};

export type StepOne = {
  readonly id: string;
  readonly kind: string;
  readonly phase: string;
  readonly fixture?: string;
  readonly title: string;
  readonly reason: string;
  readonly sources: readonly string[];
  readonly stages: readonly StageOne[];
  readonly durationS: BandOne;
  readonly attention: string;
  readonly needs: readonly { readonly step: string; readonly withinS?: number }[];
  readonly startsBy: string;
  readonly demands: Readonly<Record<string, number>>;
  readonly gates: readonly string[];
  readonly standing: readonly string[];
  readonly after: readonly string[];
  readonly makeSafe?: string;
  readonly picture?: PictureOne;
};

type GateOne = {
  readonly id: string;
  readonly kind: string;
  readonly signal: string;
  readonly ask: string;
  readonly say: string;
  readonly scope: string;
  readonly lapsesS?: number;
  readonly trippedBy: readonly string[];
  readonly settleS: number;
  readonly makeSafe: string;
};

export type PlanOne = {
  readonly purpose: string;
  readonly custom: string;
  readonly boilingC: number;
  readonly kitchen: {
    readonly name: string;
    readonly fixtures: readonly { readonly id: string; readonly name: string }[];
  };
  readonly methods: readonly {
    readonly fixture: string;
    readonly method: string;
    readonly cover: boolean;
    readonly minutes?: number;
    readonly reason: string;
    readonly source: string;
    readonly checked: boolean;
    readonly overriddenBy?: string;
    readonly wouldChange: string;
    readonly question?: string;
  }[];
  readonly steps: readonly StepOne[];
  readonly resources: readonly {
    readonly id: string;
    readonly name: string;
    readonly capacity: number;
    readonly unit: string;
  }[];
  readonly gates: readonly GateOne[];
  readonly cautions: readonly {
    readonly id: string;
    readonly signal: string;
    readonly hazard: string;
    readonly say: string;
    readonly source: string;
  }[];
  readonly faults: readonly {
    readonly kind: string;
    readonly name: string;
    readonly policy: string;
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
    readonly hotL: BandOne;
    readonly coldL: BandOne;
    readonly kettles: BandOne;
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
  readonly days?: {
    readonly startWallMs: number;
    readonly restDays: readonly {
      readonly name: string;
      readonly fromWallMs: number;
      readonly toWallMs: number;
    }[];
    readonly deadline?: { readonly name: string; readonly atWallMs: number };
  };
};

/** One fact of a run; what its body holds is looked at field by field. */
export type FactOne = {
  readonly at: { readonly wallMs: number };
  readonly body: Readonly<{ kind: string }>;
};

/** Where a timer of a run belongs. `stage`: empty for one between two steps. */
export type RunTimerOne = {
  readonly id: string;
  readonly step: string;
  readonly stage: string;
  readonly role: string;
  readonly purpose: string;
};

/** As much of a view as the disturbing person looks at. */
export type SeenOne = {
  readonly status: string;
  readonly steps: readonly {
    readonly step: Pick<StepOne, 'id' | 'kind' | 'fixture'>;
    readonly status: string;
  }[];
};

/** How the steps of a plan change when a kettle ran out early. */
export type AmendmentOne = {
  readonly steps: readonly unknown[];
  readonly startS: Readonly<Record<string, number>>;
  readonly reason: string;
};

/** A request by its kind, in the words of version 1. */
export type RequestOne = { readonly kind: string; readonly [field: string]: unknown };
