namespace SolarEconomics.Benchmarks;

/// <summary>A fresh process that loads the library and makes one call.</summary>
internal static class LibraryStart
{
    internal static Comparison Of() => new("load the library and make one call, fresh process", "start", 1,
        ColdProcess.Ours("ours", "cold-call"),
        [new Rival(ColdProcess.OfPython("import pandas", "import_cold.py"), 2)])
    {
        Runs = 7,
    };
}
