namespace RideAudit.Cli.Terminal;

/// <summary>Writes lines to standard output, wrapped to the terminal and in the marks it can show.</summary>
/// <param name="shell">Where to.</param>
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
    public void Blank() => shell.Console.Write(new StyledLine([]));

    /// <summary>One line as it stands.</summary>
    /// <param name="pieces">Its pieces.</param>
    public void Line(params IReadOnlyList<Piece> pieces)
    {
        var shown = pieces.Select(p => p with { Text = Marks.Show(p.Text) }).ToList();
        Emit(shown);
    }

    /// <summary>Running text, wrapped.</summary>
    /// <param name="text">The text.</param>
    /// <param name="tone">Its tone.</param>
    /// <param name="indent">Columns before every line but the first.</param>
    /// <param name="first">Columns before the first line; as <paramref name="indent"/> when null.</param>
    public void Text(string text, Tone tone = Tone.Plain, int indent = 0, int? first = null)
    {
        var lead = first ?? indent;
        foreach (var line in Wrap.Lines(UnitGlue.Apply(Marks.Show(text)), Measure - indent, Measure - lead))
        {
            Emit([new string(' ', lead), new Piece(line, tone)]);
            lead = indent;
        }
    }

    /// <summary>Running text after a lead-in, wrapped so that later lines hang under the text.</summary>
    /// <param name="lead">What stands before the text.</param>
    /// <param name="text">The text.</param>
    /// <param name="tone">The text's tone.</param>
    /// <param name="column">Where the text starts; the lead's own end when null.</param>
    public void Hanging(Piece lead, string text, Tone tone = Tone.Plain, int? column = null)
    {
        var shownLead = Marks.Show(lead.Text);
        var indent = Math.Max(column ?? 0, Wrap.Cells(shownLead));
        var before = new Piece(Wrap.Pad(shownLead, indent), lead.Tone);
        foreach (var line in Wrap.Lines(UnitGlue.Apply(Marks.Show(text)), Measure - indent))
        {
            Emit([before, new Piece(line, tone)]);
            before = new string(' ', indent);
        }
    }

    // A no-break space keeps a figure and its unit on one line; once the lines are broken it has done its work.
    private void Emit(IReadOnlyList<Piece> pieces)
    {
        var shown = pieces.Select(p => p with { Text = p.Text.Replace('\u00A0', ' ').Replace('\u202F', ' ') }).ToList();
        while (shown.Count > 0 && string.IsNullOrWhiteSpace(shown[^1].Text))
            shown.RemoveAt(shown.Count - 1);
        if (shown.Count > 0)
            shown[^1] = shown[^1] with { Text = shown[^1].Text.TrimEnd() };
        shell.Console.Write(new StyledLine(shown));
    }
}
