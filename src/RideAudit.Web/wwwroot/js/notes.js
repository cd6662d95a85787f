import { el } from './dom.js';
import { save } from './save.js';

/** The coach's notes as a table: a row a note, with a day of the week it belongs to. `set` takes all rows. */
export function drawNotes(notes, week, set) {
  const rows = notes.map(n => ({ ...n }));
  const commit = () => set(rows);
  const body = el('tbody', {}, rows.map((row, i) => line(row, i, rows, commit)));
  return el('fieldset', { id: 'notes' }, el('legend', { text: 'The coach’s notes' }),
    el('p', { class: 'hint', text: 'Printed on page one. A note belongs to the week of its day; without a day, to the latest week. Saved beside the rides under its name, it counts there too.' }),
    el('table', { class: 'cards' },
      el('thead', {}, el('tr', {}, ['Day', 'Note', ''].map(h => el(h ? 'th' : 'td', { scope: h ? 'col' : null, text: h })))), body),
    el('p', {}, el('button', { type: 'button', id: 'rider-note-add', text: 'Add a note', on: { click: () => {
      rows.push({ file: null, date: week, text: '' });
      body.append(line(rows.at(-1), rows.length - 1, rows, commit));
      body.lastElementChild.querySelector('textarea').focus();
    } } })));
}

function line(row, index, rows, commit) {
  return el('tr', {},
    el('td', { 'data-label': 'Day' }, el('input', { type: 'date', id: `rider-note-${index}-date`, value: row.date ?? '', 'aria-label': `Day of note ${index + 1}`, on: { change: e => {
      row.date = e.target.value || null;
      if (row.text.trim()) commit();
    } } }), row.file && el('div', { class: 'evidence', text: row.file })),
    el('td', { 'data-label': 'Note' }, el('textarea', { id: `rider-note-${index}`, rows: 4, text: row.text, 'aria-label': `Note ${index + 1}`, on: { change: e => {
      row.text = e.target.value;
      commit();
    } } })),
    el('td', { class: 'does' },
      el('button', { type: 'button', text: 'Take out', 'aria-label': `Take out note ${index + 1}`, on: { click: () => {
        rows.splice(index, 1);
        commit();
      } } }),
      row.file && el('button', { type: 'button', class: 'save-note', text: 'Save', 'aria-label': `Save ${row.file}`, on: { click: () => save(row.file.slice(row.file.lastIndexOf('/') + 1), row.text, 'text/markdown') } })));
}
