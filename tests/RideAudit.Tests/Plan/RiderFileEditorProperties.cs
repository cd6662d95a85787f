using FsCheck;
using FsCheck.Fluent;
using NodaTime;
using RideAudit.Plan;

namespace RideAudit.Tests.Plan;

/// <summary>Any valid rider file, any answers: what was asked is read back, and nothing else has changed.</summary>
public class RiderFileEditorProperties
{
    private static readonly LocalDate FirstRide = new(2026, 2, 3);

    private static readonly Gen<string> Comment = Gen.Elements("", "", "  # seen on the scale", " # Ä, “quoted” = [x]", "\t#");

    private static readonly Gen<string> Gap = Gen.Elements("", "", "\n", "\n# a remark\n", "# power_w = 999\n\n");

    private static readonly Gen<string> File = GenFile();

    private static readonly Gen<RiderFileEdit> Edits = GenEdit();

    [Fact]
    public void What_was_asked_is_read_back() => Check((text, edit) =>
    {
        var result = RiderFileReader.Read(RiderFileEditor.Apply(text, edit, FirstRide), "rider.toml");
        return result.Rider is { } rider && Says(rider, edit, RiderFileReader.Read(text, "rider.toml").Rider!);
    });

    [Fact]
    public void What_was_not_asked_reads_as_before() => Check((text, edit) =>
    {
        var before = RiderFileReader.Read(text, "rider.toml").Rider!;
        var after = RiderFileReader.Read(RiderFileEditor.Apply(text, edit, FirstRide), "rider.toml").Rider!;
        return before.Plan.LowShare == after.Plan.LowShare
            && before.Plan.LimitOverrides.OrderBy(l => l.Key).SequenceEqual(after.Plan.LimitOverrides.OrderBy(l => l.Key))
            && before.CsvColumns.OrderBy(c => c.Key).SequenceEqual(after.CsvColumns.OrderBy(c => c.Key))
            && before.Thresholds.SkipLast(1).All(t => t.From == edit.ThresholdFrom || after.Thresholds.Contains(t))
            && (edit.Exceptions is not null || before.Exceptions.SequenceEqual(after.Exceptions))
            && (edit.MassKg.Given || before.MassKg == after.MassKg)
            && (edit.WeeklyHours.Given || before.Plan.WeeklyHours == after.Plan.WeeklyHours);
    });

    [Fact]
    public void Every_line_that_does_not_hold_an_asked_key_stays_in_its_order() => Check((text, edit) =>
    {
        var left = new Queue<string>(RiderFileEditor.Apply(text, edit, FirstRide).Split('\n'));
        return text.Split('\n').Where(l => !MayChange(l)).All(line =>
        {
            while (left.Count > 0)
                if (left.Dequeue() == line)
                    return true;
            return false;
        });
    });

    [Fact]
    public void The_same_edit_a_second_time_changes_nothing() => Check((text, edit) =>
    {
        var once = RiderFileEditor.Apply(text, edit, FirstRide);
        return RiderFileEditor.Apply(once, edit, FirstRide) == once;
    });

    private static bool Says(Rider rider, RiderFileEdit edit, Rider before) =>
        (!edit.MassKg.Given || rider.MassKg == edit.MassKg.Value)
        && (!edit.WeeklyHours.Given || rider.Plan.WeeklyHours == edit.WeeklyHours.Value)
        && (!edit.MaxHeartRateBpm.Given || rider.MaxHeartRateBpm == edit.MaxHeartRateBpm.Value)
        && (!edit.Experience.Given || rider.Experience == (edit.Experience.Value ?? Experience.Regular))
        && (edit.Days is not { } days || rider.Plan.Days.SequenceEqual(days.Order()))
        && (edit.Exceptions is not { } exceptions || rider.Exceptions.SequenceEqual(exceptions.OrderBy(e => e.From)))
        && (edit.ThresholdPowerW.Value is not { } power || rider.Thresholds.Any(t => t.Power?.Value == power
            && t.From == (edit.ThresholdFrom ?? (before.Thresholds.IsEmpty ? FirstRide : before.Thresholds[^1].From))));

    // Lines of the keys that an edit here can touch; an exception's lines go with it.
    private static bool MayChange(string line) =>
        new[] { "mass_kg", "weekly_hours", "max_bpm", "experience", "days", "power_w", "from", "to ", "kind", "[[exception]]", "heart_rate = {" }
            .Any(key => line.StartsWith(key, StringComparison.Ordinal));

