import { cp, mkdir, readFile, readdir, writeFile } from 'node:fs/promises';
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { drop, judged, outdate, saved } from '../lib/browser.mjs';
import { assert, check } from '../lib/check.mjs';
import { rideaudit, reviewed, reviewedWith } from '../lib/native.mjs';
import { demo, root, work, worked } from '../lib/places.mjs';
import { answer, onSite, reviewOf } from '../lib/visit.mjs';

async function same(page, native) {
  assert.ok((await saved(page, '#save-json')).bytes.equals(native.json), 'the JSON differs from the terminal program’s');
  assert.ok((await saved(page, '#save-pdf')).bytes.equals(native.pdf), 'the PDF differs from the terminal program’s');
}

check('The demo dropped by drag events gives the terminal program’s headline, JSON and PDF, byte for byte', () => onSite(async page => {
  const native = await reviewed(demo, '--as-of', '2026-06-22');
  await reviewOf(page, demo, '2026-06-22');
  assert.equal(await page.textContent('#headline'), native.document.summary.headline);
  await same(page, native);
}));

check('Files dropped before the program is up are read when it is', () => onSite(async page => {
  await page.reload();
  assert.notEqual(await page.evaluate(() => document.documentElement.dataset.ready), 'yes');
  await drop(page, demo);
  await judged(page);
  assert.ok(await page.isHidden('#trouble'));
}));

check('An earlier week is judged as the terminal program judges it', () => onSite(async page => {
  await reviewOf(page, demo, '2026-06-22');
  await outdate(page);
  await page.selectOption('#week', '2026-06-01');
  await judged(page);
  await same(page, await reviewed(demo, '--as-of', '2026-06-22', '--week', '2026-06-01'));
  await page.click('#later');
  await page.waitForFunction(() => document.querySelector('#review article .quiet').textContent.includes('8 June 2026'));
}));

check('Ten worked riders give the terminal program’s JSON and PDF, byte for byte', () => onSite(async page => {
  const folders = (await readdir(worked, { withFileTypes: true })).filter(f => f.isDirectory()).map(f => f.name);
  assert.equal(folders.length, 10);
  for (const folder of folders) {
    const at = join(worked, folder);
    const native = await reviewed(at, '--as-of', '2026-05-11').catch(fault => fault);
    if (native instanceof Error) {
      await drop(page, at);
      await page.waitForFunction(() => !document.getElementById('trouble').hidden && document.getElementById('progress').hidden);
      assert.match(await page.textContent('#trouble'), /no usable ride/);
      continue;
    }
    await reviewOf(page, at, '2026-05-11');
    await same(page, native).catch(fault => { throw new Error(`${folder}: ${fault.message}`); });
  }
}));

check('What became of the plan is told for every session, as the terminal program tells it', () => onSite(async page => {
  const { week } = (await reviewed(demo, '--as-of', '2026-06-22')).document;
  assert.ok(week.planned_and_ridden.length > 4);
  await reviewOf(page, demo, '2026-06-22');
  const rows = await page.$$eval('[aria-labelledby="planned"] tbody tr', list => list.map(r => r.textContent));
  assert.equal(rows.length, week.planned_and_ridden.length);
  week.planned_and_ridden.forEach(({ sentence, rides }, i) => [sentence, ...rides].forEach(text => assert.ok(rows[i].includes(text), text)));
}));

check('A finding leads to its ride, and the pages’ own links lead on', () => onSite(async page => {
  await reviewOf(page, demo, '2026-06-22');
  await page.click('#of-rule-hard-day-spacing a');
  assert.match(await page.textContent('tr:target th'), /2026-06-16-intervals\.fit/);
  await page.click('#pages summary');
  await page.waitForSelector('.page-sheet svg');
  const targets = await page.$$eval('.page-sheet a', links => links.map(a => a.getAttribute('href')).filter(h => h.startsWith('#')));
  assert.ok(targets.length > 3);
  for (const target of targets) assert.equal(await page.locator(`.page-sheet [id="${target.slice(1)}"]`).count(), 1, target);
}));

check('The pages are drawn in their own fonts, and page one is saved as a picture', () => onSite(async page => {
  await reviewOf(page, demo, '2026-06-22');
  const { bytes } = await saved(page, '#save-picture');
  assert.deepEqual([...bytes.subarray(1, 4)], [...Buffer.from('PNG')]);
  assert.deepEqual([bytes.readUInt32BE(16), bytes.readUInt32BE(20)], [1786, 2526]);
  assert.ok(await page.evaluate(() => document.fonts.size > 0 && [...document.fonts].every(f => f.status === 'loaded')));
}));

