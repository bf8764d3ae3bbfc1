import type { Message } from '../../messages/index.ts';
import type { LanesRefusalCode } from '../../pouring/index.ts';
import type { Picture } from '../model/index.ts';

/** What one kettle pours. */
export type KettlePour = {
  readonly kettle: number;
  readonly litres: number;
  /** Which time over the whole fixture this is, of how many; absent: once. */
  readonly round?: number;
  readonly rounds?: number;
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

function later(picture: Picture, by: number): Picture {
  if (picture.kind === 'lanes')
    return {
      ...picture,
      kettle: picture.kettle + by,
      stretches: picture.stretches.map((one) => ({ ...one, kettle: one.kettle + by })),
    };
  if (picture.kind === 'sink')
    return {
      ...picture,
      kettle: picture.kettle + by,
      parts: picture.parts.map((one) => ({ ...one, kettle: one.kettle + by })),
    };
  return picture;
}

/** The same kettles again and again, numbered on; each picture shows one time over the whole. */
export function repeated(pours: readonly KettlePour[], times: number): readonly KettlePour[] {
  if (times <= 1) return pours;
  return Array.from({ length: times }, (_, round) =>
    pours.map((pour) => ({
      ...pour,
      kettle: pour.kettle + round * pours.length,
      round: round + 1,
      rounds: times,
      ...(pour.picture && { picture: later(pour.picture, round * pours.length) }),
    })),
  ).flat();
}
