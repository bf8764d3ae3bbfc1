export { replanned, type Replanned, type Standing } from './replan.ts';
