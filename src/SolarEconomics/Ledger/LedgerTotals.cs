using System.Globalization;

namespace SolarEconomics;

/// <summary>What was paid and received, added up by kind and by device. Money of the day or of one year, no loan flows.</summary>
/// <param name="Invested">Purchases and the like less grants and refunds; 0 or more in general.</param>
/// <param name="Running">Repairs, parts, insurance and other running costs.</param>
/// <param name="Income">Sales, certificates and paid claims.</param>
/// <param name="ByKind">Number of entries and their sum per kind, in the order of <see cref="LedgerKind"/>; kinds without money too.</param>
/// <param name="ByDevice">Net cash flow per device, by name; entries of no device stand under <c>all devices</c>.</param>
/// <param name="OwnHours">Own hours worked. Unit: h.</param>
public sealed record LedgerTotals(
    Money Invested,
    Money Running,
    Money Income,
    IReadOnlyList<(LedgerKind Kind, int Entries, Money Sum)> ByKind,
    IReadOnlyList<(string Device, Money CashFlow)> ByDevice,
    double OwnHours) : IFinding
{
    /// <summary>What an own hour counts for in the sums; <see langword="null"/> where own hours cost nothing.</summary>
    public Money? OwnHourRate { get; init; }

    /// <summary>What still has to come back from energy: invested and running costs less income.</summary>
    public Money NetPaid => Invested + Running - Income;

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var unit = NetPaid.Currency.Code;
        return new Finding(
            Wording.Exact(NetPaid, culture),
            $"was paid in all: {Wording.Exact(Invested, culture)} invested after grants and refunds, {Wording.Exact(Running, culture)} of running costs, " +
            $"less {Wording.Exact(Income, culture)} received.")
        {
            Notes =
            [
                NetPaid.Basis.IsNominal
                    ? "Money of the day on which it was paid; loan flows are left out."
                    : $"In money of {NetPaid.Basis.Year!.Value.ToString(CultureInfo.InvariantCulture)}, by the price index given; loan flows are left out.",
                OwnHourRate is { } rate ? $"{OwnHours.ToString("#,0.#", culture)} own hours are counted at {Wording.Exact(rate, culture)} each."
                    : OwnHours > 0 ? $"{OwnHours.ToString("#,0.#", culture)} own hours are not priced here." : "No own hours are entered.",
            ],
            Cautions = ["Not tax or credit advice."],
            Tables =
            [
                new FindingTable($"By kind ({unit})", ["Kind", "Entries", "Sum"],
                    [.. ByKind.Select(k => (IReadOnlyList<string>)[LedgerKinds.WordOf(k.Kind), k.Entries.ToString(culture), Wording.Plain(k.Sum, culture)])]),
                new FindingTable($"By device, received less paid ({unit})", ["Device", "Cash flow"],
                    [.. ByDevice.Select(d => (IReadOnlyList<string>)[d.Device, Wording.Plain(d.CashFlow, culture)])]),
            ],
        };
    }
}
