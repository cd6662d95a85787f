using RideAudit.Fit.Messages;

namespace RideAudit.Fit.Fuzz;

/// <summary>What must hold for any bytes. A fuzzer looks for bytes for which it does not.</summary>
internal static class Invariants
{
    private static readonly FitDecodeOptions Options = new() { MaxInflatedBytes = 1 << 20 };

    public static FitFile Check(byte[] bytes)
    {
        var file = FitDecoder.Decode(bytes, Options);
        Require(file.IsUsable == file.Parts.Count > 0, "a usable file has parts, a refused one has none");
        var inflated = FitContent.Sniff(bytes) == FitContentKind.Gzip;
        var most = inflated ? Options.MaxInflatedBytes : bytes.Length;
        Require(file.Parts.Sum(p => (long)p.Records.Count) <= most, "no more records than bytes");
        foreach (var part in file.Parts)
            Check(part.Records);
        FitDecoder.Decode(bytes, Options with { Tolerance = DamageTolerance.UpToFirstBreak });
        var strict = FitDecoder.Decode(bytes, Options with { Tolerance = DamageTolerance.Strict });
        Require((strict.FaultCount > 0) == (file.FaultCount > 0), "strict finds a fault exactly where tolerant does");
        return file;
    }

    private static void Check(RecordChannels records)
    {
        Require(records.InTimeOrder().Length == records.Count, "as many times as records");
        foreach (var heartRate in records.HeartRate)
            Require(float.IsNaN(heartRate) || heartRate is >= 1 and <= 254, "heart rate is 1 to 254 or missing");
        foreach (var power in records.Power)
            Require(float.IsNaN(power) || power is >= 0 and <= 65_534, "power is 0 to 65,534 or missing");
        foreach (var distance in records.DistanceM)
            Require(double.IsNaN(distance) || distance >= 0, "distance is not negative");
    }

    private static void Require(bool holds, string what)
    {
        if (!holds)
            throw new InvalidOperationException("does not hold: " + what);
    }
}
