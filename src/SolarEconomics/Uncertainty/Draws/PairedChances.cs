using System.Globalization;

namespace SolarEconomics;

/// <summary>Two amounts drawn together: how often the first beats the second, and by how much.</summary>
/// <param name="First">The first.</param>
/// <param name="Second">The second.</param>
/// <param name="Difference">First less second, draw by draw.</param>
/// <remarks>Both meet the same draws, so what they share cancels: the difference is known far better than either.</remarks>
public sealed record PairedChances(Chances First, Chances Second, DrawnValues Difference) : IFinding
{
    /// <summary>Share of draws in which the first is worth more. Range: 0 to 1; ties count half.</summary>
    public double ChanceThatFirstWins
    {
        get
        {
            var (wins, ties) = (0, 0);
            foreach (var difference in Difference.Values)
            {
                if (difference > 0) wins++;
                else if (difference == 0) ties++;
            }
            return (wins + (ties / 2.0)) / Difference.Count;
        }
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture) => ChanceWords.Say(this, culture);
}
