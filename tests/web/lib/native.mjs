import { execFile } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { program, work } from './places.mjs';

const start = promisify(execFile);
let last = 0;

/** Runs the terminal program; its exit code is not looked at where it is to fail. */
export function rideaudit(...args) {
  return run({}, args);
}

function run(env, args) {
  return start('dotnet', [program, ...args], { maxBuffer: 64 << 20, cwd: work, env: { ...process.env, TZ: 'Europe/Lisbon', ...env } });
}

/** What the terminal program makes of a folder. */
export function reviewed(folder, ...args) {
  return reviewedWith({}, folder, ...args);
}

/** The same with some of its environment set. */
export async function reviewedWith(env, folder, ...args) {
  const pdf = join(work, `native-${++last}.pdf`);
  const json = join(work, `native-${last}.json`);
  await run(env, ['review', folder, '--pdf', pdf, '--json', json, '--quiet', ...args]);
  const bytes = await readFile(json);
  return { pdf: await readFile(pdf), json: bytes, document: JSON.parse(bytes) };
}
