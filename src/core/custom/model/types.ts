import type { Message } from '../../messages/index.ts';
import type {
  BurnerType,
  Condition,
  CustomId,
  FixtureKind,
  Material,
  MethodId,
  OvenCleaning,
  OwnRow,
  PartId,
  Purpose,
} from '../../kitchen/index.ts';

/** What things are covered or lined with; a sheet is laid on flat and taped, the others are put in. */
export type CoverMaterial =
  | 'rack-in-bowls'
  | 'basin-on-rack'
  | 'adhesive-paper'
  | 'shelf-paper'
  | 'liner-with-holes'
  | 'insert'
  | 'plastic-sheet'
  | 'heat-proof-liner'
  | 'cut-to-size';

/** What must hold for a row; a list that is absent holds for everything. */
export type RowWhen = {
  readonly kinds: readonly FixtureKind[];
  readonly materials?: readonly Material[];
  readonly conditions?: readonly Condition[];
  readonly purposes?: readonly Purpose[];
  readonly burners?: readonly BurnerType[];
  readonly cleaning?: readonly OvenCleaning[];
};

/** One way a question can be answered. `minutes`: min, 1 to 600; `times`: poured so often. */
export type RowAnswer = {
  /** As it can be said. */
  readonly text: Message;
  readonly method: MethodId;
  readonly cover: boolean;
  readonly minutes?: number;
  readonly times?: number;
  /** false: no rest before the heat. */
  readonly rest?: boolean;
  /** A hot stone is moved over it while it is poured. */
  readonly stone?: boolean;
  /** A sink is poured from its floor upwards. */
  readonly upwards?: boolean;
};

/** What is known by those who used a fixture. */
export type Fact = 'varnished' | 'kneaded' | 'hotFood';
export type Told = 'yes' | 'no' | 'unknown';

/** A question a row leaves to the household's rabbi, and what is planned meanwhile. */
export type RowQuestion = {
  readonly ask: Message;
  readonly why: Message;
  readonly untilThen: Message;
  /** `ruling`: for the rabbi. The rest is found out by looking at the fixture, or by who used it. */
  readonly about?: 'ruling' | 'material' | 'condition' | 'use';
  /** The answers that are known to be given; what is planned meanwhile is as strict as any of them. */
  readonly answers?: readonly RowAnswer[];
};

/** One row of a custom. `minutes`: min, 1 to 600. */
export type CustomRow = RowWhen & {
  readonly id: string;
  readonly method: MethodId;
  readonly cover: boolean;
  /** What it is covered or lined with. */
  readonly coverWith?: CoverMaterial;
  readonly minutes?: number;
  /** The trade's word, transliterated. */
  readonly term?: Message;
  readonly reason: Message;
  readonly wouldChange: Message;
  readonly note?: Message;
  /** Key of a source. */
  readonly source: string;
  /** Keys of what else it rests on. */
  readonly alsoSources?: readonly string[];
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
  readonly coverWith?: CoverMaterial;
  readonly reason: Message;
  readonly source: string;
  readonly alsoSources?: readonly string[];
  readonly checked: boolean;
  readonly question?: RowQuestion;
};

/** What the use of a surface changes about the row it would have: every one that holds counts. */
export type FactRule = Omit<ConditionRule, 'conditions'> & {
  readonly purposes?: readonly Purpose[];
  readonly fact: Fact;
  readonly told: readonly Told[];
};

/** How a part of a fixture is treated. */
export type PartRow = {
  readonly id: string;
  readonly parts: readonly PartId[];
  readonly customs?: readonly CustomId[];
  readonly purposes?: readonly Purpose[];
  readonly surfaces?: readonly string[];
  readonly cleaning?: readonly OvenCleaning[];
  readonly racksStayInCycle?: boolean;
  readonly method: MethodId;
  /** Done with the fixture, in the same step. */
  readonly within?: boolean;
  readonly minutes?: number;
  readonly reason: Message;
  readonly source: string;
  readonly alsoSources?: readonly string[];
  readonly checked: boolean;
  readonly question?: RowQuestion;
};

export type CustomTable = {
  readonly id: CustomId;
  /** Hours from the last hot use until it may be purged. */
  readonly restHours: number;
  readonly restSource: string;
  readonly coldSource: string;
  readonly kettleSource: string;
  readonly rows: readonly CustomRow[];
  readonly conditionRules: readonly ConditionRule[];
  readonly factRules: readonly FactRule[];
};

/** Where a statement comes from, by a key; the citation stands in the catalogue under that key. */
export type Source = {
  readonly title?: string;
  /** Chapter and paragraph; needed where `checked`. */
  readonly place?: string;
  readonly kind?: 'text' | 'inference' | 'later-authorities' | 'common-practice';
  /** Its text was read and says so. */
  readonly checked: boolean;
  /** What it is taken for, for whoever checks it. */
  readonly note?: string;
};

/**
 * How far a statement can be relied on: its text was read; inferred from a
 * text; from later authorities, unread; common practice; cited from memory;
 * said by the household's rabbi.
 */
export type SourceState =
  'read' | 'inference' | 'later-authorities' | 'common-practice' | 'memory' | 'said';

/** The method of one fixture as a plan shows it. */
export type ChosenMethod = {
  readonly fixture: string;
  readonly method: MethodId;
  readonly cover: boolean;
  readonly minutes?: number;
  readonly reason: Message;
  readonly term?: Message;
  /** How often it is poured over; absent: once. */
  readonly times?: number;
  /** false: no rest before the heat, by the household's word. */
  readonly rest?: boolean;
  /** A hot stone is moved over it while it is poured. */
  readonly stone?: boolean;
  /** Citation to print. */
  readonly source: Message;
  /** Absent in plans of older versions: by `checked`. */
  readonly sourceState?: SourceState;
  readonly checked: boolean;
  readonly parts?: readonly ChosenPart[];
  /** By whose word it stands in place of the custom's row: an answer, or the household's own custom. */
  readonly overriddenBy?: Message;
  /** Id of the row that is the household's own. */
  readonly ownRow?: string;
  readonly wouldChange: Message;
  /** Id of the first open question that makes it provisional. */
  readonly question?: string;
};

/** What is done about one part of a fixture. */
export type ChosenPart = {
  readonly part: PartId;
  readonly method: MethodId;
  /** Done with the fixture, in the same step. */
  readonly within: boolean;
  readonly minutes?: number;
  readonly reason: Message;
  readonly source: Message;
  readonly sourceState: SourceState;
  readonly overriddenBy?: Message;
  /** Id of the open question about it. */
  readonly question?: string;
};

/** A question about one fixture. */
export type ChosenQuestion = RowQuestion & {
  readonly id: string;
  readonly fixture: string;
  /** The part it is about, where it is about one. */
  readonly part?: PartId;
  /** What those who used it know, where it is about that. */
  readonly fact?: Fact;
  /** Row of the custom it comes from; none for a question of the plan's own. */
  readonly row?: string;
};

/** A question that has its answer: by an answer about the fixture, or by a row of the own custom. */
export type AnsweredQuestion = ChosenQuestion & {
  readonly answer: string;
  readonly saidBy: string;
  readonly saidOn: string;
  readonly by: 'override' | 'own-row';
};

/** The method of a fixture with what is still to be asked about it. */
export type Choice = {
  readonly method: ChosenMethod;
  readonly questions: readonly ChosenQuestion[];
  /** What it is covered or lined with, where it is. */
  readonly coverWith: CoverMaterial;
  /** A line to show where the work is done. */
  readonly notes: readonly Message[];
};
