using NodaTime;

namespace SolarEconomics;

/// <summary>An addition to the use with its own hours: a car on a charger, a heat pump, a workshop's machines.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kw">Power while it runs. Unit: kW.</param>
/// <param name="Between">Hours of the day in which it runs; they may run across midnight.</param>
public sealed record LoadBlock(string Name, double Kw, HourSpan Between)
{
    /// <summary>Power while it runs. Unit: kW.</summary>
    public double Kw { get; init => field = Require.AtLeastZero(value, "kW"); } = Require.AtLeastZero(Kw, "kW", nameof(Kw));

    /// <summary>Days of the week on which it runs. Default: empty, all of them.</summary>
    public IReadOnlyList<IsoDayOfWeek> Days { get; init; } = [];

    /// <summary>Share of its power in each month, January first: 1 in winter and 0 in summer for heating. Default: empty, 1 all year.</summary>
    public IReadOnlyList<double> MonthShares { get; init => field = value.Count is 0 or 12 ? value : throw Throw.NotTwelve("month shares", value.Count); } = [];

    /// <summary>The block on a time line. An interval counts whole by the local time of its start.</summary>
    /// <param name="time">The intervals.</param>
    public LoadPart On(Timeline time)
    {
        ArgumentNullException.ThrowIfNull(time);
        var kwh = new double[time.Count];
        for (var i = 0; i < kwh.Length; i++)
        {
            if (!Between.Contains(time.Clock.MinuteOfDay[i]) || (Days.Count > 0 && !Days.Contains(time.Clock.WeekdayOf(i)))) continue;
            var share = MonthShares.Count == 0 ? 1 : MonthShares[time.Clock.MonthNumber[i] % 12];
            kwh[i] = Kw * share * time.Hours[i];
        }
        return new LoadPart(Name, kwh);
    }
}
