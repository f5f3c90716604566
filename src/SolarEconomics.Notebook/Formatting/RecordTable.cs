using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using Deedle;

namespace SolarEconomics.Notebook;

/// <summary>A list of records, of unnamed objects or of keys with their values, as a frame: one row each, one column per property.</summary>
internal static class RecordTable
{
    /// <summary>Rows of a list at most; a longer one, or one without end, is no table.</summary>
    private const int Most = 100_000;

    private static readonly MethodInfo Make = typeof(RecordTable).GetMethod(nameof(FrameOf), BindingFlags.Static | BindingFlags.NonPublic)!;

    /// <summary>The frame that a value stands for; the value itself where it is no such list.</summary>
    internal static object? OrValue(object? value)
    {
        if (value is not IEnumerable || value is string or IFormattable or IFinding or IFrame) return value;
        var item = value.GetType().GetInterfaces().Append(value.GetType())
            .FirstOrDefault(type => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IEnumerable<>))?.GetGenericArguments()[0];
        if (item is null || !IsRecord(item)) return value;
        try
        {
            return Make.MakeGenericMethod(item).Invoke(null, [value]) ?? value;
        }
        catch (TargetInvocationException)
        {
            // The list's own code failed; whoever shows the list as it is meets that again, and says it.
            return value;
        }
    }

    private static bool IsRecord(Type item) =>
        (item.IsDefined(typeof(CompilerGeneratedAttribute)) && item.Name.Contains("AnonymousType", StringComparison.Ordinal))
        || (item.GetMethod("<Clone>$") is not null && !item.IsAssignableTo(typeof(IFinding)))
        || (item.IsGenericType && item.GetGenericTypeDefinition() == typeof(KeyValuePair<,>));

    private static IFrame? FrameOf<T>(IEnumerable<T> items)
    {
        var rows = items.Take(Most + 1).ToList();
        return rows.Count is 0 or > Most || rows.Exists(row => row is null) ? null : Frame.FromRecords(rows);
    }
}
