import { countryOf, type Kitchen } from '../../../../core/kitchen/index.ts';
import { newKitchen } from '../../../../core/editing/index.ts';
import type { Translator } from '../../../../core/messages/index.ts';

/** Where the device says nothing the table knows. */
const ELSEWHERE = 'US';

/** A kitchen with nothing in it, of the country the device is set to. */
export function beginKitchen(name: string, device: string, language: Translator): Kitchen {
  const { region } = new Intl.Locale(device).maximize();
  return newKitchen({ name, country: countryOf(region)?.code ?? ELSEWHERE }, language);
}
