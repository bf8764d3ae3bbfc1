import type { Designation, Utensil } from '../../kitchen/index.ts';
import { displacedLitres, specificHeat } from '../../physics/index.ts';
import { mapBand, type Band } from '../../units/index.ts';
import { kindRow } from '../model/table.ts';

/** One piece as the pot meets it. */
export type UtensilPiece = {
  readonly utensil: string;
  /** Sides, m, the longest first. */
  readonly sides: readonly [number, number, number];
  readonly massKg: number;
  readonly displacedL: number;
  readonly heatJK: Band;
  readonly hold: 'tongs' | 'net';
  readonly group: Designation;
  readonly isPot: boolean;
};

/** A line of utensils as one piece of it; what is not told is as usual for the kind. */
export function pieceOf(utensil: Utensil): UtensilPiece {
  const usual = kindRow(utensil.kind);
  const { lengthM, widthM, heightM } = utensil.size ?? usual;
  const [a = 0, b = 0, c = 0] = [lengthM, widthM, heightM].toSorted((x, y) => y - x);
  const massKg = utensil.massKg ?? usual.massKg;
  return {
    utensil: utensil.id,
    sides: [a, b, c],
    massKg,
    displacedL: displacedLitres(utensil.material, massKg),
    heatJK: mapBand(specificHeat(utensil.material), (heat) => heat * massKg),
    hold: usual.hold,
    group: utensil.was ?? utensil.designation,
    isPot: utensil.kind === 'pot',
  };
}

/** The box a piece lies in, L. */
export function boxLitres({ sides: [a, b, c] }: UtensilPiece): number {
  return a * b * c * 1000;
}
