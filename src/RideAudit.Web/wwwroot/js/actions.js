import { el } from './dom.js';
import { picture } from './pages.js';
import { save } from './save.js';
import { date } from './words.js';

/** Choosing a week, and saving what is seen. `does` has what the choices lead to. */
export function drawActions(program, state, attempt, { firstLook }, does) {
  const button = (id, text, work) => el('button', { type: 'button', id, text, disabled: firstLook, on: { click: () => attempt(work) } });
  const ask = (name, ...more) => program.call(name, state.asOf, state.week, ...more);
  const name = ending => `review-${state.review.week.starts_on}.${ending}`;
  return el('div', { class: 'actions block', role: 'group', 'aria-label': 'Week and saving' },
    el('div', { class: 'row' },
      el('div', {}, el('label', { for: 'week', text: 'Week' }), el('select', { id: 'week', disabled: true, on: { change: e => does.choose(e.target.value) } }, el('option', { text: date(state.review.week.starts_on) }))),
      button('earlier', '← Earlier', () => does.step(-1)), button('later', 'Later →', () => does.step(1)),
      el('div', {}, el('label', { for: 'as-of', text: 'Look back from' }), el('input', { type: 'date', id: 'as-of', value: state.asOf || state.review.as_of, disabled: firstLook, on: { change: e => does.lookBackFrom(e.target.value) } }))),
    el('div', { class: 'row' },
      button('save-pdf', 'Save the PDF', async () => save(name('pdf'), await ask('pdf', state.paper === 'letter'), 'application/pdf')),
      el('div', {}, el('label', { for: 'paper', text: 'Paper' }), el('select', { id: 'paper', on: { change: e => { state.paper = e.target.value; } } },
        [['a4', 'A4'], ['letter', 'Letter']].map(([value, text]) => el('option', { value, text, selected: state.paper === value })))),
      button('save-card', 'Save the card', async () => save(`card-${state.review.week.starts_on}.png`, await picture(await ask('card'), 2), 'image/png')),
      button('save-picture', 'Save page one as a picture', async () => save(name('png'), await picture(await ask('pages'), 3), 'image/png')),
      button('save-json', 'Save the figures', async () => save(name('json'), await ask('review'), 'application/json')),
      button('save-rider', 'Save the rider file', async () => save('rider.toml', await program.call('riderFile'), 'application/toml'))));
}
