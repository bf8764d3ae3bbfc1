export { addBands, asBand, band, exactly, mapBand, type Band } from './band.ts';
export { inRange, OutOfRangeError } from './out-of-range.ts';
export * from './durations.ts';
export * from './moments.ts';
export * from './sizes.ts';
export * from './customary.ts';
