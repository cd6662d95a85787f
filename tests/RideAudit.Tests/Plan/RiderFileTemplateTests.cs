using NodaTime;
using RideAudit.Plan;

namespace RideAudit.Tests.Plan;

public class RiderFileTemplateTests
{
    [Fact]
    public void What_was_answered_reads_back()
    {
        var answers = new RiderFileAnswers
        {
            Label = "Rider \"A\" \\ B",
            TimeZone = "Europe/Lisbon",
            Sex = Sex.Female,
            MassKg = 61.5,
            Experience = Experience.New,
            ThresholdFrom = new LocalDate(2026, 5, 11),
            ThresholdPowerW = 212,
            ThresholdHeartRateBpm = 171,
            RestHeartRateBpm = 51,
            MaxHeartRateBpm = 189,
            WeeklyHours = 7.5,
            WeekStartsOn = IsoDayOfWeek.Sunday,
            Days = [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Saturday],
        };

        var result = RiderFileReader.Read(RiderFileTemplate.Write(answers), "rider.toml");

        Assert.Empty(result.Mistakes);
        var rider = result.Rider!;
        Assert.Equal(answers.Label, rider.Label);
        Assert.Equal("Europe/Lisbon", rider.TimeZone?.Id);
        Assert.Equal((Sex.Female, 61.5, Experience.New), (rider.Sex, rider.MassKg!.Value, rider.Experience));
        var threshold = Assert.Single(rider.Thresholds);
        Assert.Equal((answers.ThresholdFrom, 212.0, 171.0), (threshold.From, threshold.Power!.Value.Value, threshold.HeartRateBpm!.Value));
        Assert.Equal((51.0, 189.0), (rider.RestHeartRateBpm!.Value, rider.MaxHeartRateBpm!.Value));
        Assert.Equal((IsoDayOfWeek.Sunday, 7.5), (rider.Plan.WeekStartsOn, rider.Plan.WeeklyHours!.Value));
        Assert.Equal(answers.Days.ToArray(), rider.Plan.Days.ToArray());
    }

    [Fact]
    public void Unanswered_questions_stay_as_comments_and_the_file_reads()
    {
        var text = RiderFileTemplate.Write(new RiderFileAnswers { Label = " ", ThresholdFrom = new LocalDate(2026, 5, 11) });

        var result = RiderFileReader.Read(text, "rider.toml");

        Assert.Empty(result.Mistakes);
        Assert.Empty(result.Rider!.Thresholds);
        Assert.Equal("Rider", result.Rider.Label);
        Assert.Contains("# weekly_hours = 6.5", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_file_with_every_example_uncommented_reads_too()
    {
        var text = RiderFileTemplate.Write(new RiderFileAnswers { ThresholdFrom = new LocalDate(2026, 5, 11) });
        var uncommented = string.Join('\n', text.Split('\n').Select(Uncomment));

        Assert.Empty(RiderFileReader.Read(uncommented, "rider.toml").Mistakes);
    }

    private static string Uncomment(string line)
    {
        var isExample = line.StartsWith("# [", StringComparison.Ordinal) || (line.StartsWith("# ", StringComparison.Ordinal) && line.Contains(" = ", StringComparison.Ordinal));
        return isExample ? line[2..] : line;
    }
}
