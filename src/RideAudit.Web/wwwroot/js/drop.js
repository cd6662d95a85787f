// What was dropped or chosen, as a flat list of { name, file } with `/` in the names.

/** Files of a drop: folders, folders in folders, files. */
export async function dropped(transfer) {
  // Entries have to be taken before anything is awaited: the transfer is emptied after the event.
  const items = [...transfer.items].filter(i => i.kind === 'file');
  // From a disk entries cannot be opened, handles can, where the browser has them.
  if (location.protocol === 'file:' && items[0]?.getAsFileSystemHandle)
    return underOneFolder(await below(await Promise.all(items.map(i => i.getAsFileSystemHandle())), '', follow));
  return underOneFolder(await below(items.map(i => i.webkitGetAsEntry?.() ?? i.getAsFile()), '', walk));
}

/** Files of a file chooser, of a folder or of single files. */
export function chosen(list) {
  return underOneFolder([...list].map(file => ({ name: file.webkitRelativePath || file.name, file })));
}

// All at once: one after another, thousands of files would take seconds to be found.
async function below(found, prefix, open) {
  return (await Promise.all(found.map(entry => (!entry || entry.name.startsWith('.') ? [] : open(entry, prefix))))).flat();
}

async function walk(entry, prefix) {
  if (entry.isDirectory) return below(await children(entry), `${prefix}${entry.name}/`, walk);
  const file = entry instanceof File ? entry : await new Promise((resolve, reject) => entry.file(resolve, reject)).catch(() => null);
  return file ? [{ name: prefix + entry.name, file }] : [];
}

async function follow(handle, prefix) {
  if (handle.kind === 'directory') return below(await inside(handle), `${prefix}${handle.name}/`, follow);
  const file = await handle.getFile().catch(() => null);
  return file ? [{ name: prefix + handle.name, file }] : [];
}

async function inside(handle) {
  const all = [];
  for await (const child of handle.values()) all.push(child);
  return all;
}

// A reader gives a hundred entries at most a time.
async function children(folder) {
  const reader = folder.createReader();
  const all = [];
  for (;;) {
    const some = await new Promise((resolve, reject) => reader.readEntries(resolve, reject)).catch(() => []);
    if (some.length === 0) return all;
    all.push(...some);
  }
}

// Names count from below the one folder that was given, as the terminal program's do.
function underOneFolder(found) {
  const visible = found.filter(f => !f.name.split('/').some(p => p.startsWith('.')));
  const top = visible[0]?.name.split('/')[0];
  const one = visible.length > 0 && visible.every(f => f.name.startsWith(`${top}/`));
  return one ? visible.map(f => ({ name: f.name.slice(top.length + 1), file: f.file })) : visible;
}

/** Riders of a coach's folder: sub-folders with a rider file in each of at least two; null for one rider. */
export function riders(files) {
  const folders = new Map();
  for (const { name, file } of files) {
    const at = name.indexOf('/');
    if (at < 0) continue;
    const folder = name.slice(0, at);
    if (!folders.has(folder)) folders.set(folder, []);
    folders.get(folder).push({ name: name.slice(at + 1), file });
  }
  const named = [...folders.values()].filter(list => list.some(f => f.name === 'rider.toml'));
  return named.length >= 2 ? [...folders].sort(([a], [b]) => (a < b ? -1 : 1)).map(([folder, list]) => ({ folder, files: list })) : null;
}

/** The order to read in: texts about the rider first, then the latest rides, so that the latest week is there soon. */
export function inReadingOrder(files) {
  const key = ({ name, file }) => {
    const last = name.slice(name.lastIndexOf('/') + 1);
    if (/\.(toml|md)$/i.test(last)) return '9999';
    const named = last.match(/(20\d\d)[-_.]?(\d\d)[-_.]?(\d\d)/);
    return named ? `${named[1]}-${named[2]}-${named[3]}` : new Date(file.lastModified).toISOString().slice(0, 10);
  };
  return files
    .map(f => ({ ...f, key: key(f) }))
    .sort((a, b) => (a.key !== b.key ? (a.key < b.key ? 1 : -1) : a.name < b.name ? -1 : 1));
}
