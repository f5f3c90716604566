using System.Globalization;

namespace SolarEconomics.Notebook.Tests;

/// <summary>A process that does nothing but write a notebook and its journal, as the workbench does, and says what is on the disk: made to be killed at any moment.</summary>
internal static class RestlessWriter
{
    public const string Name = "write-until-killed";

    /// <summary>Changes a step for ever: each change to the journal, each seventh to the file too. Prints each number once it is on the disk.</summary>
    public static int Write(string notebook)
    {
        var document = NotebookDocument.Load(notebook);
        using var journal = new NotebookJournal(notebook, document.State());
        for (var number = NumberIn(document) + 1; ; number++)
        {
            document.SetSource("count", string.Create(CultureInfo.InvariantCulture, $"var count = {number};\n// {new string('x', number % 5000)}"));
            if (number % 3 == 0) document.Insert(document.Steps.Count, StepKind.Text, "more");
            if (number % 5 == 0 && document.Steps.Count > 2) document.Delete(document.Steps[^1].Id);
            journal.Append(document.State(), DateTimeOffset.UtcNow);
            if (number % 7 == 0)
            {
                document.Save(notebook);
                journal.Empty(document.State());
            }
            Console.Out.WriteLine(number.ToString(CultureInfo.InvariantCulture));
            Console.Out.Flush();
        }
    }

    /// <summary>The number that a notebook holds.</summary>
    public static int NumberIn(NotebookDocument document)
    {
        var line = document["count"].Source.Split('\n')[0];
        return int.Parse(line["var count = ".Length..^1], CultureInfo.InvariantCulture);
    }
}
