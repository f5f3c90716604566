using System.Globalization;

namespace SolarEconomics;

/// <summary>What was spent, what has come back, and what is still to recover. Money of the day.</summary>
/// <param name="Invested">Purchases less grants: spent either way, so no decision about the future counts it.</param>
/// <param name="Running">Repairs, insurance and other running costs.</param>
/// <param name="Income">Sales, certificates and paid claims.</param>
/// <param name="EnergyValue">Value of the energy to date.</param>
/// <param name="ResaleToday">What the plant would sell for today; <see langword="null"/> where it is not stated.</param>
public sealed record Recovery(Money Invested, Money Running, Money Income, Money EnergyValue, Money? ResaleToday) : IFinding
{
    /// <summary>What has come back so far: energy and income.</summary>
    public Money Recovered => EnergyValue + Income;

    /// <summary>What is still to come back; below 0 where more has come back than was spent.</summary>
    public Money StillToRecover => Invested + Running - Recovered;

    /// <summary>Spent and not to be had back by selling today; <see langword="null"/> where no resale value is stated.</summary>
    public Money? Sunk => ResaleToday is { } resale ? Invested - resale : null;

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var isOpen = StillToRecover.Amount > 0;
        var words = isOpen
            ? $"is still to recover: {Wording.Whole(Invested + Running, culture)} were spent, {Wording.Whole(Recovered, culture)} have come back."
            : $"have come back beyond what was spent: {Wording.Whole(Recovered, culture)} against {Wording.Whole(Invested + Running, culture)}.";
        words += Sunk is { } sunk ? $" Sold today, {Wording.Whole(sunk, culture)} of what was invested would be gone for good." : " What is spent is spent: it counts for no decision from here on.";
        return new Finding(Wording.Whole(isOpen ? StillToRecover : -StillToRecover, culture), words)
        {
            Tables =
            [
                new FindingTable($"Spent and come back ({Invested.Currency}, money of the day)", ["What", "Amount"],
                [
                    ["Purchases less grants", Wording.Whole(Invested, culture)], ["Running costs", Wording.Whole(Running, culture)],
                    ["Value of the energy", Wording.Whole(EnergyValue, culture)], ["Sales and other income", Wording.Whole(Income, culture)],
                    ["Still to recover", Wording.Whole(StillToRecover, culture)],
                ]),
            ],
            Cautions = [Cautions.Money],
        };
    }
}
