export { openRunMarker, type OpenRunMarker } from './open-run-marker.ts';
