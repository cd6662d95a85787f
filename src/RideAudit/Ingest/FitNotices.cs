using System.Globalization;
using RideAudit.Fit;
using RideAudit.Fit.Messages;

namespace RideAudit.Ingest;

/// <summary>Says in plain words what is wrong with a FIT file and what was kept.</summary>
internal static class FitNotices
{
    public static string Problem(FitRejection rejection) => rejection.Reason == FitRejectionReason.NoData
        ? rejection.Kind == FitContentKind.Empty ? "empty file" : "no data"
        : "not a ride";

    public static string Sentence(FitRejection rejection) => Capital(rejection.Detail) + ".";

    public static FileNotice NothingToUse(string name, FitPart[] parts)
    {
        var other = parts.FirstOrDefault(p => !p.IsActivity);
        return other?.FileId is { } id
            ? new FileNotice(name, "not a ride", null, $"This is {FitFileTypes.Describe(id.Type)}, not a ride.", true)
            : new FileNotice(name, "no records", null, "This recording holds no records and no totals: nothing could be used.", true);
    }

    /// <summary>One notice for all the damage of a file; null when there is none worth telling.</summary>
    public static FileNotice? Damage(string name, FitFile file)
    {
        var telling = file.Faults.Where(f => f.Action is FitFaultAction.Warn or FitFaultAction.Salvage or FitFaultAction.Reject).ToArray();
        if (telling.Length == 0)
            return null;
        var worst = telling.OrderByDescending(f => f.Action is FitFaultAction.Salvage or FitFaultAction.Reject).ThenBy(f => f.ByteOffset).First();
        var records = file.Parts.Sum(p => p.Records.Count);
        var lost = telling.Any(f => f.Action is FitFaultAction.Salvage or FitFaultAction.Reject);
        var kept = string.Create(CultureInfo.InvariantCulture, $"{records} {(lost ? "of an unknown number of records" : "records")}");
        return new FileNotice(name, Problem(worst.Code), kept, $"{Capital(worst.Detail).TrimEnd('.')}; {kept} {(records == 1 ? "was" : "were")} kept.", false);
    }

    private static string Problem(FitFaultCode code) => code switch
    {
        FitFaultCode.Truncated or FitFaultCode.DataSizeTooLarge => "truncated",
        FitFaultCode.DataSizeZero or FitFaultCode.Incomplete => "not closed",
        FitFaultCode.FileCrcMismatch or FitFaultCode.FileCrcMissing or FitFaultCode.HeaderCrcMismatch => "checksum",
        FitFaultCode.TrailingBytes or FitFaultCode.PartFoundInTail or FitFaultCode.PartWithoutData => "extra bytes",
        FitFaultCode.ClockUnset => "clock not set",
        FitFaultCode.LimitReached => "too large",
        _ => "damaged",
    };

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
