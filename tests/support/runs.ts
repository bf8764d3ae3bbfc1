/** Random cases are many in the slow lane; the everyday run plays a quarter of them. */
const IS_THOROUGH = process.env['GLOWPOUR_THOROUGH'] !== undefined;

/** How many cases a property is tried with now, of as many as the slow lane tries. */
export function runs(thorough: number): number {
  return IS_THOROUGH ? thorough : Math.ceil(thorough / 4);
}

/** All of a list in the slow lane, the first of it every day. */
export function everyday<T>(all: readonly T[], few: number): readonly T[] {
  return IS_THOROUGH ? all : all.slice(0, few);
}
