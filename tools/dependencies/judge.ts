/** What the registry says of one package; undefined is what it did not say. */
export type Known = {
  readonly name: string;
  readonly version: string;
  /** Why its makers advise against this version. */
  readonly deprecated?: string | undefined;
  /** Of its last release, ms. */
  readonly lastReleaseMs?: number | undefined;
};

/** A vulnerability of `npm audit`, at this severity or above it, fails. */
const FAILS_AT = ['moderate', 'high', 'critical'];
const MS_PER_YEAR = 365.25 * 86_400_000;
/** A package with no release for longer is held to be left by its makers, years. */
export const LEFT_AFTER_YEARS = 4;

/** Packages that may stand still, and why. */
const MAY_STAND_STILL: Readonly<Record<string, string>> = {
  howler: 'plays sounds by interfaces of browsers that no longer change; recorded by the tests',
  'idb-keyval': 'a few lines over IndexedDB, which no longer changes',
};

type Audit = {
  readonly vulnerabilities?: Readonly<Record<string, { readonly severity: string }>>;
};

/** What `npm audit --json` found that fails; undefined where it gave no answer. */
export function vulnerable(audit: unknown): readonly string[] | undefined {
  const { vulnerabilities } = (audit ?? {}) as Audit;
  if (vulnerabilities === undefined) return undefined;
  return Object.entries(vulnerabilities)
    .filter(([, { severity }]) => FAILS_AT.includes(severity))
    .map(([name, { severity }]) => `${name}: a known vulnerability (${severity})`);
}

/** Why packages should no longer be built on: withdrawn by their makers, or left. */
export function unmaintained(packages: readonly Known[], nowMs: number): readonly string[] {
  return packages.flatMap(({ name, version, deprecated, lastReleaseMs }) => {
    if (deprecated) return [`${name} ${version}: deprecated (${deprecated})`];
    const years = lastReleaseMs === undefined ? 0 : (nowMs - lastReleaseMs) / MS_PER_YEAR;
    if (years <= LEFT_AFTER_YEARS || Object.hasOwn(MAY_STAND_STILL, name)) return [];
    return [`${name} ${version}: no release for ${years.toFixed(1)} years`];
  });
}
