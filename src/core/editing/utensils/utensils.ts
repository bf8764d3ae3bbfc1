import type { Kitchen, Utensil } from '../../kitchen/index.ts';

/** One more line of utensils, after those that are told; its id is its kind with the first free number. */
export function addUtensil(kitchen: Kitchen, told: Omit<Utensil, 'id'>): Kitchen {
  const { utensils = [] } = kitchen;
  const taken = new Set(utensils.map(({ id }) => id));
  let number = 1;
  while (taken.has(`${told.kind}-${number}`)) number += 1;
  return { ...kitchen, utensils: [...utensils, { ...told, id: `${told.kind}-${number}` }] };
}

/** Without one line of utensils; the same kitchen when there is none of that id. */
export function removeUtensil(kitchen: Kitchen, id: string): Kitchen {
  const { utensils = [] } = kitchen;
  const left = utensils.filter((one) => one.id !== id);
  return left.length === utensils.length ? kitchen : { ...kitchen, utensils: left };
}
