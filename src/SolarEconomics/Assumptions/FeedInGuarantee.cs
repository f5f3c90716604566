using NodaTime;

namespace SolarEconomics;

/// <summary>The end of a guaranteed feed-in rate, and what is paid for export after it.</summary>
/// <param name="Until">First day on which the guarantee no longer holds.</param>
/// <param name="PricePerKwhAfter">Paid per kWh after it, at today's prices; it grows as the feed-in price does. Unit: the site's currency per kWh.</param>
public sealed record FeedInGuarantee(LocalDate Until, decimal PricePerKwhAfter);
