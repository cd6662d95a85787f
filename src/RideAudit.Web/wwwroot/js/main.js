import { drawActions } from './actions.js';
import { weeksAhead } from './ahead.js';
import { program, up } from './client.js';
import { drawDesk } from './desk.js';
import { el, part, present, say } from './dom.js';
import { chosen, dropped, inReadingOrder, riders } from './drop.js';
import { forget, keep, kept } from './keep.js';
import { drawNotes } from './notes.js';
import { sheets } from './pages.js';
import { drawReview, rideTable } from './review.js';
import { drawRider } from './rider.js';
import { count, date, hours } from './words.js';

const bundle = globalThis.rideauditBundle ?? null;
const zone = Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC';
const state = { all: [], files: [], desk: null, folder: null, asOf: '', week: '', weeks: [], review: null, paper: 'a4', keeps: false, turn: 0 };
const ahead = weeksAhead(program, state, attempt, () => judge({ plan: false }));

function today() {
  const now = new Date();
  return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
}

function show(id, visible) {
  part(id).hidden = !visible;
}

function trouble(lead, lines = []) {
  part('trouble').replaceChildren(el('p', { text: lead }), lines.length > 0 ? el('ul', {}, lines.map(text => el('li', { text }))) : '');
  show('trouble', true);
}

/** Runs a piece of work; what goes wrong is said and does not end the page. */
async function attempt(work) {
  try {
    await work();
  } catch (fault) {
    trouble(`Something went wrong in the page itself: ${fault.message}. Nothing that was dropped is lost on your disk; reload the page and try again.`);
  }
}

function tell(message) {
  if (message.progress) progress(message.progress);
  else if (message.early && !state.desk) draw(JSON.parse(message.early), { firstLook: true });
}

function progress({ done, files, read, bytes, seconds, name }) {
  part('bar').value = bytes > 0 ? read / bytes : 1;
  const left = seconds > 1 && read > 0 ? ` · about ${Math.max(1, Math.round(seconds * (bytes - read) / read))} s left` : '';
  const rate = seconds > 0.5 ? ` · ${(done / seconds).toFixed(done / seconds < 10 ? 1 : 0)} files a second` : '';
  part('progress-text').textContent = `${done} of ${count(files, 'file')}${rate}${left} · ${name}`;
}

async function take(given) {
  if (given.length === 0) {
    trouble('There was no file in what was dropped. Drop a folder, or use the button to choose one.');
    return;
  }
  // Who drops files before the program is up has them read when it is.
  await up;
  const files = await takeFonts(given);
  if (files.length === 0) return;
  // A rider file, a note or a plan table by itself belongs to the rides that are here already, and to what was written beside them.
  const joins = state.files.length > 0 && await areTexts(files);
  const again = joins ? { rider: !files.some(f => /\.toml$/i.test(f.name)), plan: !files.some(f => /\.csv$/i.test(f.name)), notes: !files.some(f => /\.md$/i.test(f.name)) } : null;
  state.all = joins ? [...state.files.filter(o => !files.some(f => f.name === o.name)), ...files] : files;
  state.week = '';
  state.desk = riders(state.all);
  if (state.keeps) await keep(state.all).catch(() => {});
  if (state.desk) await readDesk();
  else await readRider(state.all, joins ? state.folder : null, again);
}

/** Takes the fonts among the files, for names and notes that the page's own font has no letters for; gives back the rest. */
async function takeFonts(files) {
  const fonts = files.filter(f => /\.(ttf|ttc|otf)$/i.test(f.name));
  const refused = [];
  for (const { name, file } of fonts) if (!(await program.call('addFont', file))) refused.push(name);
  if (refused.length > 0) trouble('These are no fonts with TrueType outlines, so that nothing can be drawn with them:', refused);
  if (refused.length < fonts.length) {
    part('fonts').textContent = `${count(fonts.length - refused.length, 'font')} taken for letters that the pages’ own lacks, until the tab is closed.`;
    if (fonts.length === files.length && state.review) await judge({ plan: false });
  }
  return files.filter(f => !fonts.includes(f));
}

async function areTexts(files) {
  for (const { name, file } of files)
    if (!/\.(toml|md)$/i.test(name) && !(/\.csv$/i.test(name) && await program.call('isPlan', file))) return false;
  return true;
}

