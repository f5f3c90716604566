using System.Globalization;
using NodaTime;

namespace SolarEconomics.Charts.Tests;

public sealed class PeopleNumberTests
{
    [Fact]
    public void Energy_years_shares_and_dates_are_written_for_people()
    {
        var culture = CultureInfo.InvariantCulture;
        Assert.Equal("1,234 kWh", PeopleNumber.Kwh(1234.4, culture));
        Assert.Equal("0.3 kWh", PeopleNumber.Kwh(0.26, culture));
        Assert.Equal("13.0 years", PeopleNumber.Years(13.04, culture));
        Assert.Equal("47 %", PeopleNumber.Percent(0.472, culture));
        Assert.Equal("1 Mar 2035", PeopleNumber.Date(new LocalDate(2035, 3, 1), culture));
        Assert.Equal("Mar 2035", PeopleNumber.Month(new YearMonth(2035, 3), culture));
    }
}
