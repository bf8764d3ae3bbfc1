import type { World } from '../world.ts';

/** A promise that was broken, and which way it was broken; the same key is told once a run. */
export type Finding = {
  readonly promise: string;
  /** In a few words, the way in which it broke. */
  readonly way: string;
  readonly text: string;
};

/** Gathers what an oracle finds in one run, each way of breaking a promise once. */
export class Findings {
  readonly all: Finding[] = [];

  add(world: World, promise: string, way: string, text: string): void {
    if (this.all.some((one) => one.promise === promise && one.way === way)) return;
    this.all.push({ promise, way, text });
    world.tells(`*** ${promise} broken (${way}): ${text}`);
  }
}
