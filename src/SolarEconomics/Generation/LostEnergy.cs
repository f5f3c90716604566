namespace SolarEconomics;

/// <summary>An event: days in a row that fell short, what they lost, what that was worth, and what was paid about it.</summary>
/// <param name="Shortfall">The days and what they look like.</param>
/// <param name="UncertaintyKwh">Half-width of a 95 % range around the lost energy, from the scatter of usual days. Unit: kWh.</param>
/// <param name="Range">Worth of the lost energy with all of it exported, and with all of it used; <see langword="null"/> without tariffs.</param>
/// <param name="Days">The days one by one; days that the record or its references cannot tell are left out.</param>
public sealed record LostEnergy(Shortfall Shortfall, double UncertaintyKwh, MoneyRange? Range, IReadOnlyList<LostDay> Days)
{
    /// <summary>Worth of the lost energy by the hours in which it would have come; <see langword="null"/> where it cannot be told.</summary>
    /// <remarks>In each interval it would first have served what was bought, and the rest would have been exported. A battery would have used more: a lower estimate of use.</remarks>
    public Money? Value => Days.Count > 0 && Days.All(d => d.Value is not null) ? Days.Select(d => d.Value!.Value).Aggregate((a, b) => a + b) : null;

    /// <summary>Receipts about the device from ten days before the event to sixty days after: an assumption of what belongs to it.</summary>
    public IReadOnlyList<LedgerEntry> Receipts { get; init; } = [];

    /// <summary>What the plant's log says of these days.</summary>
    public IReadOnlyList<LogEntry> Log { get; init; } = [];

    /// <summary>What was paid about the event less what was received; <see langword="null"/> without receipts.</summary>
    public Money? Paid => Receipts.Count == 0 ? null : Receipts.Select(r => r.CashFlow * -1m).Aggregate((a, b) => a + b);

    /// <summary>What the event cost: lost energy and receipts; <see langword="null"/> where neither is known.</summary>
    public Money? Cost => (Value, Paid) switch
    {
        ({ } value, { } paid) => value + paid,
        var (value, paid) => value ?? paid,
    };

    /// <summary>What would not have been lost had the device been back after so many days, as with a spare on the shelf.</summary>
    /// <param name="days">Days until it works again. Range: 0 or more.</param>
    /// <returns>Energy, and its worth where known.</returns>
    public (double Kwh, Money? Value) SavedIfMendedAfter(int days)
    {
        Require.Within(days, 0, 10_000, "days");
        var rest = Days.Where(d => d.Date >= Shortfall.Days.Start.PlusDays(days)).ToList();
        Money? value = rest.Count > 0 && rest.All(d => d.Value is not null) ? rest.Select(d => d.Value!.Value).Aggregate((a, b) => a + b) : null;
        return (rest.Sum(d => d.Kwh), value);
    }
}
