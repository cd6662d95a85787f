using NodaTime;

namespace RideAudit.Cli.Tests.Support;

/// <summary>A clock that stands still until it is moved.</summary>
internal sealed class FixedClock(Instant now) : IClock
{
    private Instant _now = now;

    public Instant GetCurrentInstant() => _now;

    public void Advance(Duration by) => _now += by;
}
