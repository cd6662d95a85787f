using RideAudit.Fit.Messages;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>A record definition made ready for reading: only the fields that are kept, in the order in which later ones may overwrite earlier ones.</summary>
internal sealed class RecordPlan
{
    private const int CompressedSize = 3;

    private RecordPlan(RecordSlot[] slots)
    {
        Slots = slots;
        Channels = slots.Aggregate(FitChannels.None, (all, slot) => all | ChannelsOf(slot.Column));
        HasPower = Array.Exists(slots, s => s.Column == RecordColumn.Power);
        HasHeartRate = Array.Exists(slots, s => s.Column == RecordColumn.HeartRate);
    }

    public RecordSlot[] Slots { get; }

    /// <summary>The channels that its slots feed.</summary>
    public FitChannels Channels { get; }

    public bool HasPower { get; }

    public bool HasHeartRate { get; }

    /// <summary>The state of the developer descriptions that <see cref="DeveloperPower"/> was looked up in.</summary>
    public int DeveloperVersion { get; set; } = -1;

    public DeveloperPowerSlot? DeveloperPower { get; set; }

    /// <param name="definition">A definition of records.</param>
    /// <param name="channels">The channels that are read; a field that feeds another one is passed over.</param>
    public static RecordPlan Make(MessageDefinition definition, FitChannels channels)
    {
        List<(int Rank, int Order, RecordSlot Slot)> found = [];
        for (var i = 0; i < definition.Fields.Length; i++)
        {
            ref readonly var field = ref definition.Fields[i];
            if (field.IsUsable && FieldProfile.TryFind(field.Number, out var profile) && field.Size >= SmallestSize(profile.Column) && (channels & ChannelsOf(profile.Column)) != 0)
                found.Add((profile.Rank, -i, SlotFor(in field, definition.BigEndian, profile)));
        }

        return new RecordPlan([.. found.OrderBy(f => f.Rank).ThenBy(f => f.Order).Select(f => f.Slot)]);
    }

    private static FitChannels ChannelsOf(RecordColumn column) => column switch
    {
        RecordColumn.Power => FitChannels.Power,
        RecordColumn.HeartRate => FitChannels.HeartRate,
        RecordColumn.Cadence or RecordColumn.CadenceFraction => FitChannels.Cadence,
        RecordColumn.Speed => FitChannels.Speed,
        RecordColumn.Altitude => FitChannels.Altitude,
        RecordColumn.Distance => FitChannels.Distance,
        RecordColumn.CompressedSpeedDistance => FitChannels.Speed | FitChannels.Distance,
        RecordColumn.AccumulatedPower or RecordColumn.CompressedAccumulatedPower => FitChannels.AccumulatedPower,
        _ => FitChannels.Balance,
    };

    private static int SmallestSize(RecordColumn column) => column == RecordColumn.CompressedSpeedDistance ? CompressedSize : 1;

    private static RecordSlot SlotFor(in MessageDefinition.FieldSlot field, bool bigEndian, FieldProfile profile)
    {
        var kind = KindFor(in field, bigEndian, profile.Column);
        var zeroIsInvalid = field.Type is FitBaseType.UInt8Z or FitBaseType.UInt16Z or FitBaseType.UInt32Z;
        var lowest = Math.Max(profile.Lowest, zeroIsInvalid ? 1u : 0u);
        var highestOfType = (uint)((1UL << (8 * Math.Min(field.ElementSize, 4))) - (zeroIsInvalid ? 1UL : 2UL));
        var highest = Math.Min(profile.Highest, highestOfType);
        return new RecordSlot(kind, profile.Column, field.Offset, lowest, highest - lowest + 1, profile.Scale, profile.Subtract, field.Type);
    }

    private static RecordSlot.SlotKind KindFor(in MessageDefinition.FieldSlot field, bool bigEndian, RecordColumn column)
    {
        if (column == RecordColumn.CompressedSpeedDistance)
            return RecordSlot.SlotKind.CompressedSpeedDistance;
        return field.Type switch
        {
            FitBaseType.UInt8 or FitBaseType.Enum or FitBaseType.UInt8Z or FitBaseType.Byte => RecordSlot.SlotKind.Byte,
            FitBaseType.UInt16 or FitBaseType.UInt16Z => bigEndian ? RecordSlot.SlotKind.BigWord : RecordSlot.SlotKind.Word,
            FitBaseType.UInt32 or FitBaseType.UInt32Z => bigEndian ? RecordSlot.SlotKind.BigLong : RecordSlot.SlotKind.Long,
            _ => RecordSlot.SlotKind.General,
        };
    }

    /// <summary>Where a record's developer field with power is, and how it is read.</summary>
    internal sealed record DeveloperPowerSlot(int Offset, FitBaseType Type, double Scale, double Subtract);

    /// <summary>What the profile says of the record fields that are kept. Where two fields feed one channel the higher rank wins.</summary>
    private readonly record struct FieldProfile(RecordColumn Column, int Rank, double Scale, double Subtract, uint Lowest, uint Highest)
    {
        private const uint HighestByte = 0xFE;
        private const uint HighestWord = 0xFFFE;
        private const uint HighestLong = 0xFFFF_FFFE;

        public static bool TryFind(byte field, out FieldProfile profile)
        {
            profile = field switch
            {
                RecordField.CompressedSpeedDistance => new(RecordColumn.CompressedSpeedDistance, 0, 1, 0, 0, 0),
                RecordField.Speed => new(RecordColumn.Speed, 1, 1000, 0, 0, HighestWord),
                RecordField.EnhancedSpeed => new(RecordColumn.Speed, 2, 1000, 0, 0, HighestLong),
                RecordField.Altitude => new(RecordColumn.Altitude, 1, 5, 500, 0, HighestWord),
                RecordField.EnhancedAltitude => new(RecordColumn.Altitude, 2, 5, 500, 0, HighestLong),
                RecordField.Distance => new(RecordColumn.Distance, 1, 100, 0, 0, HighestLong),
                RecordField.Power => new(RecordColumn.Power, 1, 1, 0, 0, HighestWord),
                RecordField.HeartRate => new(RecordColumn.HeartRate, 1, 1, 0, 1, HighestByte),
                RecordField.Cadence => new(RecordColumn.Cadence, 1, 1, 0, 0, HighestByte),
                RecordField.FractionalCadence => new(RecordColumn.CadenceFraction, 3, 128, 0, 0, HighestByte),
                RecordField.CompressedAccumulatedPower => new(RecordColumn.CompressedAccumulatedPower, 0, 1, 0, 0, HighestWord),
                RecordField.AccumulatedPower => new(RecordColumn.AccumulatedPower, 1, 1, 0, 0, HighestLong),
                RecordField.LeftRightBalance => new(RecordColumn.Balance, 1, 1, 0, 0, HighestByte),
                _ => new(RecordColumn.Balance, -1, 1, 0, 0, 0),
            };
            return profile.Rank >= 0;
        }
    }
}
