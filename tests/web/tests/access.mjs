import { drop, judged, launch, lookBackFrom, open } from '../lib/browser.mjs';
import { assert, check } from '../lib/check.mjs';
import { reviewed } from '../lib/native.mjs';
import { demo, site } from '../lib/places.mjs';
import { serious } from '../lib/serious.mjs';
import { serve } from '../lib/server.mjs';

async function withDemo(options, use) {
  const host = await serve(site);
  const browser = await launch(options);
  try {
    const page = await browser.page();
    await open(page, host.url);
    await use(page, async () => {
      await drop(page, demo);
      await judged(page);
      await lookBackFrom(page, '2026-06-22');
      await judged(page);
    });
  } finally {
    await browser.close();
    await host.close();
  }
}

for (const [name, options] of [
  ['in light', { colorScheme: 'light' }], ['in dark', { colorScheme: 'dark' }], ['on a phone', { viewport: { width: 390, height: 844 } }],
])
  check(`axe-core finds nothing serious ${name}, before and after a review`, () => withDemo(options, async (page, review) => {
    assert.deepEqual(await serious(page), []);
    await review();
    await page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true; }));
    await page.waitForSelector('.page-sheet svg');
    assert.deepEqual(await serious(page), []);
  }));

for (const [name, width, height] of [['390 px', 390, 844], ['320 px, as 1280 at 400 % zoom', 320, 256], ['640 px, as 1280 at 200 % zoom', 640, 450]])
  check(`Nothing runs out of the page at ${name}`, () => withDemo({ viewport: { width, height } }, async (page, review) => {
    const over = () => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    assert.equal(await over(), 0);
    await review();
    await page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true; }));
    await page.waitForSelector('.page-sheet svg');
    assert.equal(await over(), 0);
  }));

check('Everything can be reached and used by keyboard, with the focus to be seen', () => withDemo({}, async (page, review) => {
  await page.keyboard.press('Tab');
  assert.equal(await page.evaluate(() => document.activeElement.className), 'skip');
  await page.keyboard.press('Tab');
  assert.equal(await page.evaluate(() => document.activeElement.id), 'choose-folder');
  assert.notEqual(await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle), 'none');
  const asked = new Promise(resolve => page.once('filechooser', resolve));
  await page.waitForTimeout(200);
  await page.keyboard.press('Enter');
  const chooser = await asked;
  await chooser.setFiles(demo);
  await judged(page);
  assert.equal(await page.evaluate(() => document.activeElement.id), 'headline');
  await review();
  const reached = new Set();
  for (let i = 0; i < 200; i++) {
    await page.keyboard.press('Tab');
    reached.add(await page.evaluate(() => document.activeElement.id || document.activeElement.textContent.slice(0, 30)));
  }
  for (const id of ['week', 'earlier', 'as-of', 'save-pdf', 'save-card', 'save-picture', 'save-rider', 'plan-week', 'plan-2026-06-23-0-kind', 'lay-out', 'rider-label', 'rider-power_w', 'rider-note-add', 'keep'])
    assert.ok(reached.has(id), `${id} is not reached by Tab`);
  await page.focus('#earlier');
  for (let i = 0; i < 15 && await page.evaluate(() => document.activeElement.id) !== 'save-pdf'; i++) await page.keyboard.press('Tab');
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  assert.equal(download.suggestedFilename(), 'review-2026-06-15.pdf');
}));

check('Where less motion is wished for, nothing glides', () => withDemo({ reducedMotion: 'reduce' }, async page => {
  assert.equal(await page.evaluate(() => getComputedStyle(document.documentElement).scrollBehavior), 'auto');
}));

check('What has come is said to those who listen', () => withDemo({}, async (page, review) => {
  await review();
  assert.equal(await page.textContent('#said'), await page.textContent('#headline'));
  const { rides } = (await reviewed(demo, '--as-of', '2026-06-22')).document;
  const tuesday = rides.find(r => r.starts_at.startsWith('2026-06-16'));
  assert.ok((await page.getAttribute('.spacing svg', 'aria-label')).replaceAll('\u00a0', ' ').includes(`Tue 16: high 55 min, ${Math.round(tuesday.stress)} points.`));
}));
