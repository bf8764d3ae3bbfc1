import table from '../../../../shared/burns.json';
import type { Band } from '../../units/index.ts';
import type { TouchKind } from './materials.ts';

export type WaterBurnRow = {
  readonly tempC: number;
  readonly secondDegreeS: number;
  readonly thirdDegreeS: number;
};

export type TouchRow = {
  readonly kind: TouchKind;
  readonly contactS: number;
  readonly tempC: Band;
};

export const WATER_BURNS: readonly WaterBurnRow[] = table.water;
export const TOUCH_THRESHOLDS = table.touch as readonly TouchRow[];
