export { customarySizes } from './sizes.ts';