async function readFiles(files, showEarly, again = null) {
  return program.call('read', { files: inReadingOrder(files).map(({ name, file }) => ({ name, file })), zone, today: today(), asOf: state.asOf, showEarly, again });
}

function begin(title) {
  part('drop').classList.add('small');
  part('progress-title').textContent = title;
  part('bar').value = 0;
  part('progress-text').textContent = '';
  for (const id of ['trouble', 'review', 'plan', 'rider', 'desk']) show(id, false);
  show('progress', true);
  say(title);
}

async function readRider(files, folder, again = null, why = '') {
  state.files = files;
  state.folder = folder;
  begin(`${why}${why ? 'reading' : 'Reading'} ${folder ?? count(files.length, 'file')}${why ? ' again' : ''}`);
  const { stopped, done, unusable } = await readFiles(files, true, again);
  show('progress', false);
  if (stopped) trouble(`Stopped after ${done} of ${count(files.length, 'file')}: what follows is judged by those alone.`);
  await judge({ unusable, focus: true });
}

async function readDesk() {
  state.folder = null;
  await program.call('openDesk');
  for (const { folder, files } of state.desk) {
    begin(`Reading ${folder}`);
    const { stopped } = await readFiles(files, false);
    await program.call('toDesk', folder, state.asOf);
    if (stopped) break;
  }
  show('progress', false);
  const roster = JSON.parse(await program.call('desk', state.asOf));
  const screen = JSON.parse(await program.call('deskScreen', state.asOf));
  part('desk').replaceChildren(...drawDesk(roster, screen, folder => attempt(async () => {
    await readRider(state.desk.find(r => r.folder === folder).files, folder);
    show('desk', true);
  })));
  show('desk', true);
  part('desk-title').focus();
  say(`${count(roster.riders.length, 'rider')} read.`);
}

/** Judges a week of what has been read, and draws everything. */
async function judge({ unusable = null, focus = false, plan = true } = {}) {
  const turn = ++state.turn;
  const text = await program.call('review', state.asOf, state.week);
  if (turn !== state.turn) return;
  await drawForm();
  if (text === '') {
    show('review', false);
    trouble(`No week can be judged: no usable ride among ${count(state.files.length, 'file')}, or none before the date looked back from. Ride files are .fit, .tcx, .gpx or .csv, each also as .gz or in a .zip.`, unusable ?? await program.call('unusable'));
    return;
  }
  if (focus && !part('trouble').textContent.startsWith('Stopped')) show('trouble', false);
  draw(JSON.parse(text), { firstLook: false });
  if (focus) document.getElementById('headline').focus({ preventScroll: false });
  say(state.review.summary.headline);
  if (plan) await ahead.refresh();
  await fillLists(turn);
}

// The lists take their time: the week is there before them.
async function fillLists(turn) {
  const weeks = JSON.parse(await program.call('weeks', state.asOf)).weeks;
  if (turn !== state.turn) return;
  state.weeks = weeks;
  fillChooser();
  const all = part('all-rides');
  all.replaceChildren(el('summary', { text: `All rides: ${weeks.reduce((sum, w) => sum + w.ride_count, 0)}` }));
  // A long list is asked for when it is opened: an answer does not wait for it.
  const fill = () => attempt(async () => {
    if (!all.open || all.childElementCount > 1) return;
    const list = JSON.parse(await program.call('rides', state.asOf)).rides;
    if (turn === state.turn && all.childElementCount === 1) all.append(rideTable(list.reverse(), { ids: false, caption: 'Every ride before the date looked back from, latest first.' }));
  });
  all.addEventListener('toggle', fill);
  await fill();
}

function draw(review, options) {
  const opened = ['pages', 'all-rides', 'held'].filter(id => part(id)?.open);
  state.review = review;
  part('review').replaceChildren(...present([
    drawActions(program, state, attempt, options, { choose, step, lookBackFrom }), drawReview(review, options), paper(options),
    el('details', { id: 'all-rides', class: 'block' }, el('summary', { text: 'All rides: being listed' })),
  ]));
  // What was open stays open: an answer changes the week, not the place of who reads it.
  for (const id of opened) if (part(id)) part(id).open = true;
  show('review', true);
}

