using System.Collections.Immutable;
using System.CommandLine;
using NodaTime;
using RideAudit.Cli.Work;
using RideAudit.Plan;

namespace RideAudit.Cli.Options;

/// <summary>The options of <c>new-rider</c>, and how they are read back.</summary>
internal sealed class NewRiderOptions
{
    private readonly Argument<string> _file = new("FILE") { Description = "The rider file to write, such as my-rides/rider.toml." };
    private readonly Option<string?> _label = new("--label") { Description = "Printed on the review.", HelpName = "TEXT" };
    private readonly Option<double?> _power = Answer("--threshold-power", "W", "Threshold power (FTP), W.", RiderAnswers.ThresholdPower);
    private readonly Option<double?> _heartRate = Answer("--threshold-heart-rate", "BPM", "Threshold heart rate, bpm.", RiderAnswers.ThresholdHeartRate);
    private readonly Option<LocalDate?> _from = DateOption.Create("--threshold-from", "The date the threshold is in force from. Default: the start of the year, or 12 weeks ago where that is earlier.");
    private readonly Option<double?> _hours = Answer("--weekly-hours", "H", "Planned hours a week.", RiderAnswers.WeeklyHours);
    private readonly Option<Experience?> _experience = ChoiceOption.Create<Experience?>(
        "--experience", "new: under six months of regular riding. Default: regular.", [.. RiderAnswers.ExperienceWords.Select(e => (e.Word, (Experience?)e.Value))]);

    private readonly Option<ImmutableArray<IsoDayOfWeek>> _days = Answer(
        "--days", "DAYS", "Days that can be ridden on, such as tuesday,thursday,saturday.", RiderAnswers.Days);

    private readonly Option<string?> _zone = Answer<string?>("--time-zone", "ZONE", "IANA time zone, such as Europe/Lisbon. Default: this machine's, unless that is UTC.", RiderAnswers.TimeZone);
    private readonly Option<bool> _overwrite = new("--overwrite") { Description = "Replace FILE if it is there." };
    private readonly Option<bool> _noQuestions = new("--no-questions") { Description = "Ask nothing, even on a terminal." };

    /// <summary>Adds everything to a command.</summary>
    public void AddTo(Command command)
    {
        command.Arguments.Add(_file);
        foreach (var option in new Option[] { _label, _power, _heartRate, _from, _hours, _experience, _days, _zone, _overwrite, _noQuestions })
            command.Options.Add(option);
    }

    /// <summary>What was said.</summary>
    public NewRiderArguments Read(ParseResult parsed) => new()
    {
        File = parsed.GetRequiredValue(_file),
        Overwrite = parsed.GetValue(_overwrite),
        NoQuestions = parsed.GetValue(_noQuestions),
        Label = parsed.GetValue(_label),
        TimeZone = parsed.GetValue(_zone),
        ThresholdPowerW = parsed.GetValue(_power),
        ThresholdHeartRateBpm = parsed.GetValue(_heartRate),
        ThresholdFrom = parsed.GetValue(_from),
        WeeklyHours = parsed.GetValue(_hours),
        Experience = parsed.GetValue(_experience),
        Days = parsed.GetValue(_days) is { IsDefault: false } days ? days : [],
    };

    private static Option<T> Answer<T>(string name, string helpName, string description, Func<string, (T Value, string? Wrong)> read) => new(name)
    {
        Description = description,
        HelpName = helpName,
        Arity = ArgumentArity.ExactlyOne,
        CustomParser = result =>
        {
            var (value, wrong) = read(result.Tokens[^1].Value);
            if (wrong is not null)
                result.AddError($"{name}: {wrong}");
            return value;
        },
    };
}
