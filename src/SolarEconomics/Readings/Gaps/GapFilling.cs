using System.Globalization;

namespace SolarEconomics;

/// <summary>A channel whose gaps were filled by a named rule, with what was filled: nothing is filled unless asked for.</summary>
/// <param name="Channel">The channel, filled values flagged <see cref="Quality.Filled"/>; gaps left open are missing intervals.</param>
/// <param name="Rule">The rule, in words.</param>
/// <param name="Filled">How many intervals were filled.</param>
/// <param name="FilledKwh">Energy put into them. Unit: kWh.</param>
/// <param name="Left">How many missing intervals were left.</param>
public sealed record GapFilling(Channel Channel, string Rule, int Filled, double FilledKwh, int Left) : IFinding
{
    /// <inheritdoc />
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var share = Channel.Total.Kwh == 0 ? 0 : FilledKwh / Channel.Total.Kwh;
        return new Finding(FilledKwh.ToString("#,0.0", culture) + " kWh filled",
            $"{Filled.ToString("#,0", culture)} missing intervals of \"{Channel.Name}\" were filled {Rule}: {share.ToString("0.0 %", culture)} of its total. {Left.ToString("#,0", culture)} were left open.")
        {
            Notes = ["Filled values are guesses: they are flagged and counted apart."],
        };
    }
}
