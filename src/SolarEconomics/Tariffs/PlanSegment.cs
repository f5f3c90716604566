namespace SolarEconomics;

/// <summary>Days of one billing period under one version of the tariff, its parts laid on them, and what each was in the tariff.</summary>
internal sealed record PlanSegment(int Period, Tariff Tariff, IReadOnlyList<SegmentPart> Parts, IReadOnlyList<TariffPart> Sources);
