import { boundingBox } from '../../geometry/index.ts';
import { message, type Message } from '../../messages/index.ts';
import type { Step } from '../model/index.ts';

const CM2_PER_M2 = 1e4;

/** Spots of a fixture that no kettle is planned for, each with how large and where; none where it is not poured. */
export function unreachedSpots(steps: readonly Step[], fixture: string): readonly Message[] {
  const picture = steps.find((step) => step.kind === 'pour' && step.fixture === fixture)?.picture;
  if (picture?.kind !== 'lanes' || !picture.unreached) return [];
  const box = boundingBox(picture.outline);
  return picture.unreached.map(({ areaM2, at: [x, y] }) =>
    message('plan.notice.spot', {
      areaCm2: areaM2 * CM2_PER_M2,
      leftM: x - box.xMinM,
      nearM: y - box.yMinM,
    }),
  );
}
