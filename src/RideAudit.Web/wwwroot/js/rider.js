import { el, present } from './dom.js';

const weekdays = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];

const groups = [
  ['Rider', [
    ['label', 'Name on the review', 'text', 'no other personal detail is needed'],
    ['time_zone', 'Time zone', 'zone', 'such as Europe/Lisbon; changing it reads the files again'],
    ['experience', 'Riding experience', ['new', 'regular', 'racing'], 'new: under six months of regular riding'],
    ['sex', 'Sex', ['unset', 'female', 'male'], 'only used for heart-rate load'],
    ['mass_kg', 'Body mass, kg', 'number', ''],
  ]],
  ['Threshold', [
    ['threshold_from', 'In force from', 'date', 'another date adds a threshold and keeps the older ones'],
    ['power_w', 'Threshold power (FTP), W', 'number', 'about what an all-out hour would hold'],
    ['heart_rate_bpm', 'Threshold heart rate, bpm', 'number', ''],
    ['rest_bpm', 'Resting heart rate, bpm', 'number', 'on waking'],
    ['max_bpm', 'Highest heart rate, bpm', 'number', 'the highest seen, not a formula'],
  ]],
  ['Plan', [
    ['weekly_hours', 'Planned hours a week', 'number', 'without them, the mean of the weeks before'],
    ['week_starts_on', 'The week starts on', weekdays, ''],
  ]],
];

/** The form of questions about the rider. `answer` is given the changed values once a field is left. */
export function drawRider(state, answer) {
  const shown = { ...state.values };
  const send = (values, exceptions = null, columns = null) => answer({ values, exceptions, columns });
  return present([
    el('h2', { id: 'rider-title', text: 'The rider' }),
    el('p', { class: 'quiet', text: state.is_new
      ? 'There was no rider file. Answers judge the week again at once and make one that can be saved.'
      : 'Answers judge the week again at once. They change rider.toml in place: comments, limits and older thresholds stay.' }),
    state.mistakes.length > 0 && el('div', { class: 'trouble', role: 'alert' },
      el('p', { text: 'The rider file says what cannot be; until it is mended, no week is judged:' }),
      el('ul', {}, state.mistakes.map(m => el('li', { text: m })))),
    el('form', { on: { submit: e => e.preventDefault() } },
      groups.map(([title, fields]) => el('fieldset', {}, el('legend', { text: title }),
        el('div', { class: 'fields' }, fields.map(f => field(f, shown, send))),
        title === 'Threshold' && state.thresholds.length > 1 && el('p', { class: 'hint', text: `Thresholds so far: ${state.thresholds.map(t => `${t.from}: ${[t.power_w && `${t.power_w} W`, t.heart_rate_bpm && `${t.heart_rate_bpm} bpm`].filter(Boolean).join(', ')}`).join(' · ')}` }),
        title === 'Plan' && dayChecks(shown, send))),
      daysOut(state, send),
      csvColumns(state, send)),
  ]);
}

function field([name, title, kind, hint], shown, send) {
  const id = `rider-${name}`;
  const value = shown[name] ?? '';
  const changed = control => {
    if (control.value === (shown[name] ?? '')) return;
    shown[name] = control.value;
    const values = { [name]: control.value };
    // A threshold's values belong to their date: a date alone says nothing.
    if (name === 'threshold_from') {
      values.power_w = shown.power_w ?? '';
      values.heart_rate_bpm = shown.heart_rate_bpm ?? '';
      if (!values.power_w && !values.heart_rate_bpm) return;
    } else if (name === 'power_w' || name === 'heart_rate_bpm') {
      values.threshold_from = shown.threshold_from;
    }
    send(values);
  };
  const attributes = { id, name, 'aria-describedby': hint ? `${id}-hint` : null, on: { change: e => changed(e.target) } };
  const control = Array.isArray(kind)
    ? el('select', attributes, kind.map(k => el('option', { value: k, selected: k === value, text: k })))
    : el('input', { ...attributes, type: kind === 'date' ? 'date' : 'text', inputmode: kind === 'number' ? 'decimal' : null, value, autocomplete: 'off', list: kind === 'zone' ? 'zones' : null });
  const zones = kind === 'zone' && typeof Intl.supportedValuesOf === 'function'
    ? el('datalist', { id: 'zones' }, Intl.supportedValuesOf('timeZone').map(z => el('option', { value: z })))
    : null;
  return el('div', {}, el('label', { for: id, text: title }), control, zones, hint && el('span', { class: 'hint', id: `${id}-hint`, text: hint }));
}

