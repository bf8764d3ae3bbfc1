/**
 * Which part of the house may import which (DEVELOPERS.md, "Boundaries").
 * Imports of types count like any other: what a room knows by type, it knows.
 *
 * A room is a folder named in LAYERS; what lies below it belongs to it. `app`
 * alone stands for the files that lie directly in src/app.
 */

/** From the bottom to the top. A room imports rooms of lines above its own here, never one of the same line or below. */
const LAYERS = [
  ['core/units'],
  ['core/geometry', 'core/messages'],
  ['core/calendar'],
  ['core/kitchen'],
  ['core/editing', 'core/custom', 'core/physics', 'core/schedule', 'core/pouring', 'core/cutting'],
  ['core/utensils'],
  ['core/plan'],
  ['core/run', 'core/advice'],
  ['core/journal'],
  ['core/report', 'core/calibration', 'core/covering'],
  ['core/handouts', 'core/backup', 'core/import'],
  ['host'],
  ['app/styles'],
  ['app/context'],
  ['app/controllers'],
  ['app/parts'],
  ['app/pictures'],
  ['app/pages/custom'],
  ['app/pages/kitchen', 'app/pages/plan', 'app/pages/record', 'app/pages/run'],
  ['app/pages/rehearse'],
  ['app'],
  ['cli', 'offline'],
];

/** Rooms that know less of the house than their layer allows. `x/*` is every room below x. */
const KNOWS_ONLY = [
  { room: 'core/physics', knows: ['core/units'], why: 'physics knows no kitchen: pass numbers' },
  { room: 'core/schedule', knows: ['core/units'], why: 'the scheduler is generic' },
  {
    room: 'core/pouring',
    knows: ['core/units', 'core/geometry'],
    why: 'paths are laid over surfaces, not over kitchens',
  },
  {
    room: 'core/cutting',
    knows: ['core/units'],
    why: 'pieces are cut from rolls, not from kitchens',
  },
  { room: 'host', knows: ['core/*'], why: 'the host is below the app' },
  { room: 'cli', knows: ['core/*'], why: 'the command line has no page and no browser' },
  { room: 'offline', knows: [], why: 'the service worker keeps files, it knows no kitchen' },
];
const KNOWS_NOT = [
  {
    room: 'core/run',
    knowsNot: ['core/physics'],
    why: 'the run computes nothing: numbers come in the plan',
  },
  {
    room: 'app/*',
    knowsNot: ['core/physics'],
    why: 'the app shows what the plan says; it computes no physics',
  },
];

/** Rooms that others enter by an index.ts, their own or that of a folder in them. */
const ENTERED_BY_INDEX = ['core/*', 'host'];

/** Packages that are pure, which the core may use. */
const PURE_PACKAGES = ['clipper2-ts', 'suncalc'];

const ROOMS = LAYERS.flat();

/** Path of all files of a room, without anchor. */
const inRoom = (room) => (room === 'app' ? 'src/app/[^/]+$' : `src/${room}/`);
const matching = (pattern) =>
  pattern.endsWith('/*')
    ? ROOMS.filter((room) => room === pattern.slice(0, -2) || room.startsWith(pattern.slice(0, -1)))
    : [pattern];
/** One expression for the files of some rooms, named or given as `x/*`. */
const paths = (...patterns) => `^(?:${patterns.flatMap(matching).map(inRoom).join('|') || '(?!)'})`;

const layerRules = LAYERS.flatMap((layer, depth) =>
  layer.map((room) => ({
    name: `layers:${room}`,
    comment: `${room} imports only rooms below it. The order is in .dependency-cruiser.cjs.`,
    severity: 'error',
    from: { path: paths(room) },
    to: {
      path: paths(...LAYERS.slice(depth).flat()),
      pathNot: paths(room),
    },
  })),
);

const knowsOnlyRules = KNOWS_ONLY.map(({ room, knows, why }) => ({
  name: `knows-only:${room}`,
  comment: `${why[0].toUpperCase()}${why.slice(1)}.`,
  severity: 'error',
  from: { path: paths(room) },
  to: { path: '^src/', pathNot: [paths(room), paths(...knows)] },
}));

const knowsNotRules = KNOWS_NOT.map(({ room, knowsNot, why }) => ({
  name: `knows-not:${room}`,
  comment: `${why[0].toUpperCase()}${why.slice(1)}.`,
  severity: 'error',
  from: { path: paths(room) },
  to: { path: paths(...knowsNot) },
}));

const entryRules = ENTERED_BY_INDEX.flatMap(matching).map((room) => ({
  name: `entry:${room}`,
  comment: `${room} is entered by an index.ts: export there what others need.`,
  severity: 'error',
  from: { path: '^src/', pathNot: paths(room) },
  to: { path: paths(room), pathNot: '/index\\.ts$' },
}));

module.exports = {
  forbidden: [
    ...layerRules,
    ...knowsOnlyRules,
    ...knowsNotRules,
    ...entryRules,
    {
      name: 'rooms:unknown',
      comment: 'This file lies in no room. Move it, or give its folder a place in LAYERS.',
      severity: 'error',
      from: { path: '^src/', pathNot: paths(...ROOMS) },
      to: {},
    },
    {
      name: 'rehearsal:keeps-nothing',
      comment: 'What is rehearsed has no way to a store, a lock or a wake lock of the tablet.',
      severity: 'error',
      from: { path: '^src/app/(?:controllers|pages)/rehearse/' },
      to: {
        path: '^src/host/(?:journal|kitchens|marker|tab-lock|wake-lock)/',
        reachable: true,
      },
    },
    {
      name: 'core:packages',
      comment: `The core imports the core, the shared tables, and no package but ${PURE_PACKAGES.join(' and ')}.`,
      severity: 'error',
      from: { path: '^src/core/' },
      to: { pathNot: ['^src/', '^shared/', `node_modules/(?:${PURE_PACKAGES.join('|')})/`] },
    },
    {
      name: 'source:outside',
      comment: 'What is shipped imports no test and no tool.',
      severity: 'error',
      from: { path: '^(?:src|shared)/' },
      to: { path: '^(?:tests|tools|sounds)/', pathNot: '^sounds/manifest\\.json$' },
    },
    {
      name: 'shared:source',
      comment: 'The shared tables import nothing of the source.',
      severity: 'error',
      from: { path: '^shared/' },
      to: { path: '^src/' },
    },
    {
      name: 'cycles:files',
      comment: 'Two files wait for each other. Move what both need to a third.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'cycles:folders',
      comment: 'Folders that import each other are one folder. Move what both need.',
      severity: 'error',
      scope: 'folder',
      from: { path: '^src/' },
      to: { circular: true },
    },
    {
      name: 'cycles:outer-folder',
      comment:
        'A folder imports a file of the folder around it, which puts it together. ' +
        'Move that file into a folder of its own.',
      severity: 'error',
      from: { path: '^(src/.+)/[^/]+/[^/]+$' },
      to: { path: '^$1/[^/]+$' },
    },
    {
      name: 'cycles:outermost-folder',
      comment: 'As cycles:outer-folder, two folders out.',
      severity: 'error',
      from: { path: '^(src/.+)/[^/]+/[^/]+/[^/]+$' },
      to: { path: '^$1/[^/]+$' },
    },
    {
      name: 'imports:missing',
      comment: 'Nothing is there.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^vite/client$' },
    },
  ],
  options: {
    // Types are erased by compilation; this reads the source before.
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.json'] },
    skipAnalysisNotInRules: true,
  },
};
