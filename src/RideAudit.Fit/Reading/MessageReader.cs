using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>Turns data messages into the content of a part.</summary>
internal sealed class MessageReader
{
    private const uint JumpSeconds = 86_400;
    private readonly FaultLog _log;
    private readonly DecodeBudget _budget;
    private readonly DeveloperFields _developerFields;
    private readonly FitChannels _channels;
    private readonly MessageClock _clock = new();
    private readonly RecordReader _records;
    private readonly HeartRateExpander _heartRates;
    private readonly HashSet<int> _reportedDeveloperFields = [];
    private uint _lastRecordTime = RecordChannels.NoTime;
    private int _recordsWithoutTime;
    private long _firstWithoutTime;
    private bool _anchorReported;

    public MessageReader(FaultLog log, DecodeBudget budget, DeveloperFields developerFields, FitChannels channels)
    {
        _log = log;
        _budget = budget;
        _developerFields = developerFields;
        _channels = channels;
        _records = new RecordReader(Content.Records);
        _heartRates = new HeartRateExpander(Content.HeartRate);
    }

    public PartContent Content { get; } = new();

    /// <summary>Reads records that begin at an offset: as many as follow each other under one header byte with times that go together, at least one.</summary>
    /// <param name="definition">What they hold, and where; one of records.</param>
    /// <param name="bytes">From the file's first byte to the data end.</param>
    /// <param name="offset">Offset in the file of the first header byte.</param>
    /// <param name="most">Most records to read, at least 1.</param>
    /// <returns>How many were read.</returns>
    public int ReadRecords(LocalDefinition definition, ReadOnlySpan<byte> bytes, int offset, int most)
    {
        var plan = definition.Plan ??= RecordPlan.Make(definition, _channels);
        Content.Records.Declared |= plan.Channels;
        if (definition.DeveloperFields.Length > 0 && plan.DeveloperVersion != _developerFields.Version)
            ResolveDeveloperPower(plan, definition, offset);
        var stride = 1 + definition.DataSize;
        RecordHeader header = new(bytes[offset]);
        var single = header.IsCompressed || definition.TimeOffset < 0;
        var count = single ? 1 : RecordBlock.CountFrom(bytes[offset..], stride, most);
        RecordBlock block = new(bytes.Slice(offset, count * stride), stride, count);
        Span<uint> times = stackalloc uint[RecordBlock.MaxCount];
        count = single ? 0 : _clock.ReadRun(definition, in block, times, JumpSeconds);
        if (count == 0)
        {
            times[0] = ReadSingleTime(definition, header, block.At(0, 0), offset);
            count = 1;
        }

        _lastRecordTime = times[count - 1];
        _records.Read(plan, new RecordBlock(block.Bytes, stride, count), definition.BigEndian, times[..count]);
        Content.LastRecordOrder = Content.Messages + count - 1;
        return count;
    }

    private uint ReadSingleTime(MessageDefinition definition, RecordHeader header, ReadOnlySpan<byte> data, int offset)
    {
        var time = _clock.Read(definition, header, data);
        if (time == RecordChannels.NoTime && !header.IsCompressed)
            time = _clock.Last;
        if (time == RecordChannels.NoTime && _recordsWithoutTime++ == 0)
            _firstWithoutTime = offset;
        return time;
    }

    /// <summary>The time of a record if it is more than a day from the last record's; null if it is not.</summary>
    public uint? JumpsTo(MessageDefinition definition, ReadOnlySpan<byte> data)
    {
        if (definition.TimeOffset < 0 || _lastRecordTime == RecordChannels.NoTime)
            return null;
        var time = MessageClock.ReadField(definition, data);
        return MessageClock.IsNear(time, _lastRecordTime, JumpSeconds) || time == RecordChannels.NoTime ? null : time;
    }

    /// <summary>Reads any other message; false if the limit is reached and it was not kept.</summary>
    public bool ReadOther(MessageDefinition definition, RecordHeader header, ReadOnlySpan<byte> data, int offset)
    {
        var time = _clock.Read(definition, header, data);
        MessageView message = new(definition, data);
        if (ReadSingle(in message, offset))
            return true;
        if (_budget.OtherMessages <= 0)
            return !IsListed(definition.Global);
        _budget.OtherMessages -= IsListed(definition.Global) ? 1 : 0;
        ReadListed(in message, time == RecordChannels.NoTime ? null : time, offset);
        return true;
    }

    /// <summary>Reports what can only be said at the end.</summary>
    public void Finish(long partStart)
    {
        if (_recordsWithoutTime > 0)
            _log.Add(_firstWithoutTime, FitFaultCode.RecordWithoutTime, FitFaultAction.Skip, $"{_recordsWithoutTime} records have no time and none before them; no timeline can place them");
        foreach ((var key, var offset) in _developerFields.Undescribed())
            _log.Add(Math.Max(partStart, offset), FitFaultCode.DeveloperFieldUndescribed, FitFaultAction.Skip, $"developer field {key & 0xFF} of index {key >> 8} is never described");
    }

