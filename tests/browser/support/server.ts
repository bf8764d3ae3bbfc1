import { preview, type PreviewServer } from 'vite';

/** The folder that was built; another one when GLOWPOUR_DIST names it. */
export const BUILT = process.env['GLOWPOUR_DIST'] ?? 'dist';

export type Site = {
  readonly url: string;
  readonly port: number;
  /** Does nothing the second time. */
  readonly stop: () => Promise<void>;
};

/** Serves a built app as `npm start` does, on a free port or on one that was used before. */
export async function serve(folder = BUILT, port = 0): Promise<Site> {
  const server: PreviewServer = await preview({
    build: { outDir: folder },
    preview: { port, host: '127.0.0.1', open: false, strictPort: port !== 0 },
    logLevel: 'error',
  });
  const address = server.httpServer.address();
  if (!address || typeof address === 'string') throw new Error('The preview server has no port.');
  let stopped: Promise<void> | undefined;
  return {
    url: `http://127.0.0.1:${address.port}`,
    port: address.port,
    stop: () => {
      stopped ??= server.close();
      // An engine that keeps a connection open would keep the server up.
      if ('closeAllConnections' in server.httpServer) server.httpServer.closeAllConnections();
      return stopped;
    },
  };
}
