// Holds the program. Reads file after file, so that it can be told to stop between two of them.

const early = { files: 45, left: 60 };
let bridge;
let stopped = false;

const calls = {
  /** Loads the program: from an address beside the page, or from what a page of one file carries. */
  async boot(source) {
    // From a disk a page and its worker are strangers to each other: a blob is only open to the side that made it.
    if (source.scripts) source.urls = Object.fromEntries(Object.entries(source.scripts).map(([name, text]) => [name, blobOf(text)]));
    const { dotnet } = await import(source.address ?? source.urls['dotnet.js']);
    const builder = source.urls ? dotnet.withResourceLoader((type, name) => resource(source, name)) : dotnet;
    // The program's parts come all at once: the sixteen at a time of the runtime's own would leave the rest until it has started.
    const runtime = await builder.withConfig({ maxParallelDownloads: 100 }).create();
    bridge = (await runtime.getAssemblyExports('RideAudit.Web.dll')).RideAudit.Web.Bridge;
  },

  prepare: () => bridge.Prepare(),

  async read({ files, zone, today, asOf, showEarly, again }) {
    stopped = false;
    if (again) bridge.OpenAgain(again.rider, again.plan, again.notes);
    else bridge.Open(zone, today, files.some(f => /(^|\/)rider\.toml$|\.zip$/i.test(f.name)));
    const bytes = files.reduce((sum, f) => sum + f.file.size, 0);
    const begun = performance.now();
    let done = 0, read = 0, told = 0, shown = !showEarly || files.length < early.files + early.left;
    let next = contentOf(files[0]);
    for (const [at, { name, file }] of files.entries()) {
      if (stopped) break;
      const content = await next;
      next = contentOf(files[at + 1]);
      bridge.Add(name, content);
      done++;
      read += file.size;
      if (performance.now() - told > 80 || done === files.length) {
        told = performance.now();
        postMessage({ progress: { done, files: files.length, read, bytes, seconds: (told - begun) / 1000, name } });
        // Messages are handled between tasks only: without this pause a wish to stop would wait for the end.
        await new Promise(resolve => setTimeout(resolve));
      }
      if (!shown && done >= early.files) {
        shown = true;
        bridge.Gather();
        postMessage({ early: bridge.Review(asOf, '') });
      }
    }
    bridge.Gather();
    return { stopped, done, unusable: bridge.Unusable() };
  },

  review: (asOf, week) => bridge.Review(asOf, week),
  pdf: (asOf, week, letter) => bridge.Pdf(asOf, week, letter),
  pages: (asOf, week) => bridge.Pages(asOf, week),
  weeks: asOf => bridge.Weeks(asOf),
  rides: asOf => bridge.Rides(asOf),
  rider: () => bridge.Rider(),
  edit: answers => bridge.Edit(answers),
  riderFile: () => bridge.RiderFile(),
  notes: () => bridge.Notes(),
  setNotes: rows => bridge.SetNotes(rows),
  card: (asOf, week) => bridge.Card(asOf, week),
  isPlan: async file => bridge.IsPlan(new Uint8Array(await file.arrayBuffer())),
  addFont: async file => bridge.AddFont(new Uint8Array(await file.arrayBuffer())),
  plan: asOf => bridge.Plan(asOf),
  changePlan: change => bridge.ChangePlan(change),
  planTable: table => bridge.PlanTable(table),
  check: (asOf, weeks) => bridge.Check(asOf, weeks),
  layOut: (asOf, weeks) => bridge.LayOut(asOf, weeks),
  takeOver: () => bridge.TakeOver(),
  unusable: () => bridge.Unusable(),
  openDesk: () => bridge.OpenDesk(),
  toDesk: (folder, asOf) => bridge.ToDesk(folder, asOf),
  desk: asOf => bridge.DeskRoster(asOf),
  deskScreen: asOf => bridge.DeskScreen(asOf),
};

// The runtime names its files by its own address, and a blob has none that names can be added to. Nothing is ever asked of this one.
function blobOf(script) {
  return URL.createObjectURL(new Blob([script.replaceAll('import.meta.url', '"https://page.invalid/_framework/dotnet.js"')], { type: 'text/javascript' }));
}

// The browser fetches the next file from the disk while one is read.
function contentOf(given) {
  return given?.file.arrayBuffer().then(b => new Uint8Array(b), () => new Uint8Array());
}

function resource(source, name) {
  if (name in source.urls) return source.urls[name];
  return Promise.resolve(new Response(source.assets[name], { headers: { 'content-type': 'application/wasm' } }));
}

addEventListener('message', async ({ data }) => {
  if (data.name === 'stop') {
    stopped = true;
    return;
  }
  try {
    postMessage({ id: data.id, result: await calls[data.name](...data.args) });
  } catch (fault) {
    postMessage({ id: data.id, error: fault?.message ?? String(fault) });
  }
});
