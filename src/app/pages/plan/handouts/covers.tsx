import { For, Show } from 'solid-js';
import {
  cutMessage,
  describeCovers,
  pieceMessage,
  purchaseMessage,
  rollDrawings,
  stretches,
  type CoverGroup,
  type CoverPlan,
} from '../../../../core/covering/index.ts';
import { say, t, translator } from '../../../context/language.ts';
import { RollPicture } from './roll-picture.tsx';
import { HandoutFrame } from './handout-frame.tsx';
import type { HandoutProps } from './handout-props.ts';
import { createWorked, foundOf, WhenWorked } from './worked.tsx';

/** A roll is drawn in stretches of about this, m: longer ones would be too thin to read. */
const STRETCH_M = 5;

/** What to buy to cover with, each roll to scale, and every cut in its order. */
export function CoverHandout(props: HandoutProps) {
  const worked = createWorked('covers', () => props.plan);
  const text = () => {
    const plan = foundOf(worked());
    return plan && (() => describeCovers(plan, props.plan.kitchen.name, translator()));
  };
  return (
    <HandoutFrame
      title={t('covers.title', { kitchen: props.plan.kitchen.name })}
      about={t('handouts.covers.about')}
      text={text()}
      class="covers"
    >
      <WhenWorked worked={worked()}>{(plan) => <Groups plan={plan()} />}</WhenWorked>
    </HandoutFrame>
  );
}

function Groups(props: { plan: CoverPlan }) {
  return (
    <>
      <For each={props.plan.groups} fallback={<p>{t('covers.none')}</p>}>
        {(group) => <Group group={group} />}
      </For>
      <ul class="covers-left">
        <For each={props.plan.tooLarge}>
          {({ name, widthM, lengthM }) => (
            <li>{t('covers.too-large', { name, widthM, lengthM })}</li>
          )}
        </For>
        <For each={props.plan.unmeasured}>
          {({ name }) => <li>{t('covers.unmeasured', { name })}</li>}
        </For>
      </ul>
    </>
  );
}

function Group(props: { group: CoverGroup }) {
  const purchase = () => props.group.purchase;
  const trimmed = () =>
    new Set(props.group.pieces.filter((piece) => piece.trimmed).map(({ id }) => id));
  return (
    <section class="covers-group">
      <h3>
        <span class="tick-box" aria-hidden="true" /> {say(purchaseMessage(props.group))}
      </h3>
      <p class="quiet">
        {t('covers.waste', {
          usedM: purchase().usedLengthM,
          wasteShare: purchase().wasteShare,
        })}
      </p>
      <For each={rollDrawings(props.group)}>
        {(drawing, at) => (
          <div class="covers-roll">
            <h4>{t('covers.roll', { number: at() + 1, usedM: drawing.lengthM })}</h4>
            <For each={stretches(drawing, STRETCH_M)}>
              {(stretch) => (
                <RollPicture
                  drawing={drawing}
                  stretch={stretch}
                  fullM={Math.max(STRETCH_M, stretch.toM - stretch.fromM)}
                />
              )}
            </For>
            <div class="covers-told">
              <ol>
                <For each={drawing.pieces}>
                  {(piece) => (
                    <li>
                      {say(pieceMessage(piece))}
                      <For each={piece.cutOuts}>
                        {({ widthM, lengthM }) => (
                          <span class="covers-cut-out">
                            {' '}
                            {t('covers.cut-out', { widthM, lengthM })}
                          </span>
                        )}
                      </For>
                      <Show when={trimmed().has(piece.id)}> {t('covers.trimmed')}</Show>
                    </li>
                  )}
                </For>
              </ol>
              <ul class="covers-cuts">
                <For each={purchase().rolls[at()]?.lines ?? []}>
                  {(line, number) => <li>{say(cutMessage(line, number()))}</li>}
                </For>
              </ul>
            </div>
          </div>
        )}
      </For>
    </section>
  );
}
