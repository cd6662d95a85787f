using System.Globalization;
using NodaTime;
using RideAudit.Formatting;

namespace RideAudit.Tests.Formatting;

public sealed class ShownTests
{
    private static readonly LocalDate Day = new(2026, 5, 5);

    [Theory]
    [InlineData(0.25, 1, "0.3")]
    [InlineData(-0.25, 1, "−0.3")]
    [InlineData(2.5, 0, "3")]
    [InlineData(-0.04, 1, "0.0")]
    [InlineData(1840.4, 0, "1840")]
    [InlineData(double.NaN, 1, "–")]
    public void A_number_is_rounded_once_halves_away_from_zero(double value, int decimals, string text) =>
        Assert.Equal(text, Shown.Number(value, decimals));

    [Theory]
    [InlineData(3.46, "+3.5")]
    [InlineData(-3.46, "−3.5")]
    [InlineData(0.04, "0.0")]
    [InlineData(null, "–")]
    public void A_change_has_its_sign_unless_it_rounds_to_nothing(double? value, string text) =>
        Assert.Equal(text, Shown.Signed(value));

    [Theory]
    [InlineData(3, "3")]
    [InlineData(22.9, "22.9")]
    [InlineData(1.125, "1.13")]
    [InlineData(2.999, "3")]
    public void A_plain_number_has_the_decimals_it_needs(double value, string text) => Assert.Equal(text, Shown.Plain(value));

    [Theory]
    [InlineData(-1.25, 1, "-1.3")]
    [InlineData(null, 1, "")]
    [InlineData(double.PositiveInfinity, 1, "")]
    public void A_number_for_a_program_has_a_hyphen_for_minus_and_nothing_for_missing(double? value, int decimals, string text) =>
        Assert.Equal(text, Shown.Data(value, decimals));

    [Theory]
    [InlineData(2700, "45 min")]
    [InlineData(3569, "59 min")]
    [InlineData(3570, "1 h")]
    [InlineData(7500, "2 h 5 min")]
    [InlineData(9000, "2 h 30 min")]
    [InlineData(0, "0 min")]
    public void A_length_has_one_notation_in_sentences_and_in_tables(double seconds, string text)
    {
        Assert.Equal(Joined(text), Shown.Length(seconds));
        Assert.Equal(Joined(text), Shown.TableLength(seconds));
    }

    [Fact]
    public void A_figure_and_its_unit_never_part()
    {
        string[] texts =
        [
            Shown.Hours(6.24), Shown.Minutes(45), Shown.Share(0.756), Shown.Percent(3.24, 1), Shown.Points(620.4), Shown.Watts(251.4), Shown.HeartRate(142.4),
            Shown.Work(1840.4), Shown.Distance(61.44), Shown.Window(5), Shown.Window(1200), Shown.Range(140, 160.4, "W"), Shown.PlainShare(0.595), Shown.PlainShare(0.15),
        ];

        string[] expected =
        [
            "6.2 h", "45 min", "76 %", "3.2 %", "620 points", "251 W", "142 bpm", "1840 kJ", "61.4 km", "5 s", "20 min", "140 to 160 W", "59.5 %", "15 %",
        ];
        Assert.Equal(expected.Select(Joined), texts);
    }

    [Theory]
    [InlineData(1.4, 0, "1 point")]
    [InlineData(1.4, 1, "1.4 points")]
    [InlineData(0.2, 0, "0 points")]
    public void Points_are_one_or_several_as_they_are_shown(double points, int decimals, string text) => Assert.Equal(Joined(text), Shown.Points(points, decimals));

    [Fact]
    public void A_range_whose_ends_look_the_same_is_one_figure() => Assert.Equal(Joined("140 W"), Shown.Range(139.6, 140.4, "W"));

    [Fact]
    public void What_is_missing_is_a_dash_without_a_unit()
    {
        string[] texts = [Shown.Hours(null), Shown.Share(null), Shown.Watts(null), Shown.TableLength(null), Shown.TableLength(double.NaN)];

        Assert.All(texts, text => Assert.Equal(Shown.Missing, text));
    }

    [Theory]
    [InlineData(0, "no rides", "0 rides")]
    [InlineData(1, "one ride", "1 ride")]
    [InlineData(12, "twelve rides", "12 rides")]
    [InlineData(13, "13 rides", "13 rides")]
    public void A_count_agrees_with_its_noun(int count, string words, string figures)
    {
        Assert.Equal(words, Shown.Count(count, "ride").Replace('\u00A0', ' '));
        Assert.Equal(Joined(figures), Shown.Tally(count, "ride"));
    }

    [Fact]
    public void A_noun_may_have_a_plural_of_its_own() => Assert.Equal("two days’ notice", Shown.Count(2, "day’s notice", "days’ notice"));

    [Theory]
    [InlineData(1, "once")]
    [InlineData(2, "twice")]
    [InlineData(3, "three times")]
    public void It_says_how_often(int count, string text) => Assert.Equal(text, Shown.Often(count));

    [Fact]
    public void Things_are_listed_with_an_and()
    {
        Assert.Equal("", Shown.List([]));
        Assert.Equal("a", Shown.List(["a"]));
        Assert.Equal("a, b and c", Shown.List(["a", "b", "c"]));
    }

    [Theory]
    [InlineData("so it is", "So it is.")]
    [InlineData("Is it so?", "Is it so?")]
    [InlineData("", "")]
    public void A_sentence_has_a_capital_and_an_end(string text, string sentence) => Assert.Equal(sentence, Shown.Sentence(text));

    [Fact]
    public void Dates_have_their_notations()
    {
        string[] texts = [Shown.Date(Day), Shown.FullDate(Day), Shown.ShortDate(Day), Shown.Weekday(Day), Shown.ShortDay(Day), Shown.DayAndDate(Day), Shown.DayAndIso(Day)];
        string[] expected = ["5 May", "5 May 2026", "5 May", "Tuesday", "Tue 5", "Tue 5 May", "Tue 2026-05-05"];

        Assert.Equal(expected.Select(Joined), texts);
        Assert.Equal("2026-05-05", Shown.Iso(Day));
        Assert.Equal("18:05:09", Shown.TimeWithSeconds(new LocalTime(18, 5, 9)));
        Assert.Equal(Joined("Tue 2026-05-05 18:05"), Shown.Start(Day.At(new LocalTime(18, 5, 9)).WithOffset(Offset.FromHours(2))));
        Assert.Equal("1:05:00", Shown.Clock(3900));
    }

    [Fact]
    public void A_culture_changes_nothing()
    {
        var before = CultureInfo.CurrentCulture;
        var other = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        other.NumberFormat.NumberDecimalSeparator = ",";
        other.NumberFormat.NegativeSign = "~";
        other.DateTimeFormat.DayNames = ["So", "Mo", "Di", "Mi", "Do", "Fr", "Sa"];
        try
        {
            CultureInfo.CurrentCulture = other;
            Assert.Equal(Joined("−6.2 h"), Shown.Hours(-6.24));
            Assert.Equal("Tuesday", Shown.Weekday(Day));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static string Joined(string text) => text.Replace(' ', '\u00A0');
}
