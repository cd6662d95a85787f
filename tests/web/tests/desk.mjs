import { cp, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { drop, judged } from '../lib/browser.mjs';
import { assert, check } from '../lib/check.mjs';
import { rideaudit } from '../lib/native.mjs';
import { demo, work } from '../lib/places.mjs';
import { serious } from '../lib/serious.mjs';
import { onSite } from '../lib/visit.mjs';

const day = '2026-06-22';
const names = ['demo', 'demo-too', 'unplanned', 'nothing'];

/** Two riders who break the same rules, one with a plan, a note and an event to come, one with neither, one without a ride. */
async function squad() {
  const at = join(work, 'squad');
  await rm(at, { recursive: true, force: true });
  await cp(demo, join(at, 'demo'), { recursive: true });
  await writeFile(join(at, 'demo/note.md'), 'Sleeps badly since Tuesday.');
  await writeFile(join(at, 'demo/event.csv'), 'date,kind,minutes,session\n2026-07-05,event,300,Hill race\n');
  await cp(demo, join(at, 'demo-too'), { recursive: true });
  await cp(demo, join(at, 'unplanned'), { recursive: true, filter: name => !name.endsWith('plan.csv') });
  await mkdir(join(at, 'nothing'), { recursive: true });
  await writeFile(join(at, 'nothing/rider.toml'), 'label = "Rider N"\n');
  await rideaudit('roster', at, '--as-of', day, '--out', join(work, 'squad-out'), '--quiet');
  return { at, roster: JSON.parse(await readFile(join(work, 'squad-out/overview.json'), 'utf8')) };
}

async function withSquad(use, options) {
  const { at, roster } = await squad();
  await onSite(async page => {
    await page.clock.setFixedTime(new Date(`${day}T12:00:00+01:00`));
    await drop(page, at);
    await page.waitForSelector('#desk:not([hidden]) #desk-matrix', { timeout: 120_000 });
    await use(page, roster);
  }, options);
}

check('The desk shows every rule’s verdict of every rider as the terminal program’s roster has it, in its order of risk', () => withSquad(async (page, roster) => {
  assert.equal(roster.riders.length, names.length);
  const rules = roster.riders.flatMap(r => r.verdicts).map(v => v.name).filter((name, i, all) => all.indexOf(name) === i);
  assert.ok(rules.length > 10);
  assert.deepEqual(await page.$$eval('#desk-matrix thead th', list => list.map(h => h.textContent)), ['Rider', 'Needs', ...rules]);
  const rows = await page.$$eval('#desk-matrix tbody tr', list => list.map(r => [...r.children].map(c => [...c.querySelectorAll('.word, .visually-hidden')].map(w => w.textContent.trim()).join('') || c.textContent)));
  assert.deepEqual(rows, roster.riders.map(r => [
    r.label === r.folder ? r.label : `${r.label} (${r.folder})`,
    `${{ broken: '✗', watch: '!', kept: '✓' }[r.need] ?? '–'} ${r.need}`,
    ...rules.map(name => r.verdicts.find(v => v.name === name)?.verdict ?? 'no review'),
  ]));
  for (const verdict of ['broken', 'kept', 'not judged', 'no review']) assert.ok(rows.flat().includes(verdict), verdict);
}));

check('A mark on the desk is told by its shape and its word, never by colour alone', () => withSquad(async page => {
  const said = await page.$$eval('#desk-matrix td.rule', cells => cells.map(c => [c.querySelector('[aria-hidden]')?.textContent ?? '', (c.querySelector('.word, .visually-hidden')).textContent.trim()]));
  const marks = { broken: '✗', watch: '!', kept: '✓', 'not judged': '–', 'no review': '' };
  for (const [mark, word] of said) assert.equal(mark, marks[word], word);
  const caption = await page.textContent('#desk-matrix caption');
  for (const word of ['broken', 'watch', 'kept', 'not judged']) assert.ok(caption.includes(`${marks[word]} ${word}`), word);
}));

check('What several riders share is told together, and note, next event and planned sessions stand with the rider', () => withSquad(async (page, roster) => {
  assert.ok(roster.shared.length > 0);
  const told = await page.$$eval('[aria-labelledby="desk-shared"] li', list => list.map(l => l.textContent));
  assert.equal(told.length, roster.shared.length);
  roster.shared.forEach((s, i) => [s.name, s.verdict, ...s.riders].forEach(text => assert.ok(told[i].includes(text), `${told[i]}: ${text}`)));
  const riders = await page.$$eval('.desk-rider', list => list.map(l => l.textContent));
  roster.riders.forEach((r, i) => r.facts.forEach(fact => assert.ok(riders[i].includes(fact), fact)));
  const planned = riders[roster.riders.findIndex(r => r.folder === 'demo')];
  for (const text of ['Sleeps badly since Tuesday.', 'Next event: Hill race', 'planned sessions ridden']) assert.ok(planned.replaceAll('\u00a0', ' ').includes(text), text);
}));

check('Four weeks of each rider are drawn as small spacing lines, and told in words', () => withSquad(async (page, roster) => {
  const drawn = await page.$$eval('.desk-rider', list => list.map(l => ({ words: l.querySelector('svg')?.getAttribute('aria-label') ?? '', shapes: l.querySelectorAll('svg path').length, dates: [...l.querySelectorAll('figcaption span')].map(s => s.textContent).filter(Boolean).length })));
  roster.riders.forEach((rider, i) => {
    assert.equal(drawn[i].dates, rider.weeks.length, rider.folder);
    const ridden = rider.weeks.flatMap(w => w.days).filter(d => d.hours > 0).length;
    assert.ok(drawn[i].shapes >= ridden, `${rider.folder}: ${drawn[i].shapes} shapes for ${ridden} days`);
    assert.equal(drawn[i].words.split('Week of ').length - 1, rider.weeks.length);
    const hours = rider.weeks.at(-1)?.days.reduce((sum, d) => sum + d.hours, 0);
    if (hours > 0) assert.ok(drawn[i].words.replaceAll('\u00a0', ' ').includes(`${hours.toFixed(1)} h on `), drawn[i].words);
  });
}));

for (const [width, options] of [[1280, {}], [390, { viewport: { width: 390, height: 844 } }]])
  check(`The desk is a table to those who listen, by keyboard, uncut and without serious faults at ${width} px`, () => withSquad(async (page, roster) => {
    const session = await page.context().newCDPSession(page);
    const { nodes } = await session.send('Accessibility.getFullAXTree');
    const count = role => nodes.filter(n => !n.ignored && n.role?.value === role).length;
    const rules = new Set(roster.riders.flatMap(r => r.verdicts).map(v => v.rule)).size;
    assert.deepEqual([count('table'), count('columnheader'), count('rowheader'), count('cell')], [1, rules + 2, roster.riders.length, roster.riders.length * (rules + 1)]);
    assert.deepEqual(await page.evaluate(() => {
      const edge = document.documentElement.clientWidth;
      return [...document.querySelectorAll('#desk *')].filter(e => e.getBoundingClientRect().right > edge + 0.5 && !e.closest('thead')).map(e => `${e.tagName} ${e.textContent.slice(0, 40)}`);
    }), []);
    assert.deepEqual(await serious(page), []);
    const last = roster.riders.findLast(r => r.verdicts.length > 0);
    await page.focus('#desk-title');
    for (let i = 0; i < 30 && await page.evaluate(() => document.activeElement.textContent) !== `${last.label} (${last.folder})`; i++) await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await judged(page);
    assert.equal(await page.evaluate(() => document.activeElement.id), 'headline');
  }, options));

check('Hostile labels, folders and notes on the desk are text and do nothing', async () => {
  const at = join(work, 'hostile-desk');
  const markup = '<img src=x onerror="window.hurt=1"><script>window.hurt=1</script>';
  await rm(at, { recursive: true, force: true });
  await cp(demo, join(at, '"><svg onload=window.hurt=1>'), { recursive: true });
  await cp(demo, join(at, 'other'), { recursive: true });
  const rider = await readFile(join(demo, 'rider.toml'), 'utf8');
  await writeFile(join(at, '"><svg onload=window.hurt=1>/rider.toml'), rider.replace('"Rider A"', `'${markup}'`));
  await writeFile(join(at, 'other/note.md'), markup);
  await writeFile(join(at, 'other/event.csv'), `date,kind,minutes,session\n2026-07-05,event,300,"${markup.replaceAll('"', '""')}"\n`);
  await onSite(async page => {
    await page.clock.setFixedTime(new Date(`${day}T12:00:00+01:00`));
    await drop(page, at);
    await page.waitForSelector('#desk:not([hidden]) #desk-matrix', { timeout: 120_000 });
    const shown = await page.textContent('#desk');
    assert.ok(shown.includes(`${markup} ("><svg onload=window.hurt=1>)`));
    assert.ok(shown.includes(`Note: ${markup}`));
    assert.ok(shown.includes(`Next event: ${markup}`));
    assert.equal(await page.evaluate(() => window.hurt ?? null), null);
    assert.equal(await page.locator('#desk img, #desk script, #desk [onload], #desk [onerror]').count(), 0);
  });
});
