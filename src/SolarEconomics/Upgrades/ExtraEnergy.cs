namespace SolarEconomics;

/// <summary>What a change adds in one calendar month of the records: energy, and what it is worth by where it goes.</summary>
internal readonly record struct ExtraEnergy(double Hours, double UsedKwh, double ExportedKwh, double Avoided, double FeedIn, double IfAllExported, double IfAllUsed)
{
    internal ExtraEnergy Plus(ExtraEnergy o) => new(Hours + o.Hours, UsedKwh + o.UsedKwh, ExportedKwh + o.ExportedKwh,
        Avoided + o.Avoided, FeedIn + o.FeedIn, IfAllExported + o.IfAllExported, IfAllUsed + o.IfAllUsed);

    /// <summary>Prices a change of generation in one interval: more serves what was bought, the rest is exported; less is taken from export first.</summary>
    internal static ExtraEnergy Of(double hours, double deltaKwh, double importKwh, double exportKwh, double importPrice, double exportPrice)
    {
        var used = deltaKwh >= 0 ? Math.Min(deltaKwh, importKwh) : Math.Min(0, deltaKwh + exportKwh);
        var exported = deltaKwh - used;
        return new ExtraEnergy(hours, used, exported, importPrice * used, exportPrice * exported, exportPrice * deltaKwh, importPrice * deltaKwh);
    }
}
