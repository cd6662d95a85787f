using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Plan;

namespace RideAudit.Cli.Commands;

/// <summary>Writes a commented rider file: asks what was not said, where somebody is there to answer.</summary>
internal sealed class NewRiderCommand(Shell shell, ProgramCommand command)
{
    private const int WeeksBack = 12;
    private const int PageMeasure = 100;

    private readonly Argument<string> _file = command.Takes(new Argument<string>("FILE") { Description = "The rider file to write, such as my-rides/rider.toml." });
    private readonly Option<string?> _label = command.File("--label", "Printed on the review.", "TEXT");
    private readonly Option<double?> _power = Answer(command, "--threshold-power", "W", "Threshold power (FTP), W.", RiderAnswers.ThresholdPower);
    private readonly Option<double?> _heartRate = Answer(command, "--threshold-heart-rate", "BPM", "Threshold heart rate, bpm.", RiderAnswers.ThresholdHeartRate);
    private readonly Option<LocalDate?> _from = command.Date(
        "--threshold-from", "The date the threshold is in force from. Default: the start of the year, or 12 weeks ago where that is earlier.");

    private readonly Option<double?> _hours = Answer(command, "--weekly-hours", "H", "Planned hours a week.", RiderAnswers.WeeklyHours);
    private readonly Option<Experience?> _experience = command.Choice(
        "--experience", "new: under six months of regular riding. Default: regular.", [.. RiderAnswers.ExperienceWords.Select(e => (e.Word, (Experience?)e.Value))]);

    private readonly Option<ImmutableArray<IsoDayOfWeek>> _days = Answer(
        command, "--days", "DAYS", "Days that can be ridden on, such as tuesday,thursday,saturday.", RiderAnswers.Days);

    private readonly Option<string?> _zone = Answer(
        command, "--time-zone", "ZONE", "IANA time zone, such as Europe/Lisbon. Default: this machine's, unless that is UTC.", RiderAnswers.TimeZone);

    private readonly Option<bool> _overwrite = command.Flag("--overwrite", "Replace FILE if it is there.");
    private readonly Option<bool> _noQuestions = command.Flag("--no-questions", "Ask nothing, even on a terminal.");

    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "new-rider",
            "Write a commented rider file: asks five questions on a terminal, takes options otherwise.",
            ("rideaudit new-rider my-rides/rider.toml", "asks five questions, then writes the file"),
            ("rideaudit new-rider rider-a.toml --threshold-power 250 --weekly-hours 6.5", "asks nothing that was given"));
        command.Does(new NewRiderCommand(shell, command).Run);
        return command;
    }

    private ExitCode Run(ParseResult asked)
    {
        var typed = asked.GetRequiredValue(_file);
        if (File.Exists(shell.FullPath(typed)) && !asked.GetValue(_overwrite))
            throw new UserError($"{typed} is there already and was left as it is. Choose another name, or give --overwrite.");
        var file = OutputFile.Named(shell, typed, OutputKind.Rider);
        var text = RiderFileTemplate.Write(Answers(asked, Questions.Begin(shell, asked.GetValue(_noQuestions))));
        file.Write(s => s.Write(Encoding.UTF8.GetBytes(text)), shell.Cancel);
        var page = new Page(shell, PageMeasure);
        page.Text($"Wrote {typed}. Open it to change or add to it.");
        page.Text($"'rideaudit rules --rider {typed}' shows the limits that follow.");
        return ExitCode.Done;
    }

    private RiderFileAnswers Answers(ParseResult asked, Questions? questions) => new()
    {
        Label = asked.GetValue(_label) ?? questions?.Ask<string?>("1. A label for the review, such as 'Rider A' (no name is needed)", t => (t, null), null) ?? "Rider",
        ThresholdPowerW = asked.GetValue(_power) ?? questions?.Ask("2. Threshold power (FTP) in W, about what you could hold for an hour", RiderAnswers.ThresholdPower, null),
        WeeklyHours = asked.GetValue(_hours) ?? questions?.Ask("3. Planned hours a week", RiderAnswers.WeeklyHours, null),
        Experience = asked.GetValue(_experience)
            ?? questions?.Ask("4. Experience: new (under six months of regular riding), regular or racing", RiderAnswers.Experience, null) ?? Experience.Regular,
        Days = asked.GetValue(_days) is { IsDefaultOrEmpty: false } days
            ? days
            : questions?.Ask("5. Days you can ride, such as tuesday,thursday,saturday,sunday", RiderAnswers.Days, []) ?? [],
        TimeZone = asked.GetValue(_zone) ?? MachineZone(),
        ThresholdFrom = asked.GetValue(_from) ?? DefaultFrom(shell.Today(shell.Zone)),
        ThresholdHeartRateBpm = asked.GetValue(_heartRate),
    };

    // Rides before the first threshold are measured against it with a notice: today's date would make all of them so.
    private static LocalDate DefaultFrom(LocalDate today) =>
        LocalDate.Min(new LocalDate(today.Year, 1, 1), today.PlusWeeks(-WeeksBack));

    // A machine set to UTC seldom stands where its rider lives.
    private string? MachineZone() => shell.Zone.Id.Contains('/') && !shell.Zone.Id.StartsWith("Etc/", StringComparison.Ordinal) ? shell.Zone.Id : null;

    private static Option<T> Answer<T>(ProgramCommand command, string name, string called, string text, Func<string, (T Value, string? Wrong)> read) =>
        command.Read(name, called, text, typed => read(typed) switch
        {
            (_, { } wrong) => (default!, $"{name}: {wrong}"),
            var known => known,
        });
}
