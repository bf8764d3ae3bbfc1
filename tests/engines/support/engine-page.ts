/** One page of an engine, with what every driver can do. */
export type EnginePage = {
  /** Opens an address and waits until it is loaded. */
  open(url: string): Promise<void>;
  /** What an expression gives, awaited; it must be plain data. */
  see<T>(expression: string): Promise<T>;
  /** A real press of the pointer on the first that is found, which counts as a person's touch. */
  click(selector: string): Promise<void>;
  /** As a PNG. */
  picture(): Promise<Uint8Array>;
  /** Ends the browser at once, as a power cut does. */
  kill(): Promise<void>;
};

/** A browser engine of this machine. */
export type Engine = {
  readonly name: 'Chromium' | 'Firefox' | 'WebKitGTK';
  /** As it tells itself. */
  readonly version: string;
  /** What is stored is there again after a kill; a driver may only give a window that forgets. */
  readonly keepsProfile: boolean;
  /** Starts it on a profile, a folder that may hold what was stored before. */
  start(profile: string): Promise<EnginePage>;
};

/** An engine that is not installed, and how to get it. */
export type MissingEngine = { readonly name: Engine['name']; readonly howToGet: string };
