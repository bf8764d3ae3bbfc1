export { NoAnswerError, within } from './within.ts';
