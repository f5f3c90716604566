namespace SolarEconomics.Tests.GenerationRoom;

/// <summary>The outside rows on modules, strings and controllers (tests/data/published/rows-generation.csv).</summary>
public sealed class StringRowsTests
{
    [Theory, PublishedRows("string-voltage")]
    public void The_longest_string_agrees_with_the_published_example(string id) => Published.Check(id, row =>
    {
        var volts = Strings.VoltageAt(row.Number("voc"), row.Number("per K"), row.Number("coldest"));
        return row.Text("give") switch
        {
            "module volts" => volts,
            "modules" => Strings.MostInSeries(volts, row.Number("limit")),
            "modules at 25 C" => Strings.MostInSeries(row.Number("voc"), row.Number("limit")),
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("cold-factor")]
    public void Cold_factors_are_those_of_the_table(string id) => Published.Check(id, row =>
        Strings.ColdFactor(row.Number("coldest")) * (row.Has("volts") ? row.Number("volts") * row.Number("modules") : 1));

    [Theory, PublishedRows("string-current")]
    public void Currents_carry_the_factors_of_the_code(string id) => Published.Check(id, row => row.Text("give") == "conductor"
        ? Strings.ConductorA(row.Number("isc"), row.Whole("strings"))
        : Strings.CircuitA(row.Number("isc"), row.Whole("strings")));

    [Theory, PublishedRows("controller-string")]
    public void A_string_on_a_controller_is_judged_as_the_closed_form_says(string id)
    {
        if (Published.Rows[id].Text("give").EndsWith("verdict", StringComparison.Ordinal))
            Published.Check(id, row => Limit(row, row.Text("give") == "hot verdict").Verdict.ToString());
        else
            Published.Check(id, Volts);
    }

    [Theory, PublishedRows("trade-fact")]
    public void Sums_of_modules_are_those_of_the_trade(string id) => Published.Check(id, row =>
    {
        var array = new ModuleArray("a", new ModuleType("m", row.Number("watts")), row.Whole("modules"), 1, Plane.Level);
        return row.Text("give") switch
        {
            "kWp" => array.RatedKwp,
            "more per cent" => ((array.RatedKwp / row.Number("from kWp")) - 1) * 100,
            "DC over AC" => array.DcToAcRatio(new InverterType("i", row.Number("inverter"))),
            var other => throw new FormatException(other),
        };
    });

    private static double Volts(PublishedRow row) => row.Text("give") switch
    {
        "hot volts" => Limit(row, hot: true).Found!.Value,
        "cold volts" => Limit(row, hot: false).Found!.Value,
        "needed" => Limit(row, hot: true).Limit!.Value,
        "clip" => Controller(row).LimitW(row.Number("battery"))!.Value,
        var other => throw new FormatException(other),
    };

    private static StringLimit Limit(PublishedRow row, bool hot)
    {
        var module = new ModuleType("m", 250)
        {
            VmpV = row.Number("vmp"),
            VmpPerK = row.Number("vmp per K"),
            VocV = row.Number("voc"),
            VocPerK = row.Number("voc per K"),
        };
        var array = new ModuleArray("a", module, row.Whole("in series"), 1, Plane.Level);
        var site = new StringSite(row.Number("coldest"), row.Number("hot")) { AbsorptionV = row.Number("absorption") };
        return StringCheck.On(array, Controller(row), site).Limits.Single(l => l.What.StartsWith(hot ? "Operating voltage" : "Open-circuit voltage at the coldest dawn against the device", StringComparison.Ordinal));
    }

    private static ControllerType Controller(PublishedRow row) =>
        new("c") { HighestInputV = row.Number("limit"), HighestChargeA = row.Number("amps"), HeadroomV = row.Number("headroom") };
}
