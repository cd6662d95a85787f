import { cp, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { drop, judged, outdate, saved } from '../lib/browser.mjs';
import { assert, check } from '../lib/check.mjs';
import { rideaudit, reviewed } from '../lib/native.mjs';
import { demo, work } from '../lib/places.mjs';
import { answer, withDemo } from '../lib/visit.mjs';

async function copyOfDemo(name) {
  const folder = join(work, name);
  await rm(folder, { recursive: true, force: true });
  await cp(demo, folder, { recursive: true });
  return folder;
}

async function checked(folder, ...args) {
  return JSON.parse((await rideaudit('check', folder, '--format', 'json', ...args)).stdout);
}

/** Does something that changes the plan, and waits until the week is judged again. */
async function changing(page, change) {
  await outdate(page);
  await change();
  await judged(page);
}

function cell(page, day, column, index = 0) {
  return page.locator(`#plan-${day}-${index}-${column}`);
}

/** Holds that the page says of a planned week what the terminal program says. */
async function saysOf(page, week) {
  const shown = await page.textContent('#plan-verdicts');
  for (const verdict of week.verdicts) assert.ok(shown.includes(verdict.sentence), `${verdict.rule}: ${verdict.sentence}`);
  const broken = week.verdicts.filter(v => v.verdict === 'broken').length;
  assert.ok(shown.startsWith(`The rules: ${broken} broken`), shown.slice(0, 60));
}

check('The planned week is a plain table with the rules’ verdicts beside it, those of the terminal program', () => withDemo(async page => {
  const { weeks: [week] } = await checked(demo, '--as-of', '2026-06-15');
  assert.equal(await page.inputValue('#plan-week'), '2026-06-15');
  assert.equal(await cell(page, '2026-06-16', 'session').inputValue(), 'four fives');
  assert.equal(await cell(page, '2026-06-19', 'minutes').inputValue(), '165');
  await saysOf(page, week);
}, demo, '2026-06-15'));

check('A change of the plan is judged at once, and saved it is judged the same by the terminal program', () => withDemo(async page => {
  await cell(page, '2026-06-17', 'kind').selectOption('high');
  await changing(page, async () => {
    await cell(page, '2026-06-17', 'minutes').fill('60');
    await cell(page, '2026-06-17', 'minutes').blur();
  });
  assert.match(await page.textContent('#plan-verdicts .said'), /✗ broken Hard day spacing/);
  const folder = await copyOfDemo('planned');
  const table = await saved(page, '#save-plan');
  assert.equal(table.name, 'plan.csv');
  const before = (await readFile(join(demo, 'plan.csv'), 'utf8')).split(/\r?\n/);
  const after = table.bytes.toString('utf8').split(/\r?\n/);
  assert.deepEqual(after.filter(l => !before.includes(l)), ['2026-06-17,high,60,,,,']);
  assert.deepEqual(before.filter(l => !after.includes(l)), []);
  await writeFile(join(folder, 'plan.csv'), table.bytes);
  const { weeks: [week] } = await checked(folder, '--as-of', '2026-06-15');
  assert.ok(week.verdicts.some(v => v.verdict === 'broken'));
  await saysOf(page, week);
  assert.ok((await saved(page, '#save-json')).bytes.equals((await reviewed(folder, '--as-of', '2026-06-15')).json));
  await changing(page, () => page.click('button[aria-label="Take out high, Wednesday 17 June"]'));
  assert.equal((await saved(page, '#save-plan')).bytes.toString('utf8').trimEnd(), before.join(table.bytes.includes('\r') ? '\r\n' : '\n').trimEnd());
}, demo, '2026-06-15'));

check('A layout says what the terminal program lays out, and taken over it writes the same table', () => withDemo(async page => {
  const native = JSON.parse((await rideaudit('next', demo, '--as-of', '2026-06-22', '--weeks', '2', '--format', 'json')).stdout);
  await page.selectOption('#lay-out-weeks', '2');
  await page.click('#lay-out');
  await page.waitForSelector('#laid-out');
  const shown = await page.textContent('#laid-out');
  for (const day of native.weeks.flatMap(w => w.days)) for (const { sentence } of day.sessions) assert.ok(shown.includes(sentence), sentence);
  await changing(page, () => page.click('#take-over'));
  const folder = await copyOfDemo('taken-over');
  await rideaudit('next', folder, '--as-of', '2026-06-22', '--weeks', '2', '--plan', join(folder, 'plan.csv'));
  assert.equal((await saved(page, '#save-plan')).bytes.toString('utf8'), await readFile(join(folder, 'plan.csv'), 'utf8'));
  const { weeks } = await checked(folder, '--as-of', '2026-06-22');
  await saysOf(page, weeks[0]);
  await page.selectOption('#plan-week', '2026-06-29');
  await page.waitForFunction(() => document.querySelector('#plan-table caption').textContent.includes('29 June'));
  await saysOf(page, weeks[1]);
}));

check('A table of a spreadsheet keeps its separator, its own columns and the rows that cannot be read', async () => {
  const folder = await copyOfDemo('spreadsheet');
  const text = '\uFEFFdate;kind;minutes;coach;note\r\n2026-06-23;high;60;K;"out; and back"\r\n2026-06-24;hgih;60;K;\r\n2026-06-25;endurance;45;K;easy\r\n';
  await writeFile(join(folder, 'plan.csv'), text);
  await withDemo(async page => {
    assert.match(await page.textContent('#plan-table .mistake'), /Column kind: hgih; allowed: .* Nearest: high\./);
    await changing(page, async () => {
      await cell(page, '2026-06-25', 'minutes').fill('50');
      await cell(page, '2026-06-25', 'minutes').blur();
    });
    assert.equal((await saved(page, '#save-plan')).bytes.toString('utf8'), text.replace('endurance;45', 'endurance;50'));
    await changing(page, () => cell(page, '2026-06-24', 'kind').selectOption('rest'));
    assert.match(await page.textContent('#plan-table .mistake'), /Column minutes: 60; allowed: nothing on a rest day\./);
  }, folder);
});

check('A plan table dropped by itself joins the rides, and what was written on the page outlives reading again', () => withDemo(async page => {
  await page.click('#rider-note-add');
  await answer(page, '#rider-note-0', 'Kept while the plan changes.');
  const alone = join(work, 'alone.csv');
  await writeFile(alone, 'date,kind,minutes\n2026-06-23,high,60\n');
  await drop(page, alone);
  await judged(page);
  assert.equal(await cell(page, '2026-06-23', 'minutes').inputValue(), '60');
  assert.equal(await page.textContent('.pre'), 'Kept while the plan changes.');
  await changing(page, async () => {
    await cell(page, '2026-06-23', 'minutes').fill('75');
    await cell(page, '2026-06-23', 'minutes').blur();
  });
  await answer(page, '#rider-time_zone', 'Europe/Paris');
  assert.equal(await cell(page, '2026-06-23', 'minutes').inputValue(), '75');
  assert.equal(await page.textContent('.pre'), 'Kept while the plan changes.');
  assert.equal(await page.inputValue('#rider-time_zone'), 'Europe/Paris');
}));

check('A day of the plan can be excepted in the table’s own words, and the verdicts follow as the terminal program’s do', () => withDemo(async page => {
  assert.deepEqual(await cell(page, '2026-06-18', 'exception').locator('option').allTextContents(), ['–', 'lighter', 'event', 'away', 'ill']);
  const before = await page.textContent('#plan-verdicts');
  await changing(page, () => cell(page, '2026-06-18', 'exception').selectOption('ill'));
  const after = await page.textContent('#plan-verdicts');
  assert.notEqual(after, before);
  const { bytes } = await saved(page, '#save-plan');
  assert.match(bytes.toString('utf8').split(/\r?\n/).find(l => l.startsWith('2026-06-18')), /,ill(,|$)/);
  const folder = await copyOfDemo('excepted');
  await writeFile(join(folder, 'plan.csv'), bytes);
  const { weeks: [week] } = await checked(folder, '--as-of', '2026-06-15');
  await saysOf(page, week);
  await changing(page, () => cell(page, '2026-06-18', 'exception').selectOption(''));
  assert.equal(await page.textContent('#plan-verdicts'), before);
}, demo, '2026-06-15'));

check('A word that is no exception is named in its row and stays until another is chosen', async () => {
  const folder = await copyOfDemo('no-exception');
  await writeFile(join(folder, 'plan.csv'), 'date,kind,minutes,exception\n2026-06-23,high,60,tired\n');
  await withDemo(async page => {
    assert.match(await page.textContent('#plan-table .mistake'), /Column exception: tired; allowed: lighter, event, away and ill, or nothing/);
    assert.equal(await cell(page, '2026-06-23', 'exception').inputValue(), 'tired');
    await changing(page, () => cell(page, '2026-06-23', 'exception').selectOption('lighter'));
    assert.equal(await page.locator('#plan-table .mistake').count(), 0);
  }, folder);
});
