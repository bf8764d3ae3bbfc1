/** Lists what is bundled with its licence, and fails on one that may not be. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const ALLOWED = [
  'MIT',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'BSL-1.0',
  'LGPL-2.1',
  'LGPL-3.0',
  'OFL-1.1',
];

/**
 * Packages whose manifest states no licence, with the words of their LICENSE
 * file by which it was told: when the words go, the check fails.
 */
const STATED_IN_FILE: Readonly<Record<string, { licence: string; words: string }>> = {
  suncalc: { licence: 'BSD-2-Clause', words: 'Redistribution and use in source and binary forms' },
};

type Manifest = {
  name: string;
  version: string;
  license?: string;
  dependencies?: Record<string, string>;
};

function manifest(folder: string): Manifest {
  return JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Manifest;
}

function licenceOf(folder: string, own: Manifest): string {
  if (own.license) return own.license;
  const stated = STATED_IN_FILE[own.name];
  if (!stated) return 'none stated';
  const text = readFileSync(join(folder, 'LICENSE'), 'utf8');
  return text.includes(stated.words) && !text.includes('Neither the name')
    ? stated.licence
    : 'none stated';
}

/** Run-time dependencies, direct and indirect, with their licences. */
export function bundledLicences(root: string): Map<string, string> {
  const found = new Map<string, string>();
  const queue = Object.keys(manifest(root).dependencies ?? {});
  while (queue.length > 0) {
    const name = queue.pop() ?? '';
    if (found.has(name)) continue;
    const folder = join(root, 'node_modules', name);
    const own = manifest(folder);
    found.set(name, licenceOf(folder, own));
    queue.push(...Object.keys(own.dependencies ?? {}));
  }
  return found;
}

if (process.argv[1]?.endsWith('check-licences.ts')) {
  const licences = bundledLicences(process.cwd());
  const bad = [...licences].filter(([, licence]) => !ALLOWED.includes(licence));
  for (const [name, licence] of [...licences].toSorted())
    console.log(`${licence.padEnd(14)} ${name}`);
  if (bad.length > 0) {
    console.error(
      `Not allowed at run time: ${bad.map(([name, licence]) => `${name} (${licence})`).join(', ')}.`,
    );
    process.exit(1);
  }
}