check('The card is as tall as the terminal program’s, and shows the same', () => onSite(async page => {
  const file = join(work, 'card.png');
  await rideaudit('review', demo, '--as-of', '2026-06-22', '--no-pdf', '--png', file, '--quiet');
  const native = await readFile(file);
  await reviewOf(page, demo, '2026-06-22');
  const { bytes } = await saved(page, '#save-card');
  assert.deepEqual([bytes.readUInt32BE(16), bytes.readUInt32BE(20)], [1080, native.readUInt32BE(20)]);
  assert.equal(native.readUInt32BE(16), 1080);
  // Two rasterisers blend the edges of letters differently; a letter that is missing or moved is a spot of many pixels.
  const { share, worst } = await page.evaluate(async ([ours, theirs]) => {
    const [a, b] = await Promise.all([ours, theirs].map(async text => {
      const picture = await createImageBitmap(new Blob([Uint8Array.from(atob(text), c => c.charCodeAt(0))], { type: 'image/png' }));
      const canvas = new OffscreenCanvas(picture.width, picture.height);
      const context = canvas.getContext('2d');
      context.drawImage(picture, 0, 0);
      return context.getImageData(0, 0, picture.width, picture.height).data;
    }));
    const spots = new Map();
    let sum = 0;
    for (let i = 0; i < a.length; i += 4) {
      const difference = Math.abs(a[i] - b[i]) + Math.abs(a[i + 1] - b[i + 1]) + Math.abs(a[i + 2] - b[i + 2]);
      sum += difference;
      const spot = `${Math.floor(i / 4 % 1080 / 24)} ${Math.floor(i / 4 / 1080 / 24)}`;
      if (difference > 450) spots.set(spot, (spots.get(spot) ?? 0) + 1);
    }
    return { share: sum / (a.length / 4 * 765), worst: Math.max(0, ...spots.values()) };
  }, [bytes.toString('base64'), native.toString('base64')]);
  assert.ok(share < 0.005, `the cards differ by ${share} of all light`);
  assert.ok(worst < 40, `in one spot of 24 by 24 pixels ${worst} are ink on one card and paper on the other`);
}));

check('Files that are no rides are named with their reasons, and the rest is judged', () => onSite(async page => {
  const mixed = join(work, 'mixed');
  await mkdir(mixed, { recursive: true });
  await cp(demo, mixed, { recursive: true });
  for (const name of await readdir(join(root, 'testdata/fit/bad'))) await cp(join(root, 'testdata/fit/bad', name), join(mixed, name), { recursive: true });
  const native = await reviewed(mixed, '--as-of', '2026-06-22');
  await reviewOf(page, mixed, '2026-06-22');
  await same(page, native);
  const shown = await page.textContent('#review');
  for (const notice of native.document.notices.filter(n => n.unusable)) assert.ok(shown.includes(notice.sentence), notice.file);
}));

check('A folder in a folder, a zip and single files are taken', () => onSite(async page => {
  const packed = join(work, 'packed');
  await mkdir(join(packed, 'a/b'), { recursive: true });
  await cp(demo, join(packed, 'a/b/rides'), { recursive: true });
  await reviewOf(page, packed, '2026-06-22');
  assert.match(await page.textContent('#week-rides'), /4$/);
  execFileSync('zip', ['-q', '-r', join(work, 'rides.zip'), '.'], { cwd: demo });
  const native = JSON.parse((await reviewed(demo, '--as-of', '2026-06-22')).json);
  await reviewOf(page, join(work, 'rides.zip'), '2026-06-22');
  assert.equal(await page.textContent('#headline'), native.summary.headline);
  const files = (await readdir(demo)).filter(f => f.startsWith('2026-06') || f === 'rider.toml').map(f => join(demo, f));
  await drop(page, ...files);
  await judged(page);
  assert.match(await page.textContent('#week-rides'), /4$/);
}));

check('Three riders give the desk in the terminal program’s order, and each opens', () => onSite(async page => {
  const riders = join(work, 'riders');
  for (const name of ['away', 'mixed', 'commuter']) await cp(join(worked, name), join(riders, name), { recursive: true });
  await rideaudit('roster', riders, '--as-of', '2026-05-11', '--out', join(work, 'roster'), '--quiet');
  const native = JSON.parse(await readFile(join(work, 'roster/overview.json'), 'utf8'));
  await page.clock.setFixedTime(new Date('2026-05-11T12:00:00+01:00'));
  await drop(page, riders);
  await page.waitForSelector('#desk:not([hidden]) tbody tr');
  const named = r => (r.label === r.folder ? r.label : `${r.label} (${r.folder})`);
  assert.deepEqual(await page.$$eval('#desk-matrix tbody th', list => list.map(h => h.textContent)), native.riders.map(named));
  assert.deepEqual(await page.$$eval('#desk .why', list => list.map(p => p.textContent)), native.riders.map(r => r.why));
  for (const rider of native.riders) {
    await outdate(page);
    await page.click(`#desk-matrix button:text-is("${named(rider)}")`);
    await judged(page);
    assert.ok((await page.textContent('#review article .quiet')).startsWith(rider.label));
  }
}));

