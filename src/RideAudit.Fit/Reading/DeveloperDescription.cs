using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>What a field_description message says of a developer field. Every part of it may be missing.</summary>
internal sealed record DeveloperDescription(
    byte? TypeCode,
    string Name,
    string Units,
    double Scale,
    double Subtract,
    ushort? NativeMessage,
    byte? NativeField)
{
    private static readonly string[] OtherPowers = ["form", "air", "lactate", "critical", "threshold", "normal", "average", "avg", "max", "target", "lap"];

    /// <summary>The described type; bytes if none is given, null if it is unknown.</summary>
    public FitBaseType? Type => TypeCode is not { } code ? FitBaseType.Byte : FitBaseTypes.TryParse(code, out var type) ? type : null;

    /// <summary>True if the field is the rider's power.</summary>
    /// <remarks>The native mapping counts only if it means the record message or none, and unit or name agree; names of other powers ("form power", "air power") never do.</remarks>
    public bool IsPower
    {
        get
        {
            var isWatts = Units.Trim().ToUpperInvariant() is "W" or "WATT" or "WATTS";
            var name = Name.Trim();
            if (Array.Exists(OtherPowers, other => name.Contains(other, StringComparison.OrdinalIgnoreCase)))
                return false;
            var namesPower = name.Contains("power", StringComparison.OrdinalIgnoreCase);
            var mapsToPower = NativeField == RecordField.Power && NativeMessage is (null or GlobalMessage.Record);
            return (mapsToPower && (isWatts || namesPower))
                || (isWatts && name.Equals("power", StringComparison.OrdinalIgnoreCase));
        }
    }

    public static DeveloperDescription Read(in MessageView message)
    {
        var scale = message.Number(6, 1, 0, 254) ?? 1;
        return new DeveloperDescription(
            message.Byte(2),
            message.Text(3),
            message.Text(8),
            scale == 0 ? 1 : scale,
            message.Number(7, 1, -128, 127) ?? 0,
            message.UShort(14),
            message.Byte(15));
    }
}
