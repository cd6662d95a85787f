
namespace RideAudit.Fit.Tests;

public class PublicApiTests
{
    /// <summary>A change of the public API is a decision: run with RIDEAUDIT_UPDATE=1 and commit the text.</summary>
    [Fact]
    public void The_public_api_is_the_approved_one()
    {
        var path = Path.Combine(Repository.TestProject, "approved-api.txt");
        var actual = PublicApi.Describe(typeof(FitDecoder).Assembly);
        if (Repository.Updates)
            File.WriteAllText(path, actual);

        Assert.Equal(File.ReadAllText(path), actual);
    }

    [Fact]
    public void Nothing_public_can_hold_a_position_or_a_name()
    {
        var api = PublicApi.Describe(typeof(FitDecoder).Assembly);
        Assert.All(["Latitude", "Longitude", "SerialNumber", "FriendlyName"], word => Assert.DoesNotContain(word, api));
    }
}
