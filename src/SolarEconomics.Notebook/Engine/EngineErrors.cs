using System.Globalization;
using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive;

namespace SolarEconomics.Notebook;

/// <summary>Says a failure as the reader needs it: the message, the reader's own lines, and none of the engine's.</summary>
internal static class EngineErrors
{
    /// <summary>At most this many compiler messages or problems are listed.</summary>
    private const int Most = 20;

    internal static StepError Describe(Exception? exception, string? message)
    {
        while (Wrapped(exception) is { } inner) exception = inner;
        return exception switch
        {
            CompilationErrorException compile => OfCompiler(compile),
            null => new StepError("Error", message is { Length: > 0 } ? message : "The step failed and gave no reason.", []),
            _ => OfCode(exception),
        };
    }

    private static Exception? Wrapped(Exception? exception) => exception switch
    {
        CodeSubmissionCompilationErrorException or TargetInvocationException or TypeInitializationException => exception.InnerException,
        AggregateException { InnerExceptions.Count: 1 } several => several.InnerExceptions[0],
        _ => null,
    };

    private static StepError OfCompiler(CompilationErrorException exception)
    {
        var errors = exception.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error).ToList();
        if (errors.Count == 0) return new("Error", exception.Message, []);
        var first = errors[0];
        return new(first.Id, Say(first), Listed(errors.Skip(1), e => $"{e.Id}: {Say(e)}"));
    }

    private static string Say(Microsoft.CodeAnalysis.Diagnostic error)
    {
        var span = error.Location.GetMappedLineSpan();
        var text = error.GetMessage(CultureInfo.InvariantCulture);
        return span.IsValid
            ? string.Create(CultureInfo.InvariantCulture, $"{text} ({PlaceOf(span.Path)}, line {span.StartLinePosition.Line + 1}, column {span.StartLinePosition.Character + 1})")
            : text;
    }

    private static StepError OfCode(Exception exception)
    {
        var lines = new List<string>(StepTrace.LinesOf(exception));
        if (exception is RecordException record) lines.AddRange(Listed(record.Problems, p => p.ToString()));
        for (var inner = exception.InnerException; inner is not null; inner = inner.InnerException)
            lines.Add($"because {inner.GetType().Name}: {inner.Message}");
        return new(exception.GetType().Name, exception.Message, lines);
    }

    private static List<string> Listed<T>(IEnumerable<T> items, Func<T, string> say)
    {
        var all = items.Select(say).ToList();
        return all.Count <= Most ? all : [.. all.Take(Most), string.Create(CultureInfo.InvariantCulture, $"and {all.Count - Most} more")];
    }

    private static string PlaceOf(string path) => path.Length == 0 ? "this step" : Path.GetFileName(path);
}
