namespace SolarEconomics;

/// <summary>How a tariff rounds money, as its sheet states.</summary>
/// <param name="Mode">What happens to the part below the last digit. Default: half up.</param>
/// <param name="Place">What is rounded. Default: every line.</param>
/// <param name="Digits">Digits after the point; <see langword="null"/> takes the currency's smallest coin. Range: 0 to 8.</param>
/// <remarks>Default: half up on every line, as the published bills in the tests do.</remarks>
public sealed record BillRounding(
    RoundingMode Mode = RoundingMode.HalfUp, RoundingPlace Place = RoundingPlace.Line, int? Digits = null)
{
    /// <summary>Rounds an amount of money.</summary>
    /// <param name="amount">Amount in units of the currency.</param>
    /// <param name="currency">Gives the digits where the rule states none.</param>
    public decimal Round(decimal amount, Currency currency) => Math.Round(amount, Digits ?? currency.MinorDigits, Mode switch
    {
        RoundingMode.HalfUp => MidpointRounding.AwayFromZero,
        RoundingMode.HalfEven => MidpointRounding.ToEven,
        _ => MidpointRounding.ToZero,
    });

    /// <summary>Rounds a line, where lines are rounded.</summary>
    internal decimal Line(decimal amount, Currency currency) => Place == RoundingPlace.Line ? Round(amount, currency) : amount;

    /// <summary>Rounds a total, where anything is rounded.</summary>
    internal decimal Total(decimal amount, Currency currency) => Place == RoundingPlace.Nowhere ? amount : Round(amount, currency);
}
