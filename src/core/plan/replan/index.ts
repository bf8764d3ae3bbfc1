export { endOf, replanned, type Replanned, type Standing } from './replan.ts';
