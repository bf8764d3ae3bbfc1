/** Sheets around the fixtures: their own chunk, loaded when somebody looks at them. */
export { Sheets } from './sheets.tsx';
