import type { Message } from '../../messages/index.ts';
import type { LanesRefusalCode } from '../../pouring/index.ts';
import type { Picture } from '../model/index.ts';

/** What one kettle pours. */
export type KettlePour = {
  readonly kettle: number;
  readonly litres: number;
  /** Names of the parts, for a sink. */
  readonly parts: readonly Message[];
  readonly picture?: Picture;
};

/** How a fixture's water is shared among kettles. */
export type KettlePours = {
  readonly pours: readonly KettlePour[];
  /** Why no lanes could be drawn: the shares are alike, without a picture. */
  readonly refusal?: LanesRefusalCode;
};
