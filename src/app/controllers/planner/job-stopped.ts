/** Nobody wants the answer any more: told to whoever asked, never shown. */
export class JobStopped extends Error {
  constructor() {
    super();
    this.name = 'JobStopped';
  }
}
