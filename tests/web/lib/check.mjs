import assert from 'node:assert/strict';

const longest = 15 * 60_000;
const checks = [];

/** A check by a sentence. */
export function check(sentence, work) {
  checks.push({ sentence, work });
}

/** Runs every check in its order and prints the closing line; a failed check never stops the others. */
export async function run(only) {
  let passed = 0, failed = 0;
  for (const { sentence, work } of checks.filter(c => !only || c.sentence.includes(only))) {
    const begun = performance.now();
    try {
      await ending(work(), sentence);
      passed++;
      console.log(`ok    ${sentence} (${((performance.now() - begun) / 1000).toFixed(1)} s)`);
    } catch (fault) {
      failed++;
      console.log(`FAIL  ${sentence}\n${String(fault.stack ?? fault).split('\n').slice(0, 14).join('\n')}`);
    }
  }
  console.log(`${passed} passed, ${failed} failed`);
  return failed === 0;
}

// A check that never ends must be told from one that takes its time.
async function ending(work, sentence) {
  let late;
  const over = new Promise((resolve, reject) => { late = setTimeout(() => reject(new Error(`After ${longest / 60_000} min this has not ended: ${sentence}`)), longest); });
  await Promise.race([work, over]).finally(() => clearTimeout(late));
}

export { assert };
