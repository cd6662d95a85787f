// The page's figures of docs/performance.md: node figures.mjs SITE FOLDER... prints a table. Wall times of a busy machine say little:
// the processor's time of the browser's process that does the work stands beside them.
import { readFileSync, readdirSync } from 'node:fs';
import { brotliCompressSync, constants } from 'node:zlib';
import { join, relative } from 'node:path';
import { drop, judged, launch, open } from './lib/browser.mjs';
import { serve } from './lib/server.mjs';

const [site, ...folders] = process.argv.slice(2);

function sizes(folder) {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter(f => f.isFile()).map(f => join(f.parentPath ?? f.path, f.name));
  const sent = files.filter(f => relative(folder, f) !== 'sw.js');
  const plain = sent.reduce((sum, f) => sum + readFileSync(f).length, 0);
  const packed = sent.reduce((sum, f) => sum + brotliCompressSync(readFileSync(f), { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } }).length, 0);
  return { files: sent.length, plain, packed };
}

// A browser that somebody else runs at the same time is none of ours.
function isOurs(id) {
  for (let at = Number(id); at > 1;) {
    if (at === process.pid) return true;
    at = Number(readFileSync(`/proc/${at}/stat`, 'utf8').split(') ').at(-1).split(' ')[1]);
  }
  return false;
}

/** The largest process of this run's browser: the one the page lives in. */
function renderer() {
  let best = { rss: 0, own: 0, cpu: 0 };
  for (const id of readdirSync('/proc').filter(n => /^\d+$/.test(n))) {
    try {
      if (!readFileSync(`/proc/${id}/cmdline`, 'utf8').includes('--type=renderer') || !isOurs(id)) continue;
      const status = readFileSync(`/proc/${id}/status`, 'utf8');
      const rss = Number(status.match(/VmRSS:\s+(\d+)/)[1]) / 1024;
      const own = Number(status.match(/RssAnon:\s+(\d+)/)[1]) / 1024;
      const stat = readFileSync(`/proc/${id}/stat`, 'utf8').split(') ')[1].split(' ');
      if (rss > best.rss) best = { rss, own, cpu: (Number(stat[11]) + Number(stat[12])) / 100 };
    } catch {
      // A process that ended meanwhile.
    }
  }
  return best;
}

const memory = () => [renderer().own.toFixed(0), renderer().rss.toFixed(0)];
const host = await serve(site);
const seconds = from => ((performance.now() - from) / 1000).toFixed(1);
const row = (...cells) => console.log(`| ${cells.join(' | ')} |`);
const { files, plain, packed } = sizes(site);
console.log(`${files} files, ${(plain / 1e6).toFixed(2)} MB, with Brotli ${(packed / 1e6).toFixed(2)} MB; load of the machine ${readFileSync('/proc/loadavg', 'utf8').split(' ')[0]}.\n`);
row('what', 'wall, s', 'processor, s', 'own memory, MB', 'with shared libraries, MB');
row('---', '---:', '---:', '---:', '---:');
for (const folder of folders) {
  const browser = await launch();
  const page = await browser.page();
  await open(page, host.url);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForTimeout(2000);
  const starts = [];
  for (let i = 0; i < 5; i++) {
    const from = performance.now();
    await open(page, host.url);
    starts.push(performance.now() - from);
    await page.waitForTimeout(1000);
  }
  row('ready, warm (median of five)', (starts.sort((a, b) => a - b)[2] / 1000).toFixed(1), '', ...memory());
  // Nobody drops a folder in the moment a page is ready; meanwhile the program prepares itself.
  await page.waitForTimeout(3000);
  const before = renderer().cpu;
  let begun = performance.now();
  await drop(page, folder);
  await page.waitForSelector('#headline', { timeout: 600_000 });
  row(`${folder.split('/').at(-1)}: a week shown`, seconds(begun), (renderer().cpu - before).toFixed(1), ...memory());
  await page.waitForFunction(() => document.getElementById('progress').hidden && !document.querySelector('.first-look'), null, { timeout: 600_000 });
  row(`${folder.split('/').at(-1)}: judged with everything read`, seconds(begun), (renderer().cpu - before).toFixed(1), ...memory());
  await judged(page, 600_000);
  row(`${folder.split('/').at(-1)}: weeks and rides listed`, seconds(begun), (renderer().cpu - before).toFixed(1), ...memory());
  const processor = renderer().cpu;
  begun = performance.now();
  await page.evaluate(() => { document.getElementById('week').dataset.old = 'yes'; });
  await page.fill('#rider-power_w', '244');
  await page.dispatchEvent('#rider-power_w', 'change');
  await page.waitForFunction(() => !document.getElementById('week').dataset.old, null, { timeout: 600_000 });
  row(`${folder.split('/').at(-1)}: an answer judged again`, seconds(begun), (renderer().cpu - processor).toFixed(1), ...memory());
  const laying = renderer().cpu;
  begun = performance.now();
  await page.click('#lay-out');
  await page.waitForSelector('#laid-out', { timeout: 600_000 });
  row(`${folder.split('/').at(-1)}: a week laid out`, seconds(begun), (renderer().cpu - laying).toFixed(1), ...memory());
  await browser.close();
}
await host.close();
