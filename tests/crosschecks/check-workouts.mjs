// Reads our workout files with the official decoder and plays them: what a head unit would ride must be what the session says.
// Usage: node check-workouts.mjs FOLDER_OF_WORKOUTS
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Decoder, Stream } from "@garmin/fitsdk";

const folder = process.argv[2];
const expected = JSON.parse(readFileSync(new URL("expected-workouts.json", import.meta.url), "utf8"));

const target = (step) => {
    if (step.targetType === "power") return `${step.customTargetPowerLow - 1000}-${step.customTargetPowerHigh - 1000} W`;
    if (step.targetType === "heartRate") return `${step.customTargetHeartRateLow - 100}-${step.customTargetHeartRateHigh - 100} bpm`;
    return step.wktStepName ?? "open";
};

// A repeat step goes back until the steps before it were ridden so often.
const play = (steps) => {
    const played = [];
    const rounds = new Map();
    for (let at = 0; at < steps.length; at++) {
        const step = steps[at];
        if (step.durationType !== "repeatUntilStepsCmplt") {
            played.push(`${step.durationTime} s ${target(step)}`);
            continue;
        }
        rounds.set(at, (rounds.get(at) ?? 0) + 1);
        if (rounds.get(at) < step.repeatSteps) at = step.durationStep - 1;
    }
    return played;
};

let passed = 0, failed = 0;
const report = (ok, text) => {
    ok ? passed++ : failed++;
    if (!ok || process.env.VERBOSE) console.log(`${ok ? "ok  " : "FAIL"} ${text}`);
};

for (const file of readdirSync(folder).filter((f) => f.endsWith(".fit")).sort()) {
    const decoder = new Decoder(Stream.fromByteArray([...readFileSync(join(folder, file))]));
    const intact = decoder.checkIntegrity();
    const { messages, errors } = decoder.read({ convertTypesToStrings: true });
    const [id] = messages.fileIdMesgs ?? [{}], [workout] = messages.workoutMesgs ?? [{}];
    const steps = messages.workoutStepMesgs ?? [];
    report(intact && errors.length === 0, `${file} is intact ${errors.map((e) => e.message).join("; ")}`);
    report(id.type === "workout" && id.serialNumber === undefined, `${file} is a workout without a serial number`);
    report(workout.sport === "cycling" && workout.numValidSteps === steps.length, `${file} says how many steps it has`);
    const found = play(steps), wanted = expected[file] ?? [];
    const at = found.findIndex((step, i) => step !== wanted[i]);
    report(found.length === wanted.length && at < 0, `${file} plays ${found.length} of ${wanted.length} steps meant${at < 0 ? "" : `; step ${at}: ${found[at]} against ${wanted[at]}`}`);
}

console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
