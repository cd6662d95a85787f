// Sums of what the official decoder gives for our own test files, as committed in expected.json: they serve where node is absent.
// Usage: node summarise.mjs OFFICIAL.jsonl FOLDER_OF_OUR_FILES
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

const [officialPath, folder] = process.argv.slice(2);
const exceptions = JSON.parse(readFileSync(new URL("exceptions.json", import.meta.url), "utf8"));
const fields = ["time", "power", "heart rate", "cadence", "distance", "speed", "altitude"];

const total = (records, column) => {
    const list = records.map((r) => r[column]).filter((v) => v !== null);
    return { values: list.length, sum: Math.round(list.reduce((a, b) => a + b, 0) * 1000) / 1000 };
};

const summary = {};
for (const line of readFileSync(officialPath, "utf8").split("\n").filter(Boolean)) {
    const { file, records, heartRateMessages } = JSON.parse(line);
    const left = new Set(exceptions.filter((e) => e.file === file && e.decoder === "official").flatMap((e) => e.fields));
    if (!existsSync(join(folder, file)) || left.has("records")) continue;
    if (heartRateMessages > 0) left.add("heart rate");
    summary[file] = { records: records.length };
    fields.forEach((field, column) => { if (!left.has(field)) summary[file][field] = total(records, column); });
}

console.log(JSON.stringify(summary, null, 1));
