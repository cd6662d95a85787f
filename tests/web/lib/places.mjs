import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The repository's root. */
export const root = join(dirname(fileURLToPath(import.meta.url)), '../../..');

/** The terminal program, built. */
export const program = process.env.RIDEAUDIT_PROGRAM ?? join(root, 'src/RideAudit.Cli/bin/Debug/net10.0/rideaudit.dll');

/** A folder for what a run makes. */
export const work = process.env.RIDEAUDIT_WORK ?? mkdtempSync(join(tmpdir(), 'rideaudit-web-'));

/** The static site and the page of one file, as the terminal program wrote them. */
export const site = join(work, 'site');
export const singleFile = join(work, 'rideaudit.html');

export const demo = join(root, 'testdata/demo');
export const worked = join(root, 'testdata/worked');
