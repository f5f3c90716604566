using System.Globalization;

namespace SolarEconomics.Notebook.Tests;

[Collection(EngineCollection.Name)]
public sealed class EngineSessionTests(EngineFixture engine)
{
    private Task<StepRun> Run(string code) => StepRun.Of(engine.Session, code);

    [Fact]
    public async Task A_sum_gives_its_value()
    {
        var run = await Run("1 + 2");
        Assert.IsType<StepRan>(run.Ended);
        Assert.Equal("3", run.Result());
    }

    [Fact]
    public async Task What_a_step_declares_is_there_in_the_next()
    {
        await Run("var panels = 12;");
        Assert.Equal("6600", (await Run("panels * 550")).Result());
    }

    [Fact]
    public async Task Long_work_of_a_step_tells_how_far_it_is_and_its_inner_work_does_not()
    {
        var run = await Run("""
            using (var work = WorkProgress.Begin())
            {
                work.Report(0.2);
                Thread.Sleep(450);
                using (var inner = WorkProgress.Begin()) inner.Report(0.9);
                work.Report(0.4);
            }
            """);
        var told = Assert.Single(run.Events.OfType<ProgressMade>(), made => made.Share < 1);
        Assert.Equal(0.4, told.Share);
        Assert.InRange(told.SecondsLeft, 0.6, 60);
    }

    [Fact]
    public async Task Printed_text_arrives_in_order_and_by_stream()
    {
        var run = await Run("Console.WriteLine(\"one\"); Console.Error.WriteLine(\"two\"); Console.Write(\"three\");");
        Assert.Equal("one\nthree", run.Printed());
        Assert.Equal("two\n", run.Printed("stderr"));
    }

    [Fact]
    public async Task A_mistake_names_the_step_the_line_and_the_column()
    {
        var failed = Assert.IsType<StepFailed>((await Run("var a = 1;\nvar b = a + nowhere;")).Ended);
        Assert.Equal("CS0103", failed.Error.Name);
        Assert.Equal("The name 'nowhere' does not exist in the current context (step 7, line 2, column 13)", failed.Error.Message);
        Assert.Empty(failed.Error.Lines);
    }

    [Fact]
    public async Task An_exception_names_the_readers_lines_and_none_of_the_engines()
    {
        var failed = Assert.IsType<StepFailed>((await Run("int Half(int x)\n{\n    return x / (x - x);\n}\nHalf(3)")).Ended);
        Assert.Equal("DivideByZeroException", failed.Error.Name);
        Assert.Equal(["step 7, line 3", "step 7, line 5"], failed.Error.Lines);
    }

    [Fact]
    public async Task An_endless_loop_stops_and_variables_stay()
    {
        await Run("var kept = 41;");
        var loop = Run("while (true) { }");
        await Task.Delay(300);
        Assert.Equal(StopOutcome.Stopped, await engine.Session.StopAsync());
        Assert.IsType<StepStopped>((await loop).Ended);
        Assert.Equal("42", (await Run("kept + 1")).Result());
    }

    [Fact]
    public async Task The_library_is_there_without_being_named()
    {
        var run = await Run("Site.At(\"Alder Weir\", 53.2, -9.1, \"Europe/Dublin\", \"EUR\").Zone.Id");
        Assert.Equal("Europe/Dublin", run.Result());
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public async Task Code_writes_numbers_in_the_notebooks_culture_whatever_the_reader_has(string readers)
    {
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(readers);
        Assert.Equal("1234.5 title 1234.5", (await Run("""
            var before = $"{1234.5} {"TITLE".ToLower()}";
            await Task.Delay(1);
            before + $" {1234.5}"
            """)).Result());
        Assert.Equal(readers, CultureInfo.CurrentCulture.Name);
    }

    [Fact]
    public async Task A_step_of_nothing_works_and_gives_nothing()
    {
        var run = await Run("");
        Assert.IsType<StepRan>(run.Ended);
        Assert.Empty(run.Outputs);
    }

    [Fact]
    public async Task A_directive_of_another_program_fails_in_words()
    {
        var failed = Assert.IsType<StepFailed>((await Run("#!nosuch thing")).Ended);
        Assert.NotEqual("", failed.Error.Message);
    }
}