/** The pages as they are printed, drawn when they are asked for. */
function paper({ firstLook }) {
  const frame = el('details', { id: 'pages', class: 'block' }, el('summary', { text: 'The pages, as the PDF has them' }));
  frame.addEventListener('toggle', () => attempt(async () => {
    if (frame.open && frame.childElementCount === 1) frame.append(...sheets(await program.call('pages', state.asOf, state.week)));
  }));
  return firstLook ? null : frame;
}

function fillChooser() {
  const chooser = part('week');
  if (!chooser) return;
  const current = state.review.week.starts_on;
  chooser.replaceChildren(...[...state.weeks].reverse().map(w => el('option', { value: w.starts_on, selected: w.starts_on === current, text: `${date(w.starts_on)} · ${hours(w.hours)}` })));
  chooser.disabled = false;
  const at = state.weeks.findIndex(w => w.starts_on === current);
  part('earlier').disabled = at <= 0;
  part('later').disabled = at < 0 || at >= state.weeks.length - 1;
}

function choose(week) {
  state.week = week;
  return attempt(() => judge({ plan: false }));
}

function lookBackFrom(day) {
  state.asOf = day;
  state.week = '';
  return attempt(judge);
}

function step(by) {
  const at = state.weeks.findIndex(w => w.starts_on === state.review.week.starts_on);
  const next = state.weeks[at + by];
  return next ? choose(next.starts_on) : undefined;
}

async function drawForm() {
  const rider = JSON.parse(await program.call('rider'));
  const active = document.activeElement?.id;
  const notes = JSON.parse(await program.call('notes'));
  part('rider').replaceChildren(...drawRider(rider, answers => attempt(() => answered(answers))), drawNotes(notes, state.review?.week.starts_on ?? null, rows => attempt(async () => {
    await program.call('setNotes', JSON.stringify(rows));
    await judge({ plan: false });
  })), keeping());
  show('rider', true);
  // A form that is drawn again keeps the place of who types in it.
  if (active?.startsWith('rider-')) part(active)?.focus();
}

async function answered(answers) {
  const rider = JSON.parse(await program.call('edit', JSON.stringify(answers)));
  if (rider.mistakes.length === 0 && ('time_zone' in answers.values || answers.columns)) {
    await readRider(state.files, state.folder, { rider: true, plan: true, notes: true }, answers.columns ? 'Columns were named: ' : 'The time zone has changed: ');
  } else {
    await judge();
  }
}

function keeping() {
  return el('p', { class: 'checks' }, el('label', {}, el('input', { type: 'checkbox', id: 'keep', checked: state.keeps, on: { change: e => attempt(async () => {
    state.keeps = e.target.checked;
    if (state.keeps) await keep(state.all);
    else await forget();
    say(state.keeps ? 'The files are kept in this browser.' : 'What was kept is forgotten.');
  }) } }), ' Keep what was dropped on this machine, in this browser, until this is unticked'));
}

function listen() {
  const input = (button, field) => {
    part(button).addEventListener('click', () => part(field).click());
    part(field).addEventListener('change', e => {
      const files = chosen(e.target.files);
      e.target.value = '';
      attempt(() => take(files));
    });
  };
  input('choose-folder', 'folder-input');
  input('choose-files', 'files-input');
  part('stop').addEventListener('click', () => program.stop());
  let depth = 0;
  const over = by => document.body.classList.toggle('over', (depth = Math.max(0, depth + by)) > 0);
  addEventListener('dragenter', e => { e.preventDefault(); over(1); });
  addEventListener('dragleave', () => over(-1));
  addEventListener('dragover', e => e.preventDefault());
  addEventListener('drop', e => {
    e.preventDefault();
    depth = 0;
    over(0);
    attempt(async () => take(await dropped(e.dataTransfer)));
  });
}

async function boot() {
  program.listen(tell);
  listen();
  await up;
  part('ready').textContent = 'Ready.';
  document.documentElement.dataset.ready = 'yes';
  program.call('prepare').catch(() => {});
  const before = await kept();
  if (before && state.all.length === 0) {
    state.keeps = true;
    await take(before);
  }
  if (!bundle && 'serviceWorker' in navigator && isSecureContext) await navigator.serviceWorker.register('sw.js').catch(() => {});
}

attempt(boot);
