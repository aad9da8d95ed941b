import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, resolve, sep } from 'node:path';

const types = {
  '.css': 'text/css',
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.mjs': 'text/javascript',
  '.svg': 'image/svg+xml',
};

/**
 * Serves the files of a folder, and `pages` (path → HTML) before them, with extra headers, in
 * UTF-8 or as the server is to say. Port 0 takes a free one. Gives {url, close}; a port that is taken rejects.
 */
export function serve({ root = '.', port = 0, headers = {}, pages = {}, charset = 'utf-8' } = {}) {
  const base = resolve(root);
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url, 'http://localhost').pathname);
    const file = resolve(base, `.${path}${path.endsWith('/') ? 'index.html' : ''}`);
    try {
      const body = pages[path] ?? (file.startsWith(base + sep) ? await readFile(file) : undefined);
      if (body === undefined) throw new Error('outside the folder');
      const type = pages[path] === undefined ? (types[extname(file)] ?? 'text/plain') : 'text/html';
      response.writeHead(200, { 'content-type': `${type}; charset=${charset}`, ...headers }).end(body);
    } catch {
      response.writeHead(404, { 'content-type': 'text/plain' }).end('Not found');
    }
  });
  return new Promise((fulfil, reject) => {
    server.once('error', reject).listen(port, () => {
      const close = () => {
        server.closeAllConnections();
        server.close();
      };
      fulfil({ url: `http://localhost:${server.address().port}`, close });
    });
  });
}
