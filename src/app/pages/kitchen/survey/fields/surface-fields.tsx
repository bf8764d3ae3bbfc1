import { createSignal, Show } from 'solid-js';
import {
  CONDITIONS,
  MATERIALS,
  type Condition,
  type Fixture,
  type Material,
} from '../../../../../core/kitchen/index.ts';
import { Pick, Select } from './pick.tsx';
import { ConditionPicture } from './pictures.tsx';
import { CONDITION_WORDS, MATERIAL_WORDS, USUAL_MATERIALS } from './words.ts';

/** Material by eye and hand, condition by fingernail. */
export function SurfaceFields(props: {
  fixture: Extract<Fixture, { material: Material }>;
  onPatch: (patch: Readonly<Record<string, unknown>>, what: string) => void;
}) {
  const usual = (): readonly Material[] => USUAL_MATERIALS[props.fixture.kind];
  const shown = (): readonly Material[] => {
    const { material } = props.fixture;
    return usual().includes(material) || material === 'unknown' ? usual() : [...usual(), material];
  };
  const [others, setOthers] = createSignal(false);
  const put = (material: Material): void => {
    const { fixture } = props;
    // Raw wood drinks water: that is how it was told from the sealed one.
    const drinks =
      material === 'raw-wood' && 'condition' in fixture && fixture.condition === 'unknown';
    props.onPatch(
      drinks ? { material, condition: 'porous' } : { material },
      MATERIAL_WORDS[material].name,
    );
  };
  const path = (field: string) => `fixtures.${props.fixture.id}.${field}`;
  return (
    <>
      <Pick
        label="What is it made of?"
        path={path('material')}
        value={props.fixture.material}
        choices={[...shown(), 'unknown' as const].map((id) => ({
          id,
          name: MATERIAL_WORDS[id].name,
        }))}
        onPick={put}
      />
      <p class="tell">
        {MATERIAL_WORDS[props.fixture.material].tell}{' '}
        <Show when={!others()}>
          <button type="button" class="word-button" onClick={() => setOthers(true)}>
            Another material
          </button>
        </Show>
      </p>
      <Show when={others()}>
        <Select
          label="Another material"
          value={props.fixture.material}
          choices={MATERIALS.map((id) => [id, MATERIAL_WORDS[id].name] as const)}
          onPick={(material) => {
            setOthers(false);
            put(material);
          }}
        />
      </Show>
      <Show when={'condition' in props.fixture && props.fixture}>
        {(fixture) => (
          <Pick
            label="Draw a fingernail across it"
            path={path('condition')}
            wide
            value={(fixture() as { condition: Condition }).condition}
            choices={CONDITIONS.map((id) => ({
              id,
              ...CONDITION_WORDS[id],
              picture: () => <ConditionPicture condition={id} />,
            }))}
            onPick={(condition) =>
              props.onPatch({ condition }, CONDITION_WORDS[condition].name.toLowerCase())
            }
          />
        )}
      </Show>
    </>
  );
}
