using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

public sealed class RunVerbTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("solar-run-");

    public RunVerbTests()
    {
        File.WriteAllText(Path.Combine(folder.FullName, "price.txt"), "0.30");
        var notebook = NotebookDocument.New();
        notebook.Insert(0, StepKind.Text, "# What does a year cost?");
        notebook.Insert(1, StepKind.Code, "var use = Assume.Number(\"Use in a year\", 1000, \"kWh\", from: 0, to: 100000);");
        notebook.Insert(2, StepKind.Code, "(use * double.Parse(File.ReadAllText(\"price.txt\"), CultureInfo.InvariantCulture)).ToString(\"F0\") + \" EUR\"");
        notebook.Save(Path.Combine(folder.FullName, "good.ipynb"));
        notebook.Insert(3, StepKind.Text, "## Trouble");
        notebook.Insert(4, StepKind.Code, "var n = 0;\n1 / n");
        notebook.Insert(5, StepKind.Code, "\"never\"");
        notebook.Save(Path.Combine(folder.FullName, "bad.ipynb"));
    }

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public async Task A_notebook_is_worked_out_with_another_assumption_and_saved()
    {
        var before = File.ReadAllText(Path.Combine(folder.FullName, "good.ipynb"));
        // Started from elsewhere: relative paths in the steps start at the notebook's own folder.
        var run = await ProgramRun.Of(Path.GetTempPath(), "run", Path.Combine(folder.FullName, "good.ipynb"), "--set", "use=2000", "--save", Path.Combine(folder.FullName, "out.ipynb"));
        Assert.Equal(("\nWhat does a year cost?\n\n600 EUR\n", 0), (run.Out, run.Code));
        Assert.Contains("2 of 2  step 2, under \"What does a year cost?\"", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Path.Combine(folder.FullName, "good.ipynb")));
        var saved = NotebookDocument.Load(Path.Combine(folder.FullName, "out.ipynb"));
        Assert.Contains("\"Use in a year\", 2000, \"kWh\"", saved.Steps[1].Source, StringComparison.Ordinal);
        Assert.Equal(2, saved.Steps[2].RunNumber);
    }

    [Fact]
    public async Task A_failing_step_names_itself_and_the_run_exits_1()
    {
        var run = await ProgramRun.Of(folder.FullName, "run", "bad.ipynb");
        Assert.Equal(1, run.Code);
        Assert.EndsWith("Failed at step 3, under \"Trouble\".\nDivideByZeroException: Attempted to divide by zero.\nstep 3, line 2\n", run.Error, StringComparison.Ordinal);
        Assert.Equal("", run.Out);
    }

    [Fact]
    public async Task The_assumptions_are_listed_with_unit_and_range()
    {
        var run = await ProgramRun.Of(folder.FullName, "run", "good.ipynb", "--list");
        Assert.Equal(0, run.Code);
        Assert.Equal("name  value  range        unit  says\nuse   1000   0 to 100000  kWh   Use in a year, 1,000 kWh\n", run.Out);
    }

    [Theory]
    [InlineData("run: none.ipynb", "found no such file, expected a notebook (.ipynb).")]
    [InlineData("run: price.txt", "price.txt, the file: found the number 0.30, expected an object")]
    [InlineData("run: good.ipynb --set uses=1 --set use=-1", "nearest first: use.", "use: found -1, expected a number from 0 to 100000 (kWh).")]
    [InlineData("run: good.ipynb --set use", "--set use: found no name and value, expected name=value such as discountRate=0.05.")]
    [InlineData("run: good.ipynb --save none/out.ipynb", "--save none/out.ipynb: found no folder")]
    [InlineData("run: good.ipynb --sett use=1", "--sett")]
    [InlineData("run:", "NOTEBOOK")]
    public async Task What_cannot_start_is_said_in_words_and_exits_2(string line, params string[] expected)
    {
        var run = await ProgramRun.Of(folder.FullName, line.Replace(":", "", StringComparison.Ordinal).Split(' '));
        Assert.Equal(2, run.Code);
        Assert.All(expected, words => Assert.Contains(words, run.Error, StringComparison.Ordinal));
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
        Assert.Equal("", run.Out);
    }
}
