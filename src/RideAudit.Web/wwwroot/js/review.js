import { el } from './dom.js';
import { spacingLine } from './spacing.js';
import { count, date, dayAndDate, duration, figure, hours, percent, ruleName, shortDay, verdictWords, worstFirst } from './words.js';

/** The judged week. */
export function drawReview(review, { firstLook }) {
  return el('article', { 'aria-labelledby': 'headline' },
    firstLook && el('p', { class: 'first-look', text: 'A first look at the latest week: older rides are still being read, and loads and verdicts that look back may change.' }),
    head(review),
    picture(review),
    keyFigures(review),
    toChange(review),
    review.note && el('section', { class: 'block' }, el('h3', { text: 'The coach’s note' }), el('p', { class: 'pre', text: review.note })),
    findings(review),
    plannedAndRidden(review),
    split(review),
    rides(review),
    thresholds(review),
    notices(review));
}

function head(review) {
  const { week, rider } = review;
  const place = [
    week.iso_week && `ISO week ${Number(week.iso_week.slice(-2))}`,
    week.finished ? 'finished' : 'not finished',
    week.plan_week && `week ${week.plan_week} of ${week.plan_weeks}`,
    week.exception && `excepted: ${week.exception}`,
  ].filter(Boolean).join(' · ');
  return el('header', { class: 'block' },
    el('p', { class: 'quiet', text: `${rider.label} · week of ${date(week.starts_on)} · ${place}` }),
    el('h2', { id: 'headline', tabindex: '-1', text: review.summary.headline }),
    el('p', { text: review.summary.subline }));
}

function picture(review) {
  const frame = el('div', { class: 'spacing block' });
  // The line is drawn for the width there is, so that its words keep their size on a phone.
  let drawn = 0;
  new ResizeObserver(() => {
    const width = Math.floor(frame.clientWidth);
    if (width > 0 && width !== drawn) {
      drawn = width;
      frame.replaceChildren(spacingLine(review, width), key());
    }
  }).observe(frame);
  return frame;
}

function key() {
  return el('p', { class: 'quiet', text: 'Width is time, height the intensity ratio squared, so area is training stress. In a block, left to right: low, middle (hatched) and high band, sorted, not as ridden. Dashed: threshold power. A ride without power is drawn open. Brackets: hours between hard rides.' });
}

function keyFigures({ week, rider }) {
  const pair = (name, value, small) => el('div', {}, el('dt', { text: name }), el('dd', {}, value, small && el('small', { text: small })));
  return el('dl', { class: 'keys' },
    pair('Hours', hours(week.hours), (week.planned?.hours ?? rider.planned_hours) !== null && `of ${hours(week.planned?.hours ?? rider.planned_hours)} planned`),
    pair('Rides', String(week.ride_count)),
    pair('Training stress', figure(week.stress, '', 0), week.stress_mean_before !== null && `mean of the weeks before ${figure(week.stress_mean_before, '', 0)}`),
    pair('Chronic load', figure(week.chronic_load, '', 1), `ramp ${week.ramp_per_week > 0 ? '+' : ''}${figure(week.ramp_per_week, '', 1)} a week`),
    pair('Longest ride', duration(week.longest_ride_seconds), week.long_ride_asked_seconds && `of ${duration(week.long_ride_asked_seconds)}`),
    pair('Monotony', figure(week.monotony, '', 2), week.strain !== null && `strain ${figure(week.strain, '', 0)}`));
}

function toChange({ summary, smallest_change: change }) {
  if (summary.to_change.length === 0 && !change) return null;
  return el('section', { class: 'block', 'aria-labelledby': 'to-change' },
    el('h3', { id: 'to-change', text: 'To change' }),
    el('ol', { class: 'change' }, summary.to_change.map(item =>
      el('li', {}, el('a', { href: `#of-rule-${item.rule}`, text: item.title }), el('div', { class: 'evidence', text: item.detail })))),
    change && el('p', {}, el('strong', { text: 'The smallest change: ' }), change.sentence));
}

function findings(review) {
  const sorted = worstFirst(review.findings);
  const open = sorted.filter(f => f.verdict === 'broken' || f.verdict === 'watch');
  const rest = sorted.filter(f => !open.includes(f));
  return el('section', { class: 'block', 'aria-labelledby': 'rules' },
    el('h3', { id: 'rules', text: `The rules: ${review.summary.broken} broken, ${review.summary.watch} to watch, ${review.summary.kept} kept, ${review.summary.not_judged} not judged` }),
    open.map(f => finding(f, review)),
    rest.length > 0 && el('details', { id: 'held' }, el('summary', { text: `What held, and what was not judged: ${count(rest.length, 'rule')}` }), rest.map(f => finding(f, review))));
}

function finding(found, review) {
  return el('div', { class: 'finding', id: `of-rule-${found.rule}` },
    el('p', { class: `verdict ${found.verdict}`, text: verdictWords(found.verdict) }),
    el('div', {},
      el('h4', { class: 'visually-hidden', text: ruleName(found.rule) }),
      el('p', {}, el('strong', { text: `${ruleName(found.rule)}. ` }), found.sentence),
      found.reason && el('p', { text: found.reason }),
      found.would_have_kept && el('p', {}, 'Would have kept it: ', found.would_have_kept),
      links(found, review),
      el('p', { class: 'evidence', text: found.source.startsWith(found.evidence) ? `Evidence: ${found.source}` : `Evidence: ${found.evidence}. ${found.source}` })));
}

