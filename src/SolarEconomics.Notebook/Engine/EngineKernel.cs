using System.Reflection;
using System.Runtime;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;

using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;
using SolarEconomics.Files;

namespace SolarEconomics.Notebook;

/// <summary>The C# engine with the library, the charts and their usings loaded.</summary>
internal sealed class EngineKernel : IDisposable
{
    /// <summary>What a notebook may use without naming it.</summary>
    internal const string Usings = """
        using System;
        using System.Collections.Generic;
        using System.Globalization;
        using System.IO;
        using System.Linq;
        using System.Threading;
        using System.Threading.Tasks;
        using Deedle;
        using NodaTime;
        using SolarEconomics;
        using SolarEconomics.Charts;
        using SolarEconomics.Files;
        using SolarEconomics.Solvers;
        """;

    private readonly CSharpKernel kernel = new();
    private volatile EngineRun? current;

    internal EngineKernel()
    {
        FileFormats.Register();
        kernel.AddAssemblyReferences(Preloaded.AssemblyPaths);
        WriteLineNumbers(kernel);
        kernel.AddMiddleware(RunOnStoppableThread, "stoppable");
        kernel.KernelEvents.Subscribe(Hear);
    }

    /// <summary>The engine writes every value itself before it hands it over; that text is never used, so it is kept empty.</summary>
    internal static void QuietEngineFormatting()
    {
        Formatter.SetPreferredMimeTypesFor(typeof(object), PlainTextFormatter.MimeType);
        Formatter.Register(typeof(object), static (_, _) => true, PlainTextFormatter.MimeType);
    }

    /// <summary>Has the compiler compile something, so that its own code is ready when the engine calls it.</summary>
    internal static async Task WarmCompilerAsync() =>
        await CSharpScript.EvaluateAsync<int>("var list = new System.Collections.Generic.List<int> { 1, 2 }; list.Count");

    /// <summary>Runs code; everything that comes of it goes to <paramref name="run"/>.</summary>
    internal async Task RunAsync(string code, EngineRun run)
    {
        current = run;
        try
        {
            await kernel.SendAsync(new SubmitCode(code), run.StopAsked);
        }
        catch (OperationCanceledException) when (run.StopAsked.IsCancellationRequested)
        {
            run.Hear(new EngineStopped());
        }
        finally
        {
            // A stopped engine answers before the code has really ended, or before it has begun.
            if (!run.TryBegin()) await run.CodeEnded;
            run.EndCode();
            current = null;
        }
    }

    internal async Task<IReadOnlyList<Completion>> CompleteAsync(string code, int position, CancellationToken cancel)
    {
        var place = Microsoft.CodeAnalysis.Text.SourceText.From(code).Lines.GetLinePosition(Math.Clamp(position, 0, code.Length));
        var result = await kernel.SendAsync(new RequestCompletions(code, new LinePosition(place.Line, place.Character)), cancel);
        return
        [
            .. result.Events.OfType<CompletionsProduced>().SelectMany(e => e.Completions)
                .Select(c => new Completion(c.DisplayText, c.Kind)).DistinctBy(c => c.Text, StringComparer.Ordinal),
        ];
    }

    public void Dispose() => kernel.Dispose();

    /// <summary>Runs the synchronous part of a submission where it can be ended in the middle of any loop.</summary>
    private async Task RunOnStoppableThread(KernelCommand command, KernelInvocationContext context, KernelPipelineContinuation next)
    {
        if (command is not SubmitCode || current is not { } run)
        {
            await next(command, context);
            return;
        }
        if (!run.TryBegin()) return;
        try
        {
            using var surroundings = run.Enter();
            var rest = Task.CompletedTask;
            // Obsolete by warning only: made for hosts of C# scripts, which this is. The thread serves no other work while it is in there.
#pragma warning disable SYSLIB0046
            ControlledExecution.Run(() => rest = next(command, context), run.AbortAsked);
#pragma warning restore SYSLIB0046
            await rest;
        }
        catch (OperationCanceledException) when (run.StopAsked.IsCancellationRequested)
        {
            run.Hear(new EngineStopped());
        }
        finally
        {
            run.EndCode();
        }
    }

    private void Hear(KernelEvent happened)
    {
        if (current is not { } run) return;
        switch (happened)
        {
            case ReturnValueProduced result:
                run.Hear(new EngineValue(result.Value, IsResult: true));
                break;
            case DisplayEvent { Value: not null } shown and not (StandardOutputValueProduced or StandardErrorValueProduced):
                run.Hear(new EngineValue(shown.Value, IsResult: false));
                break;
            case CommandFailed failed:
                run.Hear(new EngineFailure(EngineErrors.Describe(failed.Exception, failed.Message)));
                break;
        }
    }

    /// <summary>Makes the engine keep line numbers, so that an exception can name the reader's line. The engine has no setting for it.</summary>
    private static void WriteLineNumbers(CSharpKernel kernel)
    {
        var field = typeof(CSharpKernel).GetField("_scriptOptions", BindingFlags.Instance | BindingFlags.NonPublic);
        if (field?.GetValue(kernel) is not ScriptOptions options) throw Throw.OtherEngine(typeof(CSharpKernel).Assembly.GetName().Version);
        field.SetValue(kernel, options.WithEmitDebugInformation(true));
    }
}
