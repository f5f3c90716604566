using System.Text.Json;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>The state and clock of a plan by the postcodes it covers. Which first digit names which state: common practice, no source.</summary>
public sealed class PlanPlaceTests
{
    [Theory]
    [InlineData("0800", "NT", "Australia/Darwin")]
    [InlineData("1001", "NSW", "Australia/Sydney")]
    [InlineData("2000", "NSW", "Australia/Sydney")]
    [InlineData("3000", "VIC", "Australia/Melbourne")]
    [InlineData("8001", "VIC", "Australia/Melbourne")]
    [InlineData("4000", "QLD", "Australia/Brisbane")]
    [InlineData("9726", "QLD", "Australia/Brisbane")]
    [InlineData("5000", "SA", "Australia/Adelaide")]
    [InlineData("6000", "WA", "Australia/Perth")]
    [InlineData("7000", "TAS", "Australia/Hobart")]
    public void A_postcode_tells_state_and_clock(string code, string state, string zone)
    {
        // Several of one state tell as much; what is no postcode tells nothing.
        foreach (var codes in new[] { $"[\"{code}\"]", $"[\"{code}\", \"{code[0]}999\", \"12\", \"oops!\"]" })
        {
            var data = Plan($$"""{ "geography": { "includedPostcodes": {{codes}} } }""");
            Assert.Equal((state, zone), (PlanPlace.StateOf(data), PlanPlace.ZoneOf(data)!.Id));
        }
    }

    [Theory]
    [InlineData("""{ "geography": { "includedPostcodes": ["3000", "2000"] } }""")]
    [InlineData("""{ "geography": { "includedPostcodes": [] } }""")]
    [InlineData("""{ "geography": { "includedPostcodes": "3000" } }""")]
    [InlineData("""{ "geography": { "postcodes": ["3000"] } }""")]
    [InlineData("""{ "geography": ["3000"] }""")]
    [InlineData("""{ "geography": { "includedPostcodes": ["x000"] } }""")]
    [InlineData("{ }")]
    public void Without_a_postcode_of_one_state_there_is_neither(string plan)
    {
        Assert.Null(PlanPlace.StateOf(Plan(plan)));
        Assert.Null(PlanPlace.ZoneOf(Plan(plan)));
    }

    private static JsonElement Plan(string json) => JsonDocument.Parse(json).RootElement;
}
