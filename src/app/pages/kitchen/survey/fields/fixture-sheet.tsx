import { Match, Show, Switch } from 'solid-js';
import type {
  Appliance,
  Cooktop,
  Counter,
  Cupboard,
  Designation,
  Fixture,
  Kitchen,
  Material,
  Oven,
  Sink,
} from '../../../../../core/kitchen/index.ts';
import {
  changeFixture,
  copyFixture,
  moveFixture,
  removeFixture,
  roomBox,
  turnFixture,
} from '../../../../../core/editing/index.ts';
import { Action } from '../../../../parts/action.tsx';
import { outlineOf } from '../../../../pictures/kitchen-frame.ts';
import { DESIGNATION_NAMES } from '../../../../labels/names.ts';
import { CooktopFields, OvenFields } from './heat-fields.tsx';
import { HoodFields } from './hood-fields.tsx';
import { ApplianceFields, ShelfFields, SinkFields } from './kind-fields.tsx';
import { Select } from './pick.tsx';
import { PlaceFields } from './place-fields.tsx';
import { ShapeFields } from './shape-fields.tsx';
import { SurfaceFields } from './surface-fields.tsx';
import type { SurveyController } from '../survey-controller.ts';
import { Typed, TypedWords } from './typed.tsx';

type SheetProps = {
  survey: SurveyController;
  fixture: Fixture;
  shape: boolean;
  onShape: (open: boolean) => void;
  onSelect: (id: string | undefined) => void;
};

const BACKSPLASH_M = { least: 0, most: 3 } as const;
const MAY_BE_UNDRAWN: readonly Fixture['kind'][] = ['cupboard', 'drawer', 'hood'];
const APPLIANCES: readonly Fixture['kind'][] = [
  'fridge',
  'freezer',
  'microwave',
  'dishwasher',
  'warming-drawer',
  'hood',
];

/** Everything told about one fixture, the questions that change the plan first. */
export function FixtureSheet(props: SheetProps) {
  const { survey } = props;
  const id = () => props.fixture.id;
  const patch = (change: Readonly<Record<string, unknown>>, what: string): void => {
    survey.change(changeFixture(survey.kitchen(), id(), change), `${props.fixture.name}: ${what}`);
  };
  return (
    <section class="fixture-sheet" aria-label={props.fixture.name}>
      <header class="sheet-head">
        <h2 tabindex={-1}>{props.fixture.name}</h2>
        <Action class="button button--ember" onPress={() => props.onSelect(undefined)}>
          Add the next
        </Action>
      </header>
      <PlaceFields survey={survey} fixture={props.fixture} />
      <Show when={'material' in props.fixture && props.fixture}>
        {(fixture) => (
          <SurfaceFields
            fixture={fixture() as Extract<Fixture, { material: Material }>}
            onPatch={patch}
          />
        )}
      </Show>
      <KindFields {...props} onPatch={patch} />
      <div class="field-row">
        <TypedWords
          label="Name"
          value={props.fixture.name}
          onValue={(name) => patch({ name }, 'name')}
        />
        <Select
          label="To belong to"
          value={props.fixture.designation}
          path={`fixtures.${id()}.designation`}
          choices={Object.entries(DESIGNATION_NAMES) as [Designation, string][]}
          onPick={(designation) => patch({ designation }, DESIGNATION_NAMES[designation])}
        />
      </div>
      <SheetTools {...props} />
    </section>
  );
}

/** What only some kinds have. */
function KindFields(
  props: SheetProps & {
    onPatch: (patch: Readonly<Record<string, unknown>>, what: string) => void;
  },
) {
  const kind = () => props.fixture.kind;
  return (
    <Switch>
      <Match when={kind() === 'counter'}>
        <ShapeFields
          survey={props.survey}
          counter={props.fixture as Counter}
          open={props.shape}
          onOpen={props.onShape}
        />
        <div class="typed-row">
          <Typed
            label="Backsplash, height"
            quantity="length"
            value={(props.fixture as Counter).backsplashHeightM}
            allowed={BACKSPLASH_M}
            onValue={(backsplashHeightM) => props.onPatch({ backsplashHeightM }, 'backsplash')}
          />
        </div>
      </Match>
      <Match when={kind() === 'sink'}>
        <SinkFields sink={props.fixture as Sink} onPatch={props.onPatch} />
      </Match>
      <Match when={kind() === 'cooktop'}>
        <CooktopFields
          survey={props.survey}
          cooktop={props.fixture as Cooktop}
          onPatch={props.onPatch}
        />
      </Match>
      <Match when={kind() === 'oven'}>
        <OvenFields survey={props.survey} oven={props.fixture as Oven} onPatch={props.onPatch} />
      </Match>
      <Match when={kind() === 'cupboard' || kind() === 'drawer'}>
        <ShelfFields cupboard={props.fixture as Cupboard} onPatch={props.onPatch} />
      </Match>
      <Match when={APPLIANCES.includes(kind())}>
        <Show when={kind() === 'hood'}>
          <HoodFields survey={props.survey} />
        </Show>
        <ApplianceFields
          survey={props.survey}
          appliance={props.fixture as Appliance}
          onPatch={props.onPatch}
        />
      </Match>
    </Switch>
  );
}

/** What hangs or slides under a counter need not be drawn. */
function drawnOrNot(kitchen: Kitchen, fixture: Fixture): [Kitchen, string] {
  if (outlineOf(fixture))
    return [
      changeFixture(kitchen, fixture.id, { outline: undefined }),
      `${fixture.name} off the plan`,
    ];
  const { xMinM, yMinM } = roomBox(kitchen);
  return [moveFixture(kitchen, fixture.id, [xMinM, yMinM]), `${fixture.name} onto the plan`];
}

function SheetTools(props: SheetProps) {
  const { survey } = props;
  const id = () => props.fixture.id;
  return (
    <div class="button-row sheet-tools">
      <Show when={MAY_BE_UNDRAWN.includes(props.fixture.kind)}>
        <Action
          class="button button--plain"
          onPress={() => survey.change(...drawnOrNot(survey.kitchen(), props.fixture))}
        >
          {outlineOf(props.fixture) ? 'Off the plan' : 'Onto the plan'}
        </Action>
      </Show>
      <Show when={outlineOf(props.fixture)}>
        <Action
          class="button button--plain"
          onPress={() =>
            survey.change(turnFixture(survey.kitchen(), id()), `${props.fixture.name} turned`)
          }
        >
          Turn
        </Action>
      </Show>
      <Action
        class="button button--plain"
        onPress={() => {
          const copy = copyFixture(survey.kitchen(), id());
          if (!survey.change(copy.kitchen, `${props.fixture.name} copied`)) props.onSelect(copy.id);
        }}
      >
        Copy
      </Action>
      <Action
        class="button button--plain"
        onPress={() => {
          const next = removeFixture(survey.kitchen(), id());
          if (!survey.change(next, `${props.fixture.name} taken out`)) props.onSelect(undefined);
        }}
      >
        Take out
      </Action>
    </div>
  );
}
