using System.Buffers;

namespace RideAudit.Ingest.Archives;

/// <summary>What unpacking gave, in lent arrays where it is small: given back when disposed.</summary>
internal sealed class Unpacked : IDisposable
{
    private readonly byte[] _bytes;
    private readonly bool _isLent;

    private Unpacked(byte[] bytes, int length, bool isLent, Outcome outcome) => (_bytes, Length, _isLent, Result) = (bytes, length, isLent, outcome);

    /// <summary>How unpacking went.</summary>
    public Outcome Result { get; }

    /// <summary>Bytes in all.</summary>
    public int Length { get; }

    /// <summary>The bytes, not to be touched once given back; of a damaged stream those before the damage.</summary>
    public ReadOnlySpan<byte> Bytes => _bytes.AsSpan(0, Length);

    /// <summary>One array of them all, from pieces that are given back.</summary>
    /// <param name="pieces">Lent, each full but the last.</param>
    public static Unpacked Of(List<byte[]> pieces, int length, Outcome outcome)
    {
        if (pieces.Count == 1)
            return new Unpacked(pieces[0], length, isLent: true, outcome);
        var whole = GC.AllocateUninitializedArray<byte>(length);
        var at = 0;
        foreach (var piece in pieces)
        {
            var used = Math.Min(piece.Length, length - at);
            piece.AsSpan(0, used).CopyTo(whole.AsSpan(at));
            at += used;
            ArrayPool<byte>.Shared.Return(piece);
        }
        return new Unpacked(whole, length, isLent: false, outcome);
    }

    /// <summary>Nothing, as it is larger than is read.</summary>
    /// <param name="pieces">Lent; given back.</param>
    public static Unpacked TooLarge(List<byte[]> pieces) => Of(pieces, 0, Outcome.TooLarge);

    /// <summary>The bytes as an array that outlives this.</summary>
    public byte[] ToArray() => _isLent || Length < _bytes.Length ? Bytes.ToArray() : _bytes;

    /// <summary>The bytes as a stream, for as long as they are not given back.</summary>
    public MemoryStream ToStream() => new(_bytes, 0, Length, writable: false);

    public void Dispose()
    {
        if (_isLent)
            ArrayPool<byte>.Shared.Return(_bytes);
    }

    /// <summary>How unpacking went.</summary>
    internal enum Outcome
    {
        Whole,
        Damaged,
        TooLarge,
    }
}
