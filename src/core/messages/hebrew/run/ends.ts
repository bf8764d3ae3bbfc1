import type { TranslationOf } from '../../model/translation.ts';
import type { runEnds as english } from '../../english/run/ends.ts';

/** Before a run and after it; a run in progress needs none of it. */
export const runEnds: TranslationOf<typeof english> = {
  'run.start.title': 'מוכן להתחלה',
  'run.start.about': ({ steps, lengthS }, f) =>
    `${f.plural(steps, { one: 'שלב אחד', two: 'שני שלבים', other: `${f.number(steps)} שלבים` })} לאורך ${f.duration(lengthS)}. אפשר לעצור ולחזור בכל עת: השעונים ממשיכים, ודבר לא הולך לאיבוד.`,
  'run.start.kept.kept': 'מה שנכתב נשאר בטאבלט עד שתמחקו אותו.',
  'run.start.kept.may-be-deleted':
    'הדפדפן עלול למחוק את השמור כשהמקום צר, או אחרי ימים בלי שימוש. הוסיפו את היישום למסך הבית, ושמרו את הביצוע בקובץ בסופו.',
  'run.start.kept.not-supported': 'הדפדפן לא מתחייב לשמור את מה שנכתב: שמרו את הביצוע בקובץ.',
  'run.start.kept.unknown': 'הדפדפן לא אמר אם הוא שומר את מה שנכתב: שמרו את הביצוע בקובץ.',
  'run.kept.title': 'מה הדפדפן הזה עלול למחוק',
  'run.kept.room': 'כשהמקום במכשיר צר, הדפדפן עלול למחוק את כל מה שהיישום שמר, בבת אחת ובלי לשאול.',
  'run.kept.safari': 'ספארי מוחק אם לא השתמשו בדף הזה שבעה ימים, אלא אם היישום במסך הבית.',
  'run.kept.private': 'מה שנעשה בחלון פרטי נעלם כשסוגרים את החלון.',
  'run.kept.cleared': 'גם מי שמנקה את נתוני הדפדפן מוחק אותו.',
  'run.kept.do':
    'לכן: הוסיפו את היישום למסך הבית, ושמרו הכול לקובץ אחד תחת תיעוד, לפני ביצוע ואחריו.',
  'run.start.awake':
    'הטאבלט לא יכול להעיר את עצמו: השאירו אותו מחובר לחשמל, את הדף פתוח ואת המסך דולק.',
  'run.start.standing':
    'פעלו לפי הוראות היצרן והתקנות המקומיות; עבודות גז, חשמל ואינסטלציה הן לבעלי רישיון. היישום לא פוסק ולא ערב לבטיחות. בעת הצורך התקשרו למספר החירום המקומי.',
  'run.start.hearing': 'בדיקת שמיעה',
  'run.start.hearing.ask': 'שומעים את צליל ההתראה מהמקום שבו תעבדו?',
  'run.start.hearing.play': 'להשמיע את צליל ההתראה',
  'run.start.hearing.again': 'להשמיע שוב',
  'run.start.hearing.heard': 'שמעתי',
  'run.start.hearing.done': 'נשמע.',
  'run.start.hearing.blocked': 'הדפדפן חסם את הצליל. הגבירו, בטלו מצב שקט, והשמיעו שוב.',
  'run.start.hearing.ready-now': 'עכשיו הצליל מוכן: השמיעו שוב.',
  'run.start.hearing.deaf': 'אי אפשר לשמוע; המעקב יהיה לפי המסך (נכתב בתיעוד)',
  'run.start.hearing.deaf-note': 'התחיל בלי צליל שנשמע: עוקבים אחר ההתראות במסך.',
  'run.start.first': 'קודם',
  'run.start.now': ({ wallMs, zone }, f) => `עכשיו ${f.moment(wallMs, zone)}`,
  'run.start.press': 'להתחיל',
  'run.start.hear-first': 'קודם לשמוע את צליל ההתראה',

  'run.closed.completed': 'הסתיים',
  'run.closed.failed': 'הסתיים בתקלה',
  'run.closed.stopped': 'נעצר',
  'run.closed.all-done': ({ of }, f) => `בוצעו ${f.number(of)} מתוך ${f.number(of)} שלבים.`,
  'run.closed.some-done': ({ done, undone, of }, f) =>
    `בוצעו ${f.number(done)} מתוך ${f.number(of)} שלבים, ${f.plural(undone, { one: 'אחד לא בוצע', other: `${f.number(undone)} לא בוצעו` })}.`,
  'run.closed.mark': 'סמנו עכשיו את המקומות שטופלו, כדי שאיש לא ישתמש בהם בטעות.',
  'run.closed.record': 'לראות את התיעוד',
};
