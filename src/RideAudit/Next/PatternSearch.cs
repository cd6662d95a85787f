using RideAudit.Plan;

namespace RideAudit.Next;

/// <summary>Every pattern of a week that safety allows, the one a coach likes best first.</summary>
internal sealed class PatternSearch
{
    private const int FewerRides = 3;
    private const int MoreRides = 1;
    private const double LeastOfLong = 0.6;
    private const int BitsOfSlot = 3;
    private readonly WeekFrame frame;
    private readonly WeekTaste taste;
    private readonly Slot[] settled;
    private readonly bool hardBefore;
    private readonly (int High, int Hard, bool Long) there;
    private readonly List<(double Taste, int Pattern)> found = [];
    private readonly Slot[] slots = new Slot[7];

    private PatternSearch(WeekFrame frame)
    {
        this.frame = frame;
        taste = new WeekTaste(frame);
        settled = [.. frame.Days.Select(Settled)];
        hardBefore = !frame.Past.IsEmpty && frame.Past[^1].Days[6].IsHard;
        there = (settled.Count(s => s == Slot.High), settled.Count(IsHard), settled.Contains(Slot.Long));
    }

    /// <summary>The patterns, each with how much worse than the first it tastes; settled days as <see cref="Slot.Settled"/> where they hold riding.</summary>
    public static IEnumerable<(double Taste, Slot[] Slots)> Of(WeekFrame frame)
    {
        var search = new PatternSearch(frame);
        search.Day(0, 0, 0, 0, hasLong: search.there.Long);
        search.found.Sort();
        return search.found.Select(f => (f.Taste - search.found[0].Taste, search.Unpacked(f.Pattern)));
    }

    private void Day(int i, int high, int hard, int rides, bool hasLong)
    {
        if (rides > frame.Aim.Rides + MoreRides)
            return;
        if (i == 7)
        {
            if (rides >= Math.Min(frame.Aim.Rides, frame.OpenDays) - FewerRides)
                found.Add((taste.Of(slots), Packed()));
            return;
        }
        if (frame.Days[i].IsSettled)
        {
            slots[i] = settled[i];
            Day(i + 1, high, hard, rides + (settled[i] == Slot.Off ? 0 : 1), hasLong);
            return;
        }
        Try(Slot.Off);
        Try(Slot.Easy);
        if (!hasLong && frame.Aim.LongMinutes > 0 && frame.Days[i].MostMinutes >= LeastOfLong * frame.Aim.LongMinutes)
            Try(Slot.Long);
        if (!frame.Days[i].MayBeHard || hard + there.Hard >= frame.Aim.HardDays || IsNextToHard(i))
            return;
        Try(Slot.Threshold);
        if (frame.Days[i].MayBeHigh && high + there.High < frame.Aim.HighDays)
            Try(Slot.High);

        void Try(Slot slot)
        {
            slots[i] = slot;
            Day(i + 1, high + (slot == Slot.High ? 1 : 0), hard + (IsHard(slot) ? 1 : 0), rides + (slot == Slot.Off ? 0 : 1), hasLong || slot == Slot.Long);
        }
    }

    private bool IsNextToHard(int i) =>
        (i == 0 ? hardBefore : IsHard(slots[i - 1])) || (i < 6 && frame.Days[i + 1].IsSettled && IsHard(settled[i + 1]));

    private static bool IsHard(Slot slot) => slot is Slot.High or Slot.Threshold;

    private Slot Settled(DayFrame day)
    {
        if (day.Ridden is { } ridden)
            return WeekTaste.SlotOf(ridden);
        if (day.Standing.IsEmpty)
            return Slot.Off;
        return day.Standing.Any(r => r.Kind == PlannedKind.High) ? Slot.High
            : day.Standing.Any(r => r.Kind == PlannedKind.Threshold) ? Slot.Threshold
            : day.Standing.Any(r => r.Figures.LongEnough) ? Slot.Long
            : Slot.Easy;
    }

    private int Packed()
    {
        var packed = 0;
        for (var i = 0; i < 7; i++)
            packed |= (int)slots[i] << BitsOfSlot * i;
        return packed;
    }

    private Slot[] Unpacked(int packed)
    {
        var pattern = new Slot[7];
        for (var i = 0; i < 7; i++)
        {
            var slot = (Slot)(packed >> BitsOfSlot * i & (1 << BitsOfSlot) - 1);
            pattern[i] = frame.Days[i].IsSettled && slot != Slot.Off ? Slot.Settled : slot;
        }
        return pattern;
    }
}
