using System.Globalization;

namespace SolarEconomics;

/// <summary>What one failure cost: parts and work less what was paid out and sold, and the energy that was not made.</summary>
/// <param name="Device">The device that failed.</param>
/// <param name="Down">Days without it.</param>
/// <param name="Receipts">The entries counted, from the first day down to 90 days after the last.</param>
/// <param name="Repair">Parts, work and disposal less claims paid and parts sold.</param>
/// <param name="LostKwh">Energy not made. Unit: kWh of AC.</param>
/// <param name="LostEnergy">What that energy would have been worth.</param>
/// <param name="LostKwhRule">How the lost energy was found, in words.</param>
public sealed record FailureCost(
    string Device, DateSpan Down, IReadOnlyList<LedgerEntry> Receipts, Money Repair, double LostKwh, Money LostEnergy, string LostKwhRule) : IFinding
{
    /// <summary>Repair and lost energy.</summary>
    public Money Total => Repair + LostEnergy;

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => new(Wording.Whole(Total, culture),
        $"is what the failure of {Device} cost: {Wording.Whole(Repair, culture)} for parts and work, {Wording.Whole(LostEnergy, culture)} for {Wording.Kwh(LostKwh, culture)} that were not made " +
        $"in {Wording.Count(Down.Days, "day", culture)} ({Wording.Days(Down, culture)}).")
    {
        Tables =
        [
            new FindingTable($"Receipts of the failure ({Total.Currency})", ["Day", "Kind", "Amount"],
                [.. Receipts.Select(e => (IReadOnlyList<string>)[Wording.Day(e.Date, culture), LedgerKinds.WordOf(e.Kind), Wording.Exact(e.Amount, culture)])]),
        ],
        Notes = [LostKwhRule, "Receipts of the device from the first day down to 90 days after the last; a refused claim moves no money."],
        Cautions = [Cautions.Money, Cautions.Records],
    };
}
