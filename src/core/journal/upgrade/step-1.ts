/**
 * Steps as version 1 wrote them down. Frozen: these types do not follow the
 * code, since what lies in journals does not. Sentences were English text.
 */
import type { Point, Polygon } from '../../kitchen/index.ts';
import type { Band } from '../../units/index.ts';

export type Timer1 = {
  readonly id: string;
  readonly role: 'hold' | 'estimate' | 'limit' | 'reminder' | 'carry';
  readonly purpose: 'at-least' | 'at-most' | 'unbroken';
  readonly lengthS: number;
  readonly label: string;
  readonly repeats?: boolean;
  readonly fault?: FaultKind1;
};

export type Stage1 = {
  readonly id: string;
  readonly title: string;
  readonly detail: readonly string[];
  readonly say?: string;
  readonly timers: readonly Timer1[];
  readonly resumption: 'continue' | 'ask' | 'restart' | 'void';
  readonly reviewAsk?: string;
  readonly hazards: readonly ('boiling-water' | 'flame' | 'element' | 'oven' | 'hot-surface')[];
};

type Stretch1 = {
  readonly kettle: number;
  readonly points: readonly Point[];
  readonly litres: number;
  readonly lengthM: number;
};

export type Picture1 =
  | {
      readonly kind: 'lanes';
      readonly outline: Polygon;
      readonly holes: readonly Polygon[];
      readonly stretches: readonly Stretch1[];
      readonly kettle: number;
    }
  | {
      readonly kind: 'sink';
      readonly parts: readonly { readonly name: string; readonly kettle: number }[];
      readonly kettle: number;
    }
  | { readonly kind: 'burner'; readonly cooktop: string; readonly burner: string }
  | {
      readonly kind: 'oven';
      readonly stages: readonly {
        readonly name: string;
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

type StepKind1 =
  | 'prepare'
  | 'clean'
  | 'rest'
  | 'boil'
  | 'pour'
  | 'glow'
  | 'cool'
  | 'self-clean'
  | 'high-heat'
  | 'steam'
  | 'boil-over'
  | 'cover'
  | 'mark';

export type Step1 = {
  readonly id: string;
  readonly kind: StepKind1;
  readonly phase: 'prepare' | 'clean' | 'rest' | 'purge' | 'cool' | 'cover' | 'mark';
  readonly fixture?: string;
  readonly title: string;
  readonly reason: string;
  readonly sources: readonly string[];
  readonly stages: readonly Stage1[];
  readonly durationS: Band;
  readonly attention: 'hands' | 'watch' | 'none';
  readonly needs: readonly { readonly step: string; readonly withinS?: number }[];
  readonly startsBy: 'person' | 'chain';
  readonly demands: Readonly<Record<string, number>>;
  readonly gates: readonly string[];
  readonly standing: readonly string[];
  readonly after: readonly string[];
  readonly makeSafe?: string;
  readonly picture?: Picture1;
};

export type FaultKind1 =
  | 'no-glow'
  | 'flame-out'
  | 'power-cut'
  | 'smoke'
  | 'fire'
  | 'co-alarm'
  | 'gas-smell'
  | 'unwell'
  | 'kettle-failed'
  | 'oven-lock'
  | 'breaker-tripped'
  | 'cracked'
  | 'undefined';
