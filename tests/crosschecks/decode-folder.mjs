// Decodes every FIT file of a folder with the official decoder, in its default mode, and does nothing else: for benchmarks.
// Usage: node decode-folder.mjs FOLDER
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Decoder, Stream } from "@garmin/fitsdk";

const [folder] = process.argv.slice(2);
let records = 0;
for (const name of readdirSync(folder, { recursive: true })) {
    if (!name.endsWith(".fit")) continue;
    const { messages } = new Decoder(Stream.fromBuffer(readFileSync(join(folder, name)))).read();
    records += messages.recordMesgs?.length ?? 0;
}
console.log(records);
