// Prints what the official JavaScript decoder makes of each file, one line of JSON a file, in the form of RideAudit.Fit.Dump.
import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { Decoder, Stream } from "@garmin/fitsdk";

const first = (value) => (Array.isArray(value) ? value.find((v) => v != null) : value) ?? null;
const number = (value) => (typeof first(value) === "number" ? first(value) : null);

const row = (record) => {
    const cadence = number(record.cadence);
    const fraction = number(record.fractionalCadence);
    return [
        number(record.timestamp),
        number(record.power),
        number(record.heartRate),
        cadence === null ? null : cadence + (fraction ?? 0),
        number(record.distance),
        number(record.enhancedSpeed ?? record.speed),
        number(record.enhancedAltitude ?? record.altitude),
    ];
};

for (const path of process.argv.slice(2)) {
    const bytes = readFileSync(path);
    const decoder = new Decoder(Stream.fromByteArray([...bytes]));
    const { messages, errors } = decoder.read({ convertDateTimesToDates: false });
    console.log(JSON.stringify({
        file: basename(path),
        errors: errors.map((error) => error.message),
        sessions: (messages.sessionMesgs ?? []).length,
        heartRateMessages: (messages.hrMesgs ?? []).length,
        records: (messages.recordMesgs ?? []).map(row),
    }));
}
