using System.Globalization;
using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Rides;

namespace RideAudit.Ingest.Fit;

/// <summary>Says in plain words what is wrong with a FIT file and what was kept.</summary>
internal static class FitNotices
{
    public static string Problem(FitRejection rejection) => rejection.Reason == FitRejectionReason.NoData
        ? rejection.Kind == FitContentKind.Empty ? "empty file" : "no data"
        : "not a ride";

    public static string Sentence(FitRejection rejection) => $"{Capital(rejection.Detail)}: copy it again from the device, or remove it.";

    public static FileNotice NoDate(string name) => new(
        name, "clock not set", null, "The device’s clock was never set, so the date of this ride is unknown: put the date into the file’s name, such as 2026-05-05-1800.fit.", true);

    public static FileNotice NothingToUse(string name, FitFile file)
    {
        var other = file.Parts.FirstOrDefault(p => p.Continues is null && !p.IsActivity);
        if (other?.FileId is { } id)
            return new FileNotice(name, "not a ride", null, $"This is {FitFileTypes.Describe(id.Type)}, not a ride: there is nothing in it to review.", true);
        return new FileNotice(name, "no records", null, "This recording holds no records and no totals: copy it again from the device, or remove it.", true);
    }

    /// <summary>What is to be told of a file that gave recordings; at most one notice for all its damage.</summary>
    public static IEnumerable<FileNotice> Of(string name, FitFile file, FitClock? clock, List<Recording> recordings, int partsWithoutDate)
    {
        if (Damage(name, file) is { } damage)
            yield return damage;
        if (partsWithoutDate > 0)
            yield return new FileNotice(name, "clock not set", null, "A part of this file has no date, as the device’s clock was not set: it is left out.", false);
        if (clock is { DateFromName: true })
            yield return new FileNotice(name, "clock not set", null, "The device’s clock was never set: the date comes from the file’s name.", false);
        var generic = file.Parts.Any(p => p.Sessions.Any(s => s.Sport == FitSports.Generic) && p.Records.PowerFacts.Values > p.Records.PowerFacts.Zeros);
        if (generic && recordings.Exists(r => r.Sport == RideSport.Other))
            yield return new FileNotice(name, "other activity", null, "The device calls this activity generic, not cycling: only its hours count, as other activity.", false);
    }

    private static FileNotice? Damage(string name, FitFile file)
    {
        var telling = file.Faults.Where(IsTelling).ToArray();
        if (telling.Length == 0)
            return null;
        var worst = telling.OrderByDescending(Loses).ThenBy(Rank).ThenBy(f => f.ByteOffset).First();
        var records = file.Parts.Sum(p => p.Records.Count);
        var kept = string.Create(CultureInfo.InvariantCulture, $"{records} {(telling.Any(Loses) ? "of an unknown number of records" : records == 1 ? "record" : "records")}");
        return new FileNotice(name, Problem(worst.Code), kept, $"{Capital(worst.Detail).TrimEnd('.')}; {kept} {(records == 1 ? "was" : "were")} kept.", false);
    }

    private static bool Loses(FitFault fault) => fault.Action is FitFaultAction.Salvage or FitFaultAction.Reject;

    /// <summary>What broke says more than what is missing because of it.</summary>
    private static int Rank(FitFault fault) => fault.Code switch
    {
        FitFaultCode.Incomplete => 3,
        FitFaultCode.DataSizeTooLarge or FitFaultCode.PartWithoutData => 2,
        FitFaultCode.Resynchronised or FitFaultCode.DoubtfulMessagesDropped => 1,
        _ => 0,
    };

    /// <summary>A clock that was not set has a notice of its own; a missing closing message alone costs nothing but the offset.</summary>
    private static bool IsTelling(FitFault fault) =>
        fault.Code != FitFaultCode.ClockUnset
        && !(fault.Code == FitFaultCode.Incomplete && fault.Action == FitFaultAction.Warn);

    private static string Problem(FitFaultCode code) => code switch
    {
        FitFaultCode.Truncated or FitFaultCode.DataSizeTooLarge => "truncated",
        FitFaultCode.DataSizeZero or FitFaultCode.Incomplete => "not closed",
        FitFaultCode.FileCrcMismatch or FitFaultCode.FileCrcMissing or FitFaultCode.HeaderCrcMismatch => "checksum",
        FitFaultCode.TrailingBytes or FitFaultCode.PartFoundInTail or FitFaultCode.PartWithoutData => "extra bytes",
        FitFaultCode.LimitReached => "too large",
        _ => "damaged",
    };

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
