
namespace RideAudit.Cli.Terminal;

/// <summary>Standard output or error: a reader that has gone away (<c>| head</c>) is no error; a full disk is.</summary>
internal sealed class PipeStream(Stream inner) : Stream
{
    private const int BrokenPipe = 32;
    private const int WindowsBrokenPipe = unchecked((int)0x8007006D);
    private const int WindowsPipeClosing = unchecked((int)0x800700E8);
    private bool _readerGone;

    /// <inheritdoc/>
    public override bool CanRead => false;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => true;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        if (_readerGone)
            return;
        try
        {
            inner.Write(buffer);
        }
        catch (IOException e) when (e.HResult is BrokenPipe or WindowsBrokenPipe or WindowsPipeClosing)
        {
            _readerGone = true;
        }
        catch (IOException e)
        {
            _readerGone = true;
            throw new UserError($"Standard output could not be written: {WriteFault.Of(e)}");
        }
    }

    /// <inheritdoc/>
    public override void Flush()
    {
        if (!_readerGone)
            inner.Flush();
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();
}
