import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';

// Without these flags the browser looks for its maker's hosts at every start.
const flags = [
  '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync',
];

/** A browser with a profile of its own, in the time zone and clock of the tests. */
export async function launch(options = {}) {
  const profile = await mkdtemp(join(tmpdir(), 'rideaudit-browser-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: '/usr/bin/chromium', headless: true, args: flags, timezoneId: 'Europe/Lisbon', locale: 'en-GB', acceptDownloads: true,
    viewport: { width: 1280, height: 900 }, ...options,
  });
  return {
    context,
    async page() {
      const page = await context.newPage();
      page.faults = [];
      page.requests = [];
      page.on('pageerror', fault => page.faults.push(String(fault)));
      page.on('console', message => { if (message.type() === 'error') page.faults.push(message.text()); });
      context.on('request', request => page.requests.push(request.url()));
      return page;
    },
    async close() {
      await context.close();
      await rm(profile, { recursive: true, force: true });
    },
  };
}

/** Opens the page and waits until the program is up. */
export async function open(page, url) {
  await page.goto(url);
  await page.waitForFunction(() => document.documentElement.dataset.ready === 'yes', null, { timeout: 120_000 });
}

/** Drops files and folders from the disk by the browser's own drag events. */
export async function drop(page, ...paths) {
  await outdate(page);
  const session = await page.context().newCDPSession(page);
  await page.locator('#drop').scrollIntoViewIfNeeded();
  const box = await page.locator('#drop').boundingBox();
  const at = { x: box.x + Math.min(60, box.width / 2), y: box.y + Math.min(20, box.height / 2) };
  const data = { items: [], files: paths, dragOperationsMask: 1 };
  for (const type of ['dragEnter', 'dragOver', 'drop']) await session.send('Input.dispatchDragEvent', { type, ...at, data });
  await session.detach();
}

/** Waits until a week is judged with everything read, and the lists are filled. */
export async function judged(page, timeout = 300_000) {
  await page.waitForFunction(() => {
    const week = document.getElementById('week');
    return week && !week.dataset.old && !week.disabled && document.getElementById('progress').hidden && !document.querySelector('.first-look')
      && document.querySelector('#all-rides summary')?.textContent.startsWith('All rides: ') && !document.querySelector('#all-rides summary').textContent.includes('being');
  }, null, { timeout });
}

/** Marks the week that is shown, so that the one judged next can be told from it. */
export function outdate(page) {
  return page.evaluate(() => {
    const week = document.getElementById('week');
    if (week) week.dataset.old = 'yes';
  });
}

/** Looks back from a date. */
export async function lookBackFrom(page, date) {
  await outdate(page);
  await page.fill('#as-of', date);
}

/** What a button hands to the downloads. */
export async function saved(page, button) {
  const [download] = await Promise.all([page.waitForEvent('download', { timeout: 30_000 }), page.click(button)]);
  const chunks = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk);
  return { name: download.suggestedFilename(), bytes: Buffer.concat(chunks) };
}
