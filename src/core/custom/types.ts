import type {
  BurnerType,
  Condition,
  CustomId,
  FixtureKind,
  Material,
  MethodId,
  OvenCleaning,
  OwnRow,
  Purpose,
} from '../kitchen/index.ts';

/** What must hold for a row; a list that is absent holds for everything. */
export type RowWhen = {
  readonly kinds: readonly FixtureKind[];
  readonly materials?: readonly Material[];
  readonly conditions?: readonly Condition[];
  readonly purposes?: readonly Purpose[];
  readonly burners?: readonly BurnerType[];
  readonly cleaning?: readonly OvenCleaning[];
};

/** One way a question can be answered. `minutes`: min, 1 to 600. */
export type RowAnswer = {
  readonly words: string;
  readonly method: MethodId;
  readonly cover: boolean;
  readonly minutes?: number;
};

/** A question a row leaves to the household's rabbi, and what is planned meanwhile. */
export type RowQuestion = {
  readonly ask: string;
  readonly why: string;
  readonly untilThen: string;
  /** `ruling`: for the rabbi. The rest is found out by looking at the fixture. */
  readonly about?: 'ruling' | 'material' | 'condition';
  /** The answers that are known to be given; what is planned meanwhile is as strict as any of them. */
  readonly answers?: readonly RowAnswer[];
};

/** One row of a custom. `minutes`: min, 1 to 600. */
export type CustomRow = RowWhen & {
  readonly id: string;
  readonly method: MethodId;
  readonly cover: boolean;
  /** What it is covered or lined with. */
  readonly coverWith?: string;
  readonly minutes?: number;
  /** The trade's word, transliterated. */
  readonly term?: string;
  readonly reason: string;
  readonly wouldChange: string;
  readonly note?: string;
  /** Key of a source. */
  readonly source: string;
  readonly checked: boolean;
  readonly question?: RowQuestion;
  /** The household's own: what it changed, and by whose word. */
  readonly own?: OwnRow & { readonly custom: string };
};

/** What the state of a surface changes about the row it would have when smooth. */
export type ConditionRule = {
  readonly id: string;
  readonly kinds: readonly FixtureKind[];
  readonly methods: readonly MethodId[];
  readonly materials?: readonly Material[];
  readonly conditions: readonly Condition[];
  readonly method?: MethodId;
  readonly cover: boolean;
  readonly coverWith?: string;
  readonly reason: string;
  readonly source: string;
  readonly checked: boolean;
  readonly question?: RowQuestion;
};

export type CustomTable = {
  readonly id: CustomId;
  readonly name: string;
  /** Hours from the last hot use until it may be purged. */
  readonly restHours: number;
  readonly restSource: string;
  readonly coldSource: string;
  readonly kettleSource: string;
  readonly rows: readonly CustomRow[];
  readonly conditionRules: readonly ConditionRule[];
};

/** Where a statement comes from. */
export type Source = {
  readonly title: string;
  readonly place?: string;
  readonly checked: boolean;
  readonly note?: string;
};

/** The method of one fixture as a plan shows it. */
export type ChosenMethod = {
  readonly fixture: string;
  readonly method: MethodId;
  readonly cover: boolean;
  readonly minutes?: number;
  readonly reason: string;
  readonly term?: string;
  /** Citation to print. */
  readonly source: string;
  readonly checked: boolean;
  /** By whose word it stands in place of the custom's row: an answer, or the household's own custom. */
  readonly overriddenBy?: string;
  /** Id of the row that is the household's own. */
  readonly ownRow?: string;
  readonly wouldChange: string;
  /** Id of the first open question that makes it provisional. */
  readonly question?: string;
};

/** A question about one fixture. */
export type ChosenQuestion = RowQuestion & { readonly id: string; readonly fixture: string };

/** A question that has its answer: by an answer about the fixture, or by a row of the own custom. */
export type AnsweredQuestion = ChosenQuestion & {
  readonly answer: string;
  readonly saidBy: string;
  readonly saidOn: string;
  readonly by: 'override' | 'own-row';
};
