namespace SolarEconomics.Tests;

/// <summary>Checks against published values. How to add one: README.md beside this file.</summary>
public static class Published
{
    /// <summary>Every row of every room, by id.</summary>
    public static IReadOnlyDictionary<string, PublishedRow> Rows { get; } = PublishedFile.ReadAll(DataFolder());

    /// <summary>How far the meta-test has moved the expected values on this flow of control; 0 in every ordinary test.</summary>
    private static readonly AsyncLocal<int> Moved = new();

    public static void Check(string id, Func<PublishedRow, double> compute) => CheckAny(id, row => compute(row));

    public static void Check(string id, Func<PublishedRow, decimal> compute) => CheckAny(id, row => compute(row));

    public static void Check(string id, Func<PublishedRow, string> compute) => CheckAny(id, row => compute(row));

    /// <summary>Runs checks with every expected value moved by so many steps of three tolerances.</summary>
    internal static void WithExpectedMoved(int steps, Action checks)
    {
        Moved.Value = steps;
        try
        {
            checks();
        }
        finally
        {
            Moved.Value = 0;
        }
    }

    internal static string DataFolder() => Path.Combine(Root(), "tests", "data", "published");

    /// <summary>The repository's root, found upwards from the built tests: the paths that a compiler writes down may be mapped.</summary>
    internal static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "SolarEconomics.sln"))) return folder.FullName;
        }
        throw new DirectoryNotFoundException($"Found no SolarEconomics.sln above {AppContext.BaseDirectory}.");
    }

    private static void CheckAny(string id, Func<PublishedRow, object> compute)
    {
        var row = Rows.TryGetValue(id, out var found) ? found : throw new ArgumentException($"No published row has the id \"{id}\".", nameof(id));
        if (Moved.Value != 0) row = row with { Expected = row.Tolerance.Move(row.Expected, Moved.Value) };
        var got = compute(row);
        var difference = row.Tolerance.Difference(row.Expected, got);
        var agrees = difference is null;
        if (Moved.Value == 0) PublishedReport.Write(row, got, agrees);
        // A disputed row must go on disagreeing: one that agrees is no longer disputed.
        if (agrees == (row.Disputed.Length > 0)) throw new PublishedDisagreement(row, difference ?? "it agrees, so it is not disputed");
    }
}
