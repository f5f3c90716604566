using System.Globalization;

namespace SolarEconomics.Tests;

public class FlowWordsTests
{
    private static readonly CultureInfo s_plain = CultureInfo.InvariantCulture;

    [Fact]
    public void A_plant_without_a_battery_speaks_of_none()
    {
        var said = Made.Run(new EnergySystem(), [3, 0], [1, 1]).Say(s_plain);
        Assert.Equal("50.0 %", said.Figure);
        Assert.Equal("of the 2 kWh that were wanted came from the arrays. Of what they made, 33.3 % was used on site; nothing was curtailed.", said.Words);
        Assert.Contains("Netted inside intervals of 1 h with all phases as one: use met by generation is an upper bound, clipping a lower one.", said.Notes);
    }

    [Fact]
    public void An_island_says_what_it_could_not_serve_and_what_the_battery_ended_with()
    {
        // 3 kWh of sun: 1 is used, 1 fills the battery, 1 is curtailed; of 2 kWh wanted then, the battery gives 1.
        var said = Made.Run(new EnergySystem { Grid = GridConnection.None, Battery = new Battery { UsableKwh = 1 } }, [3, 0], [1, 2]).Say(s_plain);
        Assert.Equal("of the 3 kWh that were wanted came from the arrays, directly or through the battery. Use took 66.7 % of what they could have made; 33.3 % of it was curtailed. " +
            "1 kWh could not be served, spread over 1 hour.", said.Words);
        Assert.Contains(said.Notes, note => note.EndsWith("It ended as full as it began.", StringComparison.Ordinal));
        Assert.Contains("The battery did 1 full cycle and gave 1 kWh; it was full for 1 h and empty for 1 h of 2 h.", said.Notes);
    }

    [Fact]
    public void Intervals_of_mixed_lengths_are_said_from_the_shortest_to_the_longest()
    {
        var zone = Made.Dublin;
        NodaTime.Instant At(double hours) => NodaTime.Instant.FromUtc(2025, 1, 1, 0, 0) + NodaTime.Duration.FromHours(hours);
        var channel = new Channel("meter", FlowKind.Use, [At(0), At(0.25)], [At(0.25), At(2.25)], [1, 1], [Quality.Good, Quality.Good]);
        var said = new EnergySystem().Run(new Conditions(LoadSeries.Of(channel, zone)), Control.SelfConsumption).Say(s_plain);
        Assert.Contains(said.Notes, note => note.StartsWith("Netted inside intervals of 15 min to 2 h with", StringComparison.Ordinal));
    }

    [Fact]
    public void A_battery_that_lost_is_not_said_to_have_gained()
    {
        var conditions = new Conditions(LoadSeries.Of(Made.HoursOf(2), new double[] { 0, 1 }))
        {
            Arrays = [ArraySupply.Ac("roof", new double[] { 1, 0 })], ImportPricePerKwh = new[] { 0.3, 0.3 }, ExportPricePerKwh = new[] { 0.1, 0.1 },
        };
        var flows = new EnergySystem { Battery = new Battery { UsableKwh = 1 } }.Run(conditions, Control.SelfConsumption);
        // 0.30 of import avoided, 0.10 of feed-in forgone; wear of 0.05 leaves 0.15, wear of 100 loses 99.80.
        Assert.EndsWith("A kWh from the battery cost €0.15 in charging, losses, standby and wear: the battery brought €0 more than the same plant without it.", flows.Worth(Currency.Of("EUR"), 0.05).Say(s_plain).Words, StringComparison.Ordinal);
        Assert.EndsWith("the battery lost €100 against the same plant without it.", flows.Worth(Currency.Of("EUR"), 100).Say(s_plain).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void One_year_is_not_compared_with_itself()
    {
        var time = Timeline.Year(2025, NodaTime.Duration.FromHours(1), Made.Dublin);
        var conditions = new Conditions(LoadSeries.Of(time, Enumerable.Repeat(1.0, time.Count).ToArray())) { Arrays = [ArraySupply.Ac("roof", Enumerable.Repeat(0.5, time.Count).ToArray())] };
        Assert.Equal("of the wanted use comes from the arrays in the one year looked at.", new EnergySystem().RunYears(conditions, Control.SelfConsumption, new YearsAhead(1)).Say(s_plain).Words);
        Assert.Equal("of the wanted use comes from the arrays in year 2, after 50.0 % in the first.", new EnergySystem().RunYears(conditions, Control.SelfConsumption, new YearsAhead(2)).Say(s_plain).Words);
    }
}