function dayChecks(shown, send) {
  const chosen = new Set((shown.days ?? '').split(' ').filter(Boolean));
  return el('div', { role: 'group', 'aria-label': 'Days that can be ridden on' },
    el('p', { class: 'hint', text: 'Days that can be ridden on; none ticked: any.' }),
    el('div', { class: 'checks' }, weekdays.map(day => el('label', {},
      el('input', { type: 'checkbox', name: `day-${day}`, checked: chosen.has(day), on: { change: e => {
        if (e.target.checked) chosen.add(day);
        else chosen.delete(day);
        send({ days: weekdays.filter(d => chosen.has(d)).join(' ') });
      } } }), day))));
}

function daysOut(state, send) {
  const rows = state.exceptions.map(e => ({ ...e }));
  const commit = () => send({}, rows.filter(r => r.from));
  const cell = (row, key, title, type) => el('td', { 'data-label': title }, el('input', { type, value: row[key] ?? '', 'aria-label': title, on: { change: e => {
    row[key] = e.target.value;
    if (row.from) commit();
  } } }));
  const line = (row, index) => el('tr', {},
    cell(row, 'from', 'From', 'date'), cell(row, 'to', 'To', 'date'),
    el('td', { 'data-label': 'Kind' }, el('select', { 'aria-label': 'Kind', on: { change: e => {
      row.kind = e.target.value;
      if (row.from) commit();
    } } }, state.exception_kinds.map(k => el('option', { value: k, selected: k === row.kind, text: k })))),
    el('td', {}, el('button', { type: 'button', text: 'Take out', 'aria-label': `Take out days ${index + 1}`, on: { click: () => {
      rows.splice(index, 1);
      commit();
    } } })));
  const body = el('tbody', {}, rows.map(line));
  return el('fieldset', { id: 'days-out' }, el('legend', { text: 'Days out' }),
    el('p', { class: 'hint', text: 'Days that the plan does not hold for: a lighter week, an event, away.' }),
    el('table', { class: 'cards' }, el('thead', {}, el('tr', {}, ['From', 'To', 'Kind', ''].map(h => el(h ? 'th' : 'td', { scope: h ? 'col' : null, text: h })))), body),
    el('p', {}, el('button', { type: 'button', text: 'Add days', on: { click: () => {
      rows.push({ from: '', to: '', kind: state.exception_kinds[0] });
      body.append(line(rows[rows.length - 1], rows.length - 1));
      body.lastElementChild.querySelector('input').focus();
    } } })));
}

// Asked about only where a CSV file was not understood, or an answer is written already.
function csvColumns({ csv_columns: known, csv_files: files }, send) {
  if (files.length === 0 && known.every(c => c.header === '')) return null;
  const headers = [...new Set(files.flatMap(f => f.headers))].filter(h => h.trim());
  return el('fieldset', { id: 'columns' }, el('legend', { text: 'Columns of CSV files' }),
    files.length > 0 && el('p', { class: 'hint', text: `Not understood: ${files.map(f => `${f.file} (${f.headers.join(', ')})`).join('; ')}. If it is a ride, name its columns; a ride needs a time and one of the others. An answer reads the files again.` }),
    el('datalist', { id: 'csv-headers' }, headers.map(h => el('option', { value: h }))),
    el('div', { class: 'fields' }, known.map(({ channel, header }) => el('div', {},
      el('label', { for: `rider-csv-${channel}`, text: `Column of ${channel.replace('_', ' ')}` }),
      el('input', { type: 'text', id: `rider-csv-${channel}`, value: header, list: 'csv-headers', autocomplete: 'off', on: { change: e => {
        if (e.target.value !== header) send({}, null, { [channel]: e.target.value });
      } } })))));
}
