namespace SolarEconomics.Tests;

/// <summary>Which columns of a table are set flush right.</summary>
public class AmountColumnTests
{
    [Theory]
    [InlineData("€1,234")]
    [InlineData("−€1,234")]
    [InlineData("A$1,234")]
    [InlineData("+US$5")]
    [InlineData("1.234\u00a0€")]
    [InlineData("CHF\u00a01,234")]
    [InlineData("R\u00a05")]
    [InlineData("114.49 AUD")]
    [InlineData("12 %")]
    [InlineData("25 years")]
    public void Amounts_are_told_by_the_digit_before_any_letter_but_a_currency_s(string cell)
    {
        Assert.True(Of(cell).IsOfAmounts(0));
        Assert.True(Of(cell, "", "–", "—").IsOfAmounts(0));
        Assert.False(Of(cell, "none").IsOfAmounts(0));
    }

    [Theory]
    [InlineData("PV1")]
    [InlineData("A1")]
    [InlineData("MB20")]
    [InlineData("CHF")]
    [InlineData("$")]
    [InlineData("A$")]
    [InlineData("31 days of being connected at 1.118273 AUD a day.")]
    [InlineData("roof 2")]
    [InlineData("")]
    [InlineData("–")]
    public void Names_and_marks_are_no_amounts(string cell) => Assert.False(Of(cell).IsOfAmounts(0));

    [Fact]
    public void A_column_without_cells_holds_no_amounts() => Assert.False(Of("1").IsOfAmounts(1));

    private static FindingTable Of(params string[] cells) => new("", ["column"], [.. cells.Select(c => (IReadOnlyList<string>)[c])]);
}
