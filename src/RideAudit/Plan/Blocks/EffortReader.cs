namespace RideAudit.Plan.Blocks;

/// <summary>Reads how hard a stretch is: words, a share of a threshold, or a feel.</summary>
internal static class EffortReader
{
    private const string Efforts = "easy, very easy, all out, a share such as 95 % or 88-92 % hr, or feel 7";

    /// <summary>Reads the effort that stands at a place.</summary>
    /// <param name="at">The place.</param>
    /// <param name="expected">What is missing where there is none.</param>
    public static Effort Read(BlockCursor at, string expected)
    {
        if (at.Take("easy"))
            return Effort.Easy;
        if (at.Take("feel"))
            return ReadFeel(at);
        if (at.Here.Number is not null)
            return ReadShare(at);
        var (first, second) = (at.Here.Text, at.Ahead(1).Text);
        Effort? effort = (first, second) switch { ("very", "easy") => Effort.VeryEasy, ("all", "out") => Effort.AllOut, _ => null };
        if (effort is not { } known)
            throw new BlockCursor.Unread(at.Wrong($"{expected}: {Efforts}"));
        at.Skip(2);
        return known;
    }

    private static Effort ReadFeel(BlockCursor at)
    {
        var first = at.Here;
        var (from, to) = ReadSpan(at);
        return from >= 0 && to <= 10 && from <= to
            ? new Effort(EffortMeasure.Feel, from, to)
            : throw new BlockCursor.Unread(new BlocksMistake(first.Column, Shown(from, to), "a feel from 0 to 10, the lower first"));
    }

    private static Effort ReadShare(BlockCursor at)
    {
        var first = at.Here;
        var (from, to) = ReadSpan(at);
        if (!at.Take("%"))
            throw new BlockCursor.Unread(at.Wrong("% after the share, or min, s or h after a length"));
        var heart = at.Take("hr");
        var (least, most) = heart ? (50, 130) : (30, 300);
        if (from < least || to > most || from > to)
            throw new BlockCursor.Unread(new BlocksMistake(first.Column, $"{Shown(from, to)} %", $"a share from {least} to {most} % of threshold {(heart ? "heart rate" : "power")}, the lower first"));
        var measure = heart ? EffortMeasure.HeartRateShare : EffortMeasure.PowerShare;
        if (at.Here.Text is not ("rising" or "falling"))
            return new Effort(measure, from, to);
        if (from == to)
            throw new BlockCursor.Unread(at.Wrong("two shares for a ramp, such as 50-75 % rising"));
        if (at.Take("rising"))
            return new Effort(measure, from, to, Ramps: true);
        at.Skip();
        return new Effort(measure, to, from, Ramps: true);
    }

    private static (double From, double To) ReadSpan(BlockCursor at)
    {
        var from = ReadNumber(at, "a number");
        return at.Take("-") || at.Take("to") ? (from, ReadNumber(at, "the upper end of the range")) : (from, from);
    }

    private static double ReadNumber(BlockCursor at, string allowed)
    {
        if (at.Here.Number is not { } number)
            throw new BlockCursor.Unread(at.Wrong(allowed));
        at.Skip();
        return number;
    }

    private static string Shown(double from, double to) => from == to ? FormattableString.Invariant($"{from}") : FormattableString.Invariant($"{from}-{to}");
}
