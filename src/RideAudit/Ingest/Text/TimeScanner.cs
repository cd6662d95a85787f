namespace RideAudit.Ingest.Text;

/// <summary>Reads a written date or time from left to right, blanks around it left out. Digits are those of ASCII: others are no number to any parser.</summary>
/// <param name="text">The text.</param>
internal ref struct TimeScanner(ReadOnlySpan<char> text)
{
    private ReadOnlySpan<char> _left = text.Trim();

    public readonly bool IsAtEnd => _left.IsEmpty;

    /// <summary>Digits before the next character that is none.</summary>
    public readonly int DigitsAhead
    {
        get
        {
            var count = 0;
            while (count < _left.Length && char.IsAsciiDigit(_left[count]))
                count++;
            return count;
        }
    }

    /// <summary>The number that the next digits write; null, and nothing taken, where fewer are there.</summary>
    /// <param name="count">Digits, 1 to 9.</param>
    public int? Number(int count)
    {
        if (count < 1 || DigitsAhead < count)
            return null;
        var number = 0;
        foreach (var digit in _left[..count])
            number = number * 10 + (digit - '0');
        _left = _left[count..];
        return number;
    }

    /// <summary>The next character where it is one of these; null, and nothing taken, where it is not.</summary>
    public char? Take(ReadOnlySpan<char> any)
    {
        if (IsAtEnd || !any.Contains(_left[0]))
            return null;
        var taken = _left[0];
        _left = _left[1..];
        return taken;
    }

    /// <summary>Leaves out blanks.</summary>
    /// <returns>True when there were some.</returns>
    public bool TakeBlanks()
    {
        var before = _left.Length;
        _left = _left.TrimStart();
        return _left.Length < before;
    }

    /// <summary>The part of a second behind a decimal point or comma, ns; 0 without one, null where no digit follows it.</summary>
    public int? Nanoseconds()
    {
        if (Take(".,") is null)
            return 0;
        var digits = DigitsAhead;
        var kept = Math.Min(digits, 9);
        if (Number(kept) is not { } nanoseconds)
            return null;
        _left = _left[(digits - kept)..];
        for (var i = kept; i < 9; i++)
            nanoseconds *= 10;
        return nanoseconds;
    }

    /// <summary>A clock's half of the day, as in 6:00 p.m., over the hour.</summary>
    /// <param name="hour">The hour as written.</param>
    /// <returns>The hour of 24; the hour itself where no half is written; null where something else is.</returns>
    public int? WithHalf(int hour)
    {
        TakeBlanks();
        if (IsAtEnd)
            return hour;
        if (Take("AaPp") is not { } half)
            return null;
        Take(".");
        if (Take("Mm") is null)
            return null;
        Take(".");
        return hour is >= 1 and <= 12 ? hour % 12 + (half is 'p' or 'P' ? 12 : 0) : hour;
    }
}
