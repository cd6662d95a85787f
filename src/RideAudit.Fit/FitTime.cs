namespace RideAudit.Fit;

/// <summary>The protocol's clock: whole seconds since 1989-12-31T00:00:00Z, without leap seconds.</summary>
public static class FitTime
{
    /// <summary>Unix time of the protocol's epoch, s.</summary>
    public const long EpochUnixSeconds = 631_065_600;

    /// <summary>Times below this are seconds since the device was switched on, not a date.</summary>
    public const uint FirstDate = 0x1000_0000;

    /// <summary>Unix time in seconds of a FIT time.</summary>
    /// <param name="fitSeconds">Seconds since the protocol's epoch.</param>
    public static long ToUnixSeconds(uint fitSeconds) => EpochUnixSeconds + fitSeconds;

    /// <summary>FIT time of a Unix time.</summary>
    /// <param name="unixSeconds">Seconds since 1970-01-01T00:00:00Z; from the protocol's epoch to 2126.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is before the epoch or beyond what 32 bits hold.</exception>
    public static uint FromUnixSeconds(long unixSeconds)
    {
        var fit = unixSeconds - EpochUnixSeconds;
        if (fit < 0 || fit >= uint.MaxValue)
            throw new ArgumentOutOfRangeException(nameof(unixSeconds), unixSeconds, "The time is outside what FIT can hold: 1989-12-31 to 2126-02-06.");
        return (uint)fit;
    }

    /// <summary>True if the number is a date rather than seconds since power-on.</summary>
    /// <param name="fitSeconds">Seconds since 1989-12-31T00:00:00Z as stored; below 0x10000000 they count from power-on.</param>
    public static bool IsDate(uint fitSeconds) => fitSeconds is >= FirstDate and < uint.MaxValue;
}
