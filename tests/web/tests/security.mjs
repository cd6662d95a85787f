import { mkdir, readFile, writeFile, cp } from 'node:fs/promises';
import { join } from 'node:path';
import { drop, judged, launch, lookBackFrom, open, saved } from '../lib/browser.mjs';
import { assert, check } from '../lib/check.mjs';
import { demo, site, work } from '../lib/places.mjs';
import { serve } from '../lib/server.mjs';

check('During a review nothing is asked of any host, and every request before was the site’s own', async () => {
  const host = await serve(site);
  const browser = await launch();
  try {
    const page = await browser.page();
    await open(page, host.url);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.waitForTimeout(1000);
    const before = host.asked.length;
    await drop(page, demo);
    await judged(page);
    await lookBackFrom(page, '2026-06-22');
    await judged(page);
    await saved(page, '#save-pdf');
    await page.click('#pages summary');
    await page.waitForSelector('.page-sheet svg');
    assert.deepEqual(host.asked.slice(before), []);
    assert.deepEqual(page.requests.filter(r => !r.startsWith(host.url) && !/^(blob|data):/.test(r)), []);
  } finally {
    await browser.close();
    await host.close();
  }
});

check('Neither the page nor its worker can connect elsewhere, and no inline script runs', async () => {
  const host = await serve(site);
  const elsewhere = await serve(site, '/');
  const browser = await launch();
  try {
    const page = await browser.page();
    await open(page, host.url);
    assert.equal(await page.evaluate(url => fetch(url).then(() => 'came', () => 'refused'), elsewhere.url), 'refused');
    const worker = page.workers()[0];
    assert.equal(await worker.evaluate(url => fetch(url).then(() => 'came', () => 'refused'), elsewhere.url), 'refused');
    assert.equal(await page.evaluate(url => new Promise(resolve => {
      const image = new Image();
      image.onload = () => resolve('came');
      image.onerror = () => resolve('refused');
      image.src = `${url}mark.svg`;
    }), elsewhere.url), 'refused');
    assert.equal(await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'window.ran = true';
      document.body.append(script);
      return window.ran ?? false;
    }), false);
    assert.deepEqual(elsewhere.asked, []);
    const policy = (await readFile(join(site, 'index.html'), 'utf8')).match(/Content-Security-Policy" content="([^"]+)"/)[1];
    assert.match(policy, /default-src 'none'.*connect-src 'self'/);
    assert.doesNotMatch(policy, /unsafe-inline|'unsafe-eval'|https?:/);
  } finally {
    await browser.close();
    await host.close();
    await elsewhere.close();
  }
});

check('Hostile names, labels and notes are shown as text and do nothing', async () => {
  const folder = join(work, 'hostile');
  await mkdir(folder, { recursive: true });
  const markup = '<img src=x onerror="window.hurt=1"><script>window.hurt=1</script>';
  await cp(demo, folder, { recursive: true });
  const rider = await readFile(join(demo, 'rider.toml'), 'utf8');
  await writeFile(join(folder, 'rider.toml'), rider.replace('"Rider A"', `'${markup}'`));
  await writeFile(join(folder, 'note.md'), `A note with ${markup} and [a link](javascript:window.hurt=1)`);
  await writeFile(join(folder, 'plan.csv'), `date,kind,minutes,session,note\n2026-06-23,high,60,"${markup.replaceAll('"', '""')}","${markup.replaceAll('"', '""')}"\n2026-06-24,"${markup.replaceAll('"', '""')}",60,,\n`);
  await writeFile(join(folder, '2026-06-19-columns.csv'), `"${markup.replaceAll('"', '""')}",b\n1,2\n`);
  await cp(join(demo, '2026-06-21-tempo.fit'), join(folder, '2026-06-14-<img src=x onerror=window.hurt=1>&amp;.fit'));
  await writeFile(join(folder, '"><svg onload=window.hurt=1>.fit'), 'no ride');
  const host = await serve(site);
  const browser = await launch();
  try {
    const page = await browser.page();
    page.on('dialog', () => page.evaluate(() => { window.hurt = 1; }));
    await open(page, host.url);
    await drop(page, folder);
    await judged(page);
    await lookBackFrom(page, '2026-06-22');
    await judged(page);
    await page.click('#pages summary');
    await page.waitForSelector('.page-sheet svg');
    await page.click('#all-rides summary');
    assert.ok((await page.textContent('#review article .quiet')).includes(markup));
    assert.equal(await page.inputValue('#rider-label'), markup);
    assert.ok((await page.textContent('.pre')).includes(markup));
    assert.equal(await page.inputValue('#plan-2026-06-23-0-session'), markup);
    assert.ok((await page.textContent('#columns')).includes('<img src=x'));
    await page.click('#lay-out');
    await page.waitForSelector('#laid-out');
    assert.equal(await page.evaluate(() => window.hurt ?? null), null);
    assert.equal(await page.locator('main img, main script, main [onerror], main [onload], a[href^="javascript"]').count(), 0);
    assert.deepEqual(page.faults, []);
  } finally {
    await browser.close();
    await host.close();
  }
});
