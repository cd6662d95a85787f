// Pictures of the page for the documents: node pictures.mjs SITE OUT. The demo, looked back on from the day after its last week.
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { drop, judged, launch, lookBackFrom, open } from './lib/browser.mjs';
import { demo } from './lib/places.mjs';
import { serve } from './lib/server.mjs';

const [site, out] = process.argv.slice(2);
await mkdir(out, { recursive: true });
const host = await serve(site);
for (const [width, height] of [[1280, 1500], [768, 1500], [390, 1900]]) {
  const browser = await launch({ viewport: { width, height }, colorScheme: 'light' });
  const page = await browser.page();
  await open(page, host.url);
  await drop(page, demo);
  await judged(page);
  await lookBackFrom(page, '2026-06-22');
  await judged(page);
  await page.evaluate(() => { document.activeElement.blur(); scrollTo(0, 0); });
  await page.screenshot({ path: join(out, `page-${width}.png`) });
  await browser.close();
}
await host.close();
