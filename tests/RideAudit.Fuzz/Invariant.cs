using RideAudit.Formatting;

namespace RideAudit.Fuzz;

/// <summary>What must hold for any bytes. A fuzzer looks for bytes for which it does not.</summary>
internal static class Invariant
{
    /// <exception cref="InvalidOperationException">It does not hold: a fuzzer takes it for a crash.</exception>
    public static void Require(bool holds, string what)
    {
        if (!holds)
            throw new InvalidOperationException("does not hold: " + what);
    }

    /// <summary>A sentence for the terminal: written, one line, and nothing in it that moves a cursor or turns the reading direction.</summary>
    public static void RequireSentence(string sentence)
    {
        Require(sentence.Length is > 0 and < 2000, "a sentence has words, and not a page of them");
        Require(!sentence.Any(PlainText.Harms), "a sentence has no control characters");
    }
}
