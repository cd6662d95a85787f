// Keeps what was dropped in this browser, only where that was asked for.

const store = 'files';

function open() {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open('rideaudit', 1);
    request.onupgradeneeded = () => request.result.createObjectStore(store);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

async function inStore(mode, work) {
  const database = await open();
  try {
    return await new Promise((resolve, reject) => {
      const transaction = database.transaction(store, mode);
      const request = work(transaction.objectStore(store));
      transaction.oncomplete = () => resolve(request?.result);
      transaction.onerror = () => reject(transaction.error);
      transaction.onabort = () => reject(transaction.error);
    });
  } finally {
    database.close();
  }
}

/** Keeps files in place of those kept before. */
export function keep(files) {
  return inStore('readwrite', s => {
    s.clear();
    return s.put(files.map(({ name, file }) => ({ name, file })), 'all');
  });
}

/** Forgets all of it. */
export function forget() {
  return inStore('readwrite', s => s.clear());
}

/** What is kept; null without anything, or where nothing can be kept. */
export async function kept() {
  try {
    return (await inStore('readonly', s => s.get('all'))) ?? null;
  } catch {
    return null;
  }
}
