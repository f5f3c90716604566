using System.Globalization;

namespace SolarEconomics.Notebook.Tests;

public sealed class NotebookAssumptionsTests
{
    private const string Code = """
        // The price of waiting.
        var discountRate = Assume.Rate("Discount rate", 0.05, from: 0, to: 0.15);
        var ownShare = SolarEconomics.Assume.Share(label: "Own use", to: 1, from: 0, value: 0.35);
        var years = Assume.Years("Years looked ahead", 25, 1, 40), other = 7;
        var change = Assume.Number("Price change", -0.01, "EUR/kWh", from: -0.1, to: 0.1);
        """;

    [Fact]
    public void Declarations_are_read_with_name_label_kind_unit_value_and_range()
    {
        var items = NotebookAssumptions.Of(Notebook(Code)).Items;
        Assert.Equal(["discountRate", "ownShare", "years", "change"], items.Select(i => i.Name));
        Assert.Equal(["Discount rate", "Own use", "Years looked ahead", "Price change"], items.Select(i => i.Label));
        Assert.Equal([AssumptionKind.Rate, AssumptionKind.Share, AssumptionKind.Years, AssumptionKind.Number], items.Select(i => i.Kind));
        Assert.Equal([0.05, 0.35, 25, -0.01], items.Select(i => i.Value));
        Assert.Equal([(0, 0.15), (0, 1), (1, 40), (-0.1, 0.1)], items.Select(i => (i.From, i.To)));
        Assert.Equal("EUR/kWh", items[3].Unit);
    }

    [Theory]
    [InlineData("", "5.0 % a year", "35 %", "25 years", "-0.01 EUR/kWh")]
    [InlineData("de-DE", "5,0 % a year", "35 %", "25 years", "-0,01 EUR/kWh")]
    public void A_value_is_shown_as_people_read_it(string culture, params string[] expected) =>
        Assert.Equal(expected, NotebookAssumptions.Of(Notebook(Code)).Items.Select(i => i.Shown(CultureInfo.GetCultureInfo(culture))));

    [Fact]
    public void Setting_replaces_the_numbers_and_nothing_else()
    {
        var document = Notebook(Code);
        Assert.Empty(NotebookAssumptions.Set(document, [new("discountRate", "4.25 %"), new("ownShare", "0.4"), new("years", "30"), new("change", "0.02")]));
        Assert.Equal(
            Code.Replace("0.05,", "0.0425,").Replace("value: 0.35", "value: 0.4").Replace("25, 1", "30, 1").Replace("-0.01", "0.02"),
            document.Steps[0].Source);
    }

    [Fact]
    public void Several_mistakes_are_said_at_once_and_nothing_is_set()
    {
        var document = Notebook(Code);
        var problems = NotebookAssumptions.Set(document,
            [new("years", "30"), new("discontRate", "0.04"), new("discountRate", "5"), new("ownShare", "0,4"), new("years", "2.5"), new("change", "NaN")]);
        Assert.Equal(
            [
                "Found the assumption \"discontRate\", expected one that the notebook declares, nearest first: discountRate, ownShare, change, years.",
                "discountRate: found 5, expected a number from 0 to 0.15 (a fraction a year; 5 % is written 0.05).",
                "ownShare: found \"0,4\", expected a number with a point for decimals, from 0 to 1 (a fraction; 35 % is written 0.35).",
                "years: found 2.5, expected whole years from 1 to 40 (years).",
                "change: found \"NaN\", expected a number with a point for decimals, from -0.1 to 0.1 (EUR/kWh).",
            ],
            problems);
        Assert.Equal(Code, document.Steps[0].Source);
    }

    [Fact]
    public void What_cannot_be_set_is_said()
    {
        var assumptions = NotebookAssumptions.Of(Notebook("var a = Assume.Rate(\"A\", 1 / 20.0, from: 0, to: 1);\nvar b = Assume.Years(\"B\", 1, 0, 9); var b = Assume.Years(\"B\", 2, 0, 9);"));
        Assert.Equal("b", Assert.Single(assumptions.Items).Name);
        Assert.Collection(assumptions.Problems,
            p => Assert.StartsWith("Assumption a (line 1 of its step): found a declaration that cannot be set", p, StringComparison.Ordinal),
            p => Assert.StartsWith("Assumption b: found two declarations", p, StringComparison.Ordinal));
    }

    [Fact]
    public void Text_comments_and_strings_declare_nothing()
    {
        const string Declaration = "var a = Assume.Rate(\"A\", 0.1, from: 0, to: 1);";
        var document = NotebookDocument.New();
        document.Insert(0, StepKind.Text, Declaration);
        document.Insert(1, StepKind.Code, $"// {Declaration}\nvar text = \"\"\"{Declaration}\"\"\";");
        Assert.Empty(NotebookAssumptions.Of(document).Items);
        document.Insert(2, StepKind.Code, Declaration);
        Assert.Equal("a", Assert.Single(NotebookAssumptions.Of(document).Items).Name);
    }

    private static NotebookDocument Notebook(string code)
    {
        var document = NotebookDocument.New();
        document.Insert(0, StepKind.Code, code);
        return document;
    }
}
