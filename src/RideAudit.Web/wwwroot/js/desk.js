import { el, present } from './dom.js';
import { asPicture } from './pages.js';
import { count, date, shortDate, verdictWords } from './words.js';

/** Several riders, those who need the coach first: riders by rules, what they share, and each of them. */
export function drawDesk(roster, screen, open) {
  return present([
    el('h2', { id: 'desk-title', tabindex: '-1', text: `${count(roster.riders.length, 'rider')}, as of ${date(roster.as_of)}` }),
    el('p', { class: 'lead', text: screen.headline }),
    el('p', { class: 'quiet', text: `${screen.subline} Open a rider to see the week.` }),
    matrix(roster, open), together(roster), each(roster, screen, open),
  ]);
}

function nameOf(rider) {
  return rider.label === rider.folder ? rider.label : `${rider.label} (${rider.folder})`;
}

function need(rider) {
  return el('span', { class: `verdict ${rider.need}`, text: verdictWords(rider.need) });
}

// Explicit roles: on a phone the rows are laid out as blocks, and stay a table for those who listen.
function matrix(roster, open) {
  const rules = new Map(roster.riders.flatMap(r => r.verdicts).map(v => [v.rule, v.name]));
  const caption = `Riders by rules: ${['broken', 'watch', 'kept', 'not judged'].map(verdictWords).join(', ')}.`;
  return el('div', { class: 'table', tabindex: '0', role: 'region', 'aria-label': 'Riders by rules' },
    el('table', { id: 'desk-matrix', role: 'table' },
      el('caption', { text: caption }),
      el('thead', { role: 'rowgroup' }, el('tr', { role: 'row' },
        ['Rider', 'Needs'].map(text => el('th', { scope: 'col', role: 'columnheader', text })),
        [...rules.values()].map(name => el('th', { scope: 'col', role: 'columnheader', class: 'rule' }, el('span', { text: name }))))),
      el('tbody', { role: 'rowgroup' }, roster.riders.map(rider => el('tr', { role: 'row' },
        el('th', { scope: 'row', role: 'rowheader' }, el('button', { type: 'button', class: 'plain', text: nameOf(rider), on: { click: () => open(rider.folder) } })),
        el('td', { role: 'cell', class: 'need' }, need(rider)),
        [...rules].map(([rule, name]) => mark(name, rider.verdicts.find(v => v.rule === rule)?.verdict)))))));
}

function mark(name, verdict) {
  if (!verdict) return el('td', { role: 'cell', class: 'rule' }, el('span', { class: 'visually-hidden', text: 'no review' }));
  const [sign, ...word] = verdictWords(verdict).split(' ');
  return el('td', { role: 'cell', class: `rule verdict ${verdict.replace(' ', '-')}`, title: `${name}: ${verdict}` },
    el('span', { 'aria-hidden': 'true', text: sign }), el('span', { class: 'rule-name', 'aria-hidden': 'true', text: `\u00a0${name}:` }), el('span', { class: 'word', text: ` ${word.join(' ')}` }));
}

function together({ shared, riders }) {
  if (shared.length === 0) return null;
  return el('section', { class: 'block', 'aria-labelledby': 'desk-shared' },
    el('h3', { id: 'desk-shared', text: 'Told together' }),
    el('ul', { class: 'plain' }, shared.map(s => el('li', {}, el('span', { class: `verdict ${s.verdict}`, text: verdictWords(s.verdict) }), ' ', el('strong', { text: `${s.name}: ` }),
      `${riders.filter(r => s.riders.includes(r.folder)).map(nameOf).join(', ')}.`))));
}

function each(roster, screen, open) {
  return el('section', { class: 'block', 'aria-labelledby': 'desk-each' },
    el('h3', { id: 'desk-each', text: 'Rider by rider' }),
    screen.weeks.some(w => w.svg) && el('p', { class: 'hint', text: screen.line_key }),
    el('ol', { class: 'plain' }, roster.riders.map((rider, i) => el('li', { class: 'desk-rider' },
      el('div', {},
        el('h4', {}, need(rider), ` ${nameOf(rider)}`),
        el('p', { class: 'why', text: rider.why }),
        rider.facts.map(text => el('p', { class: 'evidence', text })),
        rider.week_starts_on && el('p', {}, el('button', { type: 'button', class: 'plain', text: 'Open the week', 'aria-label': `Open the week of ${nameOf(rider)}`, on: { click: () => open(rider.folder) } }))),
      weeks(rider, screen.weeks[i])))));
}

function weeks(rider, { svg, words }) {
  return svg && el('figure', { class: 'small-line' }, asPicture(svg, words),
    el('figcaption', { 'aria-hidden': 'true' }, [...Array(4 - rider.weeks.length).fill(null), ...rider.weeks].map(w => el('span', { text: w ? shortDate(w.starts_on) : '' }))));
}
