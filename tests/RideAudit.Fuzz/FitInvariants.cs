using RideAudit.Fit;
using RideAudit.Fit.Messages;

namespace RideAudit.Fuzz;

/// <summary>What must hold of the FIT reader for any bytes.</summary>
internal static class FitInvariants
{
    private static readonly FitDecodeOptions Options = new() { MaxInflatedBytes = 1 << 20 };

    public static string Check(byte[] bytes)
    {
        var file = FitDecoder.Decode(bytes, Options);
        Invariant.Require(file.IsUsable == file.Parts.Count > 0, "a usable file has parts, a refused one has none");
        var inflated = FitContent.Sniff(bytes) == FitContentKind.Gzip;
        var most = inflated ? Options.MaxInflatedBytes : bytes.Length;
        Invariant.Require(file.Parts.Sum(p => (long)p.Records.Count) <= most, "no more records than bytes");
        foreach (var part in file.Parts)
            Check(part.Records);
        FitDecoder.Decode(bytes, Options with { Tolerance = DamageTolerance.UpToFirstBreak });
        var strict = FitDecoder.Decode(bytes, Options with { Tolerance = DamageTolerance.Strict });
        Invariant.Require((strict.FaultCount > 0) == (file.FaultCount > 0), "strict finds a fault exactly where tolerant does");
        return $"{file.Parts.Sum(p => p.Records.Count)} records, {file.FaultCount} faults";
    }

    private static void Check(RecordChannels records)
    {
        Invariant.Require(records.InTimeOrder().Length == records.Count, "as many times as records");
        foreach (var heartRate in records.HeartRate)
            Invariant.Require(float.IsNaN(heartRate) || heartRate is >= 1 and <= 254, "heart rate is 1 to 254 or missing");
        foreach (var power in records.Power)
            Invariant.Require(float.IsNaN(power) || power is >= 0 and <= 65_534, "power is 0 to 65,534 or missing");
        foreach (var distance in records.DistanceM)
            Invariant.Require(double.IsNaN(distance) || distance >= 0, "distance is not negative");
    }
}
