import { For } from 'solid-js';
import { reportSections, type Report } from '../../../core/report/index.ts';
import { say } from '../../context/language.ts';

/** How far one step of depth sets a line in, rem. */
const INDENT_REM = 1.4;

/** The report as people read it; the saved text has the same sentences. */
export function RecordText(props: { report: Report; zone: string }) {
  return (
    <div class="record-text">
      <For each={reportSections(props.report, props.zone)}>
        {({ heading, lines }) => (
          <>
            <h2>{say(heading)}</h2>
            <For each={lines}>
              {({ depth, text }) => (
                <p style={{ 'padding-inline-start': `${Math.max(0, depth - 1) * INDENT_REM}rem` }}>
                  {text.map(say).join(' ')}
                </p>
              )}
            </For>
          </>
        )}
      </For>
    </div>
  );
}
