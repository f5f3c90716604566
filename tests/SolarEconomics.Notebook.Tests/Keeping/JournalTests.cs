namespace SolarEconomics.Notebook.Tests;

public sealed class JournalTests : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 29, 12, 0, 0, TimeSpan.Zero);
    private readonly TemporaryFolder folder = new();
    private readonly NotebookDocument document;
    private readonly string path;

    public JournalTests()
    {
        path = folder.File("a.ipynb");
        document = NotebookDocument.Parse(Outside.Text("full.ipynb"));
        document.Save(path);
    }

    [Fact]
    public void Every_kind_of_change_comes_back_letter_for_letter()
    {
        var saved = document.State();
        foreach (var change in Changes())
        {
            change(document);
            using (var journal = new NotebookJournal(path, saved)) journal.Append(document.State(), Noon);
            var found = Assert.Single(LeftJournal.Beside(path, saved));
            Assert.Equal((document.ToJson(), Noon, 1), (found.State.ToJson(), found.At, found.Changes));
            found.Delete();
        }
    }

    [Fact]
    public void A_journal_cut_off_at_any_byte_gives_a_state_that_was()
    {
        var saved = document.State();
        var states = new List<string> { document.ToJson() };
        using (var journal = new NotebookJournal(path, saved))
        {
            foreach (var change in Changes())
            {
                change(document);
                journal.Append(document.State(), Noon);
                states.Add(document.ToJson());
            }
        }
        var name = Directory.GetFiles(folder.Path, ".*.journal").Single();
        var whole = File.ReadAllBytes(name);
        for (var length = whole.Length; length > 0; length -= 7)
        {
            File.WriteAllBytes(name, whole[..length]);
            var left = LeftJournal.Beside(path, saved);
            Assert.Contains(left.Count == 0 ? states[0] : left[0].State.ToJson(), states);
        }
    }

    [Fact]
    public void Answers_that_the_file_leaves_out_are_in_the_journal_that_a_crash_leaves_behind()
    {
        document.LeavesAnswersOut = true;
        document.Save(path);
        using (var journal = new NotebookJournal(path, document.FileState()))
        {
            document.SetSource(document.Steps[0].Id, "changed");
            journal.Append(document.State(), Noon);
        }
        var found = Assert.Single(LeftJournal.Beside(path, NotebookDocument.Load(path).State()));
        Assert.Equal(document.ToJson(), found.State.ToJson());
        Assert.Contains("output_type", found.State.ToJson(), StringComparison.Ordinal);
    }

    [Fact]
    public void Saving_empties_the_journal_and_closing_removes_it()
    {
        using (var journal = new NotebookJournal(path, document.State()))
        {
            document.SetSource(document.Steps[0].Id, "changed");
            journal.Append(document.State(), Noon);
            Assert.Single(Directory.GetFiles(folder.Path, ".*.journal"));
            document.Save(path);
            journal.Empty(document.State());
        }
        Assert.Empty(Directory.GetFiles(folder.Path, ".*.journal"));
    }

    [Fact]
    public void While_a_program_writes_a_journal_another_one_leaves_it_alone_and_takes_its_own()
    {
        var saved = document.State();
        using var one = new NotebookJournal(path, saved);
        document.SetSource(document.Steps[0].Id, "one");
        one.Append(document.State(), Noon);
        Assert.Empty(LeftJournal.Beside(path, saved));
        using var other = new NotebookJournal(path, saved);
        document.SetSource(document.Steps[0].Id, "other");
        other.Append(document.State(), Noon);
        Assert.Equal(2, Directory.GetFiles(folder.Path, ".*.journal").Length);
    }

    [Fact]
    public void A_journal_that_says_nothing_new_is_removed_one_of_somebody_else_is_not()
    {
        var saved = document.State();
        using (var journal = new NotebookJournal(path, saved))
        {
            document.SetSource(document.Steps[0].Id, "changed");
            journal.Append(document.State(), Noon);
        }
        document.Save(path);
        File.WriteAllText(folder.File(".a.ipynb.2.journal"), "not ours");
        Assert.Empty(LeftJournal.Beside(path, document.State()));
        Assert.Equal(".a.ipynb.2.journal", Path.GetFileName(Assert.Single(Directory.GetFiles(folder.Path, ".*.journal"))));
    }

    [Fact]
    public void A_journal_of_a_newer_version_is_refused_in_words_and_kept()
    {
        File.WriteAllText(folder.File(".a.ipynb.journal"), "{\"version\": 2, \"notebook\": \"a.ipynb\"}\nanything\n");
        var refused = Assert.Throws<NotebookFormatException>(() => LeftJournal.Beside(path, document.State()));
        Assert.Contains("found a journal of version 2, expected version 1 or older. A newer version of this program wrote it", refused.Message, StringComparison.Ordinal);
        Assert.True(File.Exists(folder.File(".a.ipynb.journal")));
    }

    [Fact]
    public void The_kept_sample_of_version_1_is_read()
    {
        File.WriteAllText(folder.File("s.ipynb"), "{\n \"cells\": [\n  {\n   \"cell_type\": \"code\",\n   \"execution_count\": null,\n   \"id\": \"a\",\n   \"metadata\": {},\n   \"outputs\": [],\n   \"source\": [\n    \"1\"\n   ]\n  }\n ],\n \"metadata\": {},\n \"nbformat\": 4,\n \"nbformat_minor\": 5\n}\n");
        File.Copy(Path.Combine(AppContext.BaseDirectory, "data", "journal-version-1.txt"), folder.File(".s.ipynb.journal"));
        var sample = NotebookDocument.Load(folder.File("s.ipynb"));
        sample.Return(Assert.Single(LeftJournal.Beside(folder.File("s.ipynb"), sample.State())).State);
        Assert.Equal(["1 + 1", "# Why"], sample.Steps.Select(step => step.Source));
        Assert.Equal("2", (string)sample.Steps[0].Outputs.Single()["data"]!["text/plain"]!);
    }

    private static Action<NotebookDocument>[] Changes() =>
    [
        d => d.SetSource(d.Steps[1].Id, "var a = \"ä€\\n\";\n// 😀"),
        d => d.Insert(2, StepKind.Code, "new"),
        d => d.AddOutput(d.Steps[2].Id, new() { ["output_type"] = "stream", ["name"] = "stdout", ["text"] = "line one\nline two\n" }),
        d => d.Move(d.Steps[2].Id, 0),
        d => d.SetKind(d.Steps[0].Id, StepKind.Text),
        d => d.Delete(d.Steps[^1].Id),
        d => d.Culture = "de-DE",
        d => d.ClearAllOutputs(),
        d => d.SetTags(d.Steps[1].Id, ["assumptions"]),
        d => d.SetRunNumber(d.Steps.First(step => step.Kind == StepKind.Code).Id, 3),
    ];

    public void Dispose() => folder.Dispose();
}
