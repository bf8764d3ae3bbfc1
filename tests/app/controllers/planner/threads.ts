import { createPlanner } from '../../../../src/app/controllers/planner/planner.ts';
import { workOff } from '../../../../src/app/controllers/planner/work-off.ts';
import { errorData, type Asked } from '../../../../src/app/controllers/planner/wire.ts';
import type { WorkerEvents } from '../../../../src/host/worker/index.ts';

/** A worker without a thread: everything is copied on its way, as between threads. */
export function otherThread({ isMute = false } = {}) {
  const log: string[] = [];
  const starts: WorkerEvents[] = [];
  const wanted = new Set<number>();
  const start = (events: WorkerEvents) => {
    starts.push(events);
    let isOver = false;
    const say = (data: unknown): void => {
      const copy: unknown = structuredClone(data);
      if (!isOver && !isMute) setTimeout(() => events.onMessage(copy));
    };
    say({ ready: true });
    return {
      send: (data: unknown): void => {
        const asked = structuredClone(data) as Asked;
        const { id } = asked;
        log.push('stop' in asked ? `stop ${id}` : `ask ${id} ${asked.name}`);
        if ('stop' in asked) return void wanted.delete(id);
        wanted.add(id);
        workOff(asked.name, asked.input as never, {
          isStopped: () => isOver || !wanted.has(id),
          onProgress: (progress) => say({ id, progress }),
        }).then(
          (output) => say({ id, output }),
          (error: unknown) => say({ id, error: errorData(error) }),
        );
      },
      end: (): void => {
        isOver = true;
        log.push('end');
      },
    };
  };
  const here = async () => {
    log.push('here');
    return { workOff };
  };
  return { log, starts, here, planner: createPlanner({ start, here }) };
}
