using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>Finds headers of parts among other bytes.</summary>
internal static class PartSearch
{
    /// <summary>The first offset between two others at which a header stands; -1 if there is none.</summary>
    public static int FindHeader(ReadOnlySpan<byte> bytes, int from, int end)
    {
        var at = from;
        while (at < end)
        {
            var found = bytes[at..end].IndexOf(FitConstants.Signature);
            if (found < 0)
                return -1;
            var header = at + found - FitConstants.SignatureOffset;
            if (header >= from && FitHeader.LooksLikeOne(bytes[header..]))
                return header;
            at += found + 1;
        }

        return -1;
    }
}
