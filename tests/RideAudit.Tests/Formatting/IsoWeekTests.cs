using NodaTime;
using RideAudit.Formatting;
using RideAudit.Weeks;

namespace RideAudit.Tests.Formatting;

/// <summary>ISO 8601: weeks start on Monday, week 1 holds 4 January. Dates as published in text mirrors of the encyclopaedia article and of M. Kuhn's page (found), the rest derived with Python's isocalendar.</summary>
public sealed class IsoWeekTests
{
    [Theory]
    [InlineData(2005, 1, 1, "2004-W53")]
    [InlineData(2005, 1, 2, "2004-W53")]
    [InlineData(2005, 12, 31, "2005-W52")]
    [InlineData(2006, 1, 1, "2005-W52")]
    [InlineData(2006, 1, 2, "2006-W01")]
    [InlineData(2006, 12, 31, "2006-W52")]
    [InlineData(2007, 1, 1, "2007-W01")]
    [InlineData(2008, 9, 26, "2008-W39")]
    [InlineData(2019, 12, 30, "2020-W01")]
    [InlineData(1996, 12, 30, "1997-W01")]
    [InlineData(1997, 1, 5, "1997-W01")]
    [InlineData(1999, 12, 27, "1999-W52")]
    [InlineData(2000, 1, 2, "1999-W52")]
    [InlineData(2007, 12, 31, "2008-W01")]
    [InlineData(2008, 12, 28, "2008-W52")]
    [InlineData(2008, 12, 29, "2009-W01")]
    [InlineData(2009, 12, 31, "2009-W53")]
    [InlineData(2010, 1, 3, "2009-W53")]
    [InlineData(2010, 1, 4, "2010-W01")]
    [InlineData(2020, 12, 31, "2020-W53")]
    [InlineData(2021, 1, 3, "2020-W53")]
    [InlineData(2021, 1, 4, "2021-W01")]
    [InlineData(2024, 12, 30, "2025-W01")]
    [InlineData(2025, 12, 29, "2026-W01")]
    [InlineData(2026, 12, 31, "2026-W53")]
    [InlineData(2027, 1, 3, "2026-W53")]
    [InlineData(2027, 1, 4, "2027-W01")]
    // One page states that 2022-12-31 is in 2023-W01. It is wrong.
    [InlineData(2022, 12, 31, "2022-W52")]
    [InlineData(2023, 1, 1, "2022-W52")]
    public void Dates_fall_in_their_published_weeks(int year, int month, int day, string week) =>
        Assert.Equal(week, IsoWeek.Name(WeekTable.StartOf(new LocalDate(year, month, day), IsoDayOfWeek.Monday)));

    [Fact]
    public void The_53_week_years_from_1970_to_2050_are_the_known_ones() =>
        Assert.Equal(
            [1970, 1976, 1981, 1987, 1992, 1998, 2004, 2009, 2015, 2020, 2026, 2032, 2037, 2043, 2048],
            Enumerable.Range(1970, 81).Where(HasWeek53));

    [Fact]
    public void Of_400_years_71_have_53_weeks() => Assert.Equal(71, Enumerable.Range(2000, 400).Count(HasWeek53));

    [Fact]
    public void A_week_that_starts_on_another_day_has_no_number() => Assert.Null(IsoWeek.Name(new LocalDate(2026, 5, 3)));

    private static bool HasWeek53(int year) =>
        IsoWeek.Name(WeekTable.StartOf(new LocalDate(year, 12, 31), IsoDayOfWeek.Monday)) == $"{year}-W53";
}
