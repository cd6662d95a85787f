import { createServer } from 'node:http';
import { readFile } from 'node:fs/promises';
import { extname, join, normalize } from 'node:path';

const types = {
  '.html': 'text/html; charset=utf-8', '.js': 'text/javascript; charset=utf-8', '.css': 'text/css; charset=utf-8',
  '.wasm': 'application/wasm', '.json': 'application/json', '.svg': 'image/svg+xml', '.webmanifest': 'application/manifest+json',
};

/** Serves a folder as any file host would, under a path of its own. Remembers what was asked for. */
export async function serve(folder, prefix = '/somewhere/else/', port = 0) {
  const asked = [];
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url, 'http://host').pathname);
    asked.push(path);
    const name = path.startsWith(prefix) ? normalize(path.slice(prefix.length) || 'index.html') : null;
    try {
      if (name === null || name.startsWith('..')) throw new Error('not ours');
      const body = await readFile(join(folder, name));
      response.writeHead(200, { 'content-type': types[extname(name)] ?? 'application/octet-stream', 'cache-control': 'no-cache' });
      response.end(body);
    } catch {
      response.writeHead(404);
      response.end();
    }
  });
  await new Promise(resolve => server.listen(port, '127.0.0.1', resolve));
  const used = server.address().port;
  return {
    url: `http://127.0.0.1:${used}${prefix}`,
    port: used,
    asked,
    close: () => new Promise(resolve => { server.closeAllConnections(); server.close(resolve); }),
  };
}
