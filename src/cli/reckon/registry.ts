import { cutsReckoning } from './solvers/cuts.ts';
import { lanesReckoning } from './solvers/lanes.ts';
import { CALENDAR_MODELS } from './models/calendar.ts';
import { HEAT_MODELS } from './models/heat.ts';
import { IMMERSION_MODELS } from './models/immersion.ts';
import { ROOM_MODELS } from './models/room-air.ts';
import { POUR_MODELS, SURFACE_MODELS } from './models/surface.ts';
import { WATER_MODELS } from './models/water.ts';
import type { FileModel, Model } from './model/model.ts';
import { POUR_NEED } from './models/pour-need.ts';
import { BURNERS_AT_ONCE, ROOM } from './models/room.ts';
import { scheduleReckoning } from './solvers/schedule.ts';

/** Models that answer `name=value` words. A new one is added to one of these lists, or as a list of its own. */
export const MODELS: readonly Model[] = [
  ...WATER_MODELS,
  ...POUR_MODELS,
  ...SURFACE_MODELS,
  ...HEAT_MODELS,
  ...IMMERSION_MODELS,
  ...ROOM_MODELS,
  ...CALENDAR_MODELS,
  POUR_NEED,
  ROOM,
  BURNERS_AT_ONCE,
];

/** Solvers that take one file. */
export const FILE_MODELS: readonly FileModel[] = [scheduleReckoning, lanesReckoning, cutsReckoning];
