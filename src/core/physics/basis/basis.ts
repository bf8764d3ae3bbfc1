/**
 * What a figure rests on where nobody published one to hold it against.
 * - `computed`: the formula was worked out a second time, apart from these
 *   sources. That finds slips, not wrong physics.
 * - `judgement`: nothing but common practice and what is sensible.
 *
 * `group` is the name of the group of check rows (tests/core/physics/rows). A
 * group that gets a published row, or one of a reference library, leaves this
 * table; a group without one stands in it. The tests insist on both.
 */
export const BASIS = [
  { id: 'hand-speed', group: 'hand speed', kind: 'judgement' },
  { id: 'pour-litres', group: 'pour litres', kind: 'judgement' },
  { id: 'radial-film', group: 'radial film', kind: 'judgement' },
  { id: 'burner-bodies', group: 'burner bodies', kind: 'judgement' },
  { id: 'glow-limit', group: 'glow limit', kind: 'judgement' },
  { id: 'touch-thresholds', group: 'touch thresholds', kind: 'judgement' },
  { id: 'oven-cooling', group: 'oven cooling', kind: 'judgement' },
  { id: 'highest-heat', group: 'highest heat', kind: 'judgement' },
  { id: 'air-curve', group: 'air curve', kind: 'judgement' },
  { id: 'glow', group: 'glow', kind: 'computed' },
  { id: 'safe-to-touch', group: 'safe to touch', kind: 'computed' },
  { id: 'kettle-cooling', group: 'kettle cooling', kind: 'computed' },
  { id: 'voltage', group: 'voltage', kind: 'computed' },
  { id: 'wetting', group: 'wetting', kind: 'computed' },
  { id: 'level-jump', group: 'level jump', kind: 'computed' },
  { id: 'contact', group: 'contact', kind: 'computed' },
  { id: 'surface-after', group: 'surface after', kind: 'computed' },
  { id: 'sheet', group: 'sheet', kind: 'computed' },
  { id: 'thermal-shock', group: 'thermal shock', kind: 'computed' },
  { id: 'window', group: 'window', kind: 'computed' },
  { id: 'admittance', group: 'admittance', kind: 'computed' },
  { id: 'air', group: 'air', kind: 'computed' },
  { id: 'poured-spot', group: 'poured spot', kind: 'computed' },
  { id: 'heated-through', group: 'heated through', kind: 'computed' },
  { id: 'jet-loss', group: 'jet loss', kind: 'computed' },
  { id: 'room-heat', group: 'room heat', kind: 'computed' },
  { id: 'burners-at-once', group: 'burners', kind: 'computed' },
] as const;
