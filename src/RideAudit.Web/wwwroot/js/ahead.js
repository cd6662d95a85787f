import { part, say } from './dom.js';
import { drawPlan } from './plan.js';
import { save } from './save.js';

/** Keeps the section of the weeks to come in step with the program. `changed` is told when the plan has changed. */
export function weeksAhead(program, state, attempt, changed) {
  const own = { plan: null, week: '', checked: null, laidOut: null, said: '', turn: 0 };

  async function refresh() {
    const turn = ++own.turn;
    const text = await program.call('plan', state.asOf);
    if (turn !== own.turn) return;
    part('plan').hidden = text === '';
    if (text === '') return;
    const before = own.plan?.first;
    own.plan = JSON.parse(text);
    if (own.plan.first !== before || !own.plan.weeks.includes(own.week)) own.week = own.plan.first;
    await check(turn);
  }

  // Weeks are judged each after the one before: no further than the one that is looked at.
  async function check(turn) {
    const before = own.plan.weeks.filter(w => w >= own.plan.first && w <= own.week).length;
    const text = own.plan.rows.some(r => r.date >= own.plan.first) && before > 0 ? await program.call('check', state.asOf, before) : '';
    if (turn !== own.turn) return;
    own.checked = text === '' ? null : JSON.parse(text);
    draw();
  }

  function draw() {
    const active = document.activeElement?.id;
    part('plan').replaceChildren(...drawPlan(own, does));
    if (active && /^(plan|lay|take|save-plan)/.test(active)) part(active)?.focus();
  }

  async function after(words) {
    own.laidOut = null;
    own.said = words;
    await refresh();
    await changed();
  }

  const does = {
    choose: week => attempt(async () => {
      own.week = week;
      await check(++own.turn);
    }),
    change: change => attempt(async () => {
      await program.call('changePlan', JSON.stringify(change));
      await after('');
    }),
    layOut: weeks => attempt(async () => {
      say('The weeks are being laid out.');
      own.laidOut = JSON.parse(await program.call('layOut', state.asOf, weeks));
      own.said = '';
      draw();
      say('The layout is below the table.');
    }),
    takeOver: () => attempt(async () => {
      const kept = await program.call('takeOver');
      await after(`Taken over into the table. ${kept}`);
    }),
    save: table => attempt(async () => save(table.slice(table.lastIndexOf('/') + 1), await program.call('planTable', table), 'text/csv')),
  };

  return { refresh };
}
