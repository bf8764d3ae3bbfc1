export { NoAnswerError, withTimeout } from './with-timeout.ts';
