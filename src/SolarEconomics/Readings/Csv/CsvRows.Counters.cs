namespace SolarEconomics;

internal sealed partial class CsvRows
{
    /// <summary>How the columns are understood once all rows are read: a column of energy may turn out to hold the states of a counter.</summary>
    internal IReadOnlyList<ColumnMeaning> Columns
    {
        get
        {
            var columns = _layout.Columns.ToArray();
            foreach (var value in _values) columns[value.Index] = value.Meaning;
            return columns;
        }
    }

    /// <summary>Takes columns for counters whose numbers rise as only a counter does, where the user has not said what they are. To be called once rows are in order.</summary>
    internal void RecogniseCounters(ReadOptions options)
    {
        for (var v = 0; v < _values.Length; v++)
        {
            var (meaning, name) = (_values[v].Meaning, _values[v].Name);
            if (options.Columns.Any(c => c.Corrects(meaning.Header))) continue;
            if (meaning.Kind == ColumnKind.Counter && CounterShape.IsEnergy(Table.Values(v), Table.Quality(v)))
            {
                _problems.Note(0, _values[v].Index + 1, meaning.Header, $"numbers under \"{name}\" that go up and down", "the states of a counter, as the header says, which only rise; they are read as the energy of each interval. If they are states, say so by ColumnMeaning.Of in the options");
                _values[v] = new ValueColumn(_values[v].Index, meaning with { Kind = ColumnKind.Energy, Reason = meaning.Reason + ", and as energy of intervals because its numbers go up and down" });
            }
            if (meaning.Kind != ColumnKind.Energy) continue;
            var kind = CounterShape.Of(Table.Stamps, Table.Values(v), Table.Quality(v), DayClock, HeaderWords.HintsAtCounter(meaning.Header));
            if (kind == ColumnKind.Energy) continue;
            var found = kind == ColumnKind.Counter ? $"numbers under \"{name}\" that rise from row to row over days" : $"numbers under \"{name}\" that rise through each day and begin again near 0";
            var read = kind == ColumnKind.Counter ? "the states of a counter" : "the states of a counter that begins at 0 each day";
            _problems.Note(0, _values[v].Index + 1, meaning.Header, found, $"energy of each interval, which goes up and down; they are read as {read}. If they are energy, say so by ColumnMeaning.Of in the options");
            _values[v] = new ValueColumn(_values[v].Index, meaning with { Kind = kind, Reason = $"{meaning.Reason}, and as {read} because its numbers only rise" });
        }
    }
}
