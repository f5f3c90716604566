using System.Globalization;
using Deedle;

namespace SolarEconomics.Notebook;

/// <summary>All values of a table that a step answered with, ready to be sorted, searched and read page by page.</summary>
internal sealed class TableRows
{
    private readonly CultureInfo culture;
    private readonly Lazy<Content> content;
    private (int? SortBy, bool Descending, string Find, int[] Order)? last;

    private TableRows(CultureInfo culture, Func<Content> read) => (this.culture, content) = (culture, new Lazy<Content>(read));

    /// <summary>The table that a value is; <see langword="null"/> for everything else.</summary>
    internal static TableRows? Of(object? value, CultureInfo culture) => value switch
    {
        IFrame frame => new TableRows(culture, () => frame.Apply(new Reading())),
        Readings readings => new TableRows(culture, () => ((IFrame)readings.ToFrame()).Apply(new Reading())),
        _ => null,
    };

    internal TablePage Read(TableQuery query)
    {
        var table = content.Value;
        var order = OrderFor(query, table);
        var rows = order.Skip(Math.Max(0, query.From)).Take(Math.Clamp(query.Count, 0, TableQuery.Most))
            .Select(row => (IReadOnlyList<string>)[.. table.Values.Select(column => query.ForFile ? Written(column[row]) : Said(column[row], culture))]).ToList();
        return new TablePage(table.Columns, rows, order.Length, table.Count);
    }

    /// <summary>A value as people read it.</summary>
    internal static string Said(object? value, CultureInfo culture) => value switch
    {
        null => "missing",
        double number => number.ToString("#,0.####", culture),
        IFormattable formattable => formattable.ToString(null, culture),
        _ => value.ToString() ?? "",
    };

    private static string Written(object? value) => value switch
    {
        null => "",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        DateTime or DateTimeOffset => ((IFormattable)value).ToString("O", CultureInfo.InvariantCulture),
        IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    private int[] OrderFor(TableQuery query, Content table)
    {
        if (last is { } known && known.SortBy == query.SortBy && known.Descending == query.Descending && known.Find == query.Find) return known.Order;
        var rows = Enumerable.Range(0, table.Count);
        if (query.Find.Length > 0) rows = rows.Where(row => table.Values.Any(column => Said(column[row], culture).Contains(query.Find, StringComparison.OrdinalIgnoreCase)));
        if (query.SortBy is { } by && by >= 0 && by < table.Values.Count)
        {
            var values = table.Values[by];
            // What is missing stands at the end either way.
            var sorted = rows.OrderBy(row => values[row] is null);
            rows = query.Descending ? sorted.ThenByDescending(row => values[row], ByValue.Instance) : sorted.ThenBy(row => values[row], ByValue.Instance);
        }
        var order = rows.ToArray();
        last = (query.SortBy, query.Descending, query.Find, order);
        return order;
    }

    private sealed record Content(IReadOnlyList<string> Columns, IReadOnlyList<object?[]> Values, int Count);

    /// <summary>Numbers by size, times by time; two kinds in one column by their text.</summary>
    private sealed class ByValue : IComparer<object?>
    {
        internal static readonly ByValue Instance = new();

        public int Compare(object? x, object? y) => x is IComparable a && y is not null && a.GetType() == y.GetType()
            ? a.CompareTo(y)
            : string.CompareOrdinal(x?.ToString(), y?.ToString());
    }

    private sealed class Reading : IFrameOperation<Content>
    {
        public Content Invoke<TRow, TColumn>(Frame<TRow, TColumn> frame)
        {
            var columns = frame.Columns.Observations.ToList();
            object?[][] values =
            [
                [.. frame.RowKeys.Select(key => (object?)key)],
                .. columns.Select(column => column.Value.As<object>().ObservationsAll.Select(one => one.Value.HasValue ? one.Value.Value : null).ToArray()),
            ];
            return new Content(["", .. columns.Select(column => column.Key?.ToString() ?? "")], values, frame.RowCount);
        }
    }
}
