using NodaTime;

namespace SolarEconomics;

/// <summary>A change of prices that is known ahead: an announced increase, a moved peak, a lower feed-in rate.</summary>
/// <param name="From">First day at the new prices.</param>
/// <param name="ImportFactor">Import price after it relative to before. Range: 0 to 10; 8 % more is 1.08.</param>
/// <param name="FeedInFactor">Feed-in price after it relative to before. Range: 0 to 10.</param>
public sealed record PriceStep(LocalDate From, double ImportFactor, double FeedInFactor = 1);
