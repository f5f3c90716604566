namespace SolarEconomics;

/// <summary>One place of the plant under judgement: its days, its intervals, and what held it back.</summary>
internal sealed class PlaceOfOutput
{
    internal PlaceOfOutput(GenerationRecord record, SiteRecords records)
    {
        Record = record;
        Days = OutputDays.Of(record, records);
        AtLimit = new AtLimit(records, record, Days.Line);
    }

    internal GenerationRecord Record { get; }

    internal OutputDays Days { get; }

    internal AtLimit AtLimit { get; }
}
