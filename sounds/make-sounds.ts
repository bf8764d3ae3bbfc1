/** Makes the sound files and their manifest anew: `npm run sounds`. The same bytes every time. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { format, resolveConfig } from 'prettier';
import { makeAll, manifestText } from './manifest.ts';

const made = makeAll();
for (const { entry, bytes } of made) {
  writeFileSync(join(import.meta.dirname, entry.file), bytes);
  console.log(
    `${entry.file.padEnd(12)} ${entry.durationS} s, ${entry.bytes} bytes, ${entry.loudnessDbfs} dBFS: ${entry.rhythm}`,
  );
}
const manifest = join(import.meta.dirname, 'manifest.json');
const style = (await resolveConfig(manifest)) ?? {};
writeFileSync(manifest, await format(manifestText(made), { ...style, filepath: manifest }));
