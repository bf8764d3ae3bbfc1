import type { TranslationOf } from '../../model/translation.ts';
import type { pictures as english } from '../../english/run/pictures.ts';
import { crew } from './crew.ts';

/** Pictures, in words for those who do not see them, and the few words in them; what a fixture is and where it stands. */
export const pictures: TranslationOf<typeof english> = {
  ...crew,
  'common.fixture-phase.to-clean': 'לניקוי',
  'common.fixture-phase.resting': 'מושבת',
  'common.fixture-phase.ready': 'מוכן',
  'common.fixture-phase.purging': 'בעבודה',
  'common.fixture-phase.hot': 'חם',
  'common.fixture-phase.not-purged': 'לא הוכשר',
  'common.fixture-phase.left-out': 'הושמט',
  'common.fixture-phase.done': 'גמור',
  'common.fixture-phase.covered': 'מכוסה',

  'common.fixture-kind.counter': 'משטח',
  'common.fixture-kind.sink': 'כיור',
  'common.fixture-kind.cooktop': 'כיריים',
  'common.fixture-kind.oven': 'תנור',
  'common.fixture-kind.table': 'שולחן',
  'common.fixture-kind.cupboard': 'ארון',
  'common.fixture-kind.drawer': 'מגירה',
  'common.fixture-kind.fridge': 'מקרר',
  'common.fixture-kind.freezer': 'מקפיא',
  'common.fixture-kind.microwave': 'מיקרוגל',
  'common.fixture-kind.dishwasher': 'מדיח כלים',
  'common.fixture-kind.warming-drawer': 'מגירת חימום',
  'common.fixture-kind.hood': 'קולט אדים',

  'run.picture.kitchen': ({ fixtures }, f) =>
    `המטבח במבט מלמעלה. ${fixtures.map((one) => f.say(one)).join('; ')}.`,
  'run.picture.fixture': ({ name, phase }, f) => `${name}: ${f.say(phase)}`,
  'run.picture.burner': ({ name }) => `מבער ${name}`,
  'run.picture.kettle': ({ litres, markLitres }, f) =>
    `מלאו ${f.fill(litres)}; הסימן נמצא ב־${f.fill(markLitres)}`,
  'run.picture.kettle.litres': ({ litres }, f) => f.fill(litres, true),
  'run.picture.batch': ({ items }, f) => `בסיר: ${f.list(items.map((item) => f.say(item)))}`,
  'run.picture.batch.count': ({ count }, f) => `${f.number(count)} ×`,
  'run.batches': 'סבבים',
  'run.batches.line': ({ done, of }, f) => `סבבים: ${f.number(done)} מתוך ${f.number(of)} נעשו`,
  'run.batches.state.done': 'נעשה',
  'run.batches.state.now': 'עכשיו',
  'run.batches.state.next': 'הבא',
  'run.batches.state.to-come': 'עוד לפנינו',
  'run.batches.state.left-out': 'הושמט',
  'run.picture.lanes': ({ kettles }, f) =>
    `נתיבי עירוי מאחור לפנים, ${f.plural(kettles, { one: 'קומקום אחד', two: 'שני קומקומים', other: `${f.number(kettles)} קומקומים` })}.`,
  'run.picture.lanes-of': ({ kettles, kettle }, f) =>
    `נתיבי עירוי מאחור לפנים, ${f.plural(kettles, { one: 'קומקום אחד', two: 'שני קומקומים', other: `${f.number(kettles)} קומקומים` })}; קומקום ${f.number(kettle)} מסומן.`,
  'run.picture.sink': 'סדר העירוי, גבוה לפני נמוך',
  'run.picture.sink.kettle': ({ kettle }, f) => `קומקום ${f.number(kettle)}`,
  'run.picture.oven.stage': ({ name, lengthS }, f) => `${f.say(name)} ${f.duration(lengthS)}`,
  'run.picture.oven': ({ stages }, f) => stages.map((stage) => f.say(stage)).join(', '),
  'run.picture.oven.now': 'עכשיו',
  'run.pour.left': ({ litres }, f) => `נותרו ${f.fill(litres, true)}`,
  'run.pour.pace': ({ cmPerS }, f) => `כ־${f.measure(cmPerS, 'cm')} בשנייה`,
  'run.picture.stand': 'כאן עומדים',
  'run.picture.time': ({ lengthS }, f) => f.duration(lengthS),
};
