using SkiaSharp;

namespace RideAudit.Report.Tests.Pictures;

/// <summary>
/// Pictures that were looked at and approved. A changed one is written beside the test's program as *.received.png;
/// RIDEAUDIT_UPDATE=1 writes it over the approved one, to be looked at before it is committed.
/// </summary>
internal static class ApprovedPicture
{
    private static readonly string Folder = Path.Combine(Repository.TestProject, "Pictures", "Approved");

    /// <summary>Holds a picture against the approved one of that name.</summary>
    public static void Check(SKBitmap drawn, string name) => Check(drawn, Path.Combine(Folder, name + ".png"), difference => difference.IsSmall);

    /// <summary>Holds a picture against an approved file, with a tolerance of its own.</summary>
    public static void Check(SKBitmap drawn, string file, Func<Difference, bool> isSmall)
    {
        using var approved = SKBitmap.Decode(file);
        var difference = approved is null ? new Difference(255, 1) : Difference.Between(approved, drawn);
        if (isSmall(difference))
            return;
        var received = Path.Combine(AppContext.BaseDirectory, Path.GetFileNameWithoutExtension(file) + ".received.png");
        using var png = drawn.Encode(SKEncodedImageFormat.Png, 100);
        File.WriteAllBytes(Repository.Updates ? file : received, png.ToArray());
        Assert.True(Repository.Updates, $"{Path.GetFileName(file)} differs from the approved picture: {difference}. What was drawn is beside the test's program.");
    }
}
