// Compares our records with those of outside decoders, record for record.
// Usage: node compare.mjs OURS.jsonl OFFICIAL.jsonl TRACKS_FOLDER
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

const [oursPath, officialPath, tracksFolder] = process.argv.slice(2);
const here = new URL(".", import.meta.url).pathname;
const exceptions = JSON.parse(readFileSync(join(here, "exceptions.json"), "utf8"));
const fields = ["time", "power", "heart rate", "cadence", "distance", "speed", "altitude"];
const epoch = 631065600;

const readLines = (path) => readFileSync(path, "utf8").split("\n").filter(Boolean).map((line) => JSON.parse(line));
const byFile = (list) => new Map(list.map((item) => [item.file, item]));
const values = (records, column) => records.map((r) => r[column]).filter((v) => v !== null);
const sum = (list) => list.reduce((a, b) => a + b, 0);

// The tracks of gpsbabel: columns by name; it has no distance, rounds speed to 0.01 m/s and altitude to 0.1 m.
const readTrack = (path) => {
    const lines = readFileSync(path, "utf8").split(/\r?\n/).filter(Boolean);
    const names = (lines.shift() ?? "").split(",");
    const cell = (cells, name) => {
        const at = names.indexOf(name);
        return at < 0 || cells[at] === "" || cells[at] === undefined ? null : Number(cells[at]);
    };
    return lines.map((line) => {
        const cells = line.split(",");
        const [date, time] = [cells[names.indexOf("Date")], cells[names.indexOf("Time")]];
        const seconds = date && time ? Date.parse(`${date.replaceAll("/", "-")}T${time}Z`) / 1000 - epoch : null;
        return [seconds, cell(cells, "Power"), cell(cells, "Heartrate"), cell(cells, "Cadence"), null, cell(cells, "Speed"), cell(cells, "Altitude")];
    });
};

const decoders = {
    official: { columns: [0, 1, 2, 3, 4, 5, 6], tolerance: [0, 0, 0, 0, 1e-9, 1e-6, 1e-4], missingIsZero: false },
    gpsbabel: { columns: [0, 1, 2, 3, 5, 6], tolerance: [0, 0, 0, 1, 0, 0.0051, 0.051], missingIsZero: true },
};

// Heart rate that was sent in hr messages is joined to the records by every decoder in its own way (row F8): the official one
// rounds to whole beats, weighs by quarter seconds and leaves out the last record; we hold a value for up to five seconds.
const agreesOnJoinedHeartRate = (ours, theirs) => {
    const both = ours.map((r, i) => [r[2], theirs[i]?.[2] ?? null]).filter(([a, b]) => a !== null && b !== null);
    const missing = values(ours, 2).length - both.length;
    const mean = sum(both.map(([a, b]) => a - b)) / both.length;
    return both.length > 0 && missing >= 0 && missing <= 6 && both.length >= values(theirs, 2).length - 1
        && Math.abs(mean) <= 0.5 && both.every(([a, b]) => Math.abs(a - b) <= 5);
};

const differs = (a, b, column, { tolerance, missingIsZero }) => {
    if (missingIsZero && column !== 0 && (a === null || b === null)) return (a ?? 0) !== 0 || (b ?? 0) !== 0;
    return a === null || b === null ? a !== b : Math.abs(a - b) > tolerance[column] + 1e-7 * Math.abs(b);
};

const compare = (ours, theirs, joinsHeartRate, decoder) => {
    const found = new Map();
    // Where a decoder stops early, what it has before its end is still compared; its very last record may be the garbage that stopped it.
    const common = ours.length === theirs.length ? ours.length : Math.min(ours.length, Math.max(0, theirs.length - 1));
    if (ours.length !== theirs.length) found.set("records", `${ours.length} against ${theirs.length} records`);
    for (const column of decoder.columns) {
        if (column === 2 && joinsHeartRate) {
            if (!agreesOnJoinedHeartRate(ours, theirs)) found.set(fields[2], "the joined heart rates are too far apart");
            continue;
        }
        const at = ours.slice(0, common).findIndex((r, i) => differs(r[column], theirs[i][column], column, decoder));
        if (at >= 0) found.set(fields[column], `record ${at}: ${ours[at][column]} against ${theirs[at][column]}`);
    }
    return found;
};

let passed = 0, failed = 0;
const report = (ok, text) => {
    ok ? passed++ : failed++;
    if (!ok || process.env.VERBOSE) console.log(`${ok ? "ok  " : "FAIL"} ${text}`);
};

const judge = (file, name, found) => {
    const excepted = exceptions.filter((e) => e.file === file && e.decoder === name);
    for (const e of excepted) report(e.fields.some((f) => found.has(f)), `${file} ${name}: exception ${e.row} is ${e.fields.some((f) => found.has(f)) ? "needed" : "no longer needed"}`);
    const allowed = new Set(excepted.flatMap((e) => e.fields));
    const left = [...found].filter(([field]) => !allowed.has(field));
    report(left.length === 0, `${file} against ${name}${left.map(([field, text]) => `; ${field}: ${text}`).join("")}`);
};

const officials = byFile(readLines(officialPath));
for (const ours of readLines(oursPath)) {
    const official = officials.get(ours.file);
    if (official) judge(ours.file, "official", compare(ours.records, official.records, ours.heartRateSamples > 0, decoders.official));
    const track = join(tracksFolder, ours.file + ".csv");
    if (existsSync(track)) judge(ours.file, "gpsbabel", compare(ours.records, readTrack(track), ours.heartRateSamples > 0, decoders.gpsbabel));
}

console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