check('The latest week is shown while the history is still being read', () => onSite(async page => {
  const long = join(work, 'long');
  await mkdir(long, { recursive: true });
  const ride = await readFile(join(demo, '2026-06-20-steady.csv'), 'utf8');
  await cp(join(demo, 'rider.toml'), join(long, 'rider.toml'));
  for (let i = 0; i < 160; i++) {
    const day = new Date(Date.UTC(2026, 5, 21 - i)).toISOString().slice(0, 10);
    await writeFile(join(long, `${day}.csv`), ride.replaceAll('2026-06-20', day));
  }
  await page.evaluate(() => new MutationObserver(() => {
    if (document.querySelector('.first-look')) window.firstLook ??= document.getElementById('progress-text').textContent;
  }).observe(document.getElementById('review'), { childList: true, subtree: true }));
  await drop(page, long);
  await judged(page);
  const seen = await page.evaluate(() => window.firstLook);
  assert.match(seen ?? '', /^\d+ of 161 files/);
  assert.ok(Number(seen.split(' ')[0]) < 161);
}));

check('Reading can be stopped, and what was read is judged', () => onSite(async page => {
  const long = join(work, 'long');
  // After three files at least: the first is the rider file, and of that alone no week can be judged.
  await page.evaluate(() => new MutationObserver(() => {
    if (parseInt(document.getElementById('progress-text').textContent, 10) >= 3) document.getElementById('stop').click();
  }).observe(document.getElementById('progress-text'), { childList: true }));
  await drop(page, long);
  await judged(page);
  assert.match(await page.textContent('#trouble'), /^Stopped after \d+ of 161 files/);
}));

check('The list of all rides is asked for when it is opened, has every ride, and stays open when an answer changes it', () => onSite(async page => {
  await reviewOf(page, demo, '2026-06-22');
  const said = Number((await page.textContent('#all-rides summary')).match(/^All rides: (\d+)$/)[1]);
  assert.ok(said > 70);
  assert.equal(await page.locator('#all-rides tbody tr').count(), 0);
  await page.click('#all-rides summary');
  await page.waitForSelector('#all-rides tbody tr');
  assert.equal(await page.locator('#all-rides tbody tr').count(), said);
  const before = await page.textContent('#all-rides tbody tr');
  await answer(page, '#rider-power_w', '200');
  await page.waitForFunction(text => (document.querySelector('#all-rides tbody tr')?.textContent ?? text) !== text, before);
}));

/** The demo under another name. */
async function labelled(name, label) {
  const folder = join(work, name);
  await cp(demo, folder, { recursive: true });
  await writeFile(join(folder, 'rider.toml'), (await readFile(join(demo, 'rider.toml'), 'utf8')).replace('"Rider A"', `"${label}"`));
  return folder;
}

/** The pages' text as it is drawn. */
async function drawn(page) {
  await page.click('#pages summary');
  await page.waitForSelector('.page-sheet svg');
  return (await page.$$eval('.page-sheet svg', sheets => sheets.map(s => s.textContent).join(' '))).replaceAll('\u00a0', ' ').replaceAll(/\s+/g, ' ');
}

check('Greek and Cyrillic are drawn as the terminal program draws them; other scripts are named in the pages with a font that has them', async () => {
  await onSite(async page => {
    const folder = await labelled('greek', 'Αναβάτης Ездок');
    await reviewOf(page, folder, '2026-06-22');
    await same(page, await reviewed(folder, '--as-of', '2026-06-22'));
    assert.ok((await drawn(page)).includes('Αναβάτης Ездок'));
  });
  await onSite(async page => {
    await reviewOf(page, await labelled('japanese', '乗り手 راكب'), '2026-06-22');
    assert.ok((await page.textContent('#review article .quiet')).includes('乗り手 راكب'));
    const text = await drawn(page);
    for (const words of ['[Chinese or Japanese]', '[Arabic]', 'IPAexGothic', 'Text in Arabic script is not set by this program']) assert.ok(text.includes(words), words);
  });
});

check('A font dropped on the page draws what its own lacks, in the PDF too, as the terminal program does with that font installed', () => onSite(async page => {
  const home = join(work, 'home-with-a-font');
  await cp(join(root, 'testdata/fonts'), join(home, '.local/share/fonts'), { recursive: true });
  const folder = await labelled('lettered', '乗り手');
  await reviewOf(page, folder, '2026-06-22');
  assert.ok((await drawn(page)).includes('[Chinese or Japanese]'));
  await drop(page, join(root, 'testdata/fonts/made.ttf'));
  await judged(page);
  await same(page, await reviewedWith({ HOME: home }, folder, '--as-of', '2026-06-22'));
  await page.waitForFunction(() => document.querySelector('.page-sheet svg')?.textContent.includes('乗り手'));
  assert.match(await page.innerText('#fonts'), /^1 font taken/);
  const none = join(work, 'none.ttf');
  await writeFile(none, 'no font');
  await drop(page, none);
  await page.waitForFunction(() => document.getElementById('trouble').textContent.includes('none.ttf'));
}));
