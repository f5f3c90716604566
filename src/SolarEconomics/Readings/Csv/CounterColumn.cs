using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Turns the states of a counter into the energy between them. A counter that goes back was reset, or its register ran over; a daily one begins again each day.</summary>
internal static class CounterColumn
{
    internal static ColumnEnergy ToEnergy(IntervalTable table, int column, ValueColumn meaning, ProblemList problems)
    {
        var states = UnitChange.Mended(table, column, meaning, problems);
        var energy = Read(table, column, states, (row, from, to) =>
        {
            var step = CounterStep.Between(from, to);
            if (step.WentBack)
                problems.Doubtful(table.LineOf(row), meaning.Index + 1, to.ToString("R", CultureInfo.InvariantCulture),
                    string.Create(CultureInfo.InvariantCulture, $"\"{meaning.Name}\" going back from {from:R} to {to:R} kWh"), step.Words);
            return step;
        });
        return energy with { Ends = EndsOf(table, column, states) };
    }

    private static CounterEnds? EndsOf(IntervalTable table, int column, ReadOnlySpan<double> states)
    {
        var (first, last) = (-1, -1);
        var quality = table.Quality(column);
        for (var i = 0; i < states.Length; i++)
        {
            if (quality[i].HasFlag(Quality.Missing)) continue;
            if (first < 0) first = i;
            last = i;
        }
        return first < 0 ? null : new CounterEnds(At(first), states[first], At(last), states[last]);

        Instant At(int row) => Instant.FromUnixTimeMilliseconds(table.StartMs[row]);
    }

    /// <summary>The energy of a counter that begins at 0 each day: what it shows after going back is the energy since then.</summary>
    internal static ColumnEnergy OfDaily(IntervalTable table, int column, ValueColumn meaning, ProblemList problems)
    {
        var starts = 0;
        var energy = Read(table, column, table.Values(column), (_, from, to) =>
        {
            if (to >= from) return new CounterStep(to - from, false, "");
            starts++;
            return new CounterStep(to, false, "");
        });
        problems.Note(0, meaning.Index + 1, meaning.Name, string.Create(CultureInfo.InvariantCulture, $"\"{meaning.Name}\" beginning again {starts} times"),
            "a counter that does so each day; what it shows afterwards is the energy since then, and what it counted between its last state and the change is unknown");
        var values = table.Values(column);
        var quality = table.Quality(column);
        for (var i = 0; i < values.Length; i++)
        {
            if (quality[i].HasFlag(Quality.Missing)) continue;
            if (values[i] > 0)
                problems.Note(table.LineOf(i), meaning.Index + 1, values[i].ToString("R", CultureInfo.InvariantCulture),
                    string.Create(CultureInfo.InvariantCulture, $"\"{meaning.Name}\" at {values[i]:0.######} kWh already when the record begins"), "0; that was made on the same day before the record, and is in no total", values[i]);
            break;
        }
        return energy;
    }

    private static ColumnEnergy Read(IntervalTable table, int column, ReadOnlySpan<double> state, Func<int, double, double, CounterStep> stepOf)
    {
        var quality = table.Quality(column);
        var at = table.StartMs;
        var (starts, ends, kwh, known) = (new List<long>(), new List<long>(), new List<double>(), new List<Quality>());
        var (resets, states, last) = (0, 0, -1);
        for (var i = 0; i < at.Length; i++)
        {
            if (quality[i].HasFlag(Quality.Missing)) continue;
            states++;
            if (last >= 0)
            {
                var step = stepOf(i, state[last], state[i]);
                starts.Add(at[last]);
                ends.Add(at[i]);
                kwh.Add(step.Kwh);
                known.Add((quality[i] & ~Quality.Repeated) | (step.WentBack ? Quality.Doubtful : Quality.Good));
                if (step.WentBack) resets++;
            }
            last = i;
        }
        return new ColumnEnergy(TimeAxis.OfMilliseconds([.. starts], [.. ends]), [.. kwh], [.. known]) { Resets = resets, States = states };
    }
}
