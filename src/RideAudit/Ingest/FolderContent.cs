using System.Collections.Immutable;
using RideAudit.Ingest.Csv;
using RideAudit.Plan.Table;
using RideAudit.Rides;

namespace RideAudit.Ingest;

/// <summary>What a folder holds: recordings, logged rides, and everything that could not be used.</summary>
public sealed record FolderContent
{
    /// <summary>Files looked at.</summary>
    public required int FilesSeen { get; init; }

    /// <summary>Recordings of any sport, duplicates left out, in order of start.</summary>
    public required ImmutableArray<Recording> Recordings { get; init; }

    /// <summary>Rows of ride logs.</summary>
    public ImmutableArray<LoggedRide> LoggedRides { get; init; } = [];

    /// <summary>Everything that is planned: the plan tables among the files, put together in the order of their names.</summary>
    public PlanTable Plan { get; init; } = PlanTable.Empty;

    /// <summary>The plan tables one by one, in the order of their names, as they must be to be written again.</summary>
    public ImmutableArray<PlanSheet> PlanSheets { get; init; } = [];

    /// <summary>Files that could not be used, repairs, duplicates.</summary>
    public required ImmutableArray<FileNotice> Notices { get; init; }

    /// <summary>The rider file among the files, the one nearest the top; null without one.</summary>
    public NamedText? RiderFile { get; init; }

    /// <summary>Notes among the files, in the order of their names.</summary>
    public ImmutableArray<NamedText> Notes { get; init; } = [];

    /// <summary>The time zone used where a file does not tell its own.</summary>
    public required string TimeZone { get; init; }

    /// <summary>True when that zone is the machine's, not the rider file's.</summary>
    public bool TimeZoneIsTheMachines { get; init; }

    /// <summary>The same files with other plan tables in place of theirs, as if these had been read with them.</summary>
    /// <param name="sheets">The tables, in the order of their names.</param>
    public FolderContent WithPlan(ImmutableArray<PlanSheet> sheets)
    {
        var plan = PlanTable.Merge(sheets);
        var others = Notices.Where(n => n.Problem != PlanTables.Unreadable);
        return this with
        {
            Plan = plan,
            PlanSheets = sheets,
            Notices = [.. others.Concat(PlanTables.Notices(plan, sheets)).OrderBy(n => n.File, StringComparer.Ordinal)],
        };
    }
}
