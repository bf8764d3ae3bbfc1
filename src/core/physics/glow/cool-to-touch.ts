import { band, inRange, OutOfRangeError, type Band } from '../../units/index.ts';
import { touchThreshold } from '../burn/touch.ts';
import { USUAL_ROOM_C } from '../common/constants.ts';
import { freeConvection } from '../surface/free-convection.ts';
import {
  checkLump,
  lumpPath,
  lumpSeconds,
  steadyTempC,
  type Lump,
  type LumpPoint,
} from '../surface/lumped.ts';
import { burnerRow } from '../tables/burners.ts';
import type { StillShape } from '../tables/still-shapes.ts';
import { standardPressure } from '../water/standard-pressure.ts';
import { glowLump, suppliedShare, type GlowInput } from './glow-time.ts';

/** A consumer may lean on it for so long: children and older people. ASTM C1055-20. */
const CONSUMER_CONTACT_S = 60;
/** Correlations of free convection hold within about this share. Incropera ch. 9. */
const FILM_SHARE = 0.2;
/** A kitchen in which burners were lit is warmer by so much, K: judgement, about what the room model gives. */
const WARMER_K = 10;
/** The room that is reckoned with stays this far below the touch, K; hotter, it has no end. */
const BELOW_TOUCH_K = 5;

export type CoolInput = GlowInput & {
  /** Temperature when it is turned off; default: the steady temperature, or the catalogue's. */
  readonly fromC?: number;
  /** What is touched: a material id, or a kind (metal, mineral, plastic, wood). Default: the catalogue's, else metal. */
  readonly material?: string;
  /** Length of the touch it must be safe for. */
  readonly contactS?: number;
  /** The temperature itself, instead of material and length. */
  readonly touchC?: number;
  /** How it stands in still air, and its size; default: the catalogue's. A given `filmWM2K` replaces them. */
  readonly shape?: StillShape;
  readonly sizeM?: number;
  readonly altitudeM?: number;
};

/** The quick end, the usual, the slow end. */
type End = 'low' | 'typical' | 'high';

/** The film of each end: what takes heat away less is slower. */
const FILM_AT = { low: 1 + FILM_SHARE, typical: 1, high: 1 - FILM_SHARE } as const;

/** Between so many kelvins a film is taken as a straight line: within 0.1 % of the curve above the room. */
const FILM_STEP_K = 5;

/** The same function, worked out once at each of its rows. */
function tabulated(film: (tempC: number) => number, fromC: number): (tempC: number) => number {
  const rows: number[] = [];
  const row = (at: number) => (rows[at] ??= film(fromC + at * FILM_STEP_K));
  return (tempC) => {
    const place = Math.max(0, (tempC - fromC) / FILM_STEP_K);
    const at = Math.floor(place);
    const share = place - at;
    return row(at) * (1 - share) + row(at + 1) * share;
  };
}

/** How a body stands in still air. */
type Standing = { readonly shape: StillShape; readonly sizeM: number };

/** Film by the body's own temperature; a given number replaces it. */
function stillFilm(of: CoolInput, standing: Standing, end: End, airC: number): Lump['filmWM2K'] {
  if (of.filmWM2K !== undefined) return of.filmWM2K;
  const shape = of.shape ?? standing.shape;
  const sizeM = of.sizeM ?? standing.sizeM;
  const { pressurePa } = standardPressure({ altitudeM: of.altitudeM ?? 0 });
  const film = (surfaceC: number) =>
    FILM_AT[end] * freeConvection({ shape, sizeM, surfaceC, airC, pressurePa }).filmWM2K;
  return tabulated(film, airC);
}

/** What glowed, without a burner of the catalogue: by the numbers given. */
function givenBody(of: CoolInput, end: End, roomC: number): Lump {
  const { shape, sizeM } = of;
  if (shape === undefined || sizeM === undefined)
    return { ...glowLump({ ...of, powerW: 0 }), roomC };
  const body = glowLump({ ...of, powerW: 0, filmWM2K: 0 });
  return { ...body, filmWM2K: stillFilm(of, { shape, sizeM }, end, roomC), roomC };
}

