import { el } from './dom.js';
import { date, figure, percent, ruleName } from './words.js';

const needs = { broken: '✗ broken', watch: '! watch', kept: '✓ kept', 'no review': '– no review' };

/** Several riders, those who need the coach first. */
export function drawDesk(roster, open) {
  const heads = ['Rider', 'Verdict', 'Why', 'Hours', 'Low', 'Stress', 'Ramp'];
  return [
    el('h2', { id: 'desk-title', tabindex: '-1', text: `${roster.riders.length} riders, as of ${date(roster.as_of)}` }),
    el('p', { class: 'quiet', text: 'Those with broken rules first, weighed by what they protect. Open a rider to see the week.' }),
    el('div', { class: 'table', tabindex: '0', role: 'region', 'aria-labelledby': 'desk-title' },
      el('table', { class: 'cards' },
        el('thead', {}, el('tr', {}, heads.map((h, i) => el('th', { scope: 'col', class: i > 2 ? 'n' : null, text: h })))),
        el('tbody', {}, roster.riders.map(rider => {
          const cells = [
            needs[rider.need] ?? `– ${rider.need.replace('_', ' ')}`, rider.why,
            rider.hours === null ? '–' : `${rider.hours} of ${figure(rider.planned_hours)} h`, percent(rider.low_share), figure(rider.stress), figure(rider.ramp_per_week),
          ];
          return el('tr', {},
            el('th', { scope: 'row' }, el('button', { type: 'button', class: 'plain', text: rider.label, on: { click: () => open(rider.folder) } })),
            cells.map((text, i) => el('td', { class: i > 1 ? 'n' : null, 'data-label': heads[i + 1], title: i === 0 ? rider.broken.map(ruleName).join(', ') : null, text })));
        })))),
    roster.shared?.length > 0 && el('p', {}, 'Shared by several riders: ', roster.shared.map(s => `${s.name} (${s.verdict}, ${s.riders.length} riders)`).join('; '), '.'),
  ].filter(Boolean);
}
