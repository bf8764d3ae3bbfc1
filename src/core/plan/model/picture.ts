import type { Point, Polygon, UtensilKind } from '../../kitchen/index.ts';
import type { Message } from '../../messages/index.ts';

/** What a step shows; data only, drawn by the app. */
export type Picture =
  | {
      readonly kind: 'lanes';
      readonly outline: Polygon;
      readonly holes: readonly Polygon[];
      readonly stretches: readonly Stretch[];
      /** How wide a pass wets, m; plans made before this was kept have none. */
      readonly laneM?: number;
      /** What nobody reaches from where one can stand. */
      readonly unreached?: readonly UnreachedSpot[];
      /** Which of the stretches this step pours. */
      readonly kettle: number;
    }
  | {
      readonly kind: 'sink';
      readonly parts: readonly { readonly name: Message; readonly kettle: number }[];
      readonly kettle: number;
    }
  | { readonly kind: 'burner'; readonly cooktop: string; readonly burner: string }
  | {
      readonly kind: 'oven';
      readonly stages: readonly {
        readonly name: Message;
        readonly lengthS: number;
        readonly tempC: number;
      }[];
    }
  | {
      readonly kind: 'kettle';
      readonly vessel: string;
      readonly litres: number;
      readonly maxFillL: number;
    }
  | {
      /** A pot with what goes into it at once, seen from the side. */
      readonly kind: 'batch';
      readonly vessel: string;
      readonly diameterM: number;
      readonly depthM: number;
      /** Of the depth, with the things under water: 0 to 1. */
      readonly waterShare: number;
      readonly hold: 'tongs' | 'net';
      readonly byHalves: boolean;
      readonly items: readonly {
        readonly kind: UtensilKind;
        readonly name: Message;
        readonly count: number;
      }[];
    };

/** A spot out of an arm's reach from where one can stand; `at` lies well inside it. */
type UnreachedSpot = {
  readonly outline: Polygon;
  readonly areaM2: number;
  readonly at: Point;
};

export type LanesPicture = Extract<Picture, { readonly kind: 'lanes' }>;
export type BatchPicture = Extract<Picture, { readonly kind: 'batch' }>;
export type SinkPicture = Extract<Picture, { readonly kind: 'sink' }>;

/** Where one kettle goes. */
export type Stretch = {
  readonly kettle: number;
  readonly points: readonly Point[];
  readonly litres: number;
  readonly lengthM: number;
  /** From where it is poured: one begins at `at` and walks between `from` and `to` along an edge of the outline. */
  readonly stand?: {
    readonly edge: readonly [number, number];
    readonly at: Point;
    readonly from: Point;
    readonly to: Point;
  };
};
