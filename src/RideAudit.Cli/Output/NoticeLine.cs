using RideAudit.Cli.Terminal;
using RideAudit.Document;

namespace RideAudit.Cli.Output;

/// <summary>One notice: the file, and what happened to it.</summary>
internal static class NoticeLine
{
    /// <summary>Writes a notice.</summary>
    public static void Write(Page page, NoticeEntry notice)
    {
        var mark = new Piece(notice.Unusable ? page.Marks.Of(Rules.Verdict.Broken) + " " : "  ", notice.Unusable ? Tone.Broken : Tone.Plain);
        var named = notice.File is { } file && !notice.Sentence.Contains(file, StringComparison.Ordinal) ? $"{file}: " : "";
        page.Hanging(mark, named + notice.Sentence, notice.Unusable ? Tone.Plain : Tone.Quiet);
    }
}