function links(found, review) {
  const files = [...new Set(found.occurrences.flatMap(o => o.rides))];
  if (files.length === 0) return null;
  return el('p', { class: 'row' }, files.map(file => {
    const index = review.rides.findIndex(r => r.file === file);
    return index < 0 ? el('span', { text: file }) : el('a', { href: `#of-ride-${index}`, text: file });
  }));
}

function plannedAndRidden({ week, rides: ridden }) {
  if (week.planned_and_ridden.length === 0) return null;
  const named = file => {
    const index = ridden.findIndex(r => r.file === file);
    return index < 0 ? el('span', { text: file }) : el('a', { href: `#of-ride-${index}`, text: file });
  };
  return el('section', { class: 'block', 'aria-labelledby': 'planned' },
    el('h3', { id: 'planned', text: `Planned and ridden: ${hours(week.planned?.hours)} planned, ${hours(week.hours)} ridden` }),
    week.planned?.sentence && el('p', { text: week.planned.sentence }),
    el('div', { class: 'table' }, el('table', { class: 'cards' },
      el('thead', {}, el('tr', {}, ['Planned', 'Ridden', 'What became of it'].map(h => el('th', { scope: 'col', text: h })))),
      el('tbody', {}, week.planned_and_ridden.map(({ planned, rides: files, sentence, against }) => el('tr', {},
        el('th', { scope: 'row' }, planned ? `${shortDay(planned.date)}: ${[planned.session ?? planned.kind, planned.minutes && duration(planned.minutes * 60)].filter(Boolean).join(', ')}` : 'Nothing'),
        el('td', { 'data-label': 'Ridden' }, files.length === 0 ? '–' : files.map((f, i) => [i > 0 && ', ', named(f)])),
        el('td', { 'data-label': 'What became of it' }, sentence, against.length > 0 && el('div', { class: 'evidence', text: `Against: ${against.map(ruleName).join(', ')}` }))))))));
}

function split({ week, summary }) {
  const shares = week.split_by_time;
  if (!shares) return null;
  const bar = el('div', { class: 'split', role: 'img', 'aria-label': `By time ${percent(shares.low)} low, ${percent(shares.middle)} middle, ${percent(shares.high)} high` });
  for (const band of ['low', 'middle', 'high']) {
    const piece = el('span', { class: `band-${band}` });
    piece.style.flexGrow = shares[band];
    bar.append(piece);
  }
  return el('section', { class: 'block', 'aria-labelledby': 'split' },
    el('h3', { id: 'split', text: `Intensity: ${percent(shares.low)} low, ${percent(shares.middle)} middle, ${percent(shares.high)} high` }),
    bar,
    el('p', { text: summary.split_sentence }),
    week.intended_low_share !== null && el('p', { class: 'quiet', text: `Intended: ${percent(week.intended_low_share)} low, give or take ${percent(week.split_tolerance)}.` }));
}

function rides(review) {
  return el('section', { class: 'block', 'aria-labelledby': 'week-rides' },
    el('h3', { id: 'week-rides', text: `The week’s rides: ${review.rides.length}` }),
    review.rides.length > 0 && rideTable(review.rides, { ids: true, caption: 'Time, normalised power, intensity ratio and training stress of each ride.' }));
}

/** A table of rides; on a phone each becomes a block of lines. */
export function rideTable(list, { ids, caption }) {
  const heads = ['Ride', 'Day', 'Kind', 'Time', 'Normalised power', 'Intensity ratio', 'Stress', 'Low, middle, high'];
  return el('div', { class: 'table', tabindex: '0', role: 'region', 'aria-label': caption },
    el('table', { class: 'cards' },
      el('caption', { text: caption }),
      el('thead', {}, el('tr', {}, heads.map((h, i) => el('th', { scope: 'col', class: i >= 3 ? 'n' : null, text: h })))),
      el('tbody', {}, list.map((ride, index) => {
        const b = ride.band_seconds;
        const cells = [
          dayAndDate(ride.starts_at), ride.kind ?? '–', duration(ride.duration_seconds), figure(ride.normalised_power_w, 'W'),
          figure(ride.intensity_ratio), figure(ride.stress, '', 0), `${duration(b.low)}, ${duration(b.middle)}, ${duration(b.high)}`,
        ];
        return el('tr', { id: ids ? `of-ride-${index}` : null, tabindex: ids ? '-1' : null },
          el('th', { scope: 'row' }, ride.file, ride.remarks.map(r => el('div', { class: 'evidence', text: r }))),
          cells.map((text, i) => el('td', { class: i >= 2 ? 'n' : null, 'data-label': heads[i + 1], text })));
      }))));
}

function thresholds({ thresholds: said }) {
  return said && el('section', { class: 'block', 'aria-labelledby': 'threshold' },
    el('h3', { id: 'threshold', text: 'Threshold power (FTP)' }), el('p', { text: said.sentence }));
}

function notices({ notices: list }) {
  if (list.length === 0) return null;
  const open = list.length <= 6;
  const items = el('ul', {}, list.map(n => el('li', { text: n.file ? `${n.file}: ${n.sentence}` : n.sentence })));
  return el('section', { class: 'block', 'aria-labelledby': 'notices' },
    el('h3', { id: 'notices', text: `About the files: ${count(list.length, 'notice')}` }),
    open ? items : el('details', {}, el('summary', { text: 'Show them' }), items));
}
