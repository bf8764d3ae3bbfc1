import { For } from 'solid-js';
import { t } from '../../context/language.ts';
import { formatRoute, PAGES, type PageId } from '../../context/route.ts';

/** The line through the four pages. */
export function PagesLine(props: { at: PageId }) {
  return (
    <nav class="places" aria-label={t('shell.pages')}>
      <For each={PAGES}>
        {(id) => (
          <a
            href={formatRoute({ page: id })}
            data-page={id}
            aria-current={props.at === id ? 'page' : undefined}
          >
            {t(`shell.page.${id}`)}
          </a>
        )}
      </For>
    </nav>
  );
}
