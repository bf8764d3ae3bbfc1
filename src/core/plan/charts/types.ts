/**
 * A physical course drawn in the Plan: lines over time, limits across,
 * moments along. Data only; the app draws it.
 */
export type CurveLine = {
  readonly name: string;
  /** `main` is what is planned; `beside` is what it would be otherwise. */
  readonly weight: 'main' | 'beside';
  readonly points: readonly { readonly timeS: number; readonly y: number }[];
};

export type HeatChart = {
  readonly id: string;
  readonly title: string;
  /** One or two sentences that say what the picture shows. */
  readonly says: string;
  readonly unit: string;
  readonly lines: readonly CurveLine[];
  readonly limits: readonly { readonly name: string; readonly y: number }[];
  readonly moments: readonly { readonly name: string; readonly timeS: number }[];
};
