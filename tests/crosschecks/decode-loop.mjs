// Decodes one file with the official decoder each time a line comes in, and answers with a line: for benchmarks.
// Usage: node decode-loop.mjs FILE default|raw
import { readFileSync } from "node:fs";
import { createInterface } from "node:readline";
import { Decoder, Stream } from "@garmin/fitsdk";

const [path, mode] = process.argv.slice(2);
const bytes = readFileSync(path);
const raw = {
    applyScaleAndOffset: false,
    expandComponents: false,
    expandSubFields: false,
    convertTypesToStrings: false,
    convertDateTimesToDates: false,
    mergeHeartRates: false,
};

createInterface({ input: process.stdin }).on("line", () => {
    const { messages } = new Decoder(Stream.fromBuffer(bytes)).read(mode === "raw" ? raw : {});
    console.log(messages.recordMesgs.length);
});
