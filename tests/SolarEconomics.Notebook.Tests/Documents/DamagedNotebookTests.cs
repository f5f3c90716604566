namespace SolarEconomics.Notebook.Tests;

/// <summary>Over 5,000 seeded damages to the text of every sample: those that outside programs wrote, and the notebooks that come with the program.</summary>
public sealed class DamagedNotebookTests
{
    private const int PerSample = 700;

    private const string Letters = "{}[]\",:0-a\\\ud83d\u0000ntf";

    /// <summary>Every sample by itself, with a seed of its own: one that is added is damaged too.</summary>
    public static TheoryData<string, int> Samples()
    {
        var samples = new TheoryData<string, int>();
        var data = Path.Combine(AppContext.BaseDirectory, "data");
        foreach (var (file, at) in Directory.EnumerateFiles(data, "*.ipynb", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select((file, at) => (file, at)))
            samples.Add(Path.GetRelativePath(data, file), at + 1);
        return samples;
    }

    [Fact]
    public void At_least_5000_damages_are_tried() => Assert.InRange(Samples().Count * PerSample, 5000, int.MaxValue);

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_damaged_file_opens_whole_or_is_refused_in_words(string name, int seed)
    {
        var random = new Random(seed);
        var original = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", name));
        var (opened, refused) = (0, 0);
        for (var i = 0; i < PerSample; i++)
        {
            NotebookDocument document;
            try
            {
                document = NotebookDocument.Parse(Damage(original, random), "damaged.ipynb");
            }
            catch (NotebookFormatException e)
            {
                Assert.StartsWith("damaged.ipynb", e.Message, StringComparison.Ordinal);
                refused++;
                continue;
            }
            opened++;
            foreach (var step in document.Steps)
                _ = (step.Source, step.Kind, step.Tags, step.Outputs, step.Heading, step.RunNumber);
            _ = (NotebookAssumptions.Of(document), document.Title, document.Culture, document.State());
            var text = document.ToJson();
            Assert.Equal(text, NotebookDocument.Parse(text).ToJson());
        }
        // Both ways must really have been taken.
        Assert.True(opened > 0 && refused > 0, $"{opened} opened, {refused} refused");
    }

    /// <summary>One to three damages: a character changed, a piece cut out, doubled, or moved elsewhere.</summary>
    private static string Damage(string text, Random random)
    {
        for (var n = random.Next(1, 4); n > 0 && text.Length > 2; n--)
        {
            var at = random.Next(text.Length - 1);
            var length = random.Next(1, Math.Min(40, text.Length - at));
            var piece = text.Substring(at, length);
            text = random.Next(4) switch
            {
                0 => text.Remove(at, 1).Insert(at, Letters[random.Next(Letters.Length)].ToString()),
                1 => text.Remove(at, length),
                2 => text.Insert(at, piece),
                _ => text.Remove(at, length) is var rest ? rest.Insert(random.Next(rest.Length), piece) : text,
            };
        }
        return text;
    }
}
