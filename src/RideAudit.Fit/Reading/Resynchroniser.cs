using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>Finds the next place where a broken message stream makes sense again.</summary>
internal static class Resynchroniser
{
    private const int MessagesToWalk = 8;
    private const int TimedMessagesNeeded = 3;

    /// <summary>
    /// The first offset from which several messages in a row are walked with at least three times inside the window,
    /// beginning with a definition or a data message that has such a time; -1 if there is none.
    /// </summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="from">First offset tried.</param>
    /// <param name="end">Offset of the byte after the last message.</param>
    /// <param name="locals">One a local type, as they were where the stream broke.</param>
    /// <param name="window">Times, FIT seconds, that a sound record can have.</param>
    /// <param name="budget">Pays for every byte searched; without any left nothing is found.</param>
    public static int Find(ReadOnlySpan<byte> bytes, int from, int end, ReadOnlySpan<StreamWalker.LocalShape> locals, TimeWindow window, DecodeBudget budget)
    {
        Span<StreamWalker.LocalShape> trial = stackalloc StreamWalker.LocalShape[FitConstants.LocalTypes];
        for (var at = from; at < end && budget.SearchBytes > 0; at++, budget.SearchBytes--)
        {
            if (!MayBegin(bytes[at..end], locals, window))
                continue;
            locals.CopyTo(trial);
            if (MakesSense(bytes, at, end, trial, window))
                return at;
        }

        return -1;
    }

    /// <summary>A quick look before the walk, which is all that most offsets get.</summary>
    private static bool MayBegin(ReadOnlySpan<byte> bytes, ReadOnlySpan<StreamWalker.LocalShape> locals, TimeWindow window)
    {
        RecordHeader header = new(bytes[0]);
        if (header.IsDefinition)
            return bytes.Length > FitConstants.DefinitionPrefixSize && bytes[1] == 0 && bytes[2] <= 1;
        var shape = locals[header.LocalType];
        return !header.IsCompressed && shape.TimeOffset >= 0 && shape.Size < bytes.Length && window.Holds(shape.TimeIn(bytes[1..]));
    }

    /// <summary>True if several messages in a row can be walked from an offset, with at least three times inside the window.</summary>
    public static bool MakesSense(ReadOnlySpan<byte> bytes, int at, int end, Span<StreamWalker.LocalShape> locals, TimeWindow window)
    {
        StreamWalker walker = new(bytes, end, locals, window);
        walker.Walk(at, MessagesToWalk);
        return walker.Timed >= TimedMessagesNeeded && (walker.Messages == MessagesToWalk || walker.ReachedEnd);
    }
}
