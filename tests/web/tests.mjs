import { run } from './lib/check.mjs';
import './tests/reviews.mjs';
import './tests/desk.mjs';
import './tests/rider.mjs';
import './tests/plan.mjs';
import './tests/security.mjs';
import './tests/access.mjs';
import './tests/deliveries.mjs';

process.exitCode = (await run(process.argv[2])) ? 0 : 1;
