// Talks to the worker: a call is answered once, and what the worker tells on its way goes to a listener.

/** Starts the worker. `bundle` is there when the page is one file. */
function start(bundle) {
  // From a disk no browser starts a module worker, and the worker's text is fit to be none.
  const worker = bundle ? new Worker(bundle.url('js/worker.js')) : new Worker(underThePagesPolicy(new URL('./worker.js', import.meta.url)), { type: 'module' });
  const waiting = new Map();
  let last = 0;
  let tell = () => {};
  worker.addEventListener('message', ({ data }) => {
    if (data.id === undefined) {
      tell(data);
      return;
    }
    const { resolve, reject } = waiting.get(data.id);
    waiting.delete(data.id);
    if (data.error === undefined) resolve(data.result);
    else reject(new Error(data.error));
  });
  const failed = new Promise((resolve, reject) => worker.addEventListener('error', e => reject(new Error(e.message || 'The worker could not be started.'))));
  failed.catch(() => {});
  return {
    call(name, ...args) {
      const id = ++last;
      const answer = new Promise((resolve, reject) => waiting.set(id, { resolve, reject }));
      worker.postMessage({ id, name, args });
      return Promise.race([answer, failed]);
    },
    /** Says who hears what the worker tells on its way. */
    listen(listener) {
      tell = listener;
    },
    boot() {
      return this.call('boot', bundle?.program ?? { address: new URL('../_framework/dotnet.js', import.meta.url).href });
    },
    stop() {
      worker.postMessage({ name: 'stop' });
    },
  };
}

// A worker from a blob is under the page's own content security policy; one fetched by its address would be under none.
function underThePagesPolicy(address) {
  return URL.createObjectURL(new Blob([`import ${JSON.stringify(address.href)};`], { type: 'text/javascript' }));
}

/** The program. It is begun with this module, which the page loads before all others: it takes longer to come up than they take to load. */
export const program = start(globalThis.rideauditBundle ?? null);

/** Fulfilled when the program is up. */
export const up = program.boot();
up.catch(() => {});
