import { createServer } from 'node:net';

/** A port that nothing listens on at present. */
export function freePort() {
  return new Promise((resolve) => {
    const server = createServer().listen(0, () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}
