import { drop, judged, launch, lookBackFrom, open, outdate } from './browser.mjs';
import { assert } from './check.mjs';
import { demo, site } from './places.mjs';
import { serve } from './server.mjs';

/** Opens the site, runs something on it, and holds that nothing went wrong in the page. */
export async function onSite(use, options) {
  const host = await serve(site);
  const browser = await launch(options);
  try {
    const page = await browser.page();
    await open(page, host.url);
    await use(page, host);
    assert.deepEqual(page.faults, []);
  } finally {
    await browser.close();
    await host.close();
  }
}

/** Drops a folder and, where a date is given, looks back from it. */
export async function reviewOf(page, folder, asOf) {
  await drop(page, folder);
  await judged(page);
  if (asOf) {
    await lookBackFrom(page, asOf);
    await judged(page);
  }
}

/** The demo, or another folder of its weeks, reviewed on the site. */
export function withDemo(use, folder = demo, asOf = '2026-06-22') {
  return onSite(async (page, host) => {
    await reviewOf(page, folder, asOf);
    await use(page, host);
  });
}

/** Answers a question of the form and waits for the week to be judged again. */
export async function answer(page, id, value) {
  await outdate(page);
  await page.fill(id, value).catch(() => page.selectOption(id, value));
  await page.dispatchEvent(id, 'change');
  await judged(page);
}
