export { crewNow, signed, type PersonNow, type TakenOver } from './crew-now.ts';
