// Ids of steps, and of what they are about. They are made here and compared whole; nothing reads their spelling.

import { UTENSILS } from '../model/index.ts';

export function prepareId(task: string): string {
  return `prepare-${task}`;
}

/** @param id of a fixture or of a vessel */
export function cleanId(id: string): string {
  return `clean-${id}`;
}

export function unplugId(fixture: string): string {
  return `unplug-${fixture}`;
}

export function thawId(fixture: string): string {
  return `thaw-${fixture}`;
}

export function switchOnId(fixture: string): string {
  return `switch-on-${fixture}`;
}

/** @param id of a fixture or of a vessel */
export function restId(id: string): string {
  return `rest-${id}`;
}

export function boilOverId(vessel: string): string {
  return `boil-over-${vessel}`;
}

export function boilId(fixture: string, kettle: number): string {
  return `boil-${fixture}-${kettle}`;
}

export function pourId(fixture: string, kettle: number): string {
  return `pour-${fixture}-${kettle}`;
}

/** The drying before the first kettle. */
export function dryId(fixture: string): string {
  return `dry-${fixture}`;
}

/** The drying before a cover. */
export function airDryId(fixture: string): string {
  return `air-dry-${fixture}`;
}

export function glowId(burner: string): string {
  return `glow-${burner}`;
}

export function ovenId(oven: string): string {
  return `heat-${oven}`;
}

export function byHandId(fixture: string): string {
  return `purge-${fixture}`;
}

/** @param id of a burner or of an oven */
export function coolId(id: string): string {
  return `cool-${id}`;
}

export function partId(fixture: string, part: string): string {
  return `purge-${fixture}-${part}`;
}

export function newPartsId(fixture: string): string {
  return `parts-${fixture}`;
}

export function coverId(fixture: string): string {
  return `cover-${fixture}`;
}

/** The purge of a vessel for a water after the first, or after the last. */
export function boilOverAgainId(vessel: string, water: number): string {
  return `${boilOverId(vessel)}.${water}`;
}

export function utensilBoilId(water: number): string {
  return boilId(UTENSILS, water);
}

export function batchId(batch: number): string {
  return `dip-${UTENSILS}-${batch}`;
}

/** @param piece from 1; absent: all of its kind at once */
export function utensilPurgeId(what: string, piece?: number): string {
  return partId(UTENSILS, piece === undefined ? what : `${what}.${piece}`);
}

export function soakId(day: number): string {
  return `soak-${UTENSILS}-${day}`;
}

export function changeId(day: number): string {
  return `change-${UTENSILS}-${day}`;
}

export const MARK_ID = 'mark-kitchen';
