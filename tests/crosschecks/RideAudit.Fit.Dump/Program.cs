using System.Globalization;
using System.Text;
using RideAudit.Fit;
using RideAudit.Fit.Messages;

// Prints what this reader makes of each file as one line of JSON, for comparison with other decoders.
foreach (var path in args)
    Console.WriteLine(Dump(path));

static string Dump(string path)
{
    var file = FitDecoder.Decode(File.ReadAllBytes(path));
    StringBuilder json = new();
    json.Append(CultureInfo.InvariantCulture, $"{{\"file\":\"{Path.GetFileName(path)}\",\"rejection\":{Text(file.Rejection?.Detail)},");
    json.Append("\"faults\":[").AppendJoin(',', file.Faults.Select(f => Text($"{f.Code} {f.Action} at {f.ByteOffset}: {f.Detail}"))).Append("],");
    json.Append("\"heartRateSamples\":").Append(file.Parts.Sum(p => p.HeartRate.Count)).Append(',');
    json.Append("\"heartRateSampleSum\":").Append(file.Parts.Sum(p => p.HeartRate.BeatsPerMinute.ToArray().Sum(b => b))).Append(',');
    json.Append("\"sessions\":").Append(file.Parts.Sum(p => p.Sessions.Count)).Append(",\"records\":[");
    json.AppendJoin(',', file.Parts.SelectMany(p => Enumerable.Range(0, p.Records.Count).Select(i => Row(p.Records, i))));
    return json.Append("]}").ToString();
}

static string Row(RecordChannels r, int i) => string.Create(
    CultureInfo.InvariantCulture,
    $"[{(r.Timestamps[i] == RecordChannels.NoTime ? "null" : r.Timestamps[i])},{Number(r.Power[i])},{Number(r.HeartRate[i])},{Number(r.Cadence[i])},{Number(r.DistanceM[i])},{Number(r.SpeedMps[i])},{Number(r.AltitudeM[i])},{(r.DeveloperPower.Length > 0 ? Number(r.DeveloperPower[i]) : "null")}]");

static string Number(double value) => double.IsNaN(value) ? "null" : value.ToString("R", CultureInfo.InvariantCulture);

static string Text(string? value) => value is null ? "null" : "\"" + value.Replace("\\", "\\\\").Replace("\"", "\\\"") + "\"";
