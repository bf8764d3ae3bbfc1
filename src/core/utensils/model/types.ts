import type {
  Designation,
  UtensilAnswer,
  UtensilMaterial,
  UtensilMethod,
  UtensilUse,
} from '../../kitchen/index.ts';
import type { SourceState } from '../../custom/index.ts';
import type { Message } from '../../messages/index.ts';
import type { Band } from '../../units/index.ts';

/** A question about one line of utensils. */
export type UtensilQuestion = {
  /** `ruling`: for the rabbi. The others are found out by looking. */
  readonly about: 'ruling' | 'material' | 'condition';
  readonly ask: Message;
  /** Ways it is known to be answered, each with its words. */
  readonly answers: readonly { readonly method: UtensilMethod; readonly text: Message }[];
};

/** How one line of utensils is treated, and why. */
export type UtensilChoice = {
  readonly utensil: string;
  readonly name: Message;
  readonly count: number;
  readonly material: UtensilMaterial;
  /** How it was used, as far as told; else as its kind is used. */
  readonly use: Exclude<UtensilUse, 'unknown'>;
  /** Its use was not told: it is taken for the usual one of its kind. */
  readonly useAssumed: boolean;
  readonly method: UtensilMethod;
  /** Row of the table. */
  readonly row: string;
  readonly reason: Message;
  /** The word of the trade, where the method has one. */
  readonly term?: Message;
  /** Citation to print. */
  readonly source: Message;
  /** How far the source can be relied on. */
  readonly sourceState: SourceState;
  /** Open until it is answered; the method is the strict one until then. */
  readonly question?: UtensilQuestion;
  readonly answer?: UtensilAnswer;
};

/** A rule of the work with its place. */
export type UtensilRule = { readonly text: Message; readonly source: Message };

/** A pot in which things are immersed. */
export type PurgePot = {
  /** Id of the vessel. */
  readonly vessel: string;
  readonly name: Message;
  /** To its mark. */
  readonly volumeL: number;
  readonly diameterM: number;
  /** Depth of water at the mark. */
  readonly depthM: number;
};

/** How one piece goes under water. */
export type DipWay = 'whole' | 'by-halves';

/** Pieces of one line in one batch. */
export type BatchItem = {
  readonly utensil: string;
  readonly name: Message;
  readonly count: number;
  readonly way: DipWay;
};

/** What is dipped at once. */
export type Batch = {
  readonly id: string;
  readonly number: number;
  /** What it was used for: only things alike share the water. */
  readonly group: Designation;
  readonly items: readonly BatchItem[];
  /** With tongs pieces go in one by one, each twice: turned, or by halves. A net is shaken. */
  readonly hold: 'tongs' | 'net';
  /** Times something goes under water: halves and turns counted. */
  readonly dips: number;
  /** Water to fill in, so that with the things it stands at the mark. */
  readonly fillL: number;
  /** By what is under water at once. */
  readonly displacedL: number;
  /** Right after the dip. */
  readonly mixedC: Band;
  /** Until it boils again, after each dip of a new thing. */
  readonly recoverS: Band;
  /** Fresh water before this batch. */
  readonly freshWater: boolean;
};

/** Something that no pot takes, not even by halves. */
export type Unfit = {
  readonly utensil: string;
  readonly name: Message;
  /** Smallest pot that takes it by halves, L to its mark. */
  readonly leastPotL: number;
  /** It is a pot: filled to the brim it can boil over its own rim. */
  readonly boilsOver: boolean;
};

export type UtensilPlan = {
  readonly choices: readonly UtensilChoice[];
  /** Hours without hot use before anything is purged. */
  readonly restHours: number;
  readonly pot?: PurgePot;
  /** Until a filled pot boils, from cold. */
  readonly firstBoilS?: Band;
  readonly boilingC: number;
  readonly batches: readonly Batch[];
  readonly unfit: readonly Unfit[];
  /** Cold water changed each `hours`, so many times. */
  readonly soak?: { readonly hours: number; readonly times: number };
  /** To put away or replace. */
  readonly putAway: readonly UtensilChoice[];
  /** To immerse in a mikveh after the purge. */
  readonly mikveh: readonly UtensilChoice[];
  /** Rules of the work that this plan needs, in the order of the work. */
  readonly rules: readonly UtensilRule[];
};
