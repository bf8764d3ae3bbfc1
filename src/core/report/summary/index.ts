export { answersOf } from './answers.ts';
export { headOf, verdictOf } from './head.ts';
export { lacksOf } from './lacks.ts';
export { placesOf } from './places.ts';
export { reportText } from './report-text.ts';
export { rowsOf, utensilsOf, vesselsOf } from './rows.ts';
