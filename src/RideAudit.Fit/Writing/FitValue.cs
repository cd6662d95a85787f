namespace RideAudit.Fit.Writing;

/// <summary>A value for one field, raw as the file stores it: before scale and offset. <c>default</c> is "no value".</summary>
public readonly record struct FitValue
{
    private FitValue(FitValueKind kind, long integer, double real, object? data)
    {
        Kind = kind;
        Integer = integer;
        Real = real;
        Data = data;
    }

    /// <summary>No value: the field's invalid pattern is written, which is not 0.</summary>
    public static FitValue Missing => default;

    internal FitValueKind Kind { get; }

    internal long Integer { get; }

    internal double Real { get; }

    internal object? Data { get; }

    /// <summary>A whole number.</summary>
    /// <param name="value">The number as stored; null is missing.</param>
    public static implicit operator FitValue(long? value) => value is { } v ? v : Missing;

    /// <summary>A whole number.</summary>
    /// <param name="value">The number as stored.</param>
    public static implicit operator FitValue(long value) => new(FitValueKind.Integer, value, value, null);

    /// <summary>A whole number.</summary>
    /// <param name="value">The number as stored.</param>
    public static implicit operator FitValue(int value) => new(FitValueKind.Integer, value, value, null);

    /// <summary>A whole number.</summary>
    /// <param name="value">The number as stored.</param>
    public static implicit operator FitValue(uint value) => new(FitValueKind.Integer, value, value, null);

    /// <summary>A real number, for the two floating types.</summary>
    /// <param name="value">The number as stored.</param>
    public static implicit operator FitValue(double value) => new(FitValueKind.Real, (long)value, value, null);

    /// <summary>Text; cut to the field's size, ended by 0 where there is room.</summary>
    /// <param name="value">The text.</param>
    public static implicit operator FitValue(string value) => new(FitValueKind.Bytes, 0, 0, System.Text.Encoding.UTF8.GetBytes(value));

    /// <summary>Bytes written as they are: arrays in the file's own byte order.</summary>
    /// <param name="value">The bytes; cut to the field's size or filled up with the type's invalid pattern.</param>
    public static implicit operator FitValue(byte[] value) => new(FitValueKind.Bytes, 0, 0, value);
}
