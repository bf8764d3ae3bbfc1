import { asWritten, message, type Message } from '../../messages/index.ts';
import type { Fixture, PartId } from '../../kitchen/index.ts';

function surfaceFacts(fixture: Fixture): readonly Message[] {
  const condition = 'condition' in fixture ? fixture.condition : undefined;
  const material = 'material' in fixture ? fixture.material : undefined;
  return [
    ...(material === undefined
      ? []
      : [
          material === 'unknown'
            ? message('handouts.fact.material-unknown')
            : message(`kitchen.custom.material.${material}`),
        ]),
    ...(condition === undefined ? [] : [message(`handouts.fact.condition.${condition}`)]),
  ];
}

function applianceFacts(fixture: Fixture): readonly Message[] {
  if (fixture.kind === 'cooktop') {
    const types = [...new Set(fixture.burners.map(({ type }) => type))];
    return [
      message(`handouts.fact.top.${fixture.surface}`),
      ...types.map((type) => message(`kitchen.custom.burner.${type}`)),
    ];
  }
  return fixture.kind === 'oven' ? [message(`handouts.fact.cleaning.${fixture.cleaning}`)] : [];
}

/** How it was used, as far as somebody told. */
function useFacts(fixture: Fixture): readonly Message[] {
  const told = (fact: 'varnished' | 'kneaded' | 'hotFood'): readonly Message[] => {
    const is =
      fact in fixture ? (fixture as Partial<Record<typeof fact, boolean>>)[fact] : undefined;
    return is === undefined ? [] : [message(`handouts.fact.${fact}.${is ? 'yes' : 'no'}`)];
  };
  const { designation, lastHotAt } = fixture;
  return [
    ...(['varnished', 'kneaded', 'hotFood'] as const).flatMap(told),
    ...(designation === 'undecided'
      ? []
      : [message('handouts.fact.belongs', { to: message(`kitchen.belongs.${designation}`) })]),
    ...(lastHotAt === undefined
      ? []
      : [message('handouts.fact.last-hot', { at: asWritten(lastHotAt.replace('T', ' ')) })]),
  ];
}

/** What is known of a fixture that an answer may hang on; a part is named first. */
export function factsOf(fixture: Fixture, part?: PartId): readonly Message[] {
  return [
    ...(part === undefined
      ? []
      : [message('handouts.fact.part', { part: message(`steps.part.${part}`) })]),
    ...surfaceFacts(fixture),
    ...applianceFacts(fixture),
    ...useFacts(fixture),
  ];
}
