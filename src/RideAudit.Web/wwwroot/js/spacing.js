import { svg } from './dom.js';
import { duration, figure, ruleName, shortDay } from './words.js';

// The spacing line: seven days on one baseline. A block's width is its time, its height its intensity ratio squared, so its area its
// training stress; inside, the time in the low, middle and high band, sorted.

const leastDayHours = 2.75;
const above = 34;
const thresholdHeight = 84;
const below = 36;
const narrow = 64;

/** Draws a review's week at a width in pixels. */
export function spacingLine(review, width) {
  const hours = review.week.days.map(d => d.hours);
  const day = width / 7;
  const hourWidth = (day - 6) / Math.max(leastDayHours, ...hours);
  const tallest = Math.max(1, ...review.rides.map(height).filter(h => h !== null));
  const top = above + thresholdHeight * tallest;
  const baseline = top + 4;
  const at = new Map();
  const blocks = review.week.days.flatMap((entry, index) => {
    let x = index * day + 3;
    return entry.rides.map(file => {
      const ride = review.rides.find(r => r.file === file);
      const wide = ride.duration_seconds / 3600 * hourWidth;
      at.set(file, { from: x, to: x + wide });
      const drawn = block(ride, x, wide, baseline);
      x += wide + 1;
      return drawn;
    });
  });
  const threshold = baseline - thresholdHeight;
  const depth = baseline + below + (day < narrow ? 12 : 0);
  return svg('svg', { viewBox: `0 0 ${width} ${depth}`, width, height: depth, role: 'img', 'aria-label': inWords(review) },
    // The middle band is told apart in grey as well.
    svg('defs', {}, svg('pattern', { id: 'middle-band', width: 4, height: 4, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' },
      svg('rect', { width: 4, height: 4, class: 'band-middle' }), svg('line', { x1: 0, x2: 0, y1: 0, y2: 4, class: 'hatch' }))),
    svg('line', { x1: 0, x2: width, y1: threshold, y2: threshold, class: 'line-quiet', 'stroke-dasharray': '3 4' }),
    svg('line', { x1: 0, x2: width, y1: baseline, y2: baseline, class: 'line' }),
    blocks,
    review.week.days.map((entry, index) => label(entry, index, baseline, day)),
    spans(review, at, day, top));
}

function height(ride) {
  if (ride.intensity_ratio !== null) return ride.intensity_ratio ** 2;
  return ride.stress === null || ride.duration_seconds === 0 ? null : ride.stress / 100 / (ride.duration_seconds / 3600);
}

function block(ride, x, wide, baseline) {
  const tall = (height(ride) ?? 0.25) * thresholdHeight;
  const { low, middle, high } = ride.band_seconds;
  const banded = low + middle + high;
  // A ride without power is drawn open: what it measures is another thing.
  if (ride.intensity_ratio === null || banded === 0)
    return svg('rect', { x, y: baseline - tall, width: wide, height: tall, class: 'line' });
  let from = x;
  return [['low', low], ['middle', middle], ['high', high]].filter(([, seconds]) => seconds > 0).map(([band, seconds]) => {
    const part = wide * seconds / banded;
    const rect = svg('rect', { x: from, y: baseline - tall, width: part, height: tall, class: band === 'middle' ? 'band-hatched' : `band-${band}` });
    from += part;
    return rect;
  });
}

function label(entry, index, baseline, day) {
  const x = index * day + 3;
  // Where a day is narrower than its words, they stand on two steps by turns, and the last day's end with the line.
  const tight = day < narrow;
  const size = tight ? 11 : 12;
  const last = tight && index === 6;
  return [
    svg('text', { x, y: baseline + 14, 'font-size': size, class: 'svg-ink', text: shortDay(entry.date) }),
    svg('text', { x: last ? x + day - 3 : x, y: baseline + (tight && index % 2 === 1 ? 40 : 28), 'font-size': size, 'text-anchor': last ? 'end' : null, class: 'svg-quiet', text: entry.kind ?? '' }),
  ];
}

function spans(review, at, day, top) {
  return review.week.spans.map(span => {
    const from = at.get(span.from_ride)?.to ?? 0;
    const to = at.get(span.to_ride)?.from ?? day * 7;
    const y = above - 14;
    const broken = span.broken ?? span.verdict === 'broken';
    const text = `${broken ? '✗ ' : ''}${Math.round(span.hours)} h`;
    return svg('g', {},
      svg('path', { d: `M${from} ${y + 5}V${y}H${to}V${y + 5}`, class: broken ? 'line-rust' : 'line-quiet' }),
      svg('line', { x1: from, x2: from, y1: y + 5, y2: top, class: 'line-quiet', 'stroke-width': 0.5, 'stroke-dasharray': '1 3' }),
      svg('line', { x1: to, x2: to, y1: y + 5, y2: top, class: 'line-quiet', 'stroke-width': 0.5, 'stroke-dasharray': '1 3' }),
      svg('text', { x: (from + to) / 2, y: y - 5, 'text-anchor': 'middle', 'font-size': 12, class: broken ? 'svg-rust' : 'svg-ink', text }));
  });
}

/** The same in words. */
function inWords(review) {
  const days = review.week.days.map(entry => {
    const rides = review.rides.filter(r => entry.rides.includes(r.file)).map(r => `${r.kind ?? 'ride'} ${duration(r.duration_seconds)}${r.stress === null ? '' : `, ${figure(r.stress, '', 0)} points`}`);
    return `${shortDay(entry.date)}: ${rides.length > 0 ? rides.join('; ') : ruleName(entry.kind ?? 'rest').toLowerCase()}`;
  });
  return `The week on one line. ${days.join('. ')}.`;
}
