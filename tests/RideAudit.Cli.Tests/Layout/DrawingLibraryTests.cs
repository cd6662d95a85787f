using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Layout;

/// <summary>The drawing library is loaded by what draws a picture and by nothing else, as the system's loader tells (Linux).</summary>
public sealed class DrawingLibraryTests
{
    [Theory]
    [InlineData(false, "--help")]
    [InlineData(false, "rules")]
    [InlineData(false, "check", "rides", "--as-of", Demo.AsOf)]
    [InlineData(false, "review", "rides", "--as-of", Demo.AsOf, "--pdf", "review.pdf")]
    [InlineData(true, "review", "rides", "--as-of", Demo.AsOf, "--no-pdf", "--png", "card.png")]
    public void Only_a_picture_loads_it(bool loads, params string[] args)
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder);
        var ended = RealProgram.Run(folder.Path, [("LANG", "C.UTF-8"), ("LD_DEBUG", "files"), ("LD_DEBUG_OUTPUT", folder.At("loader"))], args);

        Assert.NotEqual(2, ended.Code);
        var loader = string.Concat(Directory.GetFiles(folder.Path, "loader.*").Select(File.ReadAllText));
        Assert.Contains("libcoreclr.so", loader);
        Assert.Equal(loads, loader.Contains("libSkiaSharp", StringComparison.Ordinal));
    }
}
