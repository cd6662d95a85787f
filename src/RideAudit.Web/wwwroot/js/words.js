// Dates, times and figures as the page shows them. Figures come rounded; they are only spelled here.

const days = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];
const months = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

function parts(iso) {
  const [year, month, day] = iso.slice(0, 10).split('-').map(Number);
  return { year, month, day, weekday: new Date(Date.UTC(year, month - 1, day)).getUTCDay() };
}

/** 15 June 2026 */
export function date(iso) {
  const { year, month, day } = parts(iso);
  return `${day} ${months[month - 1]} ${year}`;
}

/** Tuesday 16 June */
export function dayAndDate(iso) {
  const { month, day, weekday } = parts(iso);
  return `${days[weekday]} ${day} ${months[month - 1]}`;
}

/** Tue 16 */
export function shortDay(iso) {
  const { day, weekday } = parts(iso);
  return `${days[weekday].slice(0, 3)} ${day}`;
}

/** 15 Jun */
export function shortDate(iso) {
  const { month, day } = parts(iso);
  return `${day} ${months[month - 1].slice(0, 3)}`;
}

/** 1 h, 2 h 5 min, 55 min */
export function duration(seconds) {
  const minutes = Math.round(seconds / 60);
  const whole = Math.floor(minutes / 60);
  return [whole > 0 && `${whole}\u00a0h`, (whole === 0 || minutes % 60 > 0) && `${minutes % 60}\u00a0min`].filter(Boolean).join('\u00a0');
}

/** A number with its unit, or a dash where it is not known; with so many decimals, or those it has. */
export function figure(value, unit = '', decimals = null) {
  if (value === null || value === undefined) return '–';
  const text = (decimals === null ? String(value) : value.toFixed(decimals)).replace('-', '−');
  return unit ? `${text}\u00a0${unit}` : text;
}

/** 7.3 h */
export function hours(value) {
  return figure(value, 'h', 1);
}

/** 72 % of 0.7214 */
export function percent(share) {
  return share === null || share === undefined ? '–' : `${Math.round(share * 100)} %`;
}

/** hard-day-spacing as Hard day spacing */
export function ruleName(id) {
  const words = id.replaceAll('-', ' ');
  return words[0].toUpperCase() + words.slice(1);
}

const order = { broken: 0, watch: 1, 'not judged': 2, kept: 3 };
const marks = { broken: '✗', watch: '!', kept: '✓' };

/** ✗ broken */
export function verdictWords(verdict) {
  return `${marks[verdict] ?? '–'} ${verdict}`;
}

/** Findings, broken ones first. */
export function worstFirst(findings) {
  return [...findings].sort((a, b) => order[a.verdict] - order[b.verdict]);
}

/** 1 file, 2 files */
export function count(number, noun) {
  return `${number} ${noun}${number === 1 ? '' : 's'}`;
}
