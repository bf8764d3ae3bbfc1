import { spawn, type ChildProcess } from 'node:child_process';
import { createServer } from 'node:net';
import { installHands } from '../../browser/support/in-page/hands.ts';
import type { Engine, EnginePage, MissingEngine } from './engine-page.ts';
import { onPath } from './on-path.ts';

const PATIENCE_MS = 600_000;
/** How long the driver may take to answer first. */
const START_MS = 30_000;
/** The name that the standard gives an element's reference (W3C WebDriver, 12.1). */
const ELEMENT = 'element-6066-11e4-a52e-4f735466cecf';

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}

/** One session of W3C WebDriver. */
class Session {
  private readonly base: string;
  private id = '';

  constructor(port: number) {
    this.base = `http://127.0.0.1:${port}`;
  }

  async send<T>(method: 'GET' | 'POST', path: string, body?: unknown): Promise<T> {
    const answer = await fetch(`${this.base}/session${this.id && `/${this.id}`}${path}`, {
      method,
      ...(body !== undefined && { body: JSON.stringify(body) }),
    });
    const { value } = (await answer.json()) as { value: T & { error?: string; message?: string } };
    if (!answer.ok) throw new Error(`${value.error}: ${value.message}`);
    return value;
  }

  async begin(): Promise<void> {
    const endMs = Date.now() + START_MS;
    for (;;)
      try {
        const { sessionId } = await this.send<{ sessionId: string }>('POST', '', {
          capabilities: { alwaysMatch: {} },
        });
        this.id = sessionId;
        return;
      } catch (error) {
        if (Date.now() > endMs) throw error;
        await new Promise((resolve) => setTimeout(resolve, 200));
      }
  }
}

/** Awaited in the page; what fails there fails here. */
const awaited = (expression: string): string => `
  const done = arguments[arguments.length - 1];
  new Promise((resolve) => resolve(${expression})).then(
    (value) => done({ value }),
    (error) => done({ error: String(error) }),
  );`;

async function start(driver: string, display: string | undefined): Promise<EnginePage> {
  const port = await freePort();
  const own = [driver, `--port=${port}`];
  const command = display === undefined ? own : [display, '-a', ...own];
  const child: ChildProcess = spawn(command[0] ?? driver, command.slice(1), {
    detached: true,
    stdio: 'ignore',
  });
  const session = new Session(port);
  await session.begin();
  await session.send('POST', '/timeouts', { script: PATIENCE_MS, pageLoad: 60_000 });
  const see = async <T>(expression: string): Promise<T> => {
    const told = await session.send<{ value: T; error?: string }>('POST', '/execute/async', {
      script: awaited(expression),
      args: [],
    });
    if (told.error !== undefined) throw new Error(told.error);
    return told.value;
  };
  return {
    async open(url) {
      await session.send('POST', '/url', { url });
      // This driver has nothing that runs before a page does: the hands come right after.
      await see(`globalThis.hands === undefined && (${installHands.toString()})(0)`);
    },
    see,
    async click(selector) {
      const found = await session.send<Record<string, string>>('POST', '/element', {
        using: 'css selector',
        value: selector,
      });
      await session.send('POST', `/element/${found[ELEMENT]}/click`, {});
    },
    async picture() {
      return Buffer.from(await session.send<string>('GET', '/screenshot'), 'base64');
    },
    async kill() {
      const gone = new Promise((resolve) => child.once('exit', resolve));
      if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
      await gone;
    },
  };
}

/** WebKitGTK by its own driver, on a screen that only memory holds where there is none. */
export function webkit(): Engine | MissingEngine {
  const driver = onPath('WebKitWebDriver');
  const display = process.env['DISPLAY'] === undefined ? onPath('xvfb-run') : undefined;
  if (!driver || (process.env['DISPLAY'] === undefined && !display))
    return { name: 'WebKitGTK', howToGet: 'apt-get install webkit2gtk-driver xvfb' };
  return {
    name: 'WebKitGTK',
    version: 'WebKitGTK',
    keepsProfile: false,
    start: () => start(driver, display),
  };
}
