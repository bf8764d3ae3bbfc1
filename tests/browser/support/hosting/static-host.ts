import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { HEADERS } from '../../../../tools/content-policy.ts';
import { BUILT, type Site } from '../server.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.svg': 'image/svg+xml',
  '.wav': 'audio/wav',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

/** Any static host: it knows files under one path, the headers of the guide, and nothing of the app. */
export async function hostUnder(path: string, folder = BUILT): Promise<Site> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://host');
    const inside = pathname.startsWith(path) ? pathname.slice(path.length) : undefined;
    const file = inside === '' ? 'index.html' : inside;
    const refuse = () => response.writeHead(404).end();
    if (file === undefined) return void refuse();
    readFile(join(folder, normalize(`/${decodeURIComponent(file)}`))).then((bytes) => {
      const type = TYPES[extname(file)] ?? 'application/octet-stream';
      response.writeHead(200, { ...HEADERS, 'Content-Type': type }).end(bytes);
    }, refuse);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  if (!address || typeof address === 'string') throw new Error('The host has no port.');
  return {
    url: `http://127.0.0.1:${address.port}${path}`,
    port: address.port,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
