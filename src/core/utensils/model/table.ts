import raw from '../../../../shared/utensils/utensils.json';
import type {
  Condition,
  CustomId,
  Purpose,
  UtensilKind,
  UtensilMaterial,
  UtensilMethod,
  UtensilUse,
} from '../../kitchen/index.ts';

/** What is usual for one kind: sides in m, the longest first; mass in kg. */
export type KindRow = {
  readonly kind: UtensilKind;
  readonly massKg: number;
  readonly lengthM: number;
  readonly widthM: number;
  readonly heightM: number;
  /** How it is used where nobody tells. */
  readonly use: Exclude<UtensilUse, 'unknown'>;
  readonly closedJoints: boolean;
  readonly hold: 'tongs' | 'net';
};

/** A row of methods; a list that is absent holds for everything. */
export type MethodRow = {
  readonly id: string;
  readonly kinds?: readonly UtensilKind[];
  readonly materials?: readonly UtensilMaterial[];
  readonly uses?: readonly UtensilUse[];
  readonly conditions?: readonly Condition[];
  readonly customs?: readonly CustomId[];
  readonly purposes?: readonly Purpose[];
  readonly closedJoints?: boolean;
  readonly method: UtensilMethod;
  readonly term?: string;
  readonly source: string;
  readonly question?: {
    readonly about: 'ruling' | 'material' | 'condition';
    readonly answers: readonly UtensilMethod[];
  };
};

/** Rules of the work that stand in the catalogue under `utensils.rule`. */
export type RuleId =
  | 'rest'
  | 'pot-first'
  | 'bubbling'
  | 'boil-over'
  | 'apart'
  | 'tongs'
  | 'plain-water'
  | 'cold-rinse'
  | 'parts'
  | 'soak'
  | 'light-heat-test'
  | 'mikveh';

type Table = {
  readonly kinds: readonly KindRow[];
  readonly rows: readonly MethodRow[];
  readonly soak: { readonly soakHours: number; readonly soakTimes: number };
  readonly pot: {
    /** Depth of water at the mark for each metre of diameter. */
    readonly heightPerDiameter: number;
    /** The pot as water, as a share of its volume. */
    readonly bodyWaterShare: number;
    /** Boxes of the things in a batch, as a share of the pot: water must come everywhere. */
    readonly looseShare: number;
    /** Water displaced at most, as a share of the pot. */
    readonly displacedShare: number;
    /** A batch cools the water by no more, K. */
    readonly mostDropK: number;
    /** Pieces at once. */
    readonly mostPieces: number;
    /** One half goes under this much further than half. */
    readonly overlapShare: number;
  };
  readonly rules: readonly { readonly id: RuleId; readonly source: string }[];
  readonly mikvehMaterials: readonly UtensilMaterial[];
};

/** The table is ours: a test holds its shape, so it is not checked while running. */
export const TABLE = raw as unknown as Table;

const KINDS: ReadonlyMap<UtensilKind, KindRow> = new Map(TABLE.kinds.map((row) => [row.kind, row]));

/** @throws RangeError when the table lacks a kind: it has a row for every one */
export function kindRow(kind: UtensilKind): KindRow {
  const row = KINDS.get(kind);
  if (!row) throw new RangeError(`kind is ${kind}; allowed: kinds of the table. Add it there.`);
  return row;
}
