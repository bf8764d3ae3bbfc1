import { t } from '../context/language.ts';

/** What is stored has not been read yet, and what it says is not known; seen only when it takes longer than a moment. */
export function ReadingLine() {
  return (
    <p class="working-line" role="status" data-working="beside">
      {t('shell.reading')}
    </p>
  );
}
