import { preview, type PreviewServer } from 'vite';

/** Serves the built app as `npm start` does, on a free port. */
export async function serve(): Promise<{ url: string; stop: () => Promise<void> }> {
  const server: PreviewServer = await preview({
    preview: { port: 0, host: '127.0.0.1', open: false },
    logLevel: 'error',
  });
  const address = server.httpServer.address();
  if (!address || typeof address === 'string') throw new Error('The preview server has no port.');
  return { url: `http://127.0.0.1:${address.port}`, stop: () => server.close() };
}
