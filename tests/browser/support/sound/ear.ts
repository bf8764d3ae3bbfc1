import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findSoundings, RATE_HZ, type Heard } from './tones.ts';

/** A sound card that exists only here, and what was played on it. */
export type Ear = {
  /** For the browser that is to be heard. */
  readonly env: Readonly<Record<string, string>>;
  /** Begins a recording; what was heard comes with times of this machine's clock, ms. */
  listen(): Promise<Listening>;
  stop(): void;
};

export type Listening = {
  /** Soundings so far. */
  soundings(): readonly (Heard & { readonly wallMs: number })[];
  /** Loudest sample of each half second from `fromMs` on, of full scale 1; to see what went wrong. */
  levels(fromMs: number): readonly number[];
  stop(): void;
};

const SINK = 'tablet';
/** A stretch over which the drift of the sink's clock is too small to matter, s. */
const NEAR_S = 3;

async function until(is: () => boolean, what: string): Promise<void> {
  for (let n = 0; n < 100; n += 1) {
    if (is()) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`Not within 10 s: ${what}`);
}

function end(child: ChildProcess): void {
  if (child.exitCode === null && child.signalCode === null) child.kill('SIGKILL');
}

/** Starts a sound server of its own with one sink that plays into nothing. */
export async function growEar(): Promise<Ear> {
  const folder = mkdtempSync(join(tmpdir(), 'glowpour-ear-'));
  const socket = join(folder, 'native');
  const env = { PULSE_SERVER: `unix:${socket}`, PULSE_SINK: SINK, XDG_RUNTIME_DIR: folder };
  const server = spawn(
    'pulseaudio',
    [
      '-n',
      '--daemonize=no',
      '--exit-idle-time=-1',
      '--use-pid-file=no',
      `--load=module-native-protocol-unix socket=${socket} auth-anonymous=1`,
      `--load=module-null-sink sink_name=${SINK} rate=${RATE_HZ} channels=1`,
    ],
    { env: { ...process.env, XDG_RUNTIME_DIR: folder, HOME: folder }, stdio: 'ignore' },
  );
  const asks = (): boolean => {
    try {
      return execFileSync('pactl', ['list', 'short', 'sinks'], {
        env: { ...process.env, ...env },
        stdio: ['ignore', 'pipe', 'ignore'],
      })
        .toString()
        .includes(SINK);
    } catch {
      return false;
    }
  };
  await until(asks, 'a sound server');
  return {
    env,
    listen: () => listen(env),
    stop() {
      end(server);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function listen(env: Readonly<Record<string, string>>): Promise<Listening> {
  const recorder = spawn(
    'parec',
    [
      `--device=${SINK}.monitor`,
      '--format=s16le',
      `--rate=${RATE_HZ}`,
      '--channels=1',
      '--latency-msec=20',
      '--raw',
    ],
    { env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'ignore'] },
  );
  const chunks: Buffer[] = [];
  let bytes = 0;
  const arrivals: { readonly bytes: number; readonly wallMs: number }[] = [];
  /**
   * When the sample at `atS` was played: no chunk can have come before its last
   * sample was. Only chunks near it count: the sink's clock drifts.
   */
  const playedMs = (atS: number): number => {
    const near = arrivals.filter((one) => Math.abs(one.bytes / 2 / RATE_HZ - atS) < NEAR_S);
    return Math.min(...near.map((one) => one.wallMs + (atS - one.bytes / 2 / RATE_HZ) * 1000));
  };
  recorder.stdout.on('data', (chunk: Buffer) => {
    bytes += chunk.length;
    chunks.push(chunk);
    arrivals.push({ bytes, wallMs: Date.now() });
  });
  await until(() => bytes > 0, 'the recording begins');
  const samplesSoFar = (): Float32Array => {
    const whole = Buffer.concat(chunks);
    const samples = new Float32Array(Math.floor(whole.length / 2));
    for (let n = 0; n < samples.length; n += 1) samples[n] = whole.readInt16LE(2 * n) / 32_768;
    return samples;
  };
  return {
    levels(fromMs) {
      const samples = samplesSoFar();
      const half = RATE_HZ / 2;
      const levels: number[] = [];
      for (let from = 0; from < samples.length; from += half) {
        if (playedMs(from / RATE_HZ) < fromMs) continue;
        const part = samples.subarray(from, from + half);
        levels.push(Math.round(100 * part.reduce((a, b) => Math.max(a, Math.abs(b)), 0)) / 100);
      }
      return levels;
    },
    soundings() {
      return findSoundings(samplesSoFar()).map((one) => ({ ...one, wallMs: playedMs(one.atS) }));
    },
    stop: () => end(recorder),
  };
}
