import { For } from 'solid-js';
import { linesOf } from './lines-of.ts';

/** The record as people read it; the saved text has the same words. */
export function RecordText(props: { text: string }) {
  return (
    <div class="record-text">
      <For each={linesOf(props.text)}>
        {(line) =>
          line.heading ? (
            <h2>{line.text}</h2>
          ) : (
            <p style={{ 'padding-inline-start': `${Math.max(0, line.depth - 1) * 1.4}rem` }}>
              {line.text}
            </p>
          )
        }
      </For>
    </div>
  );
}
