import type { Kitchen } from '../../../../../core/kitchen/index.ts';
import { t } from '../../../../context/language.ts';
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
      label={t('survey.water.circuit')}
      path={props.path ?? ''}
      value={props.value ?? ''}
      choices={[
        ['', t('survey.not-told')],
        ...props.kitchen.circuits.map(
          ({ id, name, ratingA }) =>
            [id, t('survey.water.circuit.named', { name, ratingA })] as const,
        ),
      ]}
      onPick={(id) => props.onPick(id === '' ? undefined : id)}
    />
  );
}
