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
        HasPower = Array.Exists(slots, s => s.Column == RecordColumn.Power);
        HasHeartRate = Array.Exists(slots, s => s.Column == RecordColumn.HeartRate);
    }

    public RecordSlot[] Slots { get; }

    public bool HasPower { get; }

    public bool HasHeartRate { get; }

    /// <summary>The state of the developer descriptions that <see cref="DeveloperPower"/> was looked up in.</summary>
    public int DeveloperVersion { get; set; } = -1;

    public DeveloperPowerSlot? DeveloperPower { get; set; }

    public static RecordPlan Make(MessageDefinition definition)
    {
        List<(int Rank, int Order, RecordSlot Slot)> found = [];
        for (int i = 0; i < definition.Fields.Length; i++)
        {
            ref readonly FieldSlot field = ref definition.Fields[i];
            if (field.IsUsable && RecordFieldProfile.TryFind(field.Number, out RecordFieldProfile profile) && field.Size >= SmallestSize(profile.Column))
                found.Add((profile.Rank, -i, SlotFor(in field, definition.BigEndian, profile)));
        }

        return new RecordPlan([.. found.OrderBy(f => f.Rank).ThenBy(f => f.Order).Select(f => f.Slot)]);
    }

    private static int SmallestSize(RecordColumn column) => column == RecordColumn.CompressedSpeedDistance ? CompressedSize : 1;

    private static RecordSlot SlotFor(in FieldSlot field, bool bigEndian, RecordFieldProfile profile)
    {
        SlotKind kind = KindFor(in field, bigEndian, profile.Column);
        bool zeroIsInvalid = field.Type is FitBaseType.UInt8Z or FitBaseType.UInt16Z or FitBaseType.UInt32Z;
        uint lowest = Math.Max(profile.Lowest, zeroIsInvalid ? 1u : 0u);
        uint highestOfType = (uint)((1UL << (8 * Math.Min(field.ElementSize, 4))) - (zeroIsInvalid ? 1UL : 2UL));
        uint highest = Math.Min(profile.Highest, highestOfType);
        return new RecordSlot(kind, profile.Column, field.Offset, lowest, highest - lowest + 1, profile.Scale, profile.Subtract, field.Type);
    }

    private static SlotKind KindFor(in FieldSlot field, bool bigEndian, RecordColumn column)
    {
        if (column == RecordColumn.CompressedSpeedDistance)
            return SlotKind.CompressedSpeedDistance;
        return field.Type switch
        {
            FitBaseType.UInt8 or FitBaseType.Enum or FitBaseType.UInt8Z or FitBaseType.Byte => SlotKind.Byte,
            FitBaseType.UInt16 or FitBaseType.UInt16Z => bigEndian ? SlotKind.BigWord : SlotKind.Word,
            FitBaseType.UInt32 or FitBaseType.UInt32Z => bigEndian ? SlotKind.BigLong : SlotKind.Long,
            _ => SlotKind.General,
        };
    }
}