    private static bool IsListed(ushort global) => global is GlobalMessage.Session or GlobalMessage.Lap or GlobalMessage.Event
        or GlobalMessage.ZonesTarget or GlobalMessage.DeviceSettings or GlobalMessage.TimestampCorrelation or GlobalMessage.HeartRate
        or GlobalMessage.WorkoutStep;

    private bool ReadSingle(in MessageView message, int offset)
    {
        switch (message.Definition.Global)
        {
            case GlobalMessage.FileId: Content.FileId ??= SummaryReader.FileId(message); return true;
            case GlobalMessage.Activity: Content.Activity = SummaryReader.Activity(message, Content.Messages); return true;
            case GlobalMessage.Sport: Content.Sport = SummaryReader.Sport(message); return true;
            case GlobalMessage.Workout: Content.Workout = SummaryReader.Workout(message); return true;
            case GlobalMessage.UserProfile: Content.UserProfile = SummaryReader.UserProfile(message); return true;
            case GlobalMessage.DeveloperDataId: _developerFields.Identify(message); return true;
            case GlobalMessage.FieldDescription: ReadDescription(message, offset); return true;
            default: return false;
        }
    }

    private void ReadListed(in MessageView message, uint? time, int offset)
    {
        switch (message.Definition.Global)
        {
            case GlobalMessage.Session: Content.Sessions.Add(SummaryReader.Session(message, Content.Messages)); break;
            case GlobalMessage.Lap: Content.Laps.Add(SummaryReader.Lap(message, Content.Messages)); break;
            case GlobalMessage.Event: Content.Events.Add(SummaryReader.Event(message, time, Content.Messages)); break;
            case GlobalMessage.WorkoutStep: Content.WorkoutSteps.Add(SummaryReader.WorkoutStep(message)); break;
            case GlobalMessage.ZonesTarget: Content.ZonesTargets.Add(SummaryReader.ZonesTarget(message)); break;
            case GlobalMessage.TimestampCorrelation: Content.Correlations.Add(SummaryReader.Correlation(message)); break;
            case GlobalMessage.DeviceSettings: ReadDeviceSettings(message, offset); break;
            case GlobalMessage.HeartRate: ReadHeartRate(message, offset); break;
        }
    }

    private void ReadDeviceSettings(in MessageView message, int offset)
    {
        if (!SummaryReader.TryDeviceSettings(message, out var settings))
            _log.Add(offset, FitFaultCode.LocalTimeOutOfRange, FitFaultAction.Skip, "the device's time offset is none that a zone on earth has");
        Content.DeviceSettings.Add(settings);
    }

    private void ReadHeartRate(in MessageView message, int offset)
    {
        if (_heartRates.Read(message) || _anchorReported)
            return;
        _anchorReported = true;
        _log.Add(offset, FitFaultCode.HeartRateWithoutAnchor, FitFaultAction.Skip, "heart-rate times without a full time before them cannot be placed");
    }

    private void ReadDescription(in MessageView message, int offset)
    {
        if (_developerFields.Describe(message) is { Type: null } unknown)
            _log.Add(offset, FitFaultCode.DeveloperBaseTypeUnknown, FitFaultAction.Skip, $"a developer field is described with the unknown base type 0x{unknown.TypeCode:X2}");
    }

    private void ResolveDeveloperPower(RecordPlan plan, MessageDefinition definition, int offset)
    {
        plan.DeveloperVersion = _developerFields.Version;
        plan.DeveloperPower = null;
        foreach (var slot in definition.DeveloperFields)
        {
            if (!_developerFields.TryFind(slot.Key, out var description) || description!.Type is not { } type)
                continue;
            if (slot.Size < FitBaseTypes.SizeOf(type) || slot.Size % FitBaseTypes.SizeOf(type) != 0)
                ReportSize(slot, type, offset);
            else if (description.IsPower && plan.DeveloperPower is null)
                plan.DeveloperPower = new RecordPlan.DeveloperPowerSlot(slot.Offset, type, description.Scale, description.Subtract);
        }
    }

    private void ReportSize(MessageDefinition.DeveloperSlot slot, FitBaseType type, int offset)
    {
        if (_reportedDeveloperFields.Add(slot.Key))
            _log.Add(offset, FitFaultCode.DeveloperFieldSizeMismatch, FitFaultAction.Skip, $"developer field {slot.Number} of index {slot.Index} has {slot.Size} bytes, which its described type {type} does not divide");
    }
}
