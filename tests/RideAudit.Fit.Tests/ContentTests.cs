using System.Text;

namespace RideAudit.Fit.Tests;

public class ContentTests
{
    [Theory]
    [InlineData("<?xml version=\"1.0\"?>\n<gpx>", FitContentKind.Gpx)]
    [InlineData("<TrainingCenterDatabase>", FitContentKind.Tcx)]
    [InlineData("<?xml version=\"1.0\"?><kml>", FitContentKind.Xml)]
    [InlineData("\n <!doctype HTML><html>", FitContentKind.WebPage)]
    [InlineData("[1,2]", FitContentKind.Json)]
    [InlineData("\uFEFFseconds,power\n0,200\n", FitContentKind.Text)]
    [InlineData("\0\u0001\u0002", FitContentKind.Unknown)]
    [InlineData("", FitContentKind.Empty)]
    public void Content_is_told_by_its_beginning(string text, FitContentKind kind) =>
        Assert.Equal(kind, FitContent.Sniff(Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void A_refusal_says_in_words_what_the_file_is_instead()
    {
        var rejection = FitDecoder.Decode("<html>"u8).Rejection!;

        Assert.Equal("this is a web page, not a FIT file", rejection.Detail);
        Assert.Equal(FitContentKind.WebPage, rejection.Kind);
    }

    [Fact]
    public void A_gzip_file_that_is_damaged_at_once_is_refused() =>
        Assert.Equal(FitContentKind.Gzip, FitDecoder.Decode([0x1F, 0x8B, 8, 0, 0, 0, 0, 0, 0, 0, 0xFF, 0xFF, 0xFF]).Rejection!.Kind);

    [Fact]
    public void A_gzip_file_that_is_cut_gives_what_is_there()
    {
        var whole = Hazards.Bytes.Gzip(Hazards.RideBuilder.Whole().Finish());

        var file = FitDecoder.Decode(whole[..500]);

        Assert.InRange(file.Parts[0].Records.Count, 20, 39);
        Assert.Contains(file.Faults, f => f.Code == FitFaultCode.Truncated);
    }
}
