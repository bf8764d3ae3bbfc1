import { countryOf, type Kitchen } from '../../../../core/kitchen/index.ts';
import { newKitchen } from '../../../../core/editing/index.ts';
import type { Translator } from '../../../../core/messages/index.ts';

/** Where the device says nothing the table knows. */
const ELSEWHERE = 'US';

/** Region of a language tag; also of a POSIX name ("he_IL.UTF-8"), which some devices give. Undefined: none is known. */
function regionOf(device: string): string | undefined {
  const tag = device.replace(/[.@].*$/, '').replaceAll('_', '-');
  try {
    return new Intl.Locale(tag).maximize().region;
  } catch {
    // What is no language at all says nothing of a country, and must not keep anybody from beginning.
    return undefined;
  }
}

/** A kitchen with nothing in it, of the country the device is set to. */
export function beginKitchen(name: string, device: string, language: Translator): Kitchen {
  return newKitchen({ name, country: countryOf(regionOf(device))?.code ?? ELSEWHERE }, language);
}
