using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Turns the states of a counter into the energy between them. A counter that goes back was reset, or its register ran over.</summary>
internal static class CounterColumn
{
    internal static ColumnEnergy ToEnergy(IntervalTable table, int column, ValueColumn meaning, ProblemList problems)
    {
        var state = table.Values(column);
        var quality = table.Quality(column);
        var at = table.StartMs;
        var (starts, ends, kwh, known) = (new List<Instant>(), new List<Instant>(), new List<double>(), new List<Quality>());
        var resets = 0;
        var last = -1;
        for (var i = 0; i < at.Length; i++)
        {
            if (quality[i].HasFlag(SolarEconomics.Quality.Missing)) continue;
            if (last >= 0)
            {
                var step = CounterStep.Between(state[last], state[i]);
                starts.Add(Instant.FromUnixTimeMilliseconds(at[last]));
                ends.Add(Instant.FromUnixTimeMilliseconds(at[i]));
                kwh.Add(step.Kwh);
                known.Add((quality[i] & ~SolarEconomics.Quality.Repeated) | (step.WentBack ? SolarEconomics.Quality.Doubtful : SolarEconomics.Quality.Good));
                if (step.WentBack)
                {
                    resets++;
                    problems.Doubtful(table.LineOf(i), meaning.Index + 1, state[i].ToString("R", CultureInfo.InvariantCulture),
                        string.Create(CultureInfo.InvariantCulture, $"\"{meaning.Name}\" going back from {state[last]:R} to {state[i]:R} kWh"), step.Words);
                }
            }
            last = i;
        }
        return new ColumnEnergy([.. starts], [.. ends], [.. kwh], [.. known]) { Resets = resets };
    }
}
