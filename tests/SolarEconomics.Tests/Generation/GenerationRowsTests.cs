namespace SolarEconomics.Tests.GenerationRoom;

/// <summary>The outside rows on yields, temperatures and ageing from records (tests/data/published/rows-generation.csv).</summary>
public sealed class GenerationRowsTests
{
    [Theory, PublishedRows("yields")]
    public void Yields_follow_the_terms_of_the_standard(string id) => Published.Check(id, row =>
    {
        var yields = new Yields(row.Number("kwh"), row.Number("kwp"), row.Number("plane"));
        return row.Text("give") switch
        {
            "final" => yields.FinalHours,
            "reference" => yields.ReferenceHours,
            "ratio" => yields.PerformanceRatio,
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("hot-module")]
    public void A_hot_module_gives_what_the_textbook_says(string id) => Published.Check(id, row =>
    {
        var cell = CellTemperature.ByNoct(row.Number("plane"), row.Number("air"), row.Number("noct"));
        return row.Text("give") == "cell"
            ? cell
            : CellTemperature.PowerW(new ModuleType("m", row.Number("rated")) { PowerPerK = row.Number("per K") }, row.Number("plane"), cell);
    });

    [Theory, PublishedRows("cell-temperature")]
    public void Three_forms_of_cell_temperature_agree_with_their_closed_forms(string id) => Published.Check(id, row =>
    {
        var (plane, air, wind) = (row.Number("plane"), row.Number("air"), row.Number("wind"));
        var back = row.Has("mounting") && row.Text("mounting") == "insulated" ? BackTemperature.Insulated : BackTemperature.OpenRack;
        return row.Text("give") switch
        {
            "back" => back.At(plane, air, wind),
            "cell by back" => CellTemperature.ByBack(plane, air, wind, back),
            "heat shed" => CellTemperature.ByHeatShed(plane, air, wind, new Mounting("row", row.Number("u0"), row.Number("u1"))),
            "noct" => CellTemperature.ByNoct(plane, air, row.Number("noct")),
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("year-on-year")]
    public void A_clean_series_ages_at_its_own_rate(string id) => Published.Check(id, row =>
    {
        double?[] values = [.. Enumerable.Range(0, row.Whole("years")).Select(k => (double?)(100 * Math.Pow(row.Number("yearly factor"), k)))];
        var rates = YearOnYear.Rates(values, 1);
        return row.Text("give") == "median" ? Statistics.Median(rates) : rates.Max() - rates.Min();
    });

    [Theory, PublishedRows("exact-line")]
    public void An_exact_line_has_an_interval_without_width(string id) => Published.Check(id, row =>
    {
        double[] x = [.. Enumerable.Range(0, row.Whole("years") + 1).Select(k => (double)k)];
        var fit = LineFit.Of(x, [.. x.Select(k => row.Number("start") - (row.Number("loss") * k))]);
        return row.Text("give") switch
        {
            "slope" => fit.Slope,
            "relative" => fit.Slope / fit.Intercept,
            "largest residual" => fit.Residuals.Max(Math.Abs),
            "interval width" => fit.SlopeIntervalWithAutocorrelation().High - fit.SlopeIntervalWithAutocorrelation().Low,
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("season-and-slope")]
    public void Comparing_a_year_apart_takes_the_season_out_and_a_line_over_part_of_it_does_not(string id) => Published.Check(id, row =>
    {
        var shape = row.Numbers("shape");
        var from = row.Has("from month") ? row.Whole("from month") : 0;
        double?[] months = [.. Enumerable.Range(0, row.Whole("months")).Select(m => (double?)(100 * shape[(m + from) % 12] * (1 - (row.Number("loss") * m / 12))))];
        double[] initial = [.. shape.Select(s => 100 * s)];
        return row.Text("give") switch
        {
            "of initial" => 100 * Statistics.Median(YearOnYear.RatesOfInitial(months, 12, initial)),
            "spread of initial" => 100 * (YearOnYear.RatesOfInitial(months, 12, initial).Max() - YearOnYear.RatesOfInitial(months, 12, initial).Min()),
            "of previous year" => 100 * Statistics.Median(YearOnYear.Rates(months, 12)),
            "naive line" => NaivePercentAYear([.. months.Take(row.Whole("naive months")).Select(m => m!.Value)]),
            var other => throw new FormatException(other),
        };
    });

    [Theory, PublishedRows("years-to-tell")]
    public void How_far_few_years_can_tell_follows_the_closed_form(string id) =>
        Published.Check(id, row => 100 * AgeingEstimate.HalfWidth(row.Number("scatter"), row.Whole("years")));

    private static double NaivePercentAYear(double[] months) =>
        100 * LineFit.Of([.. months.Select((_, i) => (double)i)], months).Slope * 12 / Statistics.Mean(months);
}
