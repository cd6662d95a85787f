import { cp, mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { drop, judged, launch, open, outdate, saved } from '../lib/browser.mjs';
import { assert, check } from '../lib/check.mjs';
import { reviewed } from '../lib/native.mjs';
import { demo, site, work } from '../lib/places.mjs';
import { serve } from '../lib/server.mjs';
import { answer, withDemo } from '../lib/visit.mjs';

check('An answer judges again as the terminal program would with the saved rider file, and the file keeps its other lines', () => withDemo(async page => {
  await answer(page, '#rider-power_w', '262');
  const { bytes } = await saved(page, '#save-rider');
  const original = await readFile(join(demo, 'rider.toml'), 'utf8');
  assert.equal(bytes.toString('utf8'), original.replace('power_w = 250', 'power_w = 262'));
  const folder = join(work, 'edited');
  await cp(demo, folder, { recursive: true });
  await writeFile(join(folder, 'rider.toml'), bytes);
  const native = await reviewed(folder, '--as-of', '2026-06-22');
  assert.ok((await saved(page, '#save-json')).bytes.equals(native.json));
}));

check('A threshold from another date is added and the older ones stay', () => withDemo(async page => {
  const original = await readFile(join(demo, 'rider.toml'), 'utf8');
  await answer(page, '#rider-threshold_from', '2026-06-10');
  await answer(page, '#rider-power_w', '255');
  const text = (await saved(page, '#save-rider')).bytes.toString('utf8');
  for (const line of original.split('\n').filter(l => l.trim())) assert.ok(text.includes(line), line);
  assert.match(text, /\[\[threshold\]\]\nfrom = 2026-06-10\npower_w = 255/);
}));

check('Without a rider file the first threshold is in force from the first ride’s date', async () => {
  const bare = join(work, 'bare');
  await cp(demo, bare, { recursive: true, filter: name => !name.endsWith('rider.toml') });
  await withDemo(async page => {
    assert.equal(await page.inputValue('#rider-threshold_from'), '2026-03-03');
    await answer(page, '#rider-power_w', '250');
    assert.match((await saved(page, '#save-rider')).bytes.toString('utf8'), /\nfrom = 2026-03-03\npower_w = 250\n/);
  }, bare);
});

check('Days out are added and taken out as a table', () => withDemo(async page => {
  const rows = await page.locator('#days-out tbody tr').count();
  await page.click('#rider button:text-is("Add days")');
  const row = page.locator('#days-out tbody tr').last();
  await row.locator('input').nth(1).fill('2026-06-21');
  await outdate(page);
  await row.locator('input').first().fill('2026-06-15');
  await page.waitForFunction(() => document.querySelector('#review article .quiet').textContent.includes('excepted'));
  await judged(page);
  assert.match((await saved(page, '#save-rider')).bytes.toString('utf8'), /\[\[exception\]\]\nfrom = 2026-06-15\nto = 2026-06-21\nkind = "lighter"\n/);
  await page.locator('#days-out button:text-is("Take out")').last().click();
  await page.waitForFunction(n => document.querySelectorAll('#days-out tbody tr').length === n, rows);
}));

check('A time zone reads the files again, and says so', () => withDemo(async page => {
  await outdate(page);
  await page.evaluate(() => new MutationObserver(() => { window.told = document.getElementById('said').textContent; }).observe(document.getElementById('progress-title'), { childList: true }));
  await page.fill('#rider-time_zone', 'Pacific/Auckland');
  await page.dispatchEvent('#rider-time_zone', 'change');
  await judged(page);
  assert.equal(JSON.parse((await saved(page, '#save-json')).bytes).rider.time_zone, 'Pacific/Auckland');
  assert.match(await page.textContent('#progress-title'), /^The time zone has changed: reading \d+ files again$/);
  assert.equal(await page.evaluate(() => window.told), await page.textContent('#progress-title'));
}));

check('A rider file that says what cannot be is named by its line', async () => {
  const wrong = join(work, 'wrong');
  await mkdir(wrong, { recursive: true });
  await cp(demo, wrong, { recursive: true });
  await writeFile(join(wrong, 'rider.toml'), 'label = "Rider A"\nweekly_hours = 6\n');
  const host = await serve(site);
  const browser = await launch();
  try {
    const page = await browser.page();
    await open(page, host.url);
    await drop(page, wrong);
    await page.waitForSelector('#rider:not([hidden])');
    assert.match(await page.textContent('#rider'), /line 2: found the unknown key weekly_hours/);
  } finally {
    await browser.close();
    await host.close();
  }
});

check('What was dropped is forgotten with the tab, unless it is kept', () => withDemo(async (page, host) => {
  await open(page, host.url);
  await page.waitForTimeout(500);
  assert.ok(await page.isHidden('#review'));
  await drop(page, demo);
  await judged(page);
  await page.check('#keep');
  await page.waitForFunction(() => document.getElementById('said').textContent.includes('kept'));
  await open(page, host.url);
  await judged(page);
  await page.uncheck('#keep');
  await page.waitForFunction(() => document.getElementById('said').textContent.includes('forgotten'));
  await open(page, host.url);
  await page.waitForTimeout(500);
  assert.ok(await page.isHidden('#review'));
}));

check('A note written here is on page one and is saved', () => withDemo(async page => {
  await page.click('#rider-note-add');
  await answer(page, '#rider-note-0', 'Well held on Thursday.');
  assert.equal(await page.textContent('.pre'), 'Well held on Thursday.');
  const note = await saved(page, '.save-note');
  assert.deepEqual([note.name, note.bytes.toString('utf8')], ['note-2026-06-15.md', 'Well held on Thursday.']);
  const folder = join(work, 'noted');
  await cp(demo, folder, { recursive: true });
  await writeFile(join(folder, note.name), note.bytes);
  const native = await reviewed(folder, '--as-of', '2026-06-22', '--paper', 'letter');
  await page.selectOption('#paper', 'letter');
  assert.ok((await saved(page, '#save-pdf')).bytes.equals(native.pdf));
}));

check('A note with a date stands in its own week, one without in the latest, as in the terminal program', async () => {
  const folder = join(work, 'dated');
  await cp(demo, folder, { recursive: true });
  await writeFile(join(folder, 'note.md'), 'Easy days easy.');
  await writeFile(join(folder, 'note-2026-06-10.md'), 'A week for the long ride.');
  await withDemo(async page => {
    assert.equal(await page.textContent('.pre'), 'Easy days easy.');
    await outdate(page);
    await page.selectOption('#week', '2026-06-08');
    await judged(page);
    assert.equal(await page.textContent('.pre'), 'A week for the long ride.');
    const native = await reviewed(folder, '--as-of', '2026-06-22', '--week', '2026-06-08');
    assert.ok((await saved(page, '#save-json')).bytes.equals(native.json));
  }, folder);
});

check('Columns of a CSV file that were not understood can be named, and the files are read again', async () => {
  const folder = join(work, 'columns');
  await cp(demo, folder, { recursive: true });
  const ride = (await readFile(join(demo, '2026-06-20-steady.csv'), 'utf8')).replaceAll('2026-06-20', '2026-06-18').split('\n');
  const header = ride[0].split(',');
  const own = header.map((_, i) => `Spalte ${i + 1}`);
  await writeFile(join(folder, '2026-06-18-own.csv'), [own.join(','), ...ride.slice(1)].join('\n'));
  await withDemo(async page => {
    assert.match(await page.textContent('#columns'), /2026-06-18-own\.csv \(Spalte 1, Spalte 2/);
    assert.match(await page.textContent('#week-rides'), /4$/);
    await answer(page, '#rider-csv-time', own[0]);
    await answer(page, '#rider-csv-power', own[header.findIndex(h => /power/i.test(h))]);
    assert.match(await page.textContent('#week-rides'), /5$/);
    const { bytes } = await saved(page, '#save-rider');
    assert.match(bytes.toString('utf8'), /\[csv\]\n(time|power) = "Spalte \d"\n(time|power) = "Spalte \d"\n/);
    await writeFile(join(folder, 'rider.toml'), bytes);
    assert.ok((await saved(page, '#save-json')).bytes.equals((await reviewed(folder, '--as-of', '2026-06-22')).json));
  }, folder);
});
