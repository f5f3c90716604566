namespace SolarEconomics;

/// <summary>Days of one billing period under one version of the tariff.</summary>
internal sealed record PlanSegment(int Period, DateSpan Days, DateSpan WholePeriod, Tariff Tariff, IReadOnlyList<SegmentEnergy> Energy);
