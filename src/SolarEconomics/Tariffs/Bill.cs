using System.Globalization;

namespace SolarEconomics;

/// <summary>What a tariff asks for one billing period, line by line.</summary>
/// <param name="Period">Billing days.</param>
/// <param name="Tariff">Name of the tariff, the last of several.</param>
/// <param name="Lines">The lines, in the order of the tariff's parts.</param>
/// <param name="TotalBeforeTax">Sum of the lines.</param>
/// <param name="Tax">Tax on them.</param>
/// <param name="Total">To pay, rounded as the tariff says; below 0 where the home is paid.</param>
public sealed record Bill(DateSpan Period, string Tariff, IReadOnlyList<BillLine> Lines,
    Money TotalBeforeTax, Money Tax, Money Total) : IFinding
{
    /// <summary>The rules used, one sentence each.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>What must be said with every bill worked out here.</summary>
    public const string Caution =
        "Rates and rules differ by place and change: check the bill or the retailer's sheet before deciding.";

    /// <summary>To pay where a part of the home reclaims its tax, such as a workshop.</summary>
    /// <param name="share">Share of the tax that comes back. Range: 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public Money TotalReclaiming(decimal share)
    {
        _ = Require.Fraction((double)share);
        return share == 0 ? Total : Total with { Amount = Total.Amount - Math.Round(Tax.Amount * share, Total.Currency.MinorDigits, MidpointRounding.AwayFromZero) };
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        return new Finding(Wording.Exact(Total, culture),
            $"to pay for {Wording.Days(Period, culture)} on \"{Tariff}\": {Wording.Exact(TotalBeforeTax, culture)} and {Wording.Exact(Tax, culture)} tax.")
        {
            Notes = Notes,
            Cautions = [Caution],
            Tables =
            [
                new FindingTable($"The bill, line by line ({Total.Currency})", ["part", "quantity", "unit", "rate", "amount", "why"],
                    [.. Lines.Select(l => Row(l, culture))]),
            ],
        };
    }

    internal static IReadOnlyList<string> Row(BillLine line, CultureInfo culture) =>
    [
        line.Part, line.Quantity.ToString("#,0.###", culture), line.Unit, line.Rate.ToString("0.00####", culture),
        Wording.Plain(line.Amount, culture), line.Why,
    ];
}
