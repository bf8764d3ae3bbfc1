import { For } from 'solid-js';
import type { FixtureKind } from '../../../../../core/kitchen/index.ts';
import { offerName, OFFERS, offerTells, type Offer } from '../../../../../core/editing/index.ts';
import { say, t } from '../../../../context/language.ts';
import { Action } from '../../../../parts/press/action.tsx';
import { OfferPicture } from '../inputs/pictures.tsx';

type GroupId = 'work' | 'water' | 'heat' | 'cold' | 'storage';

const GROUPS: readonly { readonly id: GroupId; readonly kinds: readonly FixtureKind[] }[] = [
  { id: 'work', kinds: ['counter', 'table'] },
  { id: 'water', kinds: ['sink', 'dishwasher'] },
  { id: 'heat', kinds: ['cooktop', 'oven', 'microwave', 'warming-drawer', 'hood'] },
  { id: 'cold', kinds: ['fridge', 'freezer'] },
  { id: 'storage', kinds: ['cupboard', 'drawer'] },
];

/** Everything that can stand in a kitchen, with a picture and how to tell it. */
export function Offers(props: { onAdd: (offer: Offer) => void }) {
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
                    <Action class="offer" onPress={() => props.onAdd(offer)}>
                      <OfferPicture kind={offer.kind} offer={offer.id} />
                      <span class="offer-words">
                        <span class="offer-name">
                          <span class="visually-hidden">{t('survey.offers.add')}</span>
                          {say(offerName(offer.id))}
                        </span>
                        <span class="offer-tells">{say(offerTells(offer.id))}</span>
                      </span>
                    </Action>
                  </li>
                )}
              </For>
            </ul>
          </section>
        )}
      </For>
    </div>
  );
}
