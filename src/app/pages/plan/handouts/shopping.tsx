import { createMemo, For, Show } from 'solid-js';
import {
  PRODUCT_GROUPS,
  productMarks,
  productsOf,
  productsText,
  type Product,
} from '../../../../core/handouts/index.ts';
import { say, t, translator } from '../../../context/language.ts';
import { HandoutFrame } from './frame/handout-frame.tsx';
import type { HandoutProps } from './frame/handout-props.ts';
import { createWorked, foundOf, WhenWorked } from './frame/worked.tsx';

/** What to buy and gather, product by product, ticked off from day to day. */
export function ShoppingHandout(props: HandoutProps) {
  const covers = createWorked('covers', () => props.plan);
  const utensils = createWorked('utensils', () => props.plan.kitchen);
  const products = createMemo(() => {
    const cut = foundOf(covers());
    return cut && productsOf(props.plan, cut, foundOf(utensils()));
  });
  const isTicked = (id: string) => props.ticks?.has(id) ?? false;
  const kitchen = () => props.plan.kitchen.name;
  const text = () => productsText(products() ?? [], isTicked, kitchen(), translator());
  return (
    <HandoutFrame
      title={t('handouts.shopping.title', { kitchen: kitchen() })}
      about={t('handouts.shopping.about')}
      text={products() && text}
      class="products"
    >
      <WhenWorked worked={covers()}>
        {() => (
          <Groups
            products={products() ?? []}
            isTicked={isTicked}
            onTick={(id, to) => props.ticks?.set(id, to)}
          />
        )}
      </WhenWorked>
    </HandoutFrame>
  );
}

type Ticking = {
  isTicked: (id: string) => boolean;
  onTick: (id: string, to: boolean) => void;
};

function Groups(props: Ticking & { products: readonly Product[] }) {
  const groups = () =>
    PRODUCT_GROUPS.map((id) => ({ id, own: props.products.filter(({ group }) => group === id) }));
  const left = () => props.products.filter(({ id }) => !props.isTicked(id)).length;
  return (
    <>
      <p class="products-left" aria-live="polite">
        <Show when={left() > 0} fallback={t('handouts.shopping.all-there')}>
          {t('handouts.shopping.left', { left: left(), all: props.products.length })}
        </Show>
      </p>
      <div class="products-groups">
        <For each={groups().filter(({ own }) => own.length > 0)}>
          {({ id, own }) => (
            <section class="products-group">
              <h3>{t(`handouts.shopping.group.${id}`)}</h3>
              <ul>
                <For each={own}>
                  {(product) => (
                    <OneProduct product={product} isTicked={props.isTicked} onTick={props.onTick} />
                  )}
                </For>
              </ul>
            </section>
          )}
        </For>
      </div>
    </>
  );
}

function OneProduct(props: Ticking & { product: Product }) {
  return (
    <li>
      <label class="product">
        <input
          type="checkbox"
          data-product={props.product.id}
          checked={props.isTicked(props.product.id)}
          onChange={(event) => props.onTick(props.product.id, event.currentTarget.checked)}
        />
        <span>
          <Show when={props.product.amount} fallback={<strong>{say(props.product.name)}</strong>}>
            {(amount) => (
              <>
                <strong>{t('plan.buy.before-amount', { name: props.product.name })}</strong>{' '}
                {say(amount())}
              </>
            )}
          </Show>
          <For each={productMarks(props.product)}>
            {(mark) => <em class="product-mark">{say(mark)}</em>}
          </For>
          <span class="quiet product-why">{props.product.reasons.map(say).join(' ')}</span>
        </span>
      </label>
    </li>
  );
}
