import type { Kitchen } from '../../../../../core/kitchen/index.ts';
import { Select } from './pick.tsx';

/** Which breaker it hangs on. */
export function CircuitSelect(props: {
  kitchen: Kitchen;
  value: string | undefined;
  path?: string;
  onPick: (id: string | undefined) => void;
}) {
  return (
    <Select
      label="Circuit"
      path={props.path ?? ''}
      value={props.value ?? ''}
      choices={[
        ['', 'Not told'],
        ...props.kitchen.circuits.map((one) => [one.id, `${one.name}, ${one.ratingA} A`] as const),
      ]}
      onPick={(id) => props.onPick(id === '' ? undefined : id)}
    />
  );
}
