import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import { addressOf, Screen } from './screen.ts';
import { serve, type Site } from './server.ts';
import { dispose, powerCut, startTablet, type Tablet, type TabletOptions } from './tablet.ts';

type Prepare = (screen: Screen) => Promise<void>;

/** The app on a server, a tablet, and the page that is looked at: what every browser test stands on. */
export class OnTablet {
  #site: Site | undefined;
  #tablet: Tablet | undefined;
  #screen: Screen | undefined;

  get site(): Site {
    if (!this.#site) throw new Error('Nothing is served.');
    return this.#site;
  }

  get tablet(): Tablet {
    if (!this.#tablet) throw new Error('No tablet is started.');
    return this.#tablet;
  }

  /** The page opened last. */
  get screen(): Screen {
    if (!this.#screen) throw new Error('No page is open.');
    return this.#screen;
  }

  /** Serves the app; another build when its folder is given. */
  async serve(folder?: string): Promise<void> {
    this.#site = await serve(folder);
  }

  async start(options: TabletOptions = {}): Promise<void> {
    this.#tablet = await startTablet(options);
  }

  /** Opens the app in a new page, at a route of it when one is given, on the tablet (which is started if it is not). */
  async open(route = '', before?: Prepare): Promise<Screen> {
    if (!this.#tablet) await this.start();
    this.#screen = await Screen.open(this.tablet, addressOf(this.site.url, route), before);
    return this.#screen;
  }

  /** Loads the page at a route of the app anew. */
  async load(route: string): Promise<void> {
    const { page } = this.screen;
    // An address that differs in its last part only would not be loaded anew.
    await page.goto('about:blank');
    await page.goto(addressOf(this.site.url, route));
  }

  /** The browser is killed and started again on what it kept; its clock has gone on by `awayMs`. */
  async cutPower(awayMs: number): Promise<void> {
    const { wallMs } = await this.screen.shifted();
    const { profile, translator } = this.tablet;
    await powerCut(this.tablet);
    const { language } = translator;
    await this.start({ profile, language, wallMs: Date.now() + wallMs + awayMs });
  }

  /** Pages opened from now on have the clock that the page looked at has. */
  async keepTime(): Promise<void> {
    this.tablet.wallShiftMs = (await this.screen.shifted()).wallMs;
  }

  async end(): Promise<void> {
    await dispose(this.#tablet);
    await this.#site?.stop();
    this.#tablet = undefined;
    this.#site = undefined;
    this.#screen = undefined;
  }
}

/**
 * An app that is served and a tablet for it, for each test or for the whole
 * file; `prepare` begins it, and all is ended afterwards.
 */
export function onTablet(
  each: 'test' | 'file',
  prepare?: (on: OnTablet) => Promise<void>,
): OnTablet {
  const on = new OnTablet();
  const begin = async (): Promise<void> => {
    await on.serve();
    await prepare?.(on);
  };
  const end = (): Promise<void> => on.end();
  if (each === 'test') {
    beforeEach(begin);
    afterEach(end);
  } else {
    beforeAll(begin);
    afterAll(end);
  }
  return on;
}
