import { For, lazy, Suspense } from 'solid-js';
import { t } from '../../context/language.ts';
import { DEMOS } from './demos.ts';

// Drawn when the words are there: nobody waits for pictures to begin.
const DemoPicture = lazy(async () => ({
  default: (await import('./demo-picture.tsx')).DemoPicture,
}));

/** The invented kitchens, each as the app itself draws it. */
export function DemoList(props: { onDemo: (id: string) => void }) {
  return (
    <ul class="demo-list">
      <For each={DEMOS}>
        {(demo) => (
          <li>
            <button type="button" class="demo" onClick={() => props.onDemo(demo)}>
              <span class="demo-picture">
                <Suspense>
                  <DemoPicture id={demo} />
                </Suspense>
              </span>
              <span class="demo-name">{t(`kitchen.demo.${demo}.name`)}</span>
              <span class="demo-tells quiet">{t(`kitchen.demo.${demo}.tells`)}</span>
            </button>
          </li>
        )}
      </For>
    </ul>
  );
}
