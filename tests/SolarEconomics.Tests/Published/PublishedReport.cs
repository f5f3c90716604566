using System.Globalization;

namespace SolarEconomics.Tests;

/// <summary>Writes <c>artifacts/rows.csv</c>: one line per published row that was ever checked here, newest result.</summary>
internal static class PublishedReport
{
    private const string Heading = "id,check,expected,got,tolerance,verdict,mark,checked";
    private static readonly Lock Writing = new();
    private static readonly string File = Path.Combine(Published.Root(), "artifacts", "rows.csv");

    /// <summary>Puts one result in its place. Other lines stay, because a run may hold only part of the tests.</summary>
    internal static void Write(PublishedRow row, object got, bool agrees)
    {
        var verdict = (agrees, row.Disputed.Length > 0) switch
        {
            (true, false) => "agrees",
            (false, true) => "disputed: " + row.Disputed,
            _ => "DISAGREES",
        };
        var line = PublishedFile.Join(row.Id, row.Check, row.Expected, PublishedTolerance.Print(got), row.Tolerance.Text, verdict, row.Mark,
            DateTime.UtcNow.ToString("yyyy-MM-dd'T'HH:mm'Z'", CultureInfo.InvariantCulture));
        Directory.CreateDirectory(Path.GetDirectoryName(File)!);
        lock (Writing)
        {
            using var between = OpenAlone(File + ".lock");
            var lines = new SortedDictionary<string, string>(StringComparer.Ordinal);
            foreach (var old in System.IO.File.Exists(File) ? System.IO.File.ReadAllLines(File).Skip(1) : [])
            {
                var id = PublishedFile.Split(old)[0];
                if (Published.Rows.ContainsKey(id)) lines[id] = old;
            }
            lines[row.Id] = line;
            System.IO.File.WriteAllLines(File, lines.Values.Prepend(Heading));
        }
    }

    /// <summary>Several test projects run at the same time, each in a process of its own: the lock file lets one write.</summary>
    private static FileStream OpenAlone(string path)
    {
        for (var attempt = 0; ; attempt++)
        {
            try
            {
                return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException) when (attempt < 500)
            {
                Thread.Sleep(10);
            }
        }
    }
}
