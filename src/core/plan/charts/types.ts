import type { Message, Unit } from '../../messages/index.ts';

/**
 * A physical course drawn in the Plan: lines over time, limits across,
 * moments along. Data only; the app draws it.
 */
export type CurveLine = {
  readonly name: Message;
  /** `main` is what is planned; `beside` is what it would be otherwise. */
  readonly weight: 'main' | 'beside';
  readonly points: readonly { readonly timeS: number; readonly y: number }[];
};

export type HeatChart = {
  readonly id: string;
  readonly title: Message;
  /** One or two sentences that say what the picture shows. */
  readonly says: Message;
  readonly unit: Message;
  /** What y counts where a household may read another unit than the message tells of metric ones. */
  readonly counts?: Unit;
  readonly lines: readonly CurveLine[];
  readonly limits: readonly { readonly name: Message; readonly y: number }[];
  /** Drawn up to here; lines that go beyond leave the picture. Absent: as high as they go. */
  readonly top?: number;
  readonly moments: readonly { readonly name: Message; readonly timeS: number }[];
};
