import { For, type JSX } from 'solid-js';
import type { FixtureKind, OpeningKind } from '../../../../../core/kitchen/index.ts';
import { offerName, OFFERS, offerTells, type Offer } from '../../../../../core/editing/index.ts';
import { say, t, written } from '../../../../context/language.ts';
import { Action } from '../../../../parts/press/action.tsx';
import { OfferPicture, OpeningPicture } from '../inputs/pictures.tsx';

type GroupId = 'work' | 'water' | 'heat' | 'cold' | 'storage';

const GROUPS: readonly { readonly id: GroupId; readonly kinds: readonly FixtureKind[] }[] = [
  { id: 'work', kinds: ['counter', 'table'] },
  { id: 'water', kinds: ['sink', 'dishwasher'] },
  { id: 'heat', kinds: ['cooktop', 'oven', 'microwave', 'warming-drawer', 'hood'] },
  { id: 'cold', kinds: ['fridge', 'freezer'] },
  { id: 'storage', kinds: ['cupboard', 'drawer'] },
];

const OPENINGS = ['door', 'window', 'passage'] as const satisfies readonly OpeningKind[];

/** Everything that can stand in a kitchen or be in its walls, with a picture and how to tell it. */
export function Offers(props: {
  onAdd: (offer: Offer) => void;
  onAddInWall: (kind: OpeningKind) => void;
}) {
  return (
    <div class="offers">
      <For each={GROUPS}>
        {(group) => (
          <section aria-label={t(`survey.offers.${group.id}`)}>
            <h3>{t(`survey.offers.${group.id}`)}</h3>
            <ul class="offer-list">
              <For each={OFFERS.filter(({ kind }) => group.kinds.includes(kind))}>
                {(offer) => (
                  <li>
                    <OfferButton
                      picture={<OfferPicture kind={offer.kind} offer={offer.id} />}
                      name={say(offerName(offer.id))}
                      tells={say(offerTells(offer.id))}
                      onPress={() => props.onAdd(offer)}
                    />
                  </li>
                )}
              </For>
            </ul>
          </section>
        )}
      </For>
      <section aria-label={t('survey.offers.openings')}>
        <h3>{t('survey.offers.openings')}</h3>
        <ul class="offer-list">
          <For each={OPENINGS}>
            {(kind) => (
              <li>
                <OfferButton
                  picture={<OpeningPicture kind={kind} />}
                  name={t(`survey.opening.${kind}`)}
                  tells={t(`survey.opening.${kind}.tells`)}
                  onPress={() => props.onAddInWall(kind)}
                />
              </li>
            )}
          </For>
        </ul>
      </section>
    </div>
  );
}

function OfferButton(props: {
  picture: JSX.Element;
  name: string;
  tells: string;
  onPress: () => void;
}) {
  return (
    <Action class="offer" onPress={props.onPress}>
      {props.picture}
      <span class="offer-words">
        <span class="offer-name">
          <span class="visually-hidden">{t('survey.offers.add')}</span>
          {written(props.name)}
        </span>
        <span class="offer-tells">{props.tells}</span>
      </span>
    </Action>
  );
}
