import type { Section } from '../../model/message.ts';

/** `isAhead`: what is expected has not come yet. */
type Ahead = { isAhead?: boolean };
type BurnerName = { burner: string };
type OvenName = { oven: string };
type BurnerHeld = { burner: string; cooktop: string; lengthS: number };

/** Burners and ovens. */
export const heat = {
  'steps.heat.say-on': 'It is on',
  'steps.heat.say-off': 'It is off',
  'steps.heat.ask-stayed-on': 'Did the burner stay on?',

  'steps.burner.of': ({ burner, cooktop }: { burner: string; cooktop: string }) =>
    `${burner} of ${cooktop}`,
  'steps.glow.title': ({ burner, cooktop, lengthS }: BurnerHeld, f) =>
    `Bring to a glow: ${burner} of ${cooktop}, ${f.duration(lengthS)}.`,
  'steps.glow.title-highest': ({ burner, cooktop, lengthS }: BurnerHeld, f) =>
    `Heat at the highest: ${burner} of ${cooktop}, ${f.duration(lengthS)}.`,
  'steps.glow.light-gas': ({ burner }: BurnerName) => `Light the ${burner} burner on full flame.`,
  'steps.glow.light-electric': ({ burner }: BurnerName) => `Turn the ${burner} burner to high.`,
  'steps.glow.light-clear': 'Hood on, nothing near it.',
  'steps.glow.light-order': 'The back burners go first, so that nobody reaches over a hot one.',
  'steps.glow.light-gas-ready':
    'Caps and grates seated and dry, knobs on, valve open. No smell of gas, else no flame and no switch: out, and call.',
  'steps.glow.light-ask': 'Is the burner on now?',
  'steps.glow.warm-up': 'Watch it until it glows.',
  'steps.glow.visible.electric-coil':
    'The whole coil turns dull red, then orange. A newer coil with a sensing limiter may cycle and never glow bare.',
  'steps.glow.visible.solid-plate':
    'A cast-iron plate reddens dully in the dark, if its limiter lets it. Many with a red dot cut their power before they glow.',
  'steps.glow.visible.radiant-glass':
    'The ribbon under the glass glows within seconds; a limiter turns it off and on, which is normal. The glass itself does not glow.',
  'steps.glow.visible.gas-sealed':
    'The tips of the grate that stand in the flame redden; the whole grate does not.',
  'steps.glow.visible.gas-open':
    'The tips of the grate that stand in the flame redden; the whole grate does not.',
  'steps.glow.visible.gas-wok': 'The ring of the grate over the outer flame reddens at its tips.',
  'steps.glow.visible.commercial-open':
    'Heavy cast-iron arms redden where the flame strikes; allow them longer.',
  'steps.glow.visible.portable-plate':
    'A portable coil turns dull red; one with a closed iron plate or a thermostat may not glow at all.',
  'steps.glow.may-stay-dark':
    'This one may never redden bare: it senses the pan, or it gets too little voltage. Look in the dark. If it stays dark, say that it does not glow.',
  'steps.glow.warm-up-say': 'It glows',
  'steps.glow.expect': ({ isAhead }: Ahead) =>
    isAhead ? 'Until it glows (expected)' : 'Glows about now',
  'steps.glow.limit': 'It should have glowed by now',
  'steps.glow.hold': 'Let it glow without a break.',
  'steps.glow.hold-highest': 'Keep it at its highest without a break.',
  'steps.glow.hold-detail': 'Stay with it. If the flame or the power fails, the time begins again.',
  'steps.glow.hold-ask': 'Did the burner keep glowing?',
  'steps.glow.hold-timer': 'Glow',
  'steps.glow.look': 'Look at the burner',
  'steps.glow.off': ({ burner }: BurnerName) => `Turn the ${burner} burner off.`,
  'steps.glow.off-detail': 'Leave it untouched and dry.',
  'steps.glow.off-ask': 'Is the burner off?',
  'steps.glow.off-timer': 'Turn the burner off',
  'steps.glow.cool-safe': ({ burner }: BurnerName) =>
    `Keep hands, cloths and children away from the ${burner} burner until it has cooled.`,

  'steps.oven.look': 'Is everything well with the oven?',
  'steps.oven.clean.title': ({ oven }: OvenName) => `Run one full self-clean cycle: ${oven}.`,
  'steps.oven.clean.start': ({ oven }: OvenName) =>
    `Close the door and start the full self-clean cycle of ${oven}.`,
  'steps.oven.clean.racks-in': 'The racks stay in, as its manual allows.',
  'steps.oven.clean.racks-out': 'The racks are out.',
  'steps.oven.clean.hob-cold': 'The burners above it stay off until the lock opens.',
  'steps.oven.clean.locks': 'The door locks by itself when it is hot.',
  'steps.oven.clean.start-say': 'It runs',
  'steps.oven.clean.start-ask': 'Does the cycle run now?',
  'steps.oven.clean.cycle': 'Let the cycle run to its end.',
  'steps.oven.clean.cycle-detail':
    'Stay home and awake; keep children away. If the power fails, the cycle begins again.',
  'steps.oven.clean.cycle-ask': 'Did the cycle run on without a break?',
  'steps.oven.clean.cycle-timer': 'Self-clean cycle',
  'steps.oven.clean.cool': 'Leave the door shut until the lock opens.',
  'steps.oven.clean.cool-detail': 'Do not force it.',
  'steps.oven.clean.cool-timer': 'The lock opens',
  'steps.oven.clean.open': 'See that the cycle has ended and the lock is open, then switch it off.',
  'steps.oven.clean.open-detail': 'It is still hot inside: leave it shut and dry.',
  'steps.oven.clean.open-say': 'It is off and unlocked',
  'steps.oven.clean.open-ask': 'Is the oven off and unlocked?',
  'steps.oven.clean.open-timer': 'See that the oven is off',
  'steps.oven.clean.safe':
    'Keep the door shut and turn the oven off at its control or its breaker.',
  'steps.oven.title': ({ oven, lengthS }: { oven: string; lengthS: number }, f) =>
    `Heat at the highest setting for ${f.duration(lengthS)}: ${oven}.`,
  'steps.oven.start': ({ oven }: OvenName) => `Turn ${oven} to its highest setting, door shut.`,
  'steps.oven.start-detail': 'If it has a broiler, use it for the last minutes.',
  'steps.oven.racks-in': 'Racks in, clean and dry.',
  'steps.oven.racks-out': 'The old racks are out.',
  'steps.oven.start-ask': 'Is the oven on now?',
  'steps.oven.warm-up': 'Wait until it has reached its highest heat.',
  'steps.oven.warm-up-say': 'It is at its highest',
  'steps.oven.warm-up-ask': 'Did the oven stay on?',
  'steps.oven.expect': ({ isAhead }: Ahead) =>
    isAhead ? 'Until it is at its highest (expected)' : 'At its highest about now',
  'steps.oven.hold': 'Keep it at its highest without a break.',
  'steps.oven.hold-detail': 'If the power or the flame fails, the time begins again.',
  'steps.oven.hold-ask': 'Did the oven stay on without a break?',
  'steps.oven.hold-timer': 'Highest heat',
  'steps.oven.off': ({ oven }: OvenName) => `Turn ${oven} off and leave the door shut.`,
  'steps.oven.off-ask': 'Is the oven off?',
  'steps.oven.off-timer': 'Turn the oven off',
  'steps.oven.safe': 'Turn the oven off and keep its door shut.',
  'steps.oven.cool-safe': ({ oven }: OvenName) =>
    `Keep the door shut and children away until it has cooled: ${oven}.`,
  'steps.oven.picture.heat': 'Heat',
  'steps.oven.picture.hold': 'Hold',
  'steps.oven.picture.cool': 'Cool',
  'steps.oven.picture.cool-locked': 'Cool, locked',
} satisfies Section;
