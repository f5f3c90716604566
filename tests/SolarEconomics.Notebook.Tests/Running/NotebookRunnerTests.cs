namespace SolarEconomics.Notebook.Tests;

[Collection(EngineCollection.Name)]
public sealed class NotebookRunnerTests(EngineFixture engine)
{
    [Fact]
    public async Task Every_step_is_worked_out_and_its_output_written()
    {
        var document = Notebook("# Start", "var runnerX = 20;", "# Sum", "Console.WriteLine(\"hello\"); runnerX + 1", "  ");
        var reports = new List<RunProgress>();
        var result = await NotebookRunner.RunAsync(document, engine.Session, new Listener(reports.Add));
        Assert.Equal(new RunResult(2, 2, null, null), result);
        Assert.Empty(document.Steps[1].Outputs);
        Assert.Equal(["stream", "execute_result"], document.Steps[3].Outputs.Select(o => (string)o["output_type"]!));
        Assert.Equal(document.Steps[1].RunNumber + 1, document.Steps[3].RunNumber);
        Assert.Equal(["step 1, under \"Start\"", "step 1, under \"Start\"", "step 2, under \"Sum\"", "step 2, under \"Sum\""], reports.Select(r => r.Name));
    }

    [Fact]
    public async Task The_run_ends_at_the_step_that_fails_and_names_it()
    {
        var document = Notebook("# Start", "1", "## Trouble", "var bad = \"x\".Substring(5);", "2");
        document.AddOutput(document.Steps[4].Id, Outputs.Printed("stdout", "of an earlier run"));
        var result = await NotebookRunner.RunAsync(document, engine.Session);
        Assert.False(result.Worked);
        Assert.Equal("step 2, under \"Trouble\"", result.FailedAt);
        var failed = Assert.IsType<StepFailed>(result.Failure);
        Assert.Equal("ArgumentOutOfRangeException", failed.Error.Name);
        Assert.Equal(["step 2, line 1"], failed.Error.Lines);
        Assert.Equal("error", (string?)Assert.Single(document.Steps[3].Outputs)["output_type"]);
        Assert.Empty(document.Steps[4].Outputs);
    }

    [Fact]
    public async Task A_record_that_cannot_be_read_says_its_problems_and_no_frames()
    {
        var run = await StepRun.Of(engine.Session, "throw new RecordException(\"meter.csv: nothing in it can be used.\", [new Problem(\"meter.csv\", 2, 3, \"x\", \"\\\"x\\\"\", \"a number\", Severity.Lost)]);");
        var failed = Assert.IsType<StepFailed>(run.Ended);
        Assert.Equal("meter.csv: nothing in it can be used.", failed.Error.Message);
        Assert.Equal(["step 7, line 1", "meter.csv, line 2, column 3: found \"x\", expected a number"], failed.Error.Lines);
    }

    [Fact]
    public async Task A_flood_of_prints_is_kept_short_and_said()
    {
        var run = await StepRun.Of(engine.Session, "for (var i = 0; i < 80_000; i++) Console.WriteLine(new string('x', 99));");
        Assert.Equal(PrintBuffer.Most, run.Printed().Length);
        Assert.Equal("3,000,000 more characters were printed and left out; a step keeps the first 5,000,000.\n", run.Printed("stderr"));
        Assert.InRange(run.Outputs.Count, 2, 200);
    }

    private static NotebookDocument Notebook(params string[] sources)
    {
        var document = NotebookDocument.New();
        foreach (var source in sources) document.Insert(document.Steps.Count, source.StartsWith('#') ? StepKind.Text : StepKind.Code, source);
        return document;
    }

    private sealed class Listener(Action<RunProgress> hear) : IProgress<RunProgress>
    {
        public void Report(RunProgress value) => hear(value);
    }
}
