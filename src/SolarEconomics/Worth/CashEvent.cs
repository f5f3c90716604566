using NodaTime;

namespace SolarEconomics;

/// <summary>One piece of an outlook's cash: an amount that falls due at once, or that comes in evenly over a span.</summary>
/// <param name="Start">Day on which it begins.</param>
/// <param name="End">Day on which it has come in whole; equal to <paramref name="Start"/> where it falls due at once.</param>
/// <param name="Amount">Amount in the site's currency, received positive.</param>
/// <param name="Purpose">What it is for.</param>
internal readonly record struct CashEvent(LocalDate Start, LocalDate End, double Amount, MoneyPurpose Purpose);
