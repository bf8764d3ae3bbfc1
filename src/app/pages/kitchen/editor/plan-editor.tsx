import { For, Show } from 'solid-js';
import { roomOutline } from '../../../../core/editing/index.ts';
import { say, t } from '../../../context/language.ts';
import type { SurveyController } from '../survey/controller/survey-controller.ts';
import { Toggle } from '../survey/inputs/pick.tsx';
import { AboveEditor } from './above/above-editor.tsx';
import { FrontEditor } from './front/front-editor.tsx';
import { BelowFront } from './front/front-pieces.tsx';
import { edgeOf, wallName, type Face } from './hand/faces.ts';
import { createShown } from './view/shown.ts';

type EditorProps = {
  survey: SurveyController;
  selected: string | undefined;
  /** Corners one by one instead of length and depth. */
  shape: boolean;
  face: Face;
  onFace: (face: Face) => void;
  onSelect: (id: string | undefined) => void;
  /** To the sheet of what is selected, by keyboard. */
  onOpen: () => void;
};

/** The kitchen from above or one wall from the front, to be shaped by finger, mouse or keyboard. */
export function PlanEditor(props: EditorProps) {
  const shown = createShown();
  const outline = () => roomOutline(props.survey.kitchen());
  const wall = () => (props.face === 'above' ? undefined : props.face % outline().length);
  return (
    <div class="editor">
      <div class="editor-faces" role="group" aria-label={t('survey.face')}>
        <Toggle pressed={props.face === 'above'} onPress={() => props.onFace('above')}>
          {t('survey.face.above')}
        </Toggle>
        <For each={outline().map((_, i) => i)}>
          {(i) => (
            <Toggle pressed={wall() === i} onPress={() => props.onFace(i)}>
              {say(wallName(outline(), edgeOf(outline(), i)))}
            </Toggle>
          )}
        </For>
      </div>
      <p id="editor-keys" class="visually-hidden">
        {t('survey.editor.keys')}
      </p>
      <Show when={wall() !== undefined} fallback={<AboveEditor {...props} shown={shown} />}>
        <FrontEditor {...props} wall={wall() ?? 0} lengths={shown.is('lengths')} />
        <div class="editor-tools" role="group" aria-label={t('survey.editor.look')}>
          <Toggle pressed={shown.is('lengths')} onPress={() => shown.toggle('lengths')}>
            {t('survey.editor.lengths')}
          </Toggle>
        </div>
        <BelowFront survey={props.survey} wall={wall() ?? 0} onSelect={props.onSelect} />
      </Show>
    </div>
  );
}
