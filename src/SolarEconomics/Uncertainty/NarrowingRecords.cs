namespace SolarEconomics;

/// <summary>Adds each further record in turn and computes the range again: the advice which one would narrow the answer most.</summary>
internal static class NarrowingRecords
{
    internal static IReadOnlyList<Narrowing> Of(SiteRecords records, EvidencePrices prices, EvidenceLadder ladder, Currency currency)
    {
        if (!records.GenerationIsBounded)
            return [new Narrowing("generation by interval, or the readings of the inverter's lifetime counter", null)];
        var now = WidthOf(ladder);
        var found = new List<Narrowing>();
        foreach (var (record, with) in Candidates(records))
        {
            var narrower = now - WidthOf(new EvidenceLadder(with, prices));
            // Less than a coin's worth is no advice.
            if (narrower >= 0.5) found.Add(new Narrowing(record, Money.Nominal(Math.Round((decimal)narrower, 2), currency)));
        }
        return [.. found.OrderByDescending(n => n.Narrower!.Value.Amount)];
    }

    private static double WidthOf(EvidenceLadder ladder)
    {
        var ends = ladder.EndsOf(ladder.Highest);
        return ends.High!.Value - ends.Low;
    }

    private static IEnumerable<(string Record, SiteRecords With)> Candidates(SiteRecords records)
    {
        foreach (var device in records.Generation)
        {
            if (device.Series.MissingCount > 0)
                yield return ($"interval readings of {device.Device.Name} for the {Wording.CountInMessage(Days(device.Series, records), "day")} without", records.With(device.AsIfRead()));
            if (device.Device.ToAcHigh > device.Device.ToAcLow)
                yield return ($"an AC counter behind {device.Device.Name}", records.With(device.AsIfCountedInAc()));
        }
        if (records.Export is null || records.Import is null || records.Export.MissingCount > 0)
            yield return ("import and export by interval, from the meter or the utility", records.WithMeter(Complete(records.Import, records), CompleteExport(records)));
        if (records.BatteryKwh > 0 && (records.Charge is not { MissingCount: 0 } || records.Discharge is not { MissingCount: 0 }))
            yield return ("charge and discharge of the battery by interval", records.WithBattery(Complete(records.Charge, records), Complete(records.Discharge, records)));
    }

    private static int Days(GridSeries series, SiteRecords records) => (int)Math.Ceiling(series.MissingCount * records.Grid.StepHours / 24);

    private static GridSeries Complete(GridSeries? series, SiteRecords records)
    {
        var whole = new GridSeries(records.Grid.Count);
        Array.Fill(whole.Known, true);
        series?.Kwh.CopyTo(whole.Kwh, 0);
        return whole;
    }

    /// <summary>What would be read is not known: half of what can have been made stands in, as only the width is asked.</summary>
    private static GridSeries CompleteExport(SiteRecords records)
    {
        var whole = Complete(records.Export, records);
        for (var i = 0; i < whole.Kwh.Length; i++)
            if (records.Export?.Known[i] != true) whole.Kwh[i] = records.Generation.Sum(g => g.Series.Kwh[i] * g.ToAcMiddle) / 2;
        return whole;
    }
}
