import titles from '../../../../shared/sources/physics.json';

type Key = keyof typeof titles;

/** Titles of sources of the physics by their keys. */
export function physicsSources(...keys: readonly Key[]): readonly string[] {
  return keys.map((key) => titles[key].title);
}
