import type { Section } from '../../model/message.ts';

/** The cautions of shared/cautions.json: what to do and why, what a gate asks, how it is made safe. */
export const warnings = {
  'cautions.child-pet.say':
    'Keep children and pets out of the kitchen, or have a second adult mind them: a scald takes seconds.',
  'cautions.child-pet.ask':
    'Are children and pets out, behind a closed door or with another adult?',
  'cautions.child-pet.make-safe': 'Turn off what is hot and lead them out.',
  'cautions.scald-dress.say':
    'Wear closed shoes, long sleeves and heat-proof gloves, and keep the floor dry: boiling water runs where you do not look.',
  'cautions.scald-dress.ask':
    'Closed shoes, long sleeves and heat-proof gloves on, floor dry, path clear?',
  'cautions.scald-dress.make-safe': 'Put the kettle down.',
  'cautions.scald-carry.say': (_: unknown, f) =>
    `Fill to the mark at most, carry low, spout away from you, one kettle at a time: water above ${f.measure(60, '°C')} burns in seconds.`,
  'cautions.pour-stance.say':
    'Hot water runs off the front: feet back from the edge, pour low and slow.',
  'cautions.splash.say':
    'Stand upright, spout away from you, and pour low and slow: boiling water splashes back.',
  'cautions.hot-refill.say':
    'Open a hot kettle away from you and fill it slowly, off its base: steam leaps out of it.',
  'cautions.steam-leap.say':
    'Half fill the cup, leave the stick in, let it stand before you lift it: still water leaps up, a full cup boils over.',
  'cautions.pour-power.say':
    'Unplug and move what stands there, and let no water into sockets, switches, lights or the seam of the hob: wet sockets can kill.',
  'cautions.pour-power.ask':
    'Appliances unplugged and moved, no water near sockets, lights or hob seams, and the socket circuit off where a splash can reach it?',
  'cautions.pour-power.make-safe': 'Put the kettle down and switch the circuit off.',
  'cautions.pour-material.say':
    'Try a hidden corner first, and pour on no crack, no hob glass and nothing cold: sudden heat can crack or lift it.',
  'cautions.pour-material.ask':
    'Hidden corner tried, no cracks, not cold, and the maker does not forbid it?',
  'cautions.pour-material.make-safe': 'Put the kettle down.',
  'cautions.pour-drain.say':
    'Let cold water follow into the drain after each kettle: plastic traps soften in hot water.',
  'cautions.tap-chrome.say':
    'Knock on the tap, and ask first if it sounds like plastic: its chrome peels under boiling water.',
  'cautions.cold-where.say':
    'Pour cold water only where boiling water was just poured, never on hot glass, oven door, hob, burner or enamel: it can burst.',
  'cautions.cold-where.ask': 'Cold water ready, and nothing else hot where it will run?',
  'cautions.cold-where.make-safe': 'Put the jug down.',
  'cautions.wet-floor.say': 'Mop now: the floor is wet where you carry the next kettle.',
  'cautions.burner-clear.say':
    'Take towels, paper, curtains and spray cans well away, keep an extinguisher or lid at hand: what is near will catch.',
  'cautions.burner-clear.ask':
    'Nothing that burns near, hood filters free of grease, extinguisher or lid at hand, smoke alarm working?',
  'cautions.burner-clear.make-safe': 'Turn the burners off.',
  'cautions.burner-air.say':
    'Hood to the outside on high, window open, CO alarm working: gas flames fill a closed kitchen with gases that kill.',
  'cautions.burner-air.ask':
    'Hood on high to the outside, window open, CO alarm working, nobody dizzy or sick?',
  'cautions.burner-air.say-hood':
    'Hood to the outside on high, CO alarm working: gas flames fill a closed kitchen with gases that kill.',
  'cautions.burner-air.ask-hood':
    'Hood on high to the outside, CO alarm working, nobody dizzy or sick?',
  'cautions.burner-air.say-window':
    'Window wide open, CO alarm working: gas flames fill a closed kitchen with gases that kill.',
  'cautions.burner-air.ask-window': 'Window wide open, CO alarm working, nobody dizzy or sick?',
  'cautions.burner-air.say-way-out':
    'First a way out for the air, and a working CO alarm: gas flames fill a closed kitchen with gases that kill.',
  'cautions.burner-air.ask-way-out':
    'A way for the air to the outside, open and drawing, CO alarm working, nobody dizzy or sick?',
  'cautions.burner-air.make-safe': 'Heat off, everybody out into fresh air, then call for help.',
  'cautions.heat-air.say':
    'Turn the hood on and open a window: hot dust and grease smoke, and the room heats up.',
  'cautions.heat-air.ask': 'Hood on or window open, and nobody dizzy or sick?',
  'cautions.heat-air.say-hood':
    'Turn the hood on: hot dust and grease smoke, and the room heats up.',
  'cautions.heat-air.ask-hood': 'Hood on, and nobody dizzy or sick?',
  'cautions.heat-air.say-window':
    'Open the window: hot dust and grease smoke, and the room heats up.',
  'cautions.heat-air.ask-window': 'Window open, and nobody dizzy or sick?',
  'cautions.heat-air.say-way-out':
    'Give the air a way to the outside: hot dust and grease smoke, and the room heats up.',
  'cautions.heat-air.ask-way-out': 'A way for the air to the outside, and nobody dizzy or sick?',
  'cautions.heat-air.make-safe': 'Heat off, everybody out into fresh air.',
  'cautions.burner-attend.say':
    'Stay with it, light no more burners than planned, and do not lean over: a glowing burner sets light to sleeves.',
  'cautions.burner-sheet.say':
    'Lay a sheet over burners only on metal, where its maker allows it, with gaps for air: it starves flames and cracks glass.',
  'cautions.burner-sheet.ask':
    'No sheet over the burners, or one that the maker allows, with gaps for air?',
  'cautions.burner-sheet.make-safe': 'Turn the burners off and leave the sheet where it is.',
  'cautions.glass-top.say':
    'Leave the glass dry and untouched: a zone goes on and off by itself, and the glass stays hot after it looks dark.',
  'cautions.hot-after.say':
    'Leave it alone and dry until the clock ends: it burns the hand long after it looks cold, and water can crack it.',
  'cautions.oven-pre.say':
    'Wipe it out, rinse off cleaner, take out racks, foil, pans, probe and liners unless the manual keeps them: what is left burns.',
  'cautions.oven-pre.ask':
    'Wiped out, no cleaner left inside, emptied as the manual says, drawer beneath empty, seal not scrubbed?',
  'cautions.oven-pre.make-safe': 'Leave the door shut and turn the oven off.',
  'cautions.oven-birds.say':
    'Take birds out of the home and every nonstick thing off the range: hot coatings give fumes that kill birds and hurt lungs.',
  'cautions.oven-birds.ask':
    'Birds out of the home, nothing nonstick in or on the range, infants and people with lung disease elsewhere?',
  'cautions.oven-birds.make-safe':
    'Turn the oven off, air the room, and bring people and birds out.',
  'cautions.oven-attend.say':
    'Stay home and awake, and if it smokes turn it off at its control or breaker: the door stays shut, air feeds fire.',
  'cautions.oven-late.say':
    'Keep a spare day between a self-clean and any deadline, and run none overnight: locks and cut-outs fail after it, and repair takes days.',
  'cautions.chem-mix.say':
    'One cleaner at a time, gloves, eye cover, open air, rinsed off before any heat: bleach with acid or ammonia gives poison gas.',
  'cautions.chem-mix.ask':
    'One cleaner at a time, never bleach with acid or ammonia, gloves on, window open?',
  'cautions.chem-mix.say-hood':
    'One cleaner at a time, gloves, eye cover, hood on, rinsed off before any heat: bleach with acid or ammonia gives poison gas.',
  'cautions.chem-mix.ask-hood':
    'One cleaner at a time, never bleach with acid or ammonia, gloves on, hood on?',
  'cautions.chem-mix.say-way-out':
    'One cleaner at a time, gloves, eye cover, fresh air, rinsed off before any heat: bleach with acid or ammonia gives poison gas.',
  'cautions.chem-mix.ask-way-out':
    'One cleaner at a time, never bleach with acid or ammonia, gloves on, fresh air coming in?',
  'cautions.chem-mix.make-safe': 'Leave the room and air it.',
  'cautions.wash-unplugged.say':
    'Unplug it, or switch its circuit off, before you wash it: water on live parts kills.',
  'cautions.sand-dust.say':
    'Wear a mask to sand, let fresh air in, then vacuum and wipe: fine wood dust hurts the lungs.',
  'cautions.range-move.say':
    'Close the gas valve, two people pull it out, spare the hose, refit the bracket: a torn hose fills the house with gas.',
  'cautions.range-move.ask':
    'Left where it stands, or gas valve closed, two people, and the bracket will be refitted?',
  'cautions.range-move.make-safe': 'If you smell gas: no flame, no switch, everybody out, call.',
  'cautions.range-tip.say':
    'Two people pull it out, and refit its bracket before its door opens: a range falls on whoever leans on it.',
  'cautions.range-tip.ask':
    'Left where it stands, or two people to move it, and the bracket refitted before its door is opened?',
  'cautions.range-tip.make-safe': 'Let go of it, keep the door shut, and step away from its front.',
  'cautions.electric-load.say':
    'Plug each kettle straight into the socket of the plan, no adapter, no light cord: two heaters on one circuit overheat or trip it.',
  'cautions.electric-load.ask':
    'Kettles plugged straight into the sockets of the plan, nothing else on them?',
  'cautions.electric-load.make-safe': 'Switch the kettles off.',
  'cautions.climb.say':
    'Where you do not reach, stand on a ladder, not on a chair: wet hands and high shelves make people fall.',
  'cautions.heat-stress.say':
    'Drink, rest in a cooler room, and stop when you feel weak or stop sweating: the plan expects a hot kitchen.',
  'cautions.alone.say':
    'Tell someone what you are doing and keep the phone at hand: alone, nobody else can call.',
  'cautions.labels.say':
    'Use it for nothing hot from now on: one hot use, and its rest begins again.',
} satisfies Section;
