import type { SideName } from '../../geometry/index.ts';
import type { Message } from '../../messages/index.ts';
import type { LanesRefusalCode, Unreached } from '../../pouring/index.ts';
import type { Picture } from '../model/index.ts';

/** What one kettle pours. */
export type KettlePour = {
  readonly kettle: number;
  readonly litres: number;
  /** Names of the parts, for a sink. */
  readonly parts: readonly Message[];
  /** Sides of a counter or a table at which one stands, in order. */
  readonly sides?: readonly SideName[];
  readonly picture?: Picture;
};

/** How a fixture's water is shared among kettles. */
export type KettlePours = {
  readonly pours: readonly KettlePour[];
  /** Why no lanes could be drawn: the shares are alike, without a picture. */
  readonly refusal?: LanesRefusalCode;
  /** Spots that nobody reaches from where one can stand: no kettle is planned for them. */
  readonly unreached?: readonly Unreached[];
};
