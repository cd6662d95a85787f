using System.Buffers;

namespace RideAudit.Rides;

/// <summary>An array lent by the shared pool, as long as is asked for, given back when disposed: ride after ride a worker uses the same ones.</summary>
/// <typeparam name="T">A plain value.</typeparam>
internal readonly ref struct Lent<T>
    where T : unmanaged
{
    private readonly T[] _array;

    /// <param name="length">Elements; what they hold is left over from the last use.</param>
    public Lent(int length)
    {
        _array = ArrayPool<T>.Shared.Rent(length);
        Span = _array.AsSpan(0, length);
    }

    /// <summary>The elements; not to be touched once given back.</summary>
    public Span<T> Span { get; }

    public void Dispose()
    {
        if (_array is not null)
            ArrayPool<T>.Shared.Return(_array);
    }
}
