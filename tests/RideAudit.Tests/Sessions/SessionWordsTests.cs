using NodaTime;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Sessions;
using RideAudit.Units;

namespace RideAudit.Tests.Sessions;

public class SessionWordsTests
{
    private const string FourFours = "15 min easy, 4 x 4 min 108-112 %, 3 min easy between, easy to the end";

    private static readonly SessionMeasures Both = new(new Watts(250), 168);
    private static readonly SessionMeasures HeartRate = new(null, 168);
    private static readonly SessionMeasures Neither = default;

    [Fact]
    public void With_threshold_power_a_session_is_told_in_watts() => Assert.Equal(
        "15 min easy (138 to 163 W); 4 × 4 min at 270 to 280 W, 3 min easy between; 20 min easy.",
        Words(FourFours, 60, Both));

    [Fact]
    public void With_threshold_heart_rate_alone_it_is_told_in_beats_and_short_efforts_by_feel()
    {
        Assert.StartsWith("15 min easy (123 to 136 bpm); 4 × 4 min at 171 to 173 bpm", Words(FourFours, 60, HeartRate), StringComparison.Ordinal);
        Assert.Contains("8 × 1 min at feel 8 to 9 of 10", Words("15 min easy, 8 x 1 min 130-138 %, 2 min easy between, easy to the end", 60, HeartRate), StringComparison.Ordinal);
    }

    [Fact]
    public void With_neither_it_is_told_by_feel() => Assert.Equal(
        "15 min easy (feel 2 to 3 of 10); 4 × 4 min at feel 8 to 9 of 10, 3 min easy between; 20 min easy.",
        Words(FourFours, 60, Neither));

    [Fact]
    public void Shares_of_heart_rate_never_become_watts()
    {
        const string Blocks = "20 min easy, 3 x 10 min 94-97 % hr, 5 min easy between, easy to the end";

        Assert.Contains("3 × 10 min at 158 to 163 bpm", Words(Blocks, 75, Both), StringComparison.Ordinal);
        Assert.Contains("3 × 10 min at feel 5 to 6 of 10", Words(Blocks, 75, new SessionMeasures(new Watts(250), null)), StringComparison.Ordinal);
    }

    [Fact]
    public void Sets_pairs_ramps_and_efforts_without_a_number_have_their_words()
    {
        const string Blocks = "10 min 50-75 % rising, 2 x (3 x 40/20 s 125 %), 5 min easy between, 6 x 12 s all out, 2 min 30 s easy between, 10 min very easy";

        Assert.Equal(
            "10 min at 125 to 188 W, rising; 2 × (3 × (40 s at 313 W and 20 s easy (138 to 163 W))), 5 min easy between; 6 × 12 s all out, 2 min 30 s easy between; very easy (100 to 130 W) to the end.",
            Words(Blocks, 44, Both));
    }

    [Fact]
    public void No_sentence_of_the_library_names_a_share_or_a_measure_that_is_not_known()
    {
        foreach (var session in SessionLibrary.All)
        {
            var minutes = session.ShortestDay;
            Assert.DoesNotContain("%", Words(session.Blocks.ToString(), minutes, Both), StringComparison.Ordinal);
            Assert.DoesNotContain("W", Words(session.Blocks.ToString(), minutes, HeartRate), StringComparison.Ordinal);
            Assert.DoesNotMatch("W|bpm|%", Words(session.Blocks.ToString(), minutes, Neither));
        }
    }

    [Fact]
    public void The_threshold_in_force_is_the_latest_before_the_day_that_has_one()
    {
        var rider = new Rider
        {
            Thresholds =
            [
                new ThresholdEntry(new LocalDate(2026, 1, 5), new Watts(240), null),
                new ThresholdEntry(new LocalDate(2026, 3, 2), new Watts(250), 168),
                new ThresholdEntry(new LocalDate(2026, 5, 4), null, 170),
            ],
        };

        Assert.Equal(new SessionMeasures(new Watts(240), 168), SessionMeasures.Of(rider, new LocalDate(2026, 2, 1)));
        Assert.Equal(new SessionMeasures(new Watts(250), 170), SessionMeasures.Of(rider, new LocalDate(2026, 6, 1)));
    }

    private static string Words(string blocks, int minutes, SessionMeasures measures) =>
        SessionWords.Of(FittedSession.Fit(SessionBlocks.Read(blocks, out _)!, minutes)!, measures).Replace('\u00A0', ' ');
}
