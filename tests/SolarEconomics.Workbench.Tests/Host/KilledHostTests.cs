using System.Diagnostics;
using System.Globalization;
using System.Net.WebSockets;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>The whole program is killed while a page types: what was typed up to a second before is there. How often is set by <c>SOLARECONOMICS_KILLS</c>; 10 without it.</summary>
public sealed class KilledHostTests : IDisposable
{
    private static readonly int Kills = int.TryParse(Environment.GetEnvironmentVariable("SOLARECONOMICS_KILLS"), CultureInfo.InvariantCulture, out var kills) ? kills : 10;

    private readonly Scratch scratch = new();

    [Fact]
    public async Task A_killed_program_leaves_the_notebook_whole_and_at_most_the_last_second_missing()
    {
        var random = new Random(9);
        var path = scratch.Notebook("killed.ipynb", "# Killed", "var count = 0;", "count + 1");
        for (var kill = 0; kill < Kills; kill++)
        {
            var typed = await TypeUntilKilledAsync(path, random);
            var document = NotebookDocument.Load(path);
            foreach (var left in LeftJournal.Beside(path, document.State()))
            {
                document.Return(left.State);
                left.Delete();
            }
            document.Save(path);
            Assert.Equal(3, document.Steps.Count);
            var found = int.Parse(document["step-2"].Source["var count = ".Length..^1], CultureInfo.InvariantCulture);
            // The last that the program had a second to keep; nothing that was never typed.
            Assert.InRange(found, typed.ASecondBefore, typed.Last);
        }
    }

    /// <summary>Types numbers, each as one message, and kills the program at a random moment.</summary>
    private static async Task<(int ASecondBefore, int Last)> TypeUntilKilledAsync(string path, Random random)
    {
        await using var program = await RunningProgram.OpenAsync(path, Scratch.StateBeside(path).Path);
        using var talk = await HostConversation.BeginAsync(program.Address);
        var number = NumberIn(path);
        await talk.SayAsync(new EditStep("step-2", Text(++number)));
        while (await talk.HearAsync() is { } told && (string)told["message"]! != "stepChanged") { }
        _ = HearAll(talk);

        var began = Stopwatch.StartNew();
        var killAt = TimeSpan.FromMilliseconds(random.Next(200, 3000));
        var asked = new List<(int Number, TimeSpan At)> { (number, TimeSpan.Zero) };
        var slowness = TimeSpan.Zero;
        while (began.Elapsed < killAt)
        {
            await talk.SayAsync(new EditStep("step-2", Text(++number)));
            asked.Add((number, began.Elapsed));
            if (random.Next(40) == 0) await talk.SayAsync(new Save());
            var pause = TimeSpan.FromMilliseconds(random.Next(5, 60));
            var before = began.Elapsed;
            await Task.Delay(pause);
            slowness = Longer(slowness, began.Elapsed - before - pause);
        }
        var killed = began.Elapsed;
        using (var process = Process.GetProcessById(program.Id)) process.Kill();
        // A machine that keeps this test waiting keeps the program waiting too, at several places one after another.
        var second = TimeSpan.FromSeconds(1) + (slowness * 5);
        var longBefore = asked.Where(one => killed - one.At > second).Select(one => one.Number).DefaultIfEmpty(asked[0].Number - 1).Max();
        return (longBefore, asked[^1].Number);
    }

    private static async Task HearAll(HostConversation talk)
    {
        try { while (await talk.HearAsync() is not null) { } }
        catch (Exception gone) when (gone is ObjectDisposedException or OperationCanceledException or WebSocketException) { Debug.Assert(gone is not null, "The program was killed, as it should be."); }
    }

    private static string Text(int number) => string.Create(CultureInfo.InvariantCulture, $"var count = {number};");

    private static TimeSpan Longer(TimeSpan a, TimeSpan b) => a > b ? a : b;

    private static int NumberIn(string path) => int.Parse(NotebookDocument.Load(path)["step-2"].Source["var count = ".Length..^1], CultureInfo.InvariantCulture);

    public void Dispose() => scratch.Dispose();
}