    private static Gen<string> GenFile() =>
        from mass in Line("mass_kg", Gen.Choose(40, 120).Select(m => $"{m}.5"))
        from experience in Line("experience", Gen.Elements("\"new\"", "'racing'"))
        from lead in Gap
        from blocks in Gen.Shuffle([GenThresholds(), GenPlan(), GenExceptions(), GenHeartRate(), Gen.Constant("[csv]\npower = \"P\"\n")])
        from written in Gen.CollectToArray(blocks)
        from end in Gen.Elements("", "\n", "# the end")
        select lead + mass + experience + string.Concat(written) + end;

    private static Gen<string> GenThresholds() =>
        from count in Gen.Choose(0, 3)
        from entries in Gen.ArrayOf(from gap in Gap from comment in Comment from power in Gen.Choose(150, 400) select (gap, comment, power), count)
        select string.Concat(entries.Select((e, i) => $"{e.gap}[[threshold]]\nfrom = 2026-0{i + 1}-05{e.comment}\npower_w = {e.power}\n"));

    private static Gen<string> GenPlan() =>
        from hours in Line("weekly_hours", Gen.Choose(2, 15).Select(h => h.ToString()))
        from days in Line("days", Gen.Elements("[\"monday\"]", "[ 'sunday', \"friday\" ]"))
        from share in Line("low_share", Gen.Elements("0.8", "0.75"))
        from gap in Gap
        from limits in Gen.Elements("", "\n[plan.limits]\nlong_ride_h = 2.5 # ours\n")
        select $"{gap}[plan]\n{hours}{days}{share}{limits}";

    private static Gen<string> GenExceptions() =>
        from count in Gen.Choose(0, 2)
        from gaps in Gen.ArrayOf(Gap, count)
        select string.Concat(gaps.Select((gap, i) => $"{gap}[[exception]]\nfrom = 2026-0{i + 4}-06\nkind = \"away\"\n"));

    private static Gen<string> GenHeartRate() =>
        from resting in Gen.Choose(40, 60)
        from comment in Comment
        from form in Gen.Choose(0, 1)
        select form == 0 ? "" : $"[heart_rate]\nrest_bpm = {resting}{comment}\n";

    private static Gen<string> Line(string key, Gen<string> values) =>
        from gap in Gap
        from value in values
        from comment in Comment
        from form in Gen.Choose(0, 3)
        select form switch { 0 => "", 1 => $"{gap}# {key} = {value}{comment}\n", _ => $"{gap}{key} = {value}{comment}\n" };

    private static Gen<RiderFileEdit> GenEdit() =>
        from mass in Asked(Gen.Choose(40, 120).Select(m => (double?)m))
        from hours in Asked(Gen.Choose(2, 30).Select(h => (double?)h / 2))
        from highest in Asked(Gen.Choose(150, 220).Select(b => (double?)b))
        from experience in Asked(Gen.Elements<Experience?>(Experience.New, Experience.Regular, Experience.Racing))
        from power in Asked(Gen.Choose(100, 400).Select(w => (double?)w))
        from dated in Gen.Choose(0, 300)
        from days in Gen.Elements<IsoDayOfWeek[]?>(null, [], [IsoDayOfWeek.Tuesday], [IsoDayOfWeek.Sunday, IsoDayOfWeek.Monday])
        from away in Gen.Choose(0, 3)
        from month in Gen.Choose(3, 6)
        select new RiderFileEdit
        {
            MassKg = mass,
            WeeklyHours = hours,
            MaxHeartRateBpm = highest,
            Experience = experience,
            // A threshold taken out where there is only one block leaves none: asked apart, in the tests of single cases.
            ThresholdPowerW = power.Value is null ? default : power,
            ThresholdFrom = dated > 150 ? FirstRide.PlusDays(dated - 200) : null,
            Days = days is null ? null : [.. days],
            Exceptions = away == 0 ? null : [.. Enumerable.Range(0, away - 1).Select(i => Away(month + i))],
        };

    private static PlanException Away(int month) => new(new LocalDate(2026, month, 6), new LocalDate(2026, month, 9), ExceptionKind.Event);

    private static Gen<RiderFileEdit.Answer<T>> Asked<T>(Gen<T> values) =>
        from value in values
        from form in Gen.Choose(0, 3)
        select form switch { 0 => default, 1 => RiderFileEdit.Answer<T>.Nothing, _ => new RiderFileEdit.Answer<T>(true, value) };

    private static void Check(Func<string, RiderFileEdit, bool> holds) =>
        FsCheck.Check.One(Config.QuickThrowOnFailure.WithMaxTest(400), Prop.ForAll(File.ToArbitrary(), Edits.ToArbitrary(), holds));
}
