/** Letters that one telling may have. */
const MOST_LETTERS = 300;

/** What a person tells in own words, kept by the record. */
export function WordsField(props: {
  readonly label: string;
  readonly name: 'reason' | 'what';
  readonly words: string;
  readonly onWords: (words: string) => void;
  readonly ref?: (input: HTMLInputElement) => void;
}) {
  return (
    <label class="field">
      <span>{props.label}</span>
      <input
        ref={(input) => props.ref?.(input)}
        name={props.name}
        value={props.words}
        onInput={(event) => props.onWords(event.currentTarget.value)}
        maxLength={MOST_LETTERS}
      />
    </label>
  );
}
