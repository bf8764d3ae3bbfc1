export { askToPersist, type Persistence } from './persist.ts';
