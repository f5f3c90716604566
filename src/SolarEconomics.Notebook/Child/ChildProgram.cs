using System.Reflection;

namespace SolarEconomics.Notebook;

/// <summary>The program that is started as a session's own process.</summary>
/// <param name="FileName">The program.</param>
/// <param name="Arguments">Its arguments; the name of the pipe is added as the last one.</param>
public sealed record ChildProgram(string FileName, IReadOnlyList<string> Arguments)
{
    /// <summary>This program once more, with other arguments.</summary>
    /// <param name="arguments">What makes it serve a session, for example <c>session</c>.</param>
    public static ChildProgram Itself(params string[] arguments)
    {
        ArgumentNullException.ThrowIfNull(arguments);
        var path = Environment.ProcessPath ?? throw Throw.NoProcessPath();
        // Started as "dotnet X.dll", the process is dotnet and X.dll its first argument.
        var isRunner = string.Equals(Path.GetFileNameWithoutExtension(path), "dotnet", StringComparison.OrdinalIgnoreCase);
        return isRunner ? new(path, [Assembly.GetEntryAssembly()!.Location, .. arguments]) : new(path, arguments);
    }
}
