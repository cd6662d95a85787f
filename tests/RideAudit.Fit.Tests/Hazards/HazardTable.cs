using System.Text;

namespace RideAudit.Fit.Tests.Hazards;

/// <summary>All hazard files with their expected outcomes, and where they are committed.</summary>
public static class HazardTable
{
    public static IReadOnlyList<HazardCase> All { get; } =
        [.. ContainerCases.All(), .. StreamCases.All(), .. FieldCases.All(), .. DeveloperCases.All(), .. ValueCases.All(), .. TimeCases.All(), .. StructureCases.All(), .. HeartRateCases.All()];

    public static string Folder => Repository.Path("testdata", "fit");

    public static string PathOf(HazardCase hazard) => Path.Combine(Folder, hazard.Folder, hazard.FileName);

    /// <summary>The page that lists the files.</summary>
    public static string Page()
    {
        StringBuilder page = new();
        page.Append("# FIT test files\n\n");
        page.Append("Small files, each with one property that real files have, made by `tests/RideAudit.Fit.Tests/Hazards`; no recording of a person is among them.\n");
        page.Append("`good/` holds what is in order, however unusual; `bad/` what is reported. Rows: A container, B message stream, C developer fields, D values, E time, F structure.\n");
        page.Append("To make them again after a change of the generator: `RIDEAUDIT_UPDATE=1 dotnet test tests/RideAudit.Fit.Tests`.\n\n");
        page.Append("| file | what is in it | records | power sum, W | faults |\n|---|---|---|---|---|\n");
        foreach (var hazard in All)
            page.Append(Row(hazard));
        return page.ToString();
    }

    private static string Row(HazardCase hazard)
    {
        var faults = hazard.Rejection is { } reason ? $"refused: {reason}" : string.Join(", ", hazard.Faults.Select(f => $"{f.Code} ({f.Action})"));
        var power = hazard.DeveloperPowerSum > 0 ? FormattableString.Invariant($"{hazard.PowerSum} + {hazard.DeveloperPowerSum} in a developer field") : FormattableString.Invariant($"{hazard.PowerSum}");
        return $"| `{hazard.Folder}/{hazard.FileName}` | {hazard.What} | {hazard.Records} | {power} | {faults} |\n";
    }
}
