// Begins the page of one file: everything it needs is in the file, and becomes blobs here.
(async () => {
  const index = JSON.parse(document.getElementById('bundle-index').textContent);
  const packed = fromBase64(document.getElementById('bundle').textContent);
  document.getElementById('bundle').remove();
  const all = await new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'))).arrayBuffer();
  const bytes = name => new Uint8Array(all, index[name][0], index[name][1]);
  const urls = new Map();

  // A module's imports are other modules of the same file: each becomes a blob before the one that imports it.
  const url = name => {
    if (!urls.has(name)) {
      const source = new TextDecoder().decode(bytes(name));
      const own = name.startsWith('js/') ? source.replace(/from '\.\/([\w.]+)'/g, (whole, other) => `from '${url(`js/${other}`)}'`) : source;
      urls.set(name, URL.createObjectURL(new Blob([own], { type: 'text/javascript' })));
    }
    return urls.get(name);
  };

  const program = { scripts: {}, assets: {} };
  for (const name of Object.keys(index).filter(n => n.startsWith('_framework/'))) {
    const last = name.slice('_framework/'.length);
    if (last.endsWith('.js')) program.scripts[last] = new TextDecoder().decode(bytes(name));
    else program.assets[last] = bytes(name).slice();
  }
  globalThis.rideauditBundle = { url, program };
  await import(url('js/main.js'));

  function fromBase64(text) {
    if (Uint8Array.fromBase64) return Uint8Array.fromBase64(text.trim());
    return Uint8Array.from(atob(text.trim()), c => c.charCodeAt(0));
  }
})();
