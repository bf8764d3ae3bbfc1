export { crewNow, type PersonNow, type TakenOver } from './crew-now.ts';
