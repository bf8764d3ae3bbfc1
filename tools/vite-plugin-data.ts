import type { Plugin } from 'vite';

/** What is written for readers of a table, `$comment` at any depth, left out; null where there is none. */
export function withoutComments(json: string): string | null {
  if (!json.includes('"$comment"')) return null;
  const bare: unknown = JSON.parse(json, (key, value: unknown) =>
    key === '$comment' ? undefined : value,
  );
  return JSON.stringify(bare);
}

/** Tables in JSON are bundled without their comments. */
export function dataPlugin(): Plugin {
  return {
    name: 'glowpour-data',
    enforce: 'pre',
    transform: {
      filter: { id: /\.json$/ },
      handler: (code) => withoutComments(code),
    },
  };
}
