using RideAudit.Cli.Output;

namespace RideAudit.Cli.Tests.Output;

public class NoteTextTests
{
    [Theory]
    [InlineData("# Note\n\nRide **easy**.", "Note\n\nRide easy.")]
    [InlineData("* one\n* _two_ of three", "- one\n- two of three")]
    [InlineData("See [the plan](https://example.org/plan).", "See the plan.")]
    [InlineData("3 * 4 min and snake_case_name stay", "3 * 4 min and snake_case_name stay")]
    public void Marks_are_left_out_and_the_words_stay(string note, string expected) => Assert.Equal(expected, NoteText.Plain(note));
}
