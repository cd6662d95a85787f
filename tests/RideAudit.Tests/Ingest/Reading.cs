using NodaTime;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Rides;

namespace RideAudit.Tests.Ingest;

/// <summary>Reads files as the program does, from a folder, for a rider in Lisbon; cadence and speed are kept, so that it can be seen how they were read.</summary>
internal static class Reading
{
    public static DateTimeZone Lisbon { get; } = DateTimeZoneProviders.Tzdb["Europe/Lisbon"];

    public static Rider Rider { get; } = new() { TimeZone = Lisbon };

    public static FolderContent Of(string name, byte[] bytes, Rider? rider = null)
    {
        using var folder = new TempFolder().Write(name, bytes);
        return Of(folder, rider);
    }

    public static FolderContent Of(string name, string text, Rider? rider = null) => Of(name, System.Text.Encoding.UTF8.GetBytes(text), rider);

    public static FolderContent Of(TempFolder folder, Rider? rider = null) =>
        FolderReader.Read(folder.Path, new Intake(rider ?? Rider, DateTimeZone.Utc), null, CancellationToken.None);

    public static FolderContent Of(TempFolder folder, ReadLimits limits) =>
        FolderReader.Read(folder.Path, new Intake(Rider, DateTimeZone.Utc, limits, CancellationToken.None), null, CancellationToken.None);

    /// <summary>Sum of the power a ride's figures are made from, W: nothing where the sensor is dead.</summary>
    public static double PowerSum(Recording recording) => Powers(recording).Sum(p => (double)p);

    /// <summary>Seconds with such a power.</summary>
    public static int PowerCount(Recording recording) => Powers(recording).Count();

    private static IEnumerable<float> Powers(Recording recording) =>
        RideJoiner.Join([recording]).SelectMany(r => r.Grid.PowerW ?? []).Where(p => !float.IsNaN(p));
}
