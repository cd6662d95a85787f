using System.Text;
using NodaTime;
using RideAudit.Cli.Options;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Plan;

namespace RideAudit.Cli.Work;

/// <summary>Writes a commented rider file.</summary>
internal static class NewRiderWork
{
    private const int WeeksBack = 12;

    /// <summary>Asks what was not said, where somebody is there to answer, and writes the file.</summary>
    /// <exception cref="UserError">The file is there already, or cannot be written.</exception>
    public static ExitCode Run(Shell shell, NewRiderArguments told)
    {
        var path = shell.FullPath(told.File);
        OutputFile.Check(path, told.File);
        if (File.Exists(path) && !told.Overwrite)
            throw new UserError($"{told.File} is there already and was left as it is. Choose another name, or give --overwrite.");
        var asked = shell.Interactive && !told.NoQuestions ? AskTheRest(shell, told) : told;
        var text = RiderFileTemplate.Write(Answers(shell, asked));
        OutputFile.Write(path, s => s.Write(Encoding.UTF8.GetBytes(text)), shell.Cancel, told.File);
        shell.Out.Write($"Wrote {told.File}. Open it to change or add to it; 'rideaudit rules --rider {told.File}' shows the limits that follow.\n");
        return ExitCode.Done;
    }

    private static NewRiderArguments AskTheRest(Shell shell, NewRiderArguments told)
    {
        var questions = new Questions(shell);
        shell.Error.Write("Five questions; an empty answer leaves a line to fill in later.\n");
        return told with
        {
            Label = told.Label ?? questions.Ask("1. A label for the review, such as 'Rider A' (no name is needed)", t => (t, null), (string?)null),
            ThresholdPowerW = told.ThresholdPowerW ?? questions.Ask("2. Threshold power (FTP) in W, about what you could hold for an hour", RiderAnswers.ThresholdPower, null),
            WeeklyHours = told.WeeklyHours ?? questions.Ask("3. Planned hours a week", RiderAnswers.WeeklyHours, null),
            Experience = told.Experience ?? questions.Ask("4. Experience: new (under six months of regular riding), regular or racing", RiderAnswers.Experience, null),
            Days = told.Days.IsEmpty ? questions.Ask("5. Days you can ride, such as tuesday,thursday,saturday,sunday", RiderAnswers.Days, []) : told.Days,
        };
    }

    // Rides before the first threshold are measured against it with a notice: today's date would make all of them so.
    private static LocalDate DefaultFrom(LocalDate today) =>
        LocalDate.Min(new LocalDate(today.Year, 1, 1), today.PlusWeeks(-WeeksBack));

    // A machine set to UTC seldom stands where its rider lives.
    private static string? ZoneOf(Shell shell) => shell.Zone.Id.Contains('/') && !shell.Zone.Id.StartsWith("Etc/", StringComparison.Ordinal) ? shell.Zone.Id : null;

    private static RiderFileAnswers Answers(Shell shell, NewRiderArguments told) => new()
    {
        Label = told.Label ?? "Rider",
        TimeZone = told.TimeZone ?? ZoneOf(shell),
        Experience = told.Experience ?? Experience.Regular,
        ThresholdFrom = told.ThresholdFrom ?? DefaultFrom(shell.Today(shell.Zone)),
        ThresholdPowerW = told.ThresholdPowerW,
        ThresholdHeartRateBpm = told.ThresholdHeartRateBpm,
        WeeklyHours = told.WeeklyHours,
        Days = told.Days,
    };
}
