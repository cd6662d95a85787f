namespace RideAudit.Cli.Terminal;

/// <summary>Writes lines to standard output, wrapped to the terminal and in the marks it can show.</summary>
/// <param name="measure">The longest line, where the terminal is wide enough.</param>
internal sealed class Page(Shell shell, int measure)
{
    /// <summary>The longest line.</summary>
    public int Measure { get; } = Math.Min(shell.Width, measure);

    /// <summary>Columns of the terminal.</summary>
    public int TerminalWidth => shell.Width;

    /// <summary>The marks this page may use.</summary>
    public Marks Marks { get; } = new(shell.Unicode);

    /// <summary>An empty line.</summary>
    public void Blank() => Emit([]);

    /// <summary>One line as it stands.</summary>
    public void Line(params IReadOnlyList<Piece> pieces)
    {
        Emit([.. pieces.Select(p => p with { Text = Marks.Show(p.Text) })]);
    }

    /// <summary>Running text, wrapped.</summary>
    /// <param name="indent">Columns before every line but the first.</param>
    /// <param name="first">Columns before the first line; as <paramref name="indent"/> when null.</param>
    public void Text(string text, Tone tone = Tone.Plain, int indent = 0, int? first = null)
    {
        var lead = first ?? indent;
        foreach (var line in Wrap.Lines(Marks.Show(text), Measure - indent, Measure - lead))
        {
            Emit([new string(' ', lead), new Piece(line, tone)]);
            lead = indent;
        }
    }

    /// <summary>Running text after a lead-in, wrapped so that later lines hang under the text.</summary>
    /// <param name="lead">What stands before the text.</param>
    /// <param name="tone">The text's tone.</param>
    /// <param name="column">Where the text starts; the lead's own end when null.</param>
    public void Hanging(Piece lead, string text, Tone tone = Tone.Plain, int? column = null)
    {
        var shownLead = Marks.Show(lead.Text);
        var indent = Math.Max(column ?? 0, Cells.Of(shownLead));
        var before = new Piece(Wrap.Pad(shownLead, indent), lead.Tone);
        foreach (var line in Wrap.Lines(Marks.Show(text), Measure - indent))
        {
            Emit([before, new Piece(line, tone)]);
            before = new string(' ', indent);
        }
    }

    private void Emit(IReadOnlyList<Piece> pieces)
    {
        var shown = pieces.Select(p => p with { Text = Marks.Spaced(p.Text) }).ToList();
        while (shown.Count > 0 && string.IsNullOrWhiteSpace(shown[^1].Text))
            shown.RemoveAt(shown.Count - 1);
        if (shown.Count > 0)
            shown[^1] = shown[^1] with { Text = shown[^1].Text.TrimEnd() };
        foreach (var piece in Fitting(shown))
            shell.Out.Write(shell.Colour ? piece.Coloured() : piece.Text);
        shell.Out.Write('\n');
    }
    // No line is longer than the terminal, whatever a file or a rider is called.
    private List<Piece> Fitting(List<Piece> pieces)
    {
        var room = TerminalWidth;
        for (var i = 0; i < pieces.Count; i++)
        {
            var cells = Cells.Of(pieces[i].Text);
            if (cells > room)
                return [.. pieces[..i], pieces[i] with { Text = Wrap.Shorten(pieces[i].Text, room, room >= Marks.Dots.Length ? Marks.Dots : "") }];
            room -= cells;
        }
        return pieces;
    }
}
