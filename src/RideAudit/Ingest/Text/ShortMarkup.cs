using System.Xml;

namespace RideAudit.Ingest.Text;

/// <summary>Text of an XML file as long as its tags and texts are no longer than anybody writes: the parser keeps each in memory whole, several times over.</summary>
/// <param name="text">The text; closed with this.</param>
internal sealed class ShortMarkup(TextReader text) : TextReader
{
    private const int MostCharacters = 1 << 20;
    private int _line = 1;
    private int _since;

    /// <inheritdoc/>
    public override int Peek() => text.Peek();

    /// <inheritdoc/>
    public override int Read()
    {
        Span<char> one = stackalloc char[1];
        return Read(one) == 0 ? -1 : one[0];
    }

    /// <inheritdoc/>
    public override int Read(char[] buffer, int index, int count) => Read(buffer.AsSpan(index, count));

    /// <inheritdoc/>
    /// <exception cref="XmlException">A tag or a text is too long.</exception>
    public override int Read(Span<char> buffer)
    {
        var read = buffer[..text.Read(buffer)];
        _line += read.Count('\n');
        var last = read.LastIndexOfAny('<', '>');
        _since = last < 0 ? _since + read.Length : read.Length - last;
        return _since > MostCharacters ? throw new XmlException("A tag or a text is too long.", null, _line, 0) : read.Length;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
            text.Dispose();
        base.Dispose(disposing);
    }
}
