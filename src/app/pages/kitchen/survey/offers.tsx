import { For, Show } from 'solid-js';
import type { FixtureKind } from '../../../../core/kitchen/index.ts';
import { offersOf, type Offer } from '../../../../core/editing/index.ts';
import { Action } from '../../../parts/action.tsx';
import { OfferPicture } from './fields/pictures.tsx';

const GROUPS: readonly { readonly name: string; readonly kinds: readonly FixtureKind[] }[] = [
  { name: 'To work on', kinds: ['counter', 'table'] },
  { name: 'Water', kinds: ['sink', 'dishwasher'] },
  { name: 'Fire and heat', kinds: ['cooktop', 'oven', 'microwave', 'warming-drawer', 'hood'] },
  { name: 'Cold', kinds: ['fridge', 'freezer'] },
  { name: 'To keep things in', kinds: ['cupboard', 'drawer'] },
];

/** Everything that can stand in a kitchen, with a picture and how to tell it. */
export function Offers(props: { country: string; onAdd: (offer: Offer) => void }) {
  const groups = () => {
    const all = offersOf(props.country);
    return GROUPS.map(({ name, kinds }) => ({
      name,
      offers: all.filter((offer) => kinds.includes(offer.kind)),
    }));
  };
  return (
    <div class="offers">
      <For each={groups()}>
        {(group) => (
          <Show when={group.offers.length > 0}>
            <section aria-label={group.name}>
              <h3>{group.name}</h3>
              <ul class="offer-list">
                <For each={group.offers}>
                  {(offer) => (
                    <li>
                      <Action class="offer" onPress={() => props.onAdd(offer)}>
                        <OfferPicture kind={offer.kind} offer={offer.id} />
                        <span class="offer-words">
                          <span class="offer-name">
                            <span class="visually-hidden">Add: </span>
                            {offer.name}
                          </span>
                          <span class="offer-tells">{offer.tells}</span>
                        </span>
                      </Action>
                    </li>
                  )}
                </For>
              </ul>
            </section>
          </Show>
        )}
      </For>
    </div>
  );
}
