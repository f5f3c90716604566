using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>What files of readings hold and how far they can be trusted, for people and for programs, without a site.</summary>
/// <remarks>The command line, notebooks and the library print the same. Immutable, so safe to share between threads.</remarks>
public sealed class Inspection : IFinding
{
    private Inspection(IReadOnlyList<InspectedFile> files) => Files = files;

    /// <summary>The files, in the order given.</summary>
    public IReadOnlyList<InspectedFile> Files { get; }

    /// <summary>0 all read; 1 values lost in one; 2 one not readable, or none given. The worst file decides.</summary>
    public int ExitCode => Files.Count == 0 ? 2 : Files.Max(f => f.ExitCode);

    /// <summary>Looks at files. What cannot be read is said in the result; only stopping throws.</summary>
    /// <param name="paths">Paths, absolute or from the working folder.</param>
    /// <param name="zone">IANA name or fixed offset of the clock; <see langword="null"/> for the format's own (NEM12: UTC+10, ESPI: its parameters). Bare local stamps need one.</param>
    /// <param name="options">Choices that the records leave open, and progress and stopping. Default: none.</param>
    /// <exception cref="OperationCanceledException">The reading was stopped.</exception>
    public static Inspection Of(IEnumerable<string> paths, string? zone = null, ReadOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(paths);
        options ??= new ReadOptions();
        if (zone is null) return new Inspection([.. paths.Select(p => InspectedFile.Of(p, options))]);
        try
        {
            options = options with { Zone = Zones.Of(zone) };
        }
        catch (UnknownNameException e)
        {
            return new Inspection([.. paths.Select(p => InspectedFile.Unreadable(p, e))]);
        }
        return new Inspection([.. paths.Select(p => InspectedFile.Of(p, options))]);
    }

    /// <summary>The result for programs: one JSON object, with kWh to at least six decimals and instants in ISO form.</summary>
    public string ToJson() => InspectionJson.Write(this);

    /// <summary>The result for people, as plain text.</summary>
    /// <param name="culture">How numbers are written; the words are English.</param>
    public string ToText(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        return InspectionText.Write(this, culture);
    }

    /// <inheritdoc />
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var read = Files.Count(f => f.ExitCode < 2);
        var lost = Files.SelectMany(f => f.Problems).Count(p => p.Severity == Severity.Lost);
        return new Finding($"{read.ToString(culture)} of {Files.Count.ToString(culture)} read",
            lost == 0 ? "Nothing was lost." : $"{lost.ToString("#,0", culture)} findings of values lost; they are listed.")
        {
            Notes = [.. Files.Where(f => f.Clock is not null).Select(f => $"{f.File}: {f.Format}, local days by {f.Clock!.Id}.")],
            Tables = [.. Files.Select(f => InspectionText.ChannelTable(f, culture)), .. Files.Where(f => f.Problems.Count > 0).Select(f => InspectionText.ProblemTable(f, culture))],
        };
    }
}
