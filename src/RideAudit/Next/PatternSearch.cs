using RideAudit.Plan;

namespace RideAudit.Next;

/// <summary>Every pattern of a week that safety allows, the one a coach likes best first.</summary>
internal sealed class PatternSearch
{
    private const int FewerRides = 3;
    private const int MoreRides = 1;
    private const double LeastOfLong = 0.6;
    private const int BitsOfSlot = 3;
    private readonly WeekFrame _frame;
    private readonly WeekTaste _taste;
    private readonly Slot[] _settled;
    private readonly bool _hardBefore;
    private readonly (int High, int Hard, bool Long) _there;
    private readonly List<(double Taste, int Pattern)> _found = [];
    private readonly Slot[] _slots = new Slot[7];

    private PatternSearch(WeekFrame frame)
    {
        _frame = frame;
        _taste = new WeekTaste(frame);
        _settled = [.. frame.Days.Select(Settled)];
        _hardBefore = !frame.Past.IsEmpty && frame.Past[^1].Days[6].IsHard;
        _there = (_settled.Count(s => s == Slot.High), _settled.Count(IsHard), _settled.Contains(Slot.Long));
    }

    /// <summary>The patterns, each with how much worse than the first it tastes; settled days as <see cref="Slot.Settled"/> where they hold riding.</summary>
    public static IEnumerable<(double Taste, Slot[] Slots)> Of(WeekFrame frame)
    {
        var search = new PatternSearch(frame);
        search.Day(0, 0, 0, 0, hasLong: search._there.Long);
        search._found.Sort();
        return search._found.Select(f => (f.Taste - search._found[0].Taste, search.Unpacked(f.Pattern)));
    }

    private void Day(int i, int high, int hard, int rides, bool hasLong)
    {
        if (rides > _frame.Aim.Rides + MoreRides)
            return;
        if (i == 7)
        {
            if (rides >= Math.Min(_frame.Aim.Rides, _frame.OpenDays) - FewerRides)
                _found.Add((_taste.Of(_slots), Packed()));
            return;
        }
        if (_frame.Days[i].IsSettled)
        {
            _slots[i] = _settled[i];
            Day(i + 1, high, hard, rides + (_settled[i] == Slot.Off ? 0 : 1), hasLong);
            return;
        }
        Try(Slot.Off);
        Try(Slot.Easy);
        if (!hasLong && _frame.Aim.LongMinutes > 0 && _frame.Days[i].MostMinutes >= LeastOfLong * _frame.Aim.LongMinutes)
            Try(Slot.Long);
        if (!_frame.Days[i].MayBeHard || hard + _there.Hard >= _frame.Aim.HardDays || IsNextToHard(i))
            return;
        Try(Slot.Threshold);
        if (_frame.Days[i].MayBeHigh && high + _there.High < _frame.Aim.HighDays)
            Try(Slot.High);

        void Try(Slot slot)
        {
            _slots[i] = slot;
            Day(i + 1, high + (slot == Slot.High ? 1 : 0), hard + (IsHard(slot) ? 1 : 0), rides + (slot == Slot.Off ? 0 : 1), hasLong || slot == Slot.Long);
        }
    }

    private bool IsNextToHard(int i) =>
        (i == 0 ? _hardBefore : IsHard(_slots[i - 1])) || (i < 6 && _frame.Days[i + 1].IsSettled && IsHard(_settled[i + 1]));

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
            packed |= (int)_slots[i] << BitsOfSlot * i;
        return packed;
    }

    private Slot[] Unpacked(int packed)
    {
        var pattern = new Slot[7];
        for (var i = 0; i < 7; i++)
        {
            var slot = (Slot)(packed >> BitsOfSlot * i & (1 << BitsOfSlot) - 1);
            pattern[i] = _frame.Days[i].IsSettled && slot != Slot.Off ? Slot.Settled : slot;
        }
        return pattern;
    }
}