/** The body that stays hot: with a named burner its grate or glass, not the tips that glowed. */
function hotBody(of: CoolInput, end: End, roomC: number): Lump {
  if (of.burner === undefined) return givenBody(of, end, roomC);
  const row = burnerRow(of.burner);
  const { after } = row;
  const scale = (of.ratedW ?? row.ratedW.typical) / row.ratedW.typical;
  // A larger disc is wider; a larger grate has more bars, no thicker ones.
  const wider = after.shape === 'disc-up' ? Math.sqrt(scale) : 1;
  const standing = { shape: after.shape, sizeM: after.sizeM * wider };
  return checkLump({
    powerW: 0,
    areaM2: of.areaM2 ?? after.areaM2 * scale,
    heatCapacityJK:
      of.heatCapacityJK ?? after.heatCapacityJK * scale * after.heatCapacityShare[end],
    emissivity: of.emissivity ?? after.emissivity,
    filmWM2K: stillFilm(of, standing, end, roomC),
    roomC,
  });
}

const CORNER_AT = { low: 'coolest', typical: 'typical', high: 'hottest' } as const;

/** Temperature at the moment it is turned off. A weak supply is no excuse for the slow end. */
function hotC(of: CoolInput, end: End): number {
  if (of.fromC !== undefined) return of.fromC;
  const told = of.burner === undefined ? null : burnerRow(of.burner).after.fromC;
  if (told !== null) return told[end];
  const full = end === 'high' && suppliedShare(of) < 1;
  const { ratedV: _rated, supplyV: _supply, ...atRated } = of;
  return steadyTempC(glowLump(full ? atRated : of, CORNER_AT[end]));
}

function secondsTo(of: CoolInput, end: End, touchC: number): number {
  const usualC = inRange('roomC', of.roomC ?? USUAL_ROOM_C, -10, 50);
  const warmC = Math.max(usualC, Math.min(usualC + WARMER_K, touchC - BELOW_TOUCH_K));
  const roomC = end === 'high' ? warmC : usualC;
  const fromC = hotC(of, end);
  if (fromC <= touchC) return 0;
  const timeS = lumpSeconds(hotBody(of, end, roomC), fromC, touchC);
  if (timeS !== undefined) return timeS;
  throw new OutOfRangeError(
    'roomC',
    usualC,
    `below ${touchC} °C`,
    'It never cools to the touch in so warm a room.',
  );
}

function touchOf(of: CoolInput): number {
  const kind = of.material ?? (of.burner === undefined ? 'metal' : burnerRow(of.burner).after.kind);
  const contactS = of.contactS ?? CONSUMER_CONTACT_S;
  return inRange(
    'touchC',
    of.touchC ?? touchThreshold({ material: kind, contactS }).touchC,
    20,
    400,
  );
}

/**
 * Temperatures of what glowed from `fromC` to the touch, typical: the part
 * that glowed until it is no hotter than the body it sits on, then that body.
 * @throws OutOfRangeError
 */
export function coolingPath(of: CoolInput, fromC: number): readonly LumpPoint[] {
  const touchC = touchOf(of);
  const lit = glowLump(of);
  const body = hotBody(of, 'typical', lit.roomC);
  const bodyC = of.burner === undefined ? null : burnerRow(of.burner).after.fromC;
  const joinC = Math.min(fromC, bodyC?.typical ?? fromC);
  const tips =
    joinC < fromC ? lumpPath({ ...lit, powerW: 0, filmWM2K: body.filmWM2K }, fromC, joinC) : [];
  const afterS = tips.at(-1)?.timeS ?? 0;
  const slow = lumpPath(body, joinC, touchC);
  return [...tips, ...slow.map(({ timeS, tempC }) => ({ timeS: timeS + afterS, tempC }))];
}

/**
 * Seconds from turning off until the burner may be touched. 0 when it already
 * may. typical: still air by temperature and size, room as given; high: film a
 * fifth less, more heat in it, hottest of its type, a room that the burners
 * warmed. A clock that protects a hand takes `high`.
 * @throws OutOfRangeError also when the room is as warm as the threshold
 * Source: lumped cooling by radiation and free convection (Incropera ch. 9);
 * ISO 13732-1 threshold for a contact of one minute (ASTM C1055 consumer
 * contact). The film coefficient of a lit burner is not used here.
 */
export function coolToTouch(of: CoolInput): {
  readonly timeS: Band;
  readonly touchC: number;
  readonly fromC: number;
} {
  const touchC = touchOf(of);
  const fromC = inRange('fromC', hotC(of, 'typical'), -30, 1300);
  const [low, typical, high] = [
    secondsTo(of, 'low', touchC),
    secondsTo(of, 'typical', touchC),
    secondsTo(of, 'high', touchC),
  ];
  return { timeS: band(Math.min(low, typical), typical, Math.max(typical, high)), touchC, fromC };
}
