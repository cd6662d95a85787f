using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>Expands hr messages: an anchor with a full time, then 12-bit times of 1/1024 s, eight to a message.</summary>
internal sealed class HeartRateExpander(HeartRateSeries series)
{
    private const byte FractionField = 0;
    private const byte BeatsField = 6;
    private const byte EventTimeField = 9;
    private const byte ShortEventTimeField = 10;
    private const double TicksPerSecond = 1024;
    private const double FractionsPerSecond = 32768;
    private const uint ShortMask = 0xFFF;

    private bool _hasAnchor;
    private double _anchorSeconds;
    private long _anchorTicks;
    private long _ticks;

    /// <summary>Reads one message; false if its times cannot be placed because no anchor came before.</summary>
    public bool Read(in MessageView message)
    {
        if (message.Elements(EventTimeField) > 0 && message.TryNumber(EventTimeField, out var first))
            ReadFullTimes(in message, first);
        return message.Elements(ShortEventTimeField) == 0 || ReadShortTimes(in message);
    }

    private void ReadFullTimes(in MessageView message, double first)
    {
        if (message.Time(FitConstants.TimestampField) is { } time)
        {
            _anchorSeconds = time + ((message.Number(FractionField) ?? 0) / FractionsPerSecond);
            _anchorTicks = _ticks = (long)first;
            _hasAnchor = true;
        }

        for (var i = 0; _hasAnchor && i < message.Elements(EventTimeField); i++)
        {
            if (!message.TryNumber(EventTimeField, out var value, i))
                continue;
            _ticks += unchecked((uint)(long)value - (uint)_ticks);
            AddBeat(in message, i);
        }
    }

    private bool ReadShortTimes(in MessageView message)
    {
        if (!_hasAnchor)
            return false;
        var packed = message.Bytes(ShortEventTimeField);
        var count = packed.Length * 2 / 3;
        for (var i = 0; i < count; i++)
        {
            var at = i / 2 * 3;
            var value = i % 2 == 0
                ? packed[at] | ((packed[at + 1] & 0x0Fu) << 8)
                : (uint)(packed[at + 1] >> 4) | ((uint)packed[at + 2] << 4);
            var step = (value - (uint)_ticks) & ShortMask;
            _ticks += step;
            if (step != 0)
                AddBeat(in message, i);
        }

        return true;
    }

    private void AddBeat(in MessageView message, int element)
    {
        if (message.TryNumber(BeatsField, out var beats, element) && beats is >= 1 and < byte.MaxValue)
            series.Add(_anchorSeconds + ((_ticks - _anchorTicks) / TicksPerSecond), (byte)beats);
    }
}
