using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Text;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Trust;

/// <summary>What a recording holds of its rider, its device and its place stays in the recording.</summary>
public sealed class PrivateTests
{
    private static readonly string[] Products = ["RideAudit.Fit.dll", "RideAudit.Core.dll", "RideAudit.Report.dll", "RideAudit.Raster.dll", "rideaudit.dll"];

    [Fact]
    public void No_name_serial_number_position_or_path_above_the_folder_is_in_any_output()
    {
        using var folder = new TempFolder();
        var above = $"{MarkedRides.Name}-above";
        MarkedRides.WriteInto(folder, $"{above}/rides");
        var made = Outputs.Of(folder.At($"{above}/rides"), folder.At("out"), "2026-06-22");
        Assert.Equal(18, made.Count);
        foreach (var (name, bytes) in made)
        {
            var isPdf = name.EndsWith(".pdf", StringComparison.Ordinal);
            var said = isPdf ? PdfText.Inflated(bytes) + PdfText.Shown(bytes) : Encoding.UTF8.GetString(bytes);
            Assert.DoesNotContain(MarkedRides.Name, said, StringComparison.OrdinalIgnoreCase);
            Assert.All(MarkedRides.Numbers, n => Assert.DoesNotContain(n, isPdf ? PdfText.Shown(bytes) : said, StringComparison.OrdinalIgnoreCase));
        }
        // The same search finds what is there: all six rides and the rider's label.
        Assert.Contains("RiderKept", PdfText.Shown(made["review.pdf"]), StringComparison.Ordinal);
        var rides = Encoding.UTF8.GetString(made["rides-csv out"]);
        Assert.All(["tuesday.fit", "wednesday.tcx", "thursday.gpx", "friday.csv", "packed.zip/saturday.fit"], ride => Assert.Contains(ride, rides, StringComparison.Ordinal));
    }

    [Fact]
    public void No_part_of_the_program_references_the_network()
    {
        foreach (var product in Products)
        {
            using var image = new PEReader(File.OpenRead(Path.Combine(AppContext.BaseDirectory, product)));
            var metadata = image.GetMetadataReader();
            var references = metadata.AssemblyReferences.Select(r => metadata.GetString(metadata.GetAssemblyReference(r).Name)).ToArray();
            Assert.Contains("System.Runtime", references);
            Assert.DoesNotContain(references, r => r.StartsWith("System.Net", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Nothing_is_written_but_what_was_named()
    {
        using var world = new TempFolder();
        var rides = Demo.CopyTo(world);
        foreach (var place in new[] { "home", "tmp", "here" })
            Directory.CreateDirectory(world.At(place));
        var before = world.Names();
        var times = Times(rides);
        (string, string)[] environment = [("HOME", world.At("home")), ("TMPDIR", world.At("tmp")), ("LANG", "C.UTF-8"), ("TZ", "UTC")];
        foreach (var (_, words) in Outputs.Commands(rides, Demo.AsOf))
            Assert.Equal(0, RealProgram.Run(world.At("here"), environment, words).Code);
        Assert.Equal(["here/next.ics", "here/review.json", "here/review.pdf", "here/review.png"], world.Names().Except(before));
        Assert.Equal(times, Times(rides));
    }

    private static (string, DateTime)[] Times(string folder) =>
        [.. Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal).Select(f => (f, File.GetLastWriteTimeUtc(f)))];
}
