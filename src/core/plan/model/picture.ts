import type { Point, Polygon } from '../../kitchen/index.ts';
import type { Message } from '../../messages/index.ts';

/** What a step shows; data only, drawn by the app. */
export type Picture =
  | {
      readonly kind: 'lanes';
      readonly outline: Polygon;
      readonly holes: readonly Polygon[];
      readonly stretches: readonly Stretch[];
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
    };

export type LanesPicture = Extract<Picture, { readonly kind: 'lanes' }>;
export type SinkPicture = Extract<Picture, { readonly kind: 'sink' }>;

/** Where one kettle goes. */
export type Stretch = {
  readonly kettle: number;
  readonly points: readonly Point[];
  readonly litres: number;
  readonly lengthM: number;
};
