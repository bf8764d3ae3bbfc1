import type { Area, Compared, Difference } from './differences.ts';
import type { Known } from './known-differences.ts';

const AREAS: readonly { readonly area: Area; readonly scenes: string; readonly things: string }[] =
  [
    { area: 'plan', scenes: 'plans', things: 'steps' },
    { area: 'run', scenes: 'simulated runs', things: 'facts' },
    { area: 'plan text', scenes: 'printed plans', things: 'lines' },
    { area: 'sentence', scenes: 'plans', things: 'sentences' },
    { area: 'record', scenes: 'records', things: 'lines' },
  ];

/** Differences shown of each area, unless all are asked for. */
const FEW = 12;
/** Longest piece of a value that is shown, characters. */
const LONG = 160;

export type Judged = { readonly difference: Difference; readonly known?: Known };

/** Sets the meant differences apart from the others. */
export function judged(
  differences: readonly Difference[],
  known: readonly Known[],
): readonly Judged[] {
  return differences.map((difference) => {
    const { area, scene, place, before, after } = difference;
    const found = known.find(
      (one) =>
        one.areas.includes(area) &&
        (one.place === undefined || one.place.test(`${scene}: ${place}`)) &&
        (one.line === undefined || one.line.test(before) || one.line.test(after)) &&
        (one.alike === undefined || one.alike(before) === one.alike(after)),
    );
    return found ? { difference, known: found } : { difference };
  });
}

function cut(text: string): string {
  return text.length <= LONG ? text : `${text.slice(0, LONG)} …`;
}

/** `pour sink 2` and `pour table 1` are of one sort. */
function sortOf(text: string): string {
  return text.replaceAll(/([a-z-]+) \S+ \d+\b/g, '$1 …');
}

/** The same difference in several scenes or steps is told once, and so is a number that moved everywhere. */
function grouped(differences: readonly Difference[]): readonly (readonly Difference[])[] {
  const groups = new Map<string, Difference[]>();
  for (const one of differences) {
    const numbers = [one.before, one.after].every((text) => /^-?[\d.]+(e-?\d+)?$/.test(text));
    const what = numbers ? [] : [sortOf(one.before), sortOf(one.after)];
    const key = JSON.stringify([sortOf(one.place), ...what]);
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()].toSorted((a, b) => b.length - a.length);
}

function groupLines(group: readonly Difference[]): readonly string[] {
  const [first] = group;
  if (!first) return [];
  const where = group.length === 1 ? first.scene : `${group.length} times, first: ${first.scene}`;
  return [
    `  ${first.place === '' ? '' : `${first.place}  `}[${where}]`,
    `    - ${cut(first.before)}`,
    `    + ${cut(first.after)}`,
  ];
}

function areaLines(
  { area, scenes, things }: (typeof AREAS)[number],
  all: readonly Judged[],
  compared: Compared,
  few: number,
): readonly string[] {
  const own = all.filter(({ difference }) => difference.area === area);
  const open = own.filter((one) => one.known === undefined).map(({ difference }) => difference);
  const meant = own.length - open.length;
  const groups = grouped(open);
  const left = groups.length - few;
  return [
    `${compared[area].scenes} ${scenes}: ${compared[area].things} ${things}, ${open.length} ${
      open.length === 1 ? 'difference' : 'differences'
    }${meant === 0 ? '' : ` and ${meant} known`}`,
    ...groups.slice(0, few).flatMap(groupLines),
    ...(left > 0 ? [`  … and ${left} more, shown with --all`] : []),
  ];
}

/** How the comparison came out, in lines; each area begins with its count. */
export function reportLines(
  all: readonly Judged[],
  compared: Compared,
  known: readonly Known[],
  { showAll = false, plansOnly = false }: { showAll?: boolean; plansOnly?: boolean } = {},
): readonly string[] {
  const used = known.map((one) => all.filter((judgedOne) => judgedOne.known === one).length);
  return [
    ...AREAS.filter(({ area }) => !plansOnly || (area !== 'run' && area !== 'record')).flatMap(
      (one) => areaLines(one, all, compared, showAll ? Infinity : FEW),
    ),
    ...known.map((one, n) => `Known, ${used[n]} times: ${one.reason}`),
  ];
}
