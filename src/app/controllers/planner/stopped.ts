/** Nobody wants the answer any more. */
export class Stopped extends Error {
  constructor() {
    super('Stopped: nobody waits for it any more.');
    this.name = 'Stopped';
  }
}
