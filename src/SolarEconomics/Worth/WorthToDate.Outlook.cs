namespace SolarEconomics;

public sealed partial class WorthToDate
{
    /// <summary>Looks ahead from the records to a horizon, with ageing, price growth, running and replacement costs.</summary>
    /// <param name="assumptions">What is assumed beyond the records; <see langword="null"/> for the defaults, which are shown.</param>
    /// <exception cref="RecordException">There is no ledger, or nothing bounds the generation.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An assumption is outside its range.</exception>
    public Outlook Outlook(Assumptions? assumptions = null)
    {
        if (Ledger is null) throw Throw.NoLedger(Site.Name);
        if (Value is null) throw Throw.NoValue(Site.Name);
        return SolarEconomics.Outlook.Compute(ForOutlooks, (assumptions ?? new Assumptions()).Checked());
    }
}
