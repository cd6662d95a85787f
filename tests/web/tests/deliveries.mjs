import { cp, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { drop, judged, launch, lookBackFrom, open, saved } from '../lib/browser.mjs';
import { assert, check } from '../lib/check.mjs';
import { reviewed } from '../lib/native.mjs';
import { demo, site, singleFile, work } from '../lib/places.mjs';
import { serve } from '../lib/server.mjs';

async function demoReviewed(page) {
  await drop(page, demo);
  await judged(page);
  await lookBackFrom(page, '2026-06-22');
  await judged(page);
}

check('After one visit the site works with the server stopped, ten times out of ten', async () => {
  const native = await reviewed(demo, '--as-of', '2026-06-22');
  const host = await serve(site);
  const browser = await launch();
  try {
    const page = await browser.page();
    await open(page, host.url);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await host.close();
    for (let i = 0; i < 10; i++) {
      await open(page, host.url);
      await demoReviewed(page);
      assert.equal(await page.textContent('#headline'), native.document.summary.headline);
    }
  } finally {
    await browser.close();
  }
});

check('A new version of the site replaces the old one, all its files together', async () => {
  const folder = join(work, 'versions');
  await cp(site, folder, { recursive: true });
  const host = await serve(folder, '/p/');
  const browser = await launch();
  try {
    const page = await browser.page();
    await open(page, host.url);
    await page.evaluate(() => navigator.serviceWorker.ready);
    const worker = await readFile(join(folder, 'sw.js'), 'utf8');
    const version = worker.match(/version = '(\w{16})'/)[1];
    assert.deepEqual(await page.evaluate(() => caches.keys()), [`rideaudit-${version}`]);
    const list = JSON.parse(worker.match(/files = (\[.*?\]);/)[1]);
    assert.equal(await page.evaluate(async name => (await (await caches.open(name)).keys()).length, `rideaudit-${version}`), list.length);
    await writeFile(join(folder, 'index.html'), (await readFile(join(folder, 'index.html'), 'utf8')).replace('<p class="name">RideAudit</p>', '<p class="name">RideAudit, another</p>'));
    await writeFile(join(folder, 'sw.js'), worker.replace(version, 'another'));
    await open(page, host.url);
    // A promise is not awaited by waitForFunction: asked again until the old version is gone.
    for (let tries = 0; (await page.evaluate(() => caches.keys())).join() !== 'rideaudit-another'; tries++) {
      assert.ok(tries < 600, 'the new version was not taken');
      await page.waitForTimeout(100);
    }
    await host.close();
    await open(page, host.url);
    assert.equal(await page.textContent('.name'), 'RideAudit, another');
  } finally {
    await browser.close();
    await host.close().catch(() => {});
  }
});

check('The page of one file runs from the disk: JSON and PDF are the terminal program’s, and nothing is asked of any network', async () => {
  const browser = await launch();
  try {
    const page = await browser.page();
    await open(page, pathToFileURL(singleFile).href);
    await demoReviewed(page);
    const native = await reviewed(demo, '--as-of', '2026-06-22');
    assert.ok((await saved(page, '#save-json')).bytes.equals(native.json));
    assert.ok((await saved(page, '#save-pdf')).bytes.equals(native.pdf));
    assert.deepEqual(page.requests.filter(r => !/^(file|blob|data):/.test(r)), []);
    assert.deepEqual(page.faults, []);
  } finally {
    await browser.close();
  }
});

check('The page of one file may connect to nothing, and names its inline script and style by their hashes', async () => {
  const html = await readFile(singleFile, 'utf8');
  const policy = html.match(/Content-Security-Policy" content="([^"]+)"/)[1];
  assert.match(policy, /default-src 'none'/);
  assert.match(policy, /connect-src 'none'/);
  assert.match(policy, /script-src 'sha256-[^']+' blob: 'wasm-unsafe-eval'/);
  assert.doesNotMatch(policy, /unsafe-inline|'unsafe-eval'|https?:/);
});
