using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>When the plant is paid back, in years from the first purchase. Undiscounted and nominal unless the name says otherwise.</summary>
/// <param name="LastingYears">The last time the cash position rises to 0 or above, and stays there to the horizon; <see langword="null"/> where it does not.</param>
/// <param name="FirstYears">The first time it reaches 0; <see langword="null"/> where it does not.</param>
/// <param name="DiscountedYears">The lasting payback of the discounted position; <see langword="null"/> where it does not.</param>
/// <param name="LastingDate">The day of the lasting payback.</param>
/// <param name="HorizonYears">How far the outlook looks, in years from the first purchase.</param>
/// <param name="Finding">The payback in words.</param>
public sealed record Payback(
    double? LastingYears,
    double? FirstYears,
    double? DiscountedYears,
    LocalDate? LastingDate,
    int HorizonYears,
    Finding Finding) : IFinding
{
    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => Finding;
}
