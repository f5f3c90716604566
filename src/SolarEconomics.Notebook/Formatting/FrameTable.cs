using System.Globalization;
using Deedle;

namespace SolarEconomics.Notebook;

/// <summary>A Deedle frame as a table: its first rows, and how many rows, columns and missing values there are.</summary>
internal static class FrameTable
{
    /// <summary>Rows that are shown; the caption counts the rest.</summary>
    private const int Most = 25;

    internal static Finding Of(IFrame frame, CultureInfo culture) => frame.Apply(new Reading(culture));

    private sealed class Reading(CultureInfo culture) : IFrameOperation<Finding>
    {
        public Finding Invoke<TRow, TColumn>(Frame<TRow, TColumn> frame)
        {
            var columns = frame.Columns.Observations.Select(c => (Name: Say(c.Key), Values: c.Value.As<object>())).ToList();
            var missing = columns.Sum(c => (long)frame.RowCount - c.Values.ValueCount);
            var rows = frame.RowKeys.Take(Most).Select(key => (IReadOnlyList<string>)
                [Say(key), .. columns.Select(c => c.Values.TryGet(key) is { HasValue: true } value ? Say(value.Value) : "missing")]).ToList();
            var size = $"{Count(frame.RowCount, "row")} × {Count(frame.ColumnCount, "column")}, {Count(missing, "value")} missing";
            var caption = frame.RowCount > Most ? FormattableString.Invariant($"{size}; the first {Most} rows") : size;
            return new Finding("", "") { Tables = [new FindingTable(caption, ["", .. columns.Select(c => c.Name)], rows)] };
        }

        private string Count(long number, string what) => number.ToString("N0", culture) + " " + (number == 1 ? what : what + "s");

        private string Say(object? value) => TableRows.Said(value, culture);
    }
}
