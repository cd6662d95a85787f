import { el, present } from './dom.js';
import { count, date, dayAndDate, duration, figure, hours, ruleName, shortDay, verdictWords, worstFirst } from './words.js';

const columns = [['kind', 'Kind'], ['minutes', 'Minutes'], ['session', 'Session'], ['exception', 'Exception'], ['note', 'Note']];

/** The weeks to come: the plan as a plain table, what the rules say of it, and a layout that can be taken over. */
export function drawPlan({ plan, week, checked, laidOut, said }, does) {
  return present([
    el('h2', { id: 'plan-title', text: 'The weeks to come' }),
    el('p', { class: 'quiet', text: 'The plan table: what stands here is judged by the same rules before it is ridden. A row a session; a day without a row is not planned.' }),
    plan.mistakes.length > 0 && el('ul', {}, plan.mistakes.map(text => el('li', { text }))),
    el('div', { class: 'row block' },
      el('div', {}, el('label', { for: 'plan-week', text: 'Week' }), el('select', { id: 'plan-week', on: { change: e => does.choose(e.target.value) } },
        plan.weeks.map(w => el('option', { value: w, selected: w === week, text: weekName(w, plan) })))),
      saving(plan, does)),
    el('div', { class: 'beside' }, table(plan, week, checked, does), verdicts(plan, week, checked)),
    layout(plan, laidOut, said, does),
  ]);
}

function weekName(week, plan) {
  const planned = plan.rows.some(r => inWeek(dayOf(r), week));
  return `${date(week)}${week < plan.first ? ' · over' : ''}${planned ? '' : ' · not planned'}`;
}

// A row with a mistake has no day that counts; where it can be told, it still stands on the one that is written.
function dayOf(row) {
  return row.date ?? (/^\d{4}-\d\d-\d\d$/.test(row.cells.date) ? row.cells.date : null);
}

function daysOf(week) {
  const first = Date.parse(`${week}T00:00:00Z`);
  return [0, 1, 2, 3, 4, 5, 6].map(i => new Date(first + i * 86_400_000).toISOString().slice(0, 10));
}

function inWeek(day, week) {
  return day !== null && daysOf(week).includes(day);
}

function saving(plan, does) {
  const tables = [...new Set(plan.rows.map(r => r.table))];
  if (tables.length === 0) return null;
  return tables.map((name, index) => el('button', {
    type: 'button', id: index === 0 ? 'save-plan' : null, text: tables.length === 1 ? 'Save the plan table' : `Save ${name}`, on: { click: () => does.save(name) },
  }));
}

function table(plan, week, checked, does) {
  const judged = checked?.weeks.find(w => w.starts_on === week);
  const lost = plan.rows.filter(r => dayOf(r) === null);
  const body = el('tbody', {}, daysOf(week).map(day => {
    const rows = plan.rows.filter(r => dayOf(r) === day);
    const seen = judged?.days.find(d => d.date === day);
    return rows.length === 0 ? blank(day, plan, does, true) : rows.map((row, i) => line(row, { day, first: i === 0, index: i, seen, plan, does }));
  }), lost.map((row, i) => line(row, { day: null, first: true, index: i, plan, does })));
  return el('div', { class: 'table' }, el('table', { class: 'cards', id: 'plan-table' },
    el('caption', { text: `The week of ${date(week)}, a row a session.` }),
    el('thead', {}, el('tr', {}, ['Day', ...columns.map(c => c[1]), ''].map(h => el(h ? 'th' : 'td', { scope: h ? 'col' : null, text: h })))), body));
}

function line(row, { day, first, index, seen, plan, does }) {
  const where = day ? dayAndDate(day) : 'a row without a day';
  const shown = day && shortDay(day);
  const change = (column, value) => does.change({ table: row.table, row: row.at, cells: { [column]: value } });
  const told = seen?.sessions[sessionIndex(row, plan, day)];
  return el('tr', { class: row.mistake ? 'mistaken' : null },
    el('th', { scope: 'row' }, day ? (first ? shown : el('span', { class: 'visually-hidden', text: where })) : el('input', { type: 'text', value: row.cells.date, 'aria-label': 'Date', on: { change: e => change('date', e.target.value) } })),
    columns.map(([column, title]) => el('td', { 'data-label': title },
      control(column, row.cells[column], plan, { id: `plan-${day}-${index}-${column}`, 'aria-label': `${title}, ${where}`, on: { change: e => change(column, e.target.value) } }),
      column === 'note' && told && el('div', { class: 'evidence', text: told.sentence }),
      column === 'note' && row.cells.blocks && !told && el('div', { class: 'evidence', text: row.cells.blocks }),
      column === 'note' && row.mistake && el('div', { class: 'evidence mistake', text: row.mistake }))),
    el('td', { class: 'does' },
      el('button', { type: 'button', text: 'Take out', 'aria-label': `Take out ${row.cells.session || row.cells.kind || 'the row'}, ${where}`, on: { click: () => does.change({ table: row.table, row: row.at, cells: null }) } }),
      day && el('button', { type: 'button', text: 'Another', 'aria-label': `Another session, ${where}`, on: { click: e => {
        const fresh = blank(day, plan, does, false);
        e.target.closest('tr').after(fresh);
        fresh.querySelector('select').focus();
      } } })));
}

function sessionIndex(row, plan, day) {
  return plan.rows.filter(r => r.date === day && r.cells.kind.toLowerCase() !== 'rest').indexOf(row);
}

