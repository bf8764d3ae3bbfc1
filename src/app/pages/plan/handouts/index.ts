/** Pages around the fixtures: their own chunk, loaded when somebody looks at them. */
export { Handouts } from './handouts.tsx';