// A row is written once it says enough to plan something: rest and an event by their kind, a ride with its minutes.
function blank(day, plan, does, first) {
  const where = dayAndDate(day);
  const cells = { date: day };
  const set = (column, value) => {
    cells[column] = value;
    if (cells.kind === 'rest' || cells.kind === 'event' || (cells.kind && cells.minutes)) does.change({ table: null, row: null, cells });
  };
  return el('tr', {},
    el('th', { scope: 'row' }, first ? shortDay(day) : el('span', { class: 'visually-hidden', text: where })),
    columns.map(([column, title]) => el('td', { 'data-label': title },
      control(column, '', plan, { id: first ? `plan-${day}-0-${column}` : null, 'aria-label': `${title}, ${where}`, on: { change: e => set(column, e.target.value) } }))),
    el('td', {}));
}

function control(column, value, plan, attributes) {
  const choices = { kind: plan.kinds, exception: plan.exceptions }[column];
  if (!choices) return el('input', { type: 'text', value, inputmode: column === 'minutes' ? 'numeric' : null, class: `cell-${column}`, autocomplete: 'off', ...attributes });
  const chosen = value.toLowerCase();
  // What stands in a table and is no such word stays until another is chosen; a day needs no exception.
  const others = [...new Set([...(column === 'exception' ? [''] : []), ...(choices.includes(chosen) ? [] : [value])])];
  return el('select', attributes,
    others.map(text => el('option', { value: text, selected: text === value, text: text || '–' })),
    choices.map(text => el('option', { value: text, selected: text === chosen, text })));
}

function verdicts(plan, week, checked) {
  const judged = checked?.weeks.find(w => w.starts_on === week);
  const frame = children => el('div', { id: 'plan-verdicts', role: 'region', 'aria-label': 'What the rules say of this week', 'aria-live': 'polite' }, children);
  if (week < plan.first) return frame(el('p', { class: 'quiet', text: 'This week is over: its review holds it against what was ridden.' }));
  if (!judged) return frame(el('p', { class: 'quiet', text: 'Nothing is planned in this week yet, so there is nothing to judge.' }));
  const sorted = worstFirst(judged.verdicts);
  const open = sorted.filter(v => v.verdict === 'broken' || v.verdict === 'watch');
  const rest = sorted.filter(v => !open.includes(v));
  return frame(present([
    el('h3', { text: tally(judged.verdicts) }),
    el('p', { class: 'quiet', text: `${hours(judged.hours)}, about ${figure(judged.expected_stress, '', 0)} points of training stress, ridden exactly so.` }),
    open.map(v => el('div', { class: 'said' }, el('p', {}, el('span', { class: `verdict ${v.verdict}`, text: verdictWords(v.verdict) }), ' ', el('strong', { text: `${ruleName(v.rule)}. ` }), v.sentence),
      v.would_have_kept && el('p', { class: 'evidence' }, 'Would keep it: ', v.would_have_kept))),
    judged.smallest_change && el('p', {}, el('strong', { text: 'The smallest change: ' }), judged.smallest_change.sentence),
    el('details', {}, el('summary', { text: `What would hold, and what is not judged: ${count(rest.length, 'rule')}` }),
      rest.map(v => el('p', {}, el('span', { class: 'verdict', text: verdictWords(v.verdict) }), ' ', el('strong', { text: `${ruleName(v.rule)}. ` }), v.sentence))),
  ]));
}

function tally(list) {
  const parts = [['broken', 'broken'], ['watch', 'to watch'], ['kept', 'kept'], ['not judged', 'not judged']]
    .map(([verdict, words]) => [list.filter(v => v.verdict === verdict).length, words])
    .filter(([n], i) => n > 0 || i === 0);
  return `The rules: ${parts.map(([n, words]) => `${n} ${words}`).join(', ')}`;
}

function layout(plan, laidOut, said, does) {
  return el('div', { class: 'block' },
    el('h3', { text: 'Lay the weeks out' }),
    el('p', { class: 'quiet', text: 'The program lays out the coming weeks by the same rules. Rows made by hand stand, and nothing is laid out on their days. A coach’s judgement comes before it.' }),
    el('div', { class: 'row' },
      el('div', {}, el('label', { for: 'lay-out-weeks', text: 'Weeks' }), el('select', { id: 'lay-out-weeks' }, [1, 2, 3, 4].map(n => el('option', { value: n, selected: n === (laidOut?.weeks.length ?? 1), text: String(n) })))),
      el('button', { type: 'button', id: 'lay-out', text: `Lay out from ${date(plan.first)}`, on: { click: () => does.layOut(Number(document.getElementById('lay-out-weeks').value)) } })),
    said && el('p', { role: 'status', text: said }),
    laidOut && el('div', { id: 'laid-out' },
      laidOut.notes.map(text => el('p', { text })),
      laidOut.weeks.map(proposal),
      laidOut.weeks.length > 0 && el('p', {}, el('button', { type: 'button', id: 'take-over', class: 'main', text: 'Take it over into the table', on: { click: () => does.takeOver() } }))));
}

function proposal(week) {
  return el('div', { class: 'block' },
    el('h4', { text: `The week of ${date(week.starts_on)}: ${hours(week.hours)}, about ${figure(week.expected_stress, '', 0)} points` }),
    el('p', { class: 'quiet', text: tally(week.verdicts) }),
    week.gave_way && el('p', { text: week.gave_way.sentence }),
    el('ul', { class: 'days' }, week.days.map(day => el('li', {}, el('strong', { text: `${dayAndDate(day.date)}: ` }),
      day.ridden_minutes > 0 ? `ridden, ${duration(day.ridden_minutes * 60)}` : day.sessions.length === 0 ? day.exception && day.exception !== 'lighter' ? day.exception : 'rest'
        : day.sessions.map(s => `${s.kind}${s.minutes > 0 ? `, ${duration(s.minutes * 60)}` : ''}. ${s.sentence}`).join(' ')))),
    week.notes.map(text => el('p', { class: 'quiet', text })));
}
